package eavesproof.hydraulics;

/**
 * Annular flow down a vertical pipe: Q = 2.5e-4 kb^-0.167 d^2.667 f^1.667, L/s and mm, with the
 * roughness kb and the filling degree f, the part of the section that is water (Wyly and Eaton; EN
 * 12056-3:2000 6.1, from memory; its table 8 is for kb 0.25 mm).
 */
public final class WylyEaton {
    private static final String SOURCE = "EN 12056-3 6.1";

    private WylyEaton() {}

    /** What a round pipe carries, L/s. */
    public static double litresPerSecond(double diameterMm, double roughnessMm, double filling) {
        Refused.within(50, 300, diameterMm, "a downpipe in mm", SOURCE);
        Refused.within(0.01, 5, roughnessMm, "a roughness in mm", SOURCE);
        Refused.within(0.20, 0.33, filling, "a filling degree", SOURCE);
        return 2.5e-4
                * StrictMath.pow(roughnessMm, -0.167)
                * StrictMath.pow(diameterMm, 2.667)
                * StrictMath.pow(filling, 1.667);
    }

    /**
     * A rectangular pipe carries what a round one of equal area does (EN 12056-3:2000 6.1, from
     * memory); the diameter of that, mm.
     */
    public static double equalDiameterMm(double widthMm, double depthMm) {
        return 2 * StrictMath.sqrt(widthMm * depthMm / Math.PI);
    }
}
