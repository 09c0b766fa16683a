package eavesproof.hydraulics;

import eavesproof.hydraulics.WaterSurface.At;
import eavesproof.hydraulics.WaterSurface.Regime;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;

/**
 * Steady flow with inflow along the way (spatially varied flow with increasing discharge).
 *
 * <p>Solved is the momentum balance dM/dx = A (S0 - Sf) with M = Q²/(gA) + A ȳ, inflow arriving
 * without momentum along the channel (Chow, Open-Channel Hydraulics, 1959, 12-3, with β = 1). It is
 * integrated upstream from the outlet where the flow is subcritical. Where momentum no longer
 * suffices for that, the flow upstream is supercritical; then the control is the place at which
 * critical flow satisfies the balance, the flow runs supercritical from there, and a jump lies
 * where both have equal momentum (Chow 12-4).
 *
 * <p>Valid for gradually varied flow in a channel of one section and small slope. Waves, air and
 * splash are not in it.
 */
public final class SteadyFlow {
    private final Trough trough;
    private final Channel channel;
    private final double[] grid;
    private final double[] flow;
    private final double[] critical;
    private final double[] depth;
    private final Regime[] regime;
    private double guess;

    private SteadyFlow(Trough trough, int steps) {
        this.trough = trough;
        this.channel = trough.channel();
        this.grid = grid(trough, steps);
        this.flow = new double[grid.length];
        this.critical = new double[grid.length];
        this.depth = new double[grid.length];
        this.regime = new Regime[grid.length];
        for (int i = 0; i < grid.length; i++) {
            flow[i] = trough.flow(grid[i]);
            critical[i] = channel.criticalDepth(flow[i]);
        }
    }

    /**
     * The water surface when the depth at the outlet is as given, or critical if that is deeper.
     *
     * @param outletDepth depth that the outlet holds, m; 0 for a free outfall
     * @param steps least number of steps along the whole trough
     */
    public static WaterSurface solve(Trough trough, double outletDepth, int steps) {
        if (!(outletDepth >= 0) || !Double.isFinite(outletDepth)) {
            throw new IllegalArgumentException(
                    "the depth at the outlet is 0 or more, not " + outletDepth);
        }
        return new SteadyFlow(trough, steps).solve(outletDepth);
    }

    private WaterSurface solve(double outletDepth) {
        int last = grid.length - 1;
        depth[last] = Math.max(outletDepth, critical[last]);
        regime[last] = outletDepth > critical[last] ? Regime.SUBCRITICAL : Regime.CRITICAL;
        int reached = upstream(last);
        while (reached > 0) {
            int control = controlAbove(reached);
            downstream(control, reached);
            depth[control] = critical[control];
            regime[control] = Regime.CRITICAL;
            reached = control == 0 ? 0 : upstream(control);
        }
        double lip = channel.section().lip();
        List<At> points = new ArrayList<>();
        for (int i = 0; i < grid.length; i++) {
            points.add(
                    new At(
                            grid[i],
                            flow[i],
                            trough.bedAt(grid[i]),
                            depth[i],
                            lip - depth[i],
                            regime[i]));
        }
        return new WaterSurface(points);
    }

    /**
     * Fills in subcritical depths from a known one upwards; the first point that it cannot reach.
     */
    private int upstream(int from) {
        double momentum = channel.momentum(depth[from], flow[from]);
        guess = depth[from];
        for (int i = from; i > 0; i--) {
            momentum = step(grid[i], grid[i - 1], momentum);
            double least = channel.momentum(critical[i - 1], flow[i - 1]);
            if (momentum < least * (1 - 1e-9)) {
                return i - 1;
            }
            depth[i - 1] = channel.subcriticalDepth(momentum, flow[i - 1], critical[i - 1], guess);
            guess = depth[i - 1];
            regime[i - 1] = depth[i - 1] > critical[i - 1] ? Regime.SUBCRITICAL : Regime.CRITICAL;
        }
        return 0;
    }

    /**
     * Fills in supercritical depths from a control downwards, until the subcritical flow below has
     * the momentum to push the jump no further.
     *
     * <p>By the backward Euler step, which a thin film on a steep bed cannot make unstable: it runs
     * even within a length that is much shorter than a step.
     */
    private void downstream(int control, int reached) {
        double momentum = channel.momentum(critical[control], flow[control]);
        for (int next = control + 1; next < grid.length; next++) {
            double length = grid[next] - grid[next - 1];
            double slope = trough.slopeBefore(grid[next]);
            double before = momentum;
            double q = flow[next];
            UnivariateFunction balance =
                    y ->
                            channel.momentum(y, q)
                                    - before
                                    - length
                                            * channel.section().area(y)
                                            * (slope - channel.frictionSlope(y, q));
            double y = channel.supercriticalRoot(balance, critical[next]);
            momentum = channel.momentum(y, q);
            if (next > reached
                    && regime[next] == Regime.SUBCRITICAL
                    && channel.momentum(depth[next], q) >= momentum) {
                return;
            }
            depth[next] = y;
            regime[next] = y < critical[next] ? Regime.SUPERCRITICAL : Regime.CRITICAL;
        }
    }

    /** The nearest place upwards where critical flow would not gain on its own momentum. */
    private int controlAbove(int reached) {
        for (int i = reached; i > 0; i--) {
            if (surplus(i) <= 0) {
                return i;
            }
        }
        return 0;
    }

    /** A (S0 - Sf) less 2 Q q / (g A), at critical depth. */
    private double surplus(int i) {
        if (flow[i] == 0) {
            return 0;
        }
        double area = channel.section().area(critical[i]);
        double pull =
                area * (trough.slopeBefore(grid[i]) - channel.frictionSlope(critical[i], flow[i]));
        return pull - 2 * flow[i] * trough.perMetre() / (Channel.G * area);
    }

    private double step(double from, double to, double momentum) {
        double slope = trough.slopeBefore(Math.max(from, to));
        double atLower = trough.flow(Math.min(from, to));
        double lower = Math.min(from, to);
        OrdinaryDifferentialEquation balance =
                new OrdinaryDifferentialEquation() {
                    @Override
                    public int getDimension() {
                        return 1;
                    }

                    @Override
                    public double[] computeDerivatives(double x, double[] m) {
                        double q = atLower + trough.perMetre() * (x - lower);
                        double yc = channel.criticalDepth(q);
                        double y = channel.subcriticalDepth(m[0], q, yc, guess);
                        return new double[] {
                            y == 0
                                    ? 0
                                    : channel.section().area(y)
                                            * (slope - channel.frictionSlope(y, q))
                        };
                    }
                };
        return new ClassicalRungeKuttaIntegrator(Math.abs(to - from))
                .integrate(balance, new ODEState(from, new double[] {momentum}), to)
                .getPrimaryState()[0];
    }

    /** Every station of the bed and place of an inflow, and steps between them. */
    private static double[] grid(Trough trough, int steps) {
        List<Double> all = new ArrayList<>();
        Double before = null;
        for (double x : trough.places()) {
            if (before != null) {
                int pieces = Math.max(1, (int) Math.ceil(steps * (x - before) / trough.length()));
                for (int i = 1; i < pieces; i++) {
                    all.add(before + (x - before) * i / pieces);
                }
            }
            all.add(x);
            before = x;
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
