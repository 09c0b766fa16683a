package eavesproof.survey;

import eavesproof.job.WayPart.Branch;
import eavesproof.job.WayPart.Clip;
import eavesproof.job.WayPart.Discharge;
import eavesproof.job.WayPart.Downpipe;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the water of a run passes from its outlets to where it finally goes. */
final class WayOfWater {
    private static final List<Class<? extends Facts.Fact>> KINDS =
            List.of(
                    Facts.BranchFall.class,
                    Facts.ClipSpacing.class,
                    Facts.DischargeKind.class,
                    Facts.DischargeApproved.class,
                    Facts.ApprovalReference.class,
                    Facts.OutfallTraced.class);

    private final String run;
    private final Instruments instruments;
    private final Answers answers;

    private WayOfWater(Trough trough, Answers answers) {
        run = trough.id();
        instruments = trough.instruments();
        this.answers = answers;
    }

    static void answer(Trough trough, Answers answers) {
        WayOfWater of = new WayOfWater(trough, answers);
        Way.Course course = trough.way().from(trough.outlets());
        List<String> beyond = new ArrayList<>();
        trough.way().doubt().ifPresent(beyond::add);
        beyond.addAll(course.broken());
        for (Class<? extends Facts.Fact> kind : KINDS) {
            beyond.forEach(why -> answers.gap(kind, why, trough.id()));
        }
        of.each(course, beyond.isEmpty());
        of.unreached(trough.way());
    }

    /** Somebody recorded it for this job, so that some water was to come to it. */
    private void unreached(Way way) {
        for (Branch branch : way.unreached(Branch.class)) {
            answers.gap(Facts.BranchFall.class, nothing(branch.id()), run, branch.id());
        }
        for (Discharge discharge : way.unreached(Discharge.class)) {
            Discharges.KINDS.forEach(
                    kind -> answers.gap(kind, nothing(discharge.id()), run, discharge.id()));
        }
    }

    private static String nothing(String part) {
        return "no outlet is recorded to lead to " + part;
    }

    /**
     * @param whole whether the way was followed to every discharge, so that what was not met is not
     *     there
     */
    private void each(Way.Course course, boolean whole) {
        List<Branch> branches = course.each(Branch.class);
        List<Downpipe> downpipes = course.each(Downpipe.class);
        List<Discharge> discharges = course.each(Discharge.class);
        branches.forEach(this::branch);
        downpipes.forEach(this::clips);
        discharges.forEach(discharge -> Discharges.answer(run, discharge, answers));
        if (whole) {
            String none = "the water of run " + run + " passes no ";
            none(branches, Facts.BranchFall.class, none + "branch");
            none(downpipes, Facts.ClipSpacing.class, none + "downpipe");
            for (Class<? extends Facts.Fact> kind : Discharges.KINDS) {
                none(discharges, kind, "the water of run " + run + " comes to no discharge");
            }
        }
    }

    private void none(List<?> parts, Class<? extends Facts.Fact> kind, String why) {
        if (parts.isEmpty()) {
            answers.none(kind, why, run);
        }
    }

    private void branch(Branch branch) {
        String name = "branch " + branch.id();
        Found<Uncertain> drop = read(branch.dropMm(), "drop of " + name, branch);
        Found<Uncertain> length = read(branch.lengthMm(), "length of " + name, branch);
        drop.then(fallen -> length.then(along -> fall(name, fallen, along)))
                .either(
                        fall -> fall(branch, fall),
                        why -> answers.gap(Facts.BranchFall.class, why, run, branch.id()));
    }

    private Found<Uncertain> read(@Nullable Double mm, String what, Branch branch) {
        return Found.recorded(mm, "the " + what)
                .map(
                        it ->
                                instruments.read(
                                        it, what, branch.measuredWith(), "branch " + branch.id()));
    }

    private record Fall(Uncertain drop, Uncertain length, Uncertain fall) {}

    private static Found<Fall> fall(String name, Uncertain drop, Uncertain length) {
        return length.value() > 0
                ? Found.of(new Fall(drop, length, drop.over(length).times(1000)))
                : Found.missing(name + " is recorded without any length");
    }

    private void fall(Branch branch, Fall fall) {
        String with = instruments.named(branch.measuredWith());
        answers.known(
                new Facts.BranchFall(run, branch.id(), fall.fall().value()),
                fall.fall(),
                Answers.working("drop", fall.drop(), Unit.MM, with),
                Answers.working("length on plan", fall.length(), Unit.MM, with),
                Answers.working("fall", fall.fall(), Unit.MM_PER_M, "drop / length on plan"));
    }

    private void clips(Downpipe downpipe) {
        List<Clip> clips = downpipe.clips();
        String name = "downpipe " + downpipe.id();
        String[] ids = {run, downpipe.id()};
        if (clips == null) {
            String why = "the clips of " + name + " are not recorded";
            answers.gap(Facts.ClipSpacing.class, why, ids);
            return;
        }
        Optional<Clip> lost = clips.stream().filter(it -> it.belowTopMm() == null).findFirst();
        if (lost.isPresent()) {
            String why = "where clip " + lost.get().id() + " of " + name + " is, is not recorded";
            answers.gap(Facts.ClipSpacing.class, why, ids);
        } else if (clips.size() < 2) {
            String why = name + (clips.isEmpty() ? " has no clip" : " has only one clip");
            answers.none(Facts.ClipSpacing.class, why, ids);
        } else {
            spacings(downpipe, clips);
        }
    }

    private record Placed(String id, Uncertain belowTop) {}

    private void spacings(Downpipe downpipe, List<Clip> clips) {
        List<Placed> sorted = new ArrayList<>();
        for (Clip clip : clips) {
            String source = "place of clip " + clip.id() + " on " + downpipe.id();
            String thing = "downpipe " + downpipe.id();
            Found.recorded(clip.belowTopMm(), source)
                    .map(mm -> instruments.read(mm, source, downpipe.measuredWith(), thing))
                    .map(below -> sorted.add(new Placed(clip.id(), below)));
        }
        sorted.sort(
                Comparator.<Placed>comparingDouble(it -> it.belowTop().value())
                        .thenComparing(Placed::id));
        String with = instruments.named(downpipe.measuredWith());
        for (int i = 1; i < sorted.size(); i++) {
            Placed from = sorted.get(i - 1);
            Placed to = sorted.get(i);
            Uncertain centres = to.belowTop().minus(from.belowTop());
            answers.known(
                    new Facts.ClipSpacing(run, downpipe.id(), from.id(), to.id(), centres.value()),
                    centres,
                    Answers.working(from.id() + " below the top", from.belowTop(), Unit.MM, with),
                    Answers.working(to.id() + " below the top", to.belowTop(), Unit.MM, with),
                    Answers.working("centres", centres, Unit.MM, "the second - the first"));
        }
    }
}
