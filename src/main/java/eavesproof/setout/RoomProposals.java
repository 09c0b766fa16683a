package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Run.Joint;
import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart.Outlet;
import eavesproof.judge.Demanded;
import eavesproof.judge.Ruling;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.Facts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Too little room for the gutter to grow or to shrink: the gap to be set at the temperature that it
 * has, and how deep it then sits; or how much to cut off an end.
 */
final class RoomProposals {
    private RoomProposals() {}

    /**
     * What a joint needs at the temperature at which it was set, whole mm.
     *
     * @param insertion NaN where nobody recorded how deep the gutter sits
     */
    private record Need(double gap, double insertion) {
        boolean both() {
            return !Double.isNaN(insertion);
        }
    }

    /** An expansion joint that is too closed or too open, and those that were just put in. */
    static List<Proposal> joint(Case here, List<Ruling> group) {
        Ruling first = group.get(0);
        String run = Case.run(first);
        String asked = Case.key(first, "joint");
        Job job = here.job();
        List<String> words = new ArrayList<>();
        for (Straight straight : straights(job, run)) {
            for (Joint joint : Parts.of(straight.joints())) {
                if (!joint.id().equals(asked) && !isYetToBeSet(joint)) {
                    continue;
                }
                Double gap = joint.gapMm();
                Need need = gap == null ? null : need(here, run, joint, gap);
                if (gap == null || need == null) {
                    return List.of();
                }
                Joint set = set(joint, gap, need);
                words.add(words(joint, set, gap, need));
                job = Edits.joint(job, straight.id(), joint.id(), it -> set);
            }
        }
        return words.isEmpty()
                ? List.of()
                : List.of(new Proposal(String.join("; and ", words) + at(here, run), job));
    }

    /** As a joint that is proposed is recorded until it is known how much moves there. */
    static boolean isYetToBeSet(Joint joint) {
        return Objects.equals(joint.gapMm(), 0.0) && Objects.equals(joint.insertionMm(), 0.0);
    }

    private static List<Straight> straights(Job job, String run) {
        return Parts.run(job, run).map(Run::straights).orElse(List.of());
    }

    private static @Nullable Need need(Case here, String run, Joint joint, double gap) {
        Map<String, String> keys = Map.of("run", run, "joint", joint.id());
        Optional<Double> open = here.number(Facts.JointGapLeft.class, keys);
        Optional<Double> deep = here.number(Facts.JointInsertionLeft.class, keys);
        Double insertion = joint.insertionMm();
        if (open.isEmpty() || (insertion != null && deep.isEmpty())) {
            return null;
        }
        double least = Math.max(0, here.limits(Facts.JointGapLeft.class, keys).atLeast());
        double shrinks =
                insertion == null
                        ? Double.NaN
                        : insertion
                                - deep.orElseThrow()
                                + Math.max(
                                        0,
                                        here.limits(Facts.JointInsertionLeft.class, keys)
                                                .atLeast());
        return new Need(
                StrictMath.ceil(gap - open.orElseThrow() + least), StrictMath.ceil(shrinks));
    }

    /** What is opened is drawn out, so that gap and insertion together stay as they are. */
    private static Joint set(Joint joint, double gap, Need need) {
        Double insertion = joint.insertionMm();
        if (insertion == null) {
            return Edits.with(joint, "gapMm", need.gap());
        }
        double depth = gap + insertion;
        if (isYetToBeSet(joint) || depth < need.gap() + need.insertion()) {
            Joint open = Edits.with(joint, "gapMm", need.gap());
            return Edits.with(open, "insertionMm", need.insertion());
        }
        double opened = gap < need.gap() ? need.gap() : depth - need.insertion();
        Joint open = Edits.with(joint, "gapMm", opened);
        return Edits.with(open, "insertionMm", depth - opened);
    }

    private static String words(Joint joint, Joint set, double gap, Need need) {
        Double opened = set.gapMm();
        Double insertion = set.insertionMm();
        String to =
                "to a gap of "
                        + Grid.mm(opened == null ? gap : opened)
                        + (insertion == null
                                ? ""
                                : ", so that the gutter sits " + Grid.mm(insertion) + " deep");
        Double sat = joint.insertionMm();
        boolean deeper =
                sat != null
                        && !isYetToBeSet(joint)
                        && need.both()
                        && gap + sat < need.gap() + need.insertion();
        return deeper
                ? "replace joint "
                        + joint.id()
                        + " with an expansion joint that takes up "
                        + Grid.mm(need.gap() + need.insertion())
                        + ", and set it "
                        + to
                : "set joint " + joint.id() + " " + to;
    }

