package eavesproof.exchange;

/**
 * What a number of a record can be at all. Wide on purpose: beyond them lies a slip of the pen or
 * of the unit, and never a rule's limit. All bounds are our choice.
 */
final class Ranges {
    /** No run and no drain of a small building is longer. */
    private static final double FARTHEST_MM = 100_000;

    static final Amount STRAIGHT_MM =
            Amount.atLeast(50, FARTHEST_MM).as("the length of a straight in millimetres");
    static final Amount DISTANCE_MM =
            Amount.atLeast(0, FARTHEST_MM).as("a distance in millimetres");
    static final Amount SIGNED_MM =
            Amount.atLeast(-FARTHEST_MM, FARTHEST_MM).as("a distance in millimetres");

    /** Of a reading: nobody reads a gutter from ten metres above or below. */
    static final Amount LEVEL_MM =
            Amount.atLeast(-10_000, 10_000).as("how far below the datum in millimetres");

    static final Amount TILT_MM = Amount.atLeast(-300, 300).as("a tilt in millimetres");
    static final Amount ON_PLAN_MM =
            Amount.atLeast(20, FARTHEST_MM).as("a length on plan in millimetres");

    // a gutter across

    static final Amount WIDTH_MM =
            Amount.atLeast(30, 1000).as("the width of a gutter in millimetres");
    static final Amount DEPTH_MM =
            Amount.atLeast(10, 1000).as("the depth of a gutter in millimetres");
    static final Amount HEIGHT_MM =
            Amount.atLeast(10, 1000).as("a height of a gutter in millimetres");
    static final Amount THICKNESS_MM = Amount.atLeast(0.1, 100).as("a thickness in millimetres");
    static final Amount AREA_MM2 =
            Amount.atLeast(500, 500_000).as("the area of a section in square millimetres");

    // fixings and pipes

    static final Amount SCREW_MM = Amount.atLeast(1, 30).as("a diameter in millimetres");

    /** No screw of a gutter goes deeper than a fascia and the rafter behind it. */
    static final Amount BITE_MM = Amount.atLeast(0, 150).as("a depth in timber in millimetres");

    /** Of a gutter in a joint or an outlet: no such fitting is longer. */
    static final Amount ROOM_MM =
            Amount.atLeast(0, 300).as("room to move in a fitting in millimetres");

    static final Amount BODY_MM =
            Amount.atLeast(20, 2000).as("the length of a fitting in millimetres");
    static final Amount PIPE_MM =
            Amount.atLeast(20, 1000).as("the inside size of a pipe in millimetres");
    static final Amount SPAN_MM =
            Amount.atLeast(100, FARTHEST_MM).as("the span of a string in millimetres");
    static final Amount MASS_G_PER_M =
            Amount.atLeast(0.01, 1000).as("the mass of a string in grams for each metre");
    static final Amount FORCE_N = Amount.atLeast(10, 20_000).as("a force in newtons");

    static final Amount AREA_M2 = Amount.atLeast(0.1, 100_000).as("an area in square metres");

    /** At most all of a front as high as the deepest gutter. */
    static final Amount OPEN_MM2_PER_M = Amount.atLeast(0, 1e6);

    static final Amount PITCH_DEG = Amount.atLeast(0, 90).butBelow();
    static final Amount ANGLE_DEG = Amount.atLeast(0, 180);
    static final Amount ACCURACY_MM =
            Amount.atLeast(0.001, 100).as("an error or a step in millimetres");
    static final Amount COUNT = Amount.count(100);

    /** From the coldest night on record to metal in the sun of a desert. */
    static final Amount TEMPERATURE_C = Amount.atLeast(-90, 120);

    static final Amount SNOW_KN_M2 =
            Amount.atLeast(0, 30).as("a snow load in kilonewtons per square metre");
    static final Amount DISTANCE_KM = Amount.atLeast(0, 20_000);

    /**
     * The wettest minute ever gauged was below 2500 mm/h; below 10 mm/h, our choice, nobody reckons
     * a gutter, and a number in inches shows.
     */
    static final Amount INTENSITY_MM_H =
            Amount.atLeast(10, 5000).as("the intensity of rain in millimetres an hour");

    static final Amount RAIN_MIN = Amount.atLeast(1, 10_080).as("a duration in minutes");
    static final Amount DURATION_MIN = Amount.atLeast(0.1, 1e6);
    static final Amount AEP_PERCENT = Amount.above(0, 100);
    static final Amount VOLUME_L = Amount.atLeast(0, 1e6);

    /** A test without water is none. */
    static final Amount POURED_L = Amount.atLeast(0.5, 1e6);

    private Ranges() {}
}
