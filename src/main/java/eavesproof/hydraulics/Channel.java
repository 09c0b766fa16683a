package eavesproof.hydraulics;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * A section with its roughness, and the depths that steady flow takes in it. SI units: m, m³/s.
 *
 * <p>The momentum function M = Q²/(gA) + A ȳ, with ȳ the depth of the centroid, is least at
 * critical depth, where Q² T = g A³; above it the flow is subcritical, below it supercritical
 * (Chow, Open- Channel Hydraulics, 1959, 3-5 and 4-2).
 *
 * @param manningN s/m^(1/3); 0 for a channel without friction
 */
public record Channel(Section section, double manningN) {
    /** Standard gravity as hydraulics texts round it, m/s². */
    public static final double G = 9.81;

    private static final double FINE = 1e-13;

    /** A depth, m, at which no flow worth the name passes. */
    private static final double TINY = 1e-9;

    private static final int ENOUGH = 200;

    public Channel {
        if (!(manningN >= 0) || manningN > 1) {
            throw new IllegalArgumentException("Manning's n is from 0 to 1, not " + manningN);
        }
    }

    /** M of the momentum function, m³. */
    public double momentum(double depth, double flow) {
        double static_ = section.moment(depth);
        return flow == 0 ? static_ : flow * flow / (G * section.area(depth)) + static_;
    }

    /** Friction slope by Manning: n² Q² / (A² R^(4/3)). */
    public double frictionSlope(double depth, double flow) {
        if (flow == 0 || manningN == 0) {
            return 0;
        }
        double area = section.area(depth);
        double radius = area / section.perimeter(depth);
        double velocity = flow / area;
        double root = StrictMath.cbrt(radius);
        return manningN * manningN * velocity * velocity / (root * root * root * root);
    }

    /** Depth at which Q² T = g A³; 0 without flow. */
    public double criticalDepth(double flow) {
        if (flow == 0) {
            return 0;
        }
        UnivariateFunction excess =
                y -> {
                    double area = section.area(y);
                    return area * StrictMath.sqrt(G * area / section.surfaceWidth(y)) - flow;
                };
        return root(excess, TINY, bracket(excess));
    }

    /** Depth at which the flow runs evenly on a bed of this slope, by Manning. */
    public double normalDepth(double flow, double slope) {
        if (!(slope > 0) || manningN == 0) {
            throw new IllegalArgumentException("no even flow without a fall and friction");
        }
        if (flow == 0) {
            return 0;
        }
        UnivariateFunction even = y -> slope - frictionSlope(y, flow);
        return root(even, TINY, bracket(even));
    }

    /**
     * The subcritical depth with this momentum; critical depth if the momentum is not enough for
     * any.
     *
     * @param critical the critical depth of the flow
     * @param guess a depth near the answer, to begin with
     */
    double subcriticalDepth(double momentum, double flow, double critical, double guess) {
        if (momentum <= momentum(critical, flow)) {
            return critical;
        }
        double low = critical;
        double high = Math.max(guess, Math.max(critical, 1e-6)) * 1.01;
        while (momentum(high, flow) < momentum) {
            low = high;
            high *= 1.5;
        }
        return root(y -> momentum(y, flow) - momentum, low, high);
    }

    /**
     * Where a balance that falls from any height at no depth crosses zero below critical depth;
     * critical depth if it does not.
     */
    double supercriticalRoot(UnivariateFunction balance, double critical) {
        if (balance.value(critical) >= 0) {
            return critical;
        }
        double low = critical / 2;
        while (balance.value(low) <= 0) {
            low /= 2;
        }
        return root(balance, low, critical);
    }

    private double bracket(UnivariateFunction deficit) {
        double high = Math.max(section.lip(), 1e-6);
        while (deficit.value(high) < 0) {
            high *= 2;
            if (high > 1e6) {
                throw new IllegalArgumentException("no depth carries that flow");
            }
        }
        return high;
    }

    private static double root(UnivariateFunction deficit, double from, double to) {
        return new BracketingNthOrderBrentSolver(FINE, FINE, 0, 5).solve(ENOUGH, deficit, from, to);
    }
}
