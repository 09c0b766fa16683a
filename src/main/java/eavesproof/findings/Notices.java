package eavesproof.findings;

import eavesproof.job.Gutter;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.WayPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What a reader of the record would wonder about, as sentences: work that began before its consent
 * or went on after the measuring, and work that is covered now and was not photographed. No verdict
 * rests on any of it; days that are impossible are {@link Days}.
 */
public final class Notices {
    private static final String CONCEALED = "concealed";

    private final List<String> notices = new ArrayList<>();

    private Notices() {}

    static List<String> of(Job job) {
        Notices notices = new Notices();
        notices.days(job);
        notices.hidden(job);
        return List.copyOf(notices.notices);
    }

    private void days(Job job) {
        Job.Dates dates = job.dates();
        if (dates == null) {
            return;
        }
        if (!isBefore(dates.measured(), dates.workBegan())) {
            before("It was measured", dates.measured(), "the end of the work", dates.workEnded());
        }
        Job.Consent consent = job.consent();
        if (consent != null) {
            before("The work began", dates.workBegan(), "the day of its consent", consent.date());
        }
    }

    private void before(
            String what, @Nullable String day, String other, @Nullable String otherDay) {
        if (isBefore(day, otherDay)) {
            notices.add(what + " on " + day + ", before " + other + ", " + otherDay + ".");
        }
    }

    /** Days are written so that their order is that of their text. */
    private static boolean isBefore(@Nullable String day, @Nullable String other) {
        return day != null && other != null && day.compareTo(other) < 0;
    }

    private void hidden(Job job) {
        List<Job.Photograph> before =
                Objects.requireNonNullElse(job.photographs(), List.<Job.Photograph>of()).stream()
                        .filter(p -> "yes".equals(p.beforeCovering()))
                        .toList();
        for (Run run : Objects.requireNonNullElse(job.runs(), List.<Run>of())) {
            if (isConcealed(job, run) && before.stream().noneMatch(p -> run.id().equals(p.run()))) {
                notices.add("Run " + run.id() + " is concealed" + unseen());
            }
        }
        if (before.isEmpty()) {
            Objects.requireNonNullElse(job.way(), List.<WayPart>of()).stream()
                    .filter(WayPart.Drain.class::isInstance)
                    .map(WayPart.Drain.class::cast)
                    .filter(drain -> !"existing".equals(drain.newOrExisting()))
                    .forEach(drain -> notices.add("Drain " + drain.id() + " is buried" + unseen()));
        }
    }

    private static String unseen() {
        return ", and no photograph of it from before it was covered is recorded.";
    }

    private static boolean isConcealed(Job job, Run run) {
        Gutter gutter =
                run.gutter() == null || job.gutters() == null
                        ? null
                        : job.gutters().get(run.gutter());
        return gutter != null && CONCEALED.equals(gutter.kind());
    }
}
