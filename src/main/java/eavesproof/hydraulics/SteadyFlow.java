package eavesproof.hydraulics;

import eavesproof.hydraulics.WaterSurface.At;
import eavesproof.hydraulics.WaterSurface.Regime;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;

/**
 * Steady flow with inflow along the way (spatially varied flow with increasing discharge).
 *
 * <p>Solved is the momentum balance dM/dx = A (S0 - Sf) with M = Q²/(gA) + A ȳ, inflow arriving
 * without momentum along the channel (Chow, Open-Channel Hydraulics, 1959, 12-3, with β = 1).
 *
 * <p>First the subcritical flow is followed upstream from the outlet. Where momentum no longer
 * suffices for it, the depth is held at critical: the uppermost of such places is a control, below
 * which the water runs supercritical. That is followed downstream until the subcritical flow has as
 * much momentum, where the jump lies (Chow 12-4 and 15-7).
 *
 * <p>At a corner all momentum is taken to be lost. That is about twice the velocity head, more than
 * is measured in bends, so that the depth above a corner is overstated.
 *
 * <p>Valid for gradually varied flow in a channel of one section and small slope. Waves, air and
 * splash are not in it. With β = 1 a level gutter carries by this about a fifth more than the
 * nominal formulas that were fitted to tests have it ({@link NominalGutter}). Close to critical
 * flow the depth is so sensitive to the momentum that it is found within 0.2 mm only.
 */
public final class SteadyFlow {
    /** How much of its depth the bed or the energy of the water may fall in one explicit step. */
    private static final double SMALL = 0.05;

    /** A film that would need more steps than this between two places is stepped implicitly. */
    private static final int MOST_STEPS = 16;

    private final Channel channel;
    private final Grid grid;
    private final double[] depth;
    private final double[] momentum;

    /** Whether the momentum of subcritical flow did not suffice, so that the depth is critical. */
    private final boolean[] scant;

    private final Regime[] regime;

    private SteadyFlow(Channel channel, Grid grid) {
        this.channel = channel;
        this.grid = grid;
        int n = grid.x.length;
        depth = new double[n];
        momentum = new double[n];
        scant = new boolean[n];
        regime = new Regime[n];
    }

    /**
     * The water surface when the depth at the outlet is as given, or critical if that is deeper.
     *
     * @param outletDepth depth that the outlet holds, m; 0 for a free outfall
     * @param steps least number of steps along the whole trough
     */
    public static WaterSurface solve(Trough trough, double outletDepth, int steps) {
        return solve(trough.channel(), trough.grid(steps), outletDepth).surface();
    }

    static SteadyFlow solve(Channel channel, Grid grid, double outletDepth) {
        if (!(outletDepth >= 0) || !Double.isFinite(outletDepth)) {
            throw Refused.saying("the depth at the outlet is 0 or more, not {}", outletDepth);
        }
        SteadyFlow flow = new SteadyFlow(channel, grid);
        flow.upstream(outletDepth);
        for (int i = 0; i < grid.last(); i++) {
            if (flow.scant[i]) {
                i = flow.downstream(i);
            }
        }
        return flow;
    }

    /** Level of the surface at the high end. */
    double levelAtHighEnd() {
        return grid.bed[0] + depth[0];
    }

    WaterSurface surface() {
        double lip = channel.section().lip();
        List<At> points = new ArrayList<>(depth.length);
        for (int i = 0; i < depth.length; i++) {
            points.add(
                    new At(
                            grid.x[i],
                            grid.flow[i],
                            grid.bed[i],
                            depth[i],
                            lip - depth[i],
                            regime[i]));
        }
        return new WaterSurface(points);
    }

    private void upstream(double outletDepth) {
        Step step = new Step();
        int last = grid.last();
        double critical = channel.criticalDepth(grid.flow[last]);
        put(last, outletDepth > critical ? outletDepth : Double.NaN, Double.NaN);
        for (int i = last; i > 0; i--) {
            double above = grid.corner[i] ? still(i) : step.up(i);
            put(i - 1, channel.subcriticalDepth(above, grid.flow[i - 1], depth[i]), above);
        }
    }

