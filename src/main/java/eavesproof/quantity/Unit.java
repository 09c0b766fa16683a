package eavesproof.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The closed list of units, each with its exact factor to the base unit of its dimension.
 *
 * <p>The factors are exact by definition: the international yard and pound agreement of 1959 (1 in
 * = 25.4 mm) and the US liquid gallon of 231 cubic inches.
 */
public enum Unit {
    MM("mm", Dimension.LENGTH, 1, 1),
    M("m", Dimension.LENGTH, 1000, 3),
    INCH("in", Dimension.LENGTH, 25.4, 2),
    FOOT("ft", Dimension.LENGTH, 304.8, 3),
    MM_PER_M("mm/m", Dimension.SLOPE, 1, 2),
    INCH_PER_FOOT("in/ft", Dimension.SLOPE, 1000.0 / 12, 4),
    PERCENT_FALL("% fall", Dimension.SLOPE, 10, 3),
    DEGREE("deg", Dimension.ANGLE, 1, 1),
    MM2("mm2", Dimension.AREA, 1, 0),
    CM2("cm2", Dimension.AREA, 100, 1),
    M2("m2", Dimension.PLAN_AREA, 1, 2),
    FT2("ft2", Dimension.PLAN_AREA, 0.09290304, 1),
    L_PER_S("L/s", Dimension.FLOW, 1, 3),
    US_GPM("US gpm", Dimension.FLOW, 3.785411784 / 60, 1),
    MM_PER_H("mm/h", Dimension.RAINFALL, 1, 0),
    INCH_PER_H("in/h", Dimension.RAINFALL, 25.4, 2),
    L_PER_S_HA("L/s/ha", Dimension.RAINFALL, 0.36, 0),
    L_PER_S_M2("L/s/m2", Dimension.RAINFALL, 3600, 3),
    CELSIUS("degC", Dimension.TEMPERATURE, 1, 1),
    COUNT("count", Dimension.COUNT, 1, 0),
    LITRE("L", Dimension.VOLUME, 1, 2),
    KN_PER_M2("kN/m2", Dimension.PRESSURE, 1, 2),
    KN_PER_M("kN/m", Dimension.LINE_LOAD, 1, 2),
    NEWTON("N", Dimension.FORCE, 1, 0),
    RATIO("ratio", Dimension.RATIO, 1, 3);

    private final String symbol;
    private final Dimension dimension;
    private final double toBase;
    private final int decimals;

    Unit(String symbol, Dimension dimension, double toBase, int decimals) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.toBase = toBase;
        this.decimals = decimals;
    }

    /** As written in rule files, records and on paper, in plain ASCII. */
    public String symbol() {
        return symbol;
    }

    /** A number as people write it with this unit behind it; counts and ratios stand bare. */
    public String after(String number) {
        return isBare() ? number : number + " " + symbol;
    }

    public boolean isBare() {
        return this == COUNT || this == RATIO;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** How many decimals a value in this unit is printed with. */
    public int decimals() {
        return decimals;
    }

    /**
     * The same amount in another unit.
     *
     * @throws IllegalArgumentException if the units do not share a dimension
     */
    public double convert(double value, Unit to) {
        if (dimension != to.dimension) {
            throw new IllegalArgumentException(symbol + " cannot be compared with " + to.symbol);
        }
        return this == to ? value : value * toBase / to.toBase;
    }

    public static Optional<Unit> of(String symbol) {
        return Arrays.stream(values()).filter(u -> u.symbol.equals(symbol)).findFirst();
    }

    public static List<String> symbols() {
        return Arrays.stream(values()).map(Unit::symbol).toList();
    }
}
