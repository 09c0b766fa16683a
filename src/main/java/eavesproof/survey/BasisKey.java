package eavesproof.survey;

import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a rule set may state of a country: a number within limits that are wide on purpose, or one
 * of some words. A key may be of one thing of several, and then that follows after a space:
 * "manning_n PVC-U".
 */
public enum BasisKey {
    RAIN_DURATION_MIN("how long the design rain lasts", 1, 1440),
    RAIN_AEP_PERCENT("the yearly chance of the design rain", 0.01, 100),
    RAIN_AT("the design rain at a place, in mm/h", 1, 1000),
    RUN_OFF("what part of the rain runs off a roof", 0, 1),
    ROOF_RAIN("what of a roof catches rain", Basis.PLAN + "|" + Basis.PLAN_AND_HALF_THE_RISE),
    WALL_SHARE("what part of a wall above a roof drains onto it", 0, 1),
    MANNING_N("how rough a gutter of a material is, by Manning's n", 0.005, 0.05),
    GUTTER_SHARE(
            "what part of the flow by the momentum balance a gutter is taken to carry", 0.1, 1),
    HALF_ROUND_METHOD("the nominal method for half-round gutters", Basis.EN_12056_3),
    LENGTH_FACTOR("the nominal factor for a gutter so many times as long as deep", 0.1, 1),
    BEND_FACTOR("the nominal factor for a gutter with a corner", 0.1, 1),
    OUTLET_METHOD("how much an outlet takes", Basis.EN_12056_3),
    DOWNPIPE_METHOD("how much a downpipe carries", Basis.WYLY_EATON + "|" + Basis.SEVEN_24THS),
    DOWNPIPE_ROUGHNESS_MM("how rough a downpipe is", 0.01, 5),
    DOWNPIPE_FILLING("how full of water a downpipe may run", 0.2, 0.33),
    DRAIN_METHOD("how much a drain carries", Basis.COLEBROOK + "|" + Basis.MANNING),
    DRAIN_ROUGHNESS_MM("how rough a drain is", 0.001, 10),
    DRAIN_MANNING_N("how rough a drain is, by Manning's n", 0.005, 0.05),
    DRAIN_FILLING("how deep a drain may run, over its diameter", 0.1, 1),
    TANK_OVERFLOW_COEFFICIENT(
            "what part of the ideal flow the overflow of a tank lets out, full to its top", 0.3, 1),
    LIP_COEFFICIENT("what part of the ideal flow goes over the lip of a gutter", 0.3, 1),
    STEEP_DEG("from which angle on a sloping pipe counts as a downpipe", 1, 45),
    OVERFLOW_RAIN_DURATION_MIN("how long the rain lasts that overflows are for", 1, 1440),
    OVERFLOW_RAIN_AEP_PERCENT("the yearly chance of the rain that overflows are for", 0.01, 100),
    OVERFLOW_RAIN_AT("the rain at a place that overflows are for, in mm/h", 1, 1000),
    OVERFLOW_L_S(
            "what an overflow measure lets out, for each metre if it goes along the gutter",
            0.05,
            50),
    OVERFLOW_SIZE_MM(
            "how wide a weir or hole, how long a nozzle or how deep a gap is at least for that",
            1,
            1000),
    OVERFLOW_HEIGHT_MM("how high the opening of a weir or nozzle is at least for that", 1, 1000),
    OVERFLOW_OPEN_MM2("how much of each metre slots leave open at least for that", 1, 1e6),
    OVERFLOW_BELOW_MM(
            "how far an overflow measure lies below the top of the fascia at least for that",
            0,
            500),
    OVERFLOW_HIGH_POINT_MM(
            "how far from a high point of the gutter a measure lies at most for that", 1, 10_000),
    EXPANSION_MM_M_C("by how much a material grows", 0.001, 0.2),
    ROOF_SNOW("what part of the snow load on the ground lies on a roof", 0.1, 2),
    SNOW_WEIGHT_KN_M3("how heavy snow is that has lain", 1, 9),
    CORNER_HOLDS(
            "whether a gutter is held still at its corners",
            Basis.CORNER_HOLDS + "|" + Basis.CORNER_MOVES),
    COLDEST_C("how cold a gutter gets", -60, 20),
    WARMEST_C("how warm a gutter gets", 20, 120);

    private final String says;
    private final double least;
    private final double most;
    private final String words;

    BasisKey(String says, double least, double most) {
        this.says = says;
        this.least = least;
        this.most = most;
        this.words = "";
    }

    BasisKey(String says, String words) {
        this.says = says;
        this.least = 0;
        this.most = 0;
        this.words = words;
    }

    /** As a rule set writes it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it is, in words for people. */
    public String says() {
        return says;
    }

    /** In which unit it is; empty where it has none. */
    public String unit() {
        return switch (this) {
            case RAIN_DURATION_MIN, OVERFLOW_RAIN_DURATION_MIN -> "min";
            case RAIN_AEP_PERCENT, OVERFLOW_RAIN_AEP_PERCENT -> "%";
            case DOWNPIPE_ROUGHNESS_MM,
                    DRAIN_ROUGHNESS_MM,
                    OVERFLOW_SIZE_MM,
                    OVERFLOW_HEIGHT_MM,
                    OVERFLOW_BELOW_MM,
                    OVERFLOW_HIGH_POINT_MM ->
                    Unit.MM.symbol();
            case OVERFLOW_L_S -> Unit.L_PER_S.symbol();
            case OVERFLOW_OPEN_MM2 -> Unit.MM2.symbol();
            case STEEP_DEG -> Unit.DEGREE.symbol();
            case EXPANSION_MM_M_C -> "mm for each m and degree";
            case COLDEST_C, WARMEST_C -> Unit.CELSIUS.symbol();
            default -> "";
        };
    }

    /** The words that it may be; none where it is a number. */
    public List<String> words() {
        return words.isEmpty() ? List.of() : List.of(words.split("\\|"));
    }

    /** What a rule set may write, in words for people. */
    public String expected() {
        return words.isEmpty()
                ? "a number from " + Decimals.plain(least, 6) + " to " + Decimals.plain(most, 6)
                : "one of " + String.join(", ", words());
    }

    boolean isOfSeveral() {
        return isByMaterial() || isByOverflow() || isByPlace() || this == LENGTH_FACTOR;
    }

    /** One for each place, laid out in a table. */
    public boolean isByPlace() {
        return this == RAIN_AT || this == OVERFLOW_RAIN_AT;
    }

    boolean isByOverflow() {
        return this == OVERFLOW_L_S
                || this == OVERFLOW_SIZE_MM
                || this == OVERFLOW_HEIGHT_MM
                || this == OVERFLOW_OPEN_MM2
                || this == OVERFLOW_BELOW_MM
                || this == OVERFLOW_HIGH_POINT_MM;
    }

    boolean isByMaterial() {
        return this == MANNING_N
                || this == EXPANSION_MM_M_C
                || this == COLDEST_C
                || this == WARMEST_C;
    }

    boolean admits(double value) {
        return words.isEmpty() && value >= least && value <= most;
    }

    public static Optional<BasisKey> of(String key) {
        return Arrays.stream(values()).filter(it -> it.key().equals(key)).findFirst();
    }
}
