package eavesproof.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers as they leave the program: rounded, in plain notation, the same on every JDK and in every
 * locale ({@code Double.toString} is neither).
 */
public final class Decimals {
    private static final int MM_IN_A_METRE = 1000;

    private Decimals() {}

    /** Rounded half up to the decimals given, trailing zeros kept: 490.0. */
    public static String fixed(double value, int decimals) {
        BigDecimal rounded = round(value, decimals);
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
    }

    /** Rounded half up to at most the decimals given, without trailing zeros: 490. */
    public static String plain(double value, int decimals) {
        BigDecimal rounded = round(value, decimals);
        if (rounded.signum() == 0) {
            return "0";
        }
        BigDecimal stripped = rounded.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }

    /** The value with its unit as people read it: 490 mm. A count is just a number. */
    public static String with(double value, Unit unit) {
        return unit.after(plain(value, unit.decimals()));
    }

    /** A fall as people set it, after the fall itself: " (1:400)"; nothing of anything else. */
    public static String asRatio(double value, Unit unit) {
        if (unit.dimension() != Dimension.SLOPE || value <= 0) {
            return "";
        }
        return " (1:" + plain(MM_IN_A_METRE / unit.convert(value, Unit.MM_PER_M), 0) + ")";
    }

    public static double rounded(double value, int decimals) {
        return round(value, decimals).doubleValue();
    }

    private static BigDecimal round(double value, int decimals) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a number that can be printed: " + value);
        }
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
