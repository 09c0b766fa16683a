package eavesproof.exchange;

/**
 * What a number of a record can be at all. Wide on purpose: beyond them lies a slip of the pen, and
 * never a rule's limit.
 */
final class Ranges {
    private static final double KILOMETRE_IN_MM = 1e6;

    /** The length or size of something that is there. */
    static final Amount SIZE_MM = Amount.above(0, KILOMETRE_IN_MM);

    /** A distance or depth that may be nothing. */
    static final Amount DISTANCE_MM = Amount.atLeast(0, KILOMETRE_IN_MM);

    /** A distance one way or the other. */
    static final Amount SIGNED_MM = Amount.atLeast(-KILOMETRE_IN_MM, KILOMETRE_IN_MM);

    static final Amount AREA_M2 = Amount.above(0, 1e6);
    static final Amount AREA_MM2 = Amount.above(0, 1e6);
    static final Amount PITCH_DEG = Amount.atLeast(0, 90).butBelow();
    static final Amount ANGLE_DEG = Amount.atLeast(0, 180);
    static final Amount ACCURACY_MM = Amount.above(0, 1000);
    static final Amount FORCE_N = Amount.above(0, 1e6);
    static final Amount COUNT = Amount.count(100);

    /** From the coldest night on record to metal in the sun of a desert. */
    static final Amount TEMPERATURE_C = Amount.atLeast(-90, 120);

    static final Amount SNOW_KN_M2 = Amount.atLeast(0, 100);
    static final Amount DISTANCE_KM = Amount.atLeast(0, 20_000);

    /** The wettest minute ever gauged was below 2500 mm/h. */
    static final Amount INTENSITY_MM_H = Amount.above(0, 5000);

    static final Amount DURATION_MIN = Amount.above(0, 1e6);
    static final Amount AEP_PERCENT = Amount.above(0, 100);
    static final Amount VOLUME_L = Amount.atLeast(0, 1e6);

    private Ranges() {}
}
