package eavesproof.hydraulics;

/**
 * Annular flow down a vertical leader in US units: Q = 27.8 r^(5/3) d^(8/3), gallons a minute and
 * inches, with r the part of the section that is water (NBS Monograph 31, from memory); 7/24 in the
 * National Standard Plumbing Code 2006 table 13.6.1, for 2 to 15 in.
 */
public final class PlumbingCodeLeader {
    private static final double FILLED = 7.0 / 24;
    private static final String SOURCE = "National Standard Plumbing Code 2006 table 13.6.1";

    private PlumbingCodeLeader() {}

    public static double gallonsPerMinute(double diameterIn) {
        Refused.within(2, 15, diameterIn, "a leader in inches", SOURCE);
        return 27.8 * StrictMath.pow(FILLED, 5.0 / 3) * StrictMath.pow(diameterIn, 8.0 / 3);
    }
}
