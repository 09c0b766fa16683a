package eavesproof.survey;

import eavesproof.hydraulics.NominalGutter;
import eavesproof.hydraulics.RunSurface.Taken;
import eavesproof.job.Gutter;
import eavesproof.job.WayPart.Outlet;
import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What each reach of a half-round is asked to carry against what a nominal method lets it: as if it
 * were level, whatever its fall, so that a fall is never counted on.
 */
final class NominalReaches {
    private static final double MM_PER_M = 1000;
    private static final double LITRES = 1000;

    private final Trough trough;
    private final Basis basis;
    private final Answers answers;

    private NominalReaches(Trough trough, Basis basis, Answers answers) {
        this.trough = trough;
        this.basis = basis;
        this.answers = answers;
    }

    static void answer(Trough trough, Found<RunWater> water, Basis basis, Answers answers) {
        String run = trough.id();
        Found<String> shape =
                trough.gutter()
                        .then(
                                gutter ->
                                        Found.recorded(
                                                shape(gutter),
                                                "the shape of gutter " + gutter.id()));
        if (shape instanceof Found.Value<String> known && !known.value().equals(Words.HALF_ROUND)) {
            String why = "the nominal method is for half-rounds; this is " + known.value();
            answers.none(Facts.ReachRatio.class, why, run);
            return;
        }
        NominalReaches of = new NominalReaches(trough, basis, answers);
        shape.then(half -> water)
                .either(of::each, why -> answers.gap(Facts.ReachRatio.class, why, run));
    }

    private static @Nullable String shape(Gutter gutter) {
        Gutter.Profile profile = gutter.profile();
        return profile == null ? null : profile.shape();
    }

    private void each(RunWater water) {
        for (int i = 0; i < water.outlets().size(); i++) {
            Taken taken = water.surface().outlets().get(i);
            double at = taken.outlet().x();
            Outlet outlet = water.outlets().get(i);
            reach(water, outlet, true, taken.fromLeft(), taken.leftEnd(), at);
            reach(water, outlet, false, taken.fromRight(), at, taken.rightEnd());
        }
    }

    private void reach(
            RunWater water, Outlet outlet, boolean left, double flow, double from, double to) {
        String run = trough.id();
        String side = Reach.side(left);
        if (flow <= 0) {
            String why = "no water comes to outlet " + outlet.id() + " from the " + side;
            answers.none(Facts.ReachRatio.class, why, run, outlet.id(), side);
            return;
        }
        double litres = flow * LITRES;
        List<Working> workings = new ArrayList<>();
        workings.add(GutterWater.flow("demand", litres, "where the water parts"));
        Found.by(() -> capacity(water, from, to, workings))
                .either(
                        capacity -> {
                            workings.add(GutterWater.ratio(litres / capacity));
                            answers.known(
                                    new Facts.ReachRatio(run, outlet.id(), side, litres / capacity),
                                    Sureness.computed(Uncertain.exact(litres / capacity)),
                                    GutterWater.array(workings));
                        },
                        why -> answers.gap(Facts.ReachRatio.class, why, run, outlet.id(), side));
    }

    private double capacity(RunWater water, double from, double to, List<Working> workings)
            throws Lacking {
        Basis.Choice method = basis.choice(BasisKey.HALF_ROUND_METHOD).need();
        double lip = water.hung().section().lip();
        double areaMm2 = water.hung().section().area(lip) * MM_PER_M * MM_PER_M;
        double length = lengthFactor((to - from) / lip, workings);
        boolean bends = water.surface().run().corners().stream().anyMatch(x -> x > from && x < to);
        double bend = 1;
        if (bends) {
            Basis.Amount factor = basis.amount(BasisKey.BEND_FACTOR).need();
            workings.add(
                    new Working(
                            "factor for its corner",
                            Decimals.plain(factor.value(), 3),
                            factor.source()));
            bend = factor.value();
        }
        double capacity = NominalGutter.HALF_ROUND.litresPerSecond(areaMm2, length, bend);
        workings.add(
                new Working(
                        "area below the lower lip",
                        Decimals.with(areaMm2, Unit.MM2),
                        "the profile as it hangs"));
        workings.add(
                GutterWater.flow(
                        "capacity",
                        capacity,
                        "0.9 x 2.78e-5 x A^1.25, as if level; " + method.source()));
        return capacity;
    }

    /** Of the next length in the table at or above it; 1 up to 50 times the depth. */
    private double lengthFactor(double times, List<Working> workings) throws Lacking {
        String many = Decimals.plain(times, 1) + " times as long as deep";
        if (times <= NominalGutter.SHORT) {
            workings.add(new Working("factor for its length", "1", many + ", which is short"));
            return 1;
        }
        Map.Entry<Double, Basis.Amount> next = basis.lengthFactors().ceilingEntry(times);
        if (next == null) {
            throw Found.lacking("the rule set states no length factor for a gutter " + many);
        }
        workings.add(
                new Working(
                        "factor for its length",
                        Decimals.plain(next.getValue().value(), 3),
                        many + "; " + next.getValue().source()));
        return next.getValue().value();
    }
}
