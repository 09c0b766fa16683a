package eavesproof.findings;

import eavesproof.job.Instrument;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.judge.Verdict;
import eavesproof.rules.RuleSet;
import eavesproof.survey.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Days that cannot have followed each other as they are written. Of such a record nobody knows
 * which work was measured, so that the job is then not shown to comply.
 */
final class Days {
    /** Of a paper: what lies after the day on which it is issued. */
    static final String ON_ISSUE = "nothing is later than the paper";

    private static final String IN_RECORD = "days in their order";
    private static final String TOPIC = "the record itself";
    private static final Finding.Source SOURCE =
            new Finding.Source(
                    "Common practice: what comes first is dated first",
                    "",
                    "",
                    RuleSet.Standing.COMMON_PRACTICE);

    private final List<String> impossible = new ArrayList<>();

    private Days() {}

    static List<Finding> inRecord(Job job) {
        Days days = new Days();
        Job.Dates dates = job.dates();
        String measured = dates == null ? null : dates.measured();
        String began = dates == null ? null : dates.workBegan();
        String ended = dates == null ? null : dates.workEnded();
        days.before("it was measured", measured, "the beginning of the work", began);
        for (Run run : Objects.requireNonNullElse(job.runs(), List.<Run>of())) {
            String fitted = run.fitted() == null ? null : run.fitted().date();
            String was = "run " + run.id() + " was fitted";
            days.before(was, fitted, "the beginning of the work", began);
            days.after(was, fitted, "the end of the work", ended);
            days.after(was, fitted, "the measuring", measured);
        }
        return days.findings(
                IN_RECORD,
                "The days of the record can have followed each other as they are written.");
    }

    /**
     * @param issued the day on the paper, YYYY-MM-DD
     */
    static List<Finding> onIssue(Job job, String issued) {
        Days days = new Days();
        String paper = "the issue of this paper";
        Job.Dates dates = job.dates();
        if (dates != null) {
            days.after("it was measured", dates.measured(), paper, issued);
            days.after("the work began", dates.workBegan(), paper, issued);
            days.after("the work ended", dates.workEnded(), paper, issued);
        }
        Job.Consent consent = job.consent();
        days.after("the consent is", consent == null ? null : consent.date(), paper, issued);
        for (Run run : Objects.requireNonNullElse(job.runs(), List.<Run>of())) {
            String fitted = run.fitted() == null ? null : run.fitted().date();
            days.after("run " + run.id() + " was fitted", fitted, paper, issued);
        }
        for (Job.Photograph photograph :
                Objects.requireNonNullElse(job.photographs(), List.<Job.Photograph>of())) {
            String was = "photograph " + photograph.id() + " was taken";
            days.after(was, day(photograph.taken()), paper, issued);
        }
        Objects.requireNonNullElse(job.instruments(), Map.<String, Instrument>of())
                .forEach(
                        (id, instrument) ->
                                days.after(
                                        "instrument " + id + " was checked",
                                        instrument.lastChecked(),
                                        paper,
                                        issued));
        return days.findings(
                ON_ISSUE, "Whatever is recorded happened before the paper about it was issued.");
    }

    /** Of a day with its time the day. */
    private static @Nullable String day(@Nullable String moment) {
        return moment == null ? null : moment.substring(0, Math.min(10, moment.length()));
    }

    private void before(
            String what, @Nullable String day, String other, @Nullable String otherDay) {
        // Days are written so that their order is that of their text.
        if (day != null && otherDay != null && day.compareTo(otherDay) < 0) {
            impossible.add(what + " on " + day + ", before " + other + ", " + otherDay);
        }
    }

    private void after(String what, @Nullable String day, String other, @Nullable String otherDay) {
        if (day != null && otherDay != null && day.compareTo(otherDay) > 0) {
            impossible.add(what + " on " + day + ", after " + other + ", " + otherDay);
        }
    }

    private List<Finding> findings(String rule, String says) {
        return impossible.isEmpty() ? List.of() : List.of(finding(rule, says, impossible));
    }

    private static Finding finding(String rule, String says, List<String> because) {
        return new Finding(
                rule,
                TOPIC,
                says,
                Verdict.NOT_RECORDED,
                "days",
                "the days of the record",
                Place.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "simple",
                because,
                SOURCE,
                Optional.empty(),
                List.of(),
                Optional.of("find out which day is wrong, and record the right one"),
                List.of());
    }
}
