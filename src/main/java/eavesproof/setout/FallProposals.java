package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.job.Run.Reading;
import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart.Branch;
import eavesproof.judge.Demanded;
import eavesproof.judge.Ruling;
import eavesproof.survey.Facts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Too little fall: raise the far end of a reach, or of a branch, in whole millimetres. */
final class FallProposals {
    private FallProposals() {}

    /** Where a reach lies, mm along the run. */
    private record Lie(Along along, String outlet, double at, double high) {}

    /** Too little fall from end to end: raise the high end, and take out what hollow is left. */
    static List<Proposal> reach(Case here, List<Ruling> group) {
        return Crooked.told(here, group.get(0), of(here, group.get(0), false));
    }

    /** A hollow: take it out, and raise the high end too where there is too little fall. */
    static List<Proposal> pond(Case here, List<Ruling> group) {
        return Crooked.told(here, group.get(0), of(here, group.get(0), true));
    }

    /** A sole that hangs between two good ends. */
    static List<Proposal> sag(Case here, List<Ruling> group) {
        Ruling ruling = group.get(0);
        List<Proposal> filled =
                here
                        .number(Facts.ReachLength.class, ruling.subject().place().keys())
                        .map(mm -> lie(here.job(), ruling, mm))
                        .flatMap(lie -> filled(here.job(), ruling, lie))
                        .stream()
                        .toList();
        return Crooked.told(here, ruling, filled);
    }

    private static List<Proposal> of(Case here, Ruling ruling, boolean hollow) {
        Map<String, String> keys = ruling.subject().place().keys();
        Optional<Double> length = here.number(Facts.ReachLength.class, keys);
        Optional<Double> fall = here.number(Facts.ReachFall.class, keys);
        Lie lie = length.map(mm -> lie(here.job(), ruling, mm)).orElse(null);
        if (lie == null || length.isEmpty()) {
            return List.of();
        }
        List<Proposal> proposals = new ArrayList<>();
        Optional<Proposal> filled = filled(here.job(), ruling, lie);
        filled.filter(it -> hollow).ifPresent(proposals::add);
        double missing =
                here.limits(Facts.ReachFall.class, keys).atLeast() - fall.orElse(Double.NaN);
        if (missing > 0 && Double.isFinite(missing)) {
            double rise = StrictMath.ceil(missing * length.get() / 1000);
            for (double mm : new double[] {rise, rise + 1}) {
                Proposal raised = raise(here.job(), lie, mm);
                if (!hollow) {
                    proposals.add(raised);
                }
                filled(raised.edited(), ruling, lie).map(raised::and).ifPresent(proposals::add);
            }
        }
        return proposals;
    }

    private static @Nullable Lie lie(Job job, Ruling ruling, double lengthMm) {
        String outlet = Case.key(ruling, "outlet");
        Along along = Along.of(job, Case.run(ruling)).orElse(null);
        OptionalDouble at = along == null ? OptionalDouble.empty() : along.named(job, outlet);
        if (along == null || at.isEmpty()) {
            return null;
        }
        boolean left = Case.key(ruling, "side").equals("left");
        double high = at.getAsDouble() + (left ? -lengthMm : lengthMm);
        return new Lie(along, outlet, at.getAsDouble(), high);
    }

    private static Proposal raise(Job job, Lie lie, double mm) {
        Along.Spot top = lie.along().at(lie.high());
        DoubleUnaryOperator by = rise(job, lie, mm);
        return new Proposal(
                "raise the gutter by "
                        + Grid.mm(mm)
                        + " at "
                        + Grid.mm(top.stationMm())
                        + " on straight "
                        + top.straight().id()
                        + ", the high end, and each bracket from there to outlet "
                        + lie.outlet()
                        + " in proportion, down to nothing at the outlet (or lower the outlet end"
                        + " by as much)",
                raised(job, lie.along(), by));
    }

    private static Optional<Proposal> filled(Job job, Ruling ruling, Lie lie) {
        double from = Math.min(lie.high(), lie.at());
        double to = Math.max(lie.high(), lie.at());
        return Along.of(job, Case.run(ruling)).flatMap(now -> Hollow.filled(job, now, from, to));
    }

    /** How much fall is missing, mm for each metre, its guard band included. */
    private static double missing(List<Ruling> group) {
        double missing = 0;
        for (Ruling ruling : group) {
            if (ruling.demanded() instanceof Demanded.AtLeast least) {
                double needed = least.limit() + Case.kept(ruling) - Case.measured(ruling);
                missing = Math.max(missing, needed);
            }
        }
        return missing;
    }

    /**
     * Nothing at the outlet, all of it at the high end, in proportion between; and beyond a high
     * point down to nothing at the next outlet, so that the gutter stays straight there too.
     */
    private static DoubleUnaryOperator rise(Job job, Lie lie, double mm) {
        double outlet = lie.at();
        double high = lie.high();
        double beyond = high;
        for (double other : lie.along().outlets(job)) {
            boolean onTheOtherSide = (other - high) * (outlet - high) < 0;
            boolean nearer = beyond == high || Math.abs(other - high) < Math.abs(beyond - high);
            beyond = onTheOtherSide && nearer ? other : beyond;
        }
        double end = beyond;
        return x -> {
            double from = (x - high) * (outlet - high) >= 0 ? outlet : end;
            double part = from == high ? 0 : (x - from) / (high - from);
            return part <= 0 || part > 1 ? 0 : mm * part;
        };
    }

    private static Job raised(Job job, Along along, DoubleUnaryOperator by) {
        Job edited = job;
        for (Straight straight : along.straights()) {
            List<Reading> readings = straight.readings();
            if (readings == null) {
                continue;
            }
            List<Reading> moved =
                    readings.stream()
                            .map(
                                    it -> {
                                        OptionalDouble at = along.of(straight.id(), it.stationMm());
                                        Double below = it.belowMm();
                                        return at.isEmpty() || below == null
                                                ? it
                                                : Edits.with(
                                                        it,
                                                        "belowMm",
                                                        below - by.applyAsDouble(at.getAsDouble()));
                                    })
                            .toList();
            edited = Edits.straight(edited, straight.id(), it -> Edits.with(it, "readings", moved));
        }
        return edited;
    }

    static List<Proposal> branch(Case here, List<Ruling> group) {
        String id = Case.key(group.get(0), "branch");
        Optional<Branch> found =
                Parts.of(here.job().way()).stream()
                        .filter(it -> it.id().equals(id))
                        .filter(Branch.class::isInstance)
                        .map(Branch.class::cast)
                        .findFirst();
        Double length = found.map(Branch::lengthMm).orElse(null);
        Double drop = found.map(Branch::dropMm).orElse(null);
        if (length == null || drop == null) {
            return List.of();
        }
        List<Proposal> proposals = new ArrayList<>();
        double lift = StrictMath.ceil(missing(group) * length / 1000);
        for (double mm : new double[] {lift, lift + 1}) {
            proposals.add(
                    new Proposal(
                            "lift the start of branch "
                                    + id
                                    + " by "
                                    + Grid.mm(mm)
                                    + " over its length of "
                                    + Grid.mm(length),
                            Edits.way(
                                    here.job(),
                                    id,
                                    it -> Edits.with((Branch) it, "dropMm", drop + mm))));
        }
        return proposals;
    }
}