    /** A sliding outlet that is too closed or too open. */
    static List<Proposal> outlet(Case here, List<Ruling> group) {
        Ruling first = group.get(0);
        String run = Case.run(first);
        String id = Case.key(first, "outlet");
        Outlet outlet = Parts.outlet(here.job(), id).orElse(null);
        Double gap = outlet == null ? null : outlet.gapMm();
        Double needed = gapOf(here, run, id).orElse(null);
        if (outlet == null || gap == null || needed == null) {
            return List.of();
        }
        Double sits = outlet.insertionMm();
        Map<String, String> keys = Map.of("run", run, "outlet", id);
        Double deep = here.number(Facts.OutletInsertionLeft.class, keys).orElse(null);
        if (sits == null || deep == null) {
            Outlet open = Edits.with(outlet, "gapMm", needed);
            String words = "set outlet " + id + " to a gap of " + Grid.mm(needed);
            return List.of(set(here, run, words, open));
        }
        double least = Math.max(0, here.limits(Facts.OutletInsertionLeft.class, keys).atLeast());
        double deepEnough = StrictMath.ceil(sits - deep + least);
        double takes = Math.max(gap + sits, needed + deepEnough);
        double opened = gap < needed || takes > gap + sits ? needed : takes - deepEnough;
        Outlet open =
                Edits.with(Edits.with(outlet, "gapMm", opened), "insertionMm", takes - opened);
        String words =
                (takes > gap + sits
                                ? "replace outlet "
                                        + id
                                        + " with one that takes up "
                                        + Grid.mm(takes)
                                        + ", and set it"
                                : "set outlet " + id)
                        + " to a gap of "
                        + Grid.mm(opened)
                        + ", so that the gutter sits "
                        + Grid.mm(takes - opened)
                        + " deep";
        return List.of(set(here, run, words, open));
    }

    private static Proposal set(Case here, String run, String words, Outlet outlet) {
        return new Proposal(
                words + at(here, run), Edits.way(here.job(), outlet.id(), it -> outlet));
    }

    /** The gap that a sliding outlet needs at the temperature at which it was set, whole mm. */
    static Optional<Double> gapOf(Case here, String run, String id) {
        Map<String, String> keys = Map.of("run", run, "outlet", id);
        Double gap = Parts.outlet(here.job(), id).map(Outlet::gapMm).orElse(null);
        double least = Math.max(0, here.limits(Facts.OutletGapLeft.class, keys).atLeast());
        return gap == null
                ? Optional.empty()
                : here.number(Facts.OutletGapLeft.class, keys)
                        .map(left -> StrictMath.ceil(gap - left + least));
    }

    /** The temperature that all this holds at. */
    static String at(Case here, String run) {
        Run.Fitted fitted = Parts.run(here.job(), run).map(Run::fitted).orElse(null);
        Double celsius = fitted == null ? null : fitted.temperatureC();
        return celsius == null
                ? ""
                : ", with the gutter at "
                        + Decimals.plain(celsius, Unit.CELSIUS.decimals())
                        + " °C";
    }

    /** An end of the run that comes to push against a wall: cut off what is missing. */
    static List<Proposal> end(Case here, List<Ruling> group) {
        Ruling first = group.get(0);
        String end = Case.key(first, "gutterEnd");
        boolean left = end.endsWith(".left");
        String id = end.substring(0, Math.max(0, end.lastIndexOf('.')));
        double missing = 0;
        for (Ruling ruling : group) {
            if (ruling.demanded() instanceof Demanded.AtLeast least) {
                double more = least.limit() + Case.kept(ruling) - Case.measured(ruling);
                missing = Math.max(missing, StrictMath.ceil(more));
            }
        }
        if (!(missing > 0) || Double.isInfinite(missing)) {
            return List.of();
        }
        double off = missing;
        return CutBack.of(here.job(), id, left, off).stream()
                .map(
                        job ->
                                new Proposal(
                                        "cut the gutter back by "
                                                + Grid.mm(off)
                                                + " at its "
                                                + (left ? "left" : "right")
                                                + " end on straight "
                                                + id
                                                + " and close it again there, so that "
                                                + Grid.mm(gap(job, id, left))
                                                + " are left to the wall"
                                                + at(here, Case.run(first)),
                                        job))
                .toList();
    }

    private static double gap(Job job, String id, boolean left) {
        return Parts.straight(job, id)
                .map(it -> left ? it.leftEnd() : it.rightEnd())
                .map(Run.End::gapToWallMm)
                .orElse(Double.NaN);
    }
}
