package eavesproof.hydraulics;

/**
 * What rain brings to a gutter: run-off coefficient times intensity times area (the rational
 * method; EN 12056-3:2000 4.2, NZ E1/VM1 2.0.1).
 */
public final class RationalFlow {
    private static final double SECONDS_PER_HOUR = 3600;

    private RationalFlow() {}

    /** In L/s; a millimetre of rain on a square metre is a litre. */
    public static double litresPerSecond(double runOff, double rainMmPerH, double areaM2) {
        if (!(runOff >= 0 && runOff <= 1)) {
            throw Refused.saying("a run-off coefficient is from 0 to 1, not {}", runOff);
        }
        if (!(rainMmPerH >= 0) || !(areaM2 >= 0)) {
            throw Refused.saying("rain and area are 0 or more, not {} on {}", rainMmPerH, areaM2);
        }
        return runOff * rainMmPerH * areaM2 / SECONDS_PER_HOUR;
    }

    /**
     * By what a plan area is multiplied where rain is driven by wind at two down to one across: the
     * plan and half of the rise (EN 12056-3:2000 4.3.2 and table 3; UK Approved Document H3 table 1
     * has the same numbers).
     */
    public static double windFactor(double pitchDeg) {
        Refused.within(0, 70, pitchDeg, "a pitch in degrees", "EN 12056-3 table 3");
        return 1 + StrictMath.tan(StrictMath.toRadians(pitchDeg)) / 2;
    }
}
