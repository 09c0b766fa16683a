package eavesproof.hydraulics;

import eavesproof.hydraulics.Section.Wet;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * A section with its roughness, and the depths that steady flow takes in it. SI units: m, m³/s.
 *
 * <p>The momentum function M = Q²/(gA) + A ȳ, with ȳ the depth of the centroid, is least at
 * critical depth; above it the flow is subcritical, below it supercritical (Chow, Open-Channel
 * Hydraulics, 1959, 3-5 and 4-2).
 *
 * @param manningN s/m^(1/3); 0 for a channel without friction
 */
public record Channel(Section section, double manningN) {
    /** Standard gravity as hydraulics texts round it, m/s². */
    public static final double G = 9.81;

    /** Depths are found to within this, m. */
    private static final double FINE = 1e-12;

    /** A depth, m, at which no flow worth the name passes. */
    private static final double TINY = 1e-9;

    private static final double GREATEST_DEPTH = 1e6;
    private static final int ENOUGH = 200;
    private static final int NEWTON_STEPS = 40;

    public Channel {
        if (!(manningN >= 0) || manningN > 1) {
            throw Refused.saying("Manning's n is from 0 to 1, not {}", manningN);
        }
    }

    /** M of the momentum function, m³. */
    public double momentum(double depth, double flow) {
        Wet wet = section.at(depth);
        return flow == 0 ? wet.moment() : flow * flow / (G * wet.area()) + wet.moment();
    }

    /** Friction slope by Manning: n² Q² / (A² R^(4/3)). */
    public double frictionSlope(double depth, double flow) {
        return frictionSlope(section.at(depth), flow);
    }

    /** Pull of gravity along the bed less that of friction, A (S0 - Sf), m². */
    double pull(double depth, double flow, double slope) {
        if (depth == 0) {
            return 0;
        }
        Wet wet = section.at(depth);
        return wet.area() * (slope - frictionSlope(wet, flow));
    }

    private double frictionSlope(Wet wet, double flow) {
        if (flow == 0 || manningN == 0) {
            return 0;
        }
        double radius = wet.area() / wet.perimeter();
        double loss = manningN * flow / wet.area();
        return loss * loss / (radius * StrictMath.cbrt(radius));
    }

    /** Square of the Froude number, Q² T / (g A³). */
    double froudeSquared(double depth, double flow) {
        Wet wet = section.at(depth);
        double velocity = flow / wet.area();
        return flow == 0 ? 0 : velocity * velocity * wet.width() / (G * wet.area());
    }

    public double criticalDepth(double flow) {
        return section.criticalDepth(flow);
    }

    /** Depth at which the flow runs evenly on a bed of this slope, by Manning. */
    public double normalDepth(double flow, double slope) {
        if (!(slope > 0) || manningN == 0) {
            throw new Refused("no even flow without a fall and friction");
        }
        if (flow == 0) {
            return 0;
        }
        UnivariateFunction even = y -> slope - frictionSlope(y, flow);
        double high = Math.max(section.lip(), TINY);
        while (even.value(high) < 0) {
            high *= 2;
            if (high > GREATEST_DEPTH) {
                throw Refused.saying("no depth carries {} m³/s evenly", flow);
            }
        }
        return root(even, TINY, high);
    }

    /**
     * The subcritical depth with this momentum; NaN if that is not enough for any.
     *
     * <p>By Newton's method: on the subcritical side M is convex and rises with the depth, so that
     * it comes down to the root from above. Where a ledge of the profile bends it otherwise, or
     * where it is not the subcritical side, the root is bracketed instead.
     *
     * @param guess a depth near the answer, to begin with
     */
    double subcriticalDepth(double momentum, double flow, double guess) {
        if (!(momentum > 0)) {
            return flow == 0 && momentum == 0 ? 0 : Double.NaN;
        }
        double y = Math.max(guess, TINY);
        for (int i = 0; i < NEWTON_STEPS; i++) {
            Wet wet = section.at(y);
            double moving = flow * flow / (G * wet.area());
            double rise = wet.area() - moving * wet.width() / wet.area();
            double next = y - (moving + wet.moment() - momentum) / rise;
            if (!(rise > 0) || !(next > 0)) {
                return bracketedSubcritical(momentum, flow);
            }
            if (Math.abs(next - y) <= FINE) {
                return next;
            }
            y = next;
        }
        return bracketedSubcritical(momentum, flow);
    }

    private double bracketedSubcritical(double momentum, double flow) {
        double critical = criticalDepth(flow);
        double least = momentum(critical, flow);
        if (momentum <= least) {
            return momentum < least * (1 - 1e-9) ? Double.NaN : critical;
        }
        double high = Math.max(critical, section.lip());
        while (momentum(high, flow) < momentum) {
            high *= 2;
        }
        return root(y -> momentum(y, flow) - momentum, critical, high);
    }

    /**
     * Where a balance that rises without bound crosses zero above critical depth; NaN if it is
     * above zero there already.
     */
    double subcriticalRoot(UnivariateFunction balance, double critical) {
        double atCritical = balance.value(critical);
        if (atCritical >= 0) {
            return atCritical == 0 ? critical : Double.NaN;
        }
        double high = Math.max(2 * critical, TINY);
        while (balance.value(high) <= 0) {
            high *= 2;
        }
        return root(balance, critical, high);
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

    private static double root(UnivariateFunction deficit, double from, double to) {
        return new BracketingNthOrderBrentSolver(FINE, FINE, 0, 5).solve(ENOUGH, deficit, from, to);
    }
}
