package eavesproof.hydraulics;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * A round pipe that lies at a slope, part full or full, with even flow. SI units: m, m³/s.
 *
 * @param diameter inside, m
 */
public record RoundPipe(double diameter) {
    /** Kinematic viscosity of water at 10 °C, m²/s (EN 12056-3:2000 annex C, from memory). */
    private static final double VISCOSITY = 1.31e-6;

    /** A pipe carries most at this depth by Manning; more depth chokes it (Chow, 1959, 6-4). */
    private static final double FULLEST = 0.938;

    private static final double EMPTIEST = 1e-6;
    private static final int ENOUGH = 200;

    /**
     * @param area m²
     * @param radius hydraulic, area over wetted perimeter, m
     */
    public record Wet(double area, double radius) {}

    public RoundPipe {
        Refused.within(0.01, 3, diameter, "the diameter of a pipe in m", "round pipes");
    }

    /**
     * What is wet at a depth (geometric elements of a circle; Chow, 1959, table 2-1).
     *
     * @param filled depth over diameter
     */
    public Wet at(double filled) {
        Refused.within(0, 1, filled, "a depth over diameter", "a pipe");
        double angle = 2 * StrictMath.acos(1 - 2 * filled);
        double area = diameter * diameter / 8 * (angle - StrictMath.sin(angle));
        return new Wet(area, angle == 0 ? 0 : area / (diameter / 2 * angle));
    }

    /** Even flow by Manning, m³/s. */
    public double manning(double filled, double slope, double n) {
        sloping(slope);
        Refused.within(0.005, 0.1, n, "Manning's n", "pipes");
        Wet wet = at(filled);
        double root = StrictMath.cbrt(wet.radius());
        return wet.area() * root * root * StrictMath.sqrt(slope) / n;
    }

    /**
     * Even flow by Colebrook and White, m³/s: V = -√(32 g R S) log10(kb/(14.8 R) + 1.255 ν/(R √(32
     * g R S))) (Colebrook 1939 with 4 R for the diameter; EN 12056-3:2000 annex C has kb 1.0 mm).
     *
     * @param roughness kb, m
     */
    public double colebrook(double filled, double slope, double roughness) {
        sloping(slope);
        Refused.within(0.000001, 0.01, roughness, "a roughness in m", "Colebrook and White");
        Wet wet = at(filled);
        if (wet.area() == 0) {
            return 0;
        }
        double root = StrictMath.sqrt(32 * Channel.G * wet.radius() * slope);
        double velocity =
                -root
                        * StrictMath.log10(
                                roughness / (14.8 * wet.radius())
                                        + 1.255 * VISCOSITY / (wet.radius() * root));
        return wet.area() * Math.max(0, velocity);
    }

    /**
     * Depth over diameter at which this much flows evenly, by Manning.
     *
     * @throws Refused if the pipe cannot carry it with a free surface
     */
    public double filledBy(double flow, double slope, double n) {
        if (!(flow >= 0) || flow > manning(FULLEST, slope, n)) {
            throw Refused.saying("the pipe does not carry {} m³/s with a free surface", flow);
        }
        return flow == 0
                ? 0
                : new BracketingNthOrderBrentSolver(1e-12, 1e-12, 0, 5)
                        .solve(
                                ENOUGH,
                                filled -> manning(filled, slope, n) - flow,
                                EMPTIEST,
                                FULLEST);
    }

    private static void sloping(double slope) {
        Refused.within(1e-6, 1, slope, "a slope", "even flow, which needs a fall");
    }
}
