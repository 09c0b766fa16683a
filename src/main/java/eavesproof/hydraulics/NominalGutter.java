package eavesproof.hydraulics;

/**
 * What a gutter carries by a power of its area: Q = 0.9 k A^1.25, L/s and mm², times factors for
 * its length and its corners (EN 12056-3:2000 5.1, from memory). It counts as level up to a fall of
 * 3 mm/m.
 *
 * @param factor k; 2.78e-5 for a half-round. For rectangles and trapezoids k is 3.48e-5 times
 *     factors for depth and shape, which are read from charts: whoever has not read them there has
 *     no k
 */
public record NominalGutter(double factor) {
    private static final double POWER = 1.25;
    private static final double DESIGN = 0.9;
    private static final String SOURCE = "EN 12056-3 5.1";

    /** A gutter of up to this many times its depth is short and needs no factor for its length. */
    public static final double SHORT = 50;

    public static final NominalGutter HALF_ROUND = new NominalGutter(2.78e-5);

    public NominalGutter {
        Refused.within(1e-5, 1e-4, factor, "the factor of a gutter", SOURCE);
    }

    /** With both factors as read from their charts. */
    public static NominalGutter rectangular(double depthFactor, double shapeFactor) {
        Refused.within(0.1, 1.5, depthFactor, "a depth factor", SOURCE);
        Refused.within(0.1, 1.5, shapeFactor, "a shape factor", SOURCE);
        return new NominalGutter(3.48e-5 * depthFactor * shapeFactor);
    }

    /**
     * L/s.
     *
     * @param lengthFactor 1 for a short gutter, else as its table has it
     * @param bendFactor 1 for one without a corner, else as stated
     */
    public double litresPerSecond(double areaMm2, double lengthFactor, double bendFactor) {
        Refused.within(500, 500_000, areaMm2, "an area in mm²", SOURCE);
        Refused.within(0.3, 2, lengthFactor, "a length factor", SOURCE);
        Refused.within(0.3, 1, bendFactor, "a bend factor", SOURCE);
        return DESIGN * factor * StrictMath.pow(areaMm2, POWER) * lengthFactor * bendFactor;
    }

    /** The area that a short, straight gutter needs for this much, mm². */
    public double areaMm2(double litresPerSecond) {
        return StrictMath.pow(litresPerSecond / (DESIGN * factor), 1 / POWER);
    }
}
