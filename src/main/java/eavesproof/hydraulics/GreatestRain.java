package eavesproof.hydraulics;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** How many times its inflow a run carries before the water comes up to a lip. */
public final class GreatestRain {
    /** The factor is found to within this part of itself. */
    private static final double FINE = 1e-5;

    private static final double GREATEST = 1e6;
    private static final double LEAST = 1e-6;
    private static final int ENOUGH = 200;

    private GreatestRain() {}

    /**
     * The factor on all inflows at which the freeboard, where it is least, is what is to be kept; 0
     * where a pond alone leaves no more than that.
     *
     * @param kept freeboard to be left, m
     * @throws Refused if nothing flows in, so that no factor makes it too much
     */
    public static double factor(GutterRun run, double kept, int steps) {
        if (!(run.inflow() > 0)) {
            throw new Refused("nothing flows into the gutter");
        }
        UnivariateFunction spare =
                f -> RunFlow.solve(run.under(f), steps).worst().freeboard() - kept;
        double low = 1;
        double high = 1;
        if (spare.value(1) >= 0) {
            while (spare.value(high) >= 0) {
                low = high;
                high *= 2;
                if (high > GREATEST) {
                    throw new Refused("hardly anything flows into the gutter");
                }
            }
        } else {
            while (spare.value(low) < 0) {
                high = low;
                low /= 2;
                if (low < LEAST) {
                    return 0;
                }
            }
        }
        return new BracketingNthOrderBrentSolver(FINE, FINE * low, 0, 5)
                .solve(ENOUGH, spare, low, high);
    }
}