    /**
     * @param subcritical depth; NaN for critical depth
     * @param ofIt its momentum; NaN where it is to be worked out
     */
    private void put(int i, double subcritical, double ofIt) {
        double flow = grid.flow[i];
        scant[i] = Double.isNaN(subcritical);
        depth[i] = scant[i] ? channel.criticalDepth(flow) : subcritical;
        momentum[i] = scant[i] || Double.isNaN(ofIt) ? channel.momentum(depth[i], flow) : ofIt;
        regime[i] = scant[i] ? Regime.CRITICAL : Regime.SUBCRITICAL;
    }

    /** Momentum just above a corner: what flows from there begins in still water. */
    private double still(int below) {
        double pool = channel.subcriticalDepth(momentum[below], 0, depth[below]);
        return channel.momentum(pool, grid.flow[below - 1]);
    }

    /**
     * Below a control fills in the supercritical flow as far as it gets.
     *
     * <p>By the backward Euler step, which a thin film on a steep bed cannot make unstable: it runs
     * even within a length that is much shorter than a step.
     *
     * @return the last place that was filled in
     */
    private int downstream(int control) {
        int i = control;
        while (i < grid.last() && !isHeld(i + 1)) {
            int next = i + 1;
            double q = grid.flow[next];
            double before = momentum[i];
            double length = grid.step(next);
            double fall = length == 0 ? 0 : grid.slope(next);
            UnivariateFunction balance =
                    y ->
                            channel.momentum(y, q)
                                    - before
                                    - (length == 0 ? 0 : length * channel.pull(y, q, fall));
            double critical = channel.criticalDepth(q);
            double y = channel.supercriticalRoot(balance, critical);
            double of = channel.momentum(y, q);
            if (!scant[next] && momentum[next] >= of) {
                return i;
            }
            depth[next] = y;
            momentum[next] = of;
            regime[next] = y < critical ? Regime.SUPERCRITICAL : Regime.CRITICAL;
            i = next;
        }
        return i;
    }

    /** At an outlet that stands deep, and above a corner, the depth does not give way. */
    private boolean isHeld(int i) {
        return !scant[i] && (i == grid.last() || grid.corner[i + 1]);
    }

    /**
     * One step upstream by Runge and Kutta's method, or for a thin film by the backward Euler step,
     * as below a control.
     */
    private final class Step implements OrdinaryDifferentialEquation {
        private final ClassicalRungeKuttaIntegrator rungeKutta =
                new ClassicalRungeKuttaIntegrator(1);
        private final double[] start = new double[1];
        private double slope;
        private double upper;
        private double flowAtUpper;
        private double inflow;
        private double guess;

        /** Momentum at the place above this one; NaN where it is too little for any depth. */
        double up(int i) {
            double length = grid.step(i);
            if (length == 0) {
                return momentum[i];
            }
            slope = grid.slope(i);
            upper = grid.x[i - 1];
            flowAtUpper = grid.flow[i - 1];
            double sf = depth[i] == 0 ? 0 : channel.frictionSlope(depth[i], grid.flow[i]);
            double falls = length * Math.max(Math.abs(slope), sf);
            if (falls > MOST_STEPS * SMALL * depth[i]) {
                return implicitly(length, momentum[i]);
            }
            inflow = (grid.flow[i] - flowAtUpper) / length;
            guess = depth[i];
            int steps = Math.max(1, (int) Math.ceil(falls / (SMALL * depth[i])));
            double reached = momentum[i];
            for (int k = steps; k > 0; k--) {
                start[0] = reached;
                reached =
                        rungeKutta
                                .singleStep(
                                        this,
                                        upper + length * k / steps,
                                        start,
                                        upper + length * (k - 1) / steps)[0];
            }
            return reached;
        }

        private double implicitly(double length, double before) {
            double y =
                    channel.subcriticalRoot(
                            it ->
                                    channel.momentum(it, flowAtUpper)
                                            + length * channel.pull(it, flowAtUpper, slope)
                                            - before,
                            channel.criticalDepth(flowAtUpper));
            return Double.isNaN(y) ? Double.NaN : channel.momentum(y, flowAtUpper);
        }

        @Override
        public int getDimension() {
            return 1;
        }

        /** dM/dx of subcritical flow, or of critical flow where momentum does not suffice. */
        @Override
        public double[] computeDerivatives(double x, double[] m) {
            double q = Math.max(0, flowAtUpper + inflow * (x - upper));
            double y = channel.subcriticalDepth(m[0], q, guess);
            guess = Double.isNaN(y) ? channel.criticalDepth(q) : y;
            return new double[] {guess == 0 ? 0 : channel.pull(guess, q, slope)};
        }
    }
}
