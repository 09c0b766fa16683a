package eavesproof.hydraulics;

/**
 * A round hole in an upright wall through which water falls freely, the water up to the top of the
 * hole. Each level strip of it, 2 sqrt(y (D - y)) wide at a depth y below the water, passes sqrt(2
 * g y) of its area, and all of them together 8/15 sqrt(2 g) D^2.5 (Torricelli, integrated); less by
 * the coefficient of a sharp edge.
 *
 * @param diameter inside, m
 * @param coefficient what part of the ideal flow passes
 */
public record WallHole(double diameter, double coefficient) {
    public WallHole {
        Refused.within(0.01, 3, diameter, "the diameter of a hole in m", "holes in walls");
        Refused.within(0.3, 1, coefficient, "the coefficient of a hole", "holes in walls");
    }

    /** What passes while the water stands at the top of the hole and no higher, m³/s. */
    public double flow() {
        return coefficient
                * 8
                / 15
                * StrictMath.sqrt(2 * Channel.G)
                * StrictMath.pow(diameter, 2.5);
    }
}
