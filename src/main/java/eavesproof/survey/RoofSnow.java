package eavesproof.survey;

import eavesproof.job.Job;
import eavesproof.job.Run.RoofEdge;
import eavesproof.job.Run.Straight;
import eavesproof.job.Said;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;

/**
 * What the snow on the roof does at its edge: how much of it hangs over the eaves, and whether
 * anything holds it back.
 *
 * <p>Overhanging snow weighs k s² / γ a metre, s being the snow load on the roof, γ the weight of
 * the snow, and k = 3 / d but not more than d γ for a depth of d metres (EN 1991-1-3 6.3). It is a
 * load on the edge of the roof and on no bracket.
 */
final class RoofSnow {
    private static final double K_TIMES_DEPTH = 3;

    private RoofSnow() {}

    static void answer(Job job, Trough trough, Basis basis, Answers answers) {
        String run = trough.id();
        Job.Circumstances place = job.circumstances();
        Said<Double> ground = place == null ? Said.nothing() : place.groundSnowKnM2();
        Found.by(
                        () -> {
                            double load = Circumstances.groundSnow(job).need();
                            Basis.Amount roof = basis.amount(BasisKey.ROOF_SNOW).need();
                            Basis.Amount weight = basis.amount(BasisKey.SNOW_WEIGHT_KN_M3).need();
                            return new Overhang(load * roof.value(), weight, roof.source());
                        })
                .either(
                        it ->
                                answers.stated(
                                        new Facts.OverhangingSnow(run, it.knPerM()),
                                        Uncertain.exact(it.knPerM()),
                                        Provenance.of(ground),
                                        it.onRoof(),
                                        it.working()),
                        why -> answers.gap(Facts.OverhangingSnow.class, why, run));
        trough.straights().forEach(straight -> held(run, straight, answers));
    }

    /**
     * @param loadKnM2 on the roof
     */
    private record Overhang(double loadKnM2, Basis.Amount weightKnM3, String from) {
        double depthM() {
            return loadKnM2 / weightKnM3.value();
        }

        double knPerM() {
            double k = Math.min(K_TIMES_DEPTH / depthM(), depthM() * weightKnM3.value());
            return loadKnM2 == 0 ? 0 : k * loadKnM2 * loadKnM2 / weightKnM3.value();
        }

        Working onRoof() {
            Uncertain load = Uncertain.exact(loadKnM2);
            return Answers.working("snow load on the roof", load, Unit.KN_PER_M2, from);
        }

        Working working() {
            return Answers.working(
                    "overhanging snow",
                    Uncertain.exact(knPerM()),
                    Unit.KN_PER_M,
                    "k s2 / weight of the snow, k = 3 / depth, at most the load; "
                            + weightKnM3.source());
        }
    }

    private static void held(String run, Straight straight, Answers answers) {
        RoofEdge edge = straight.roofEdge();
        answers.said(
                Facts.SnowHeld.class,
                edge == null ? Said.nothing() : edge.snowHeld(),
                word -> new Facts.SnowHeld(run, straight.id(), word),
                "whether snow guards hold the snow above straight " + straight.id(),
                run,
                straight.id());
    }
}
