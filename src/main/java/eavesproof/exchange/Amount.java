package eavesproof.exchange;

import com.fasterxml.jackson.core.JsonToken;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A place for a number.
 *
 * @param above whether the number must be greater than {@code least}, which itself is too small
 * @param below whether it must be less than {@code most}
 * @param whole whether it counts something
 * @param what it is and in which unit, for whoever slipped by one; empty where any number will do
 */
record Amount(double least, boolean above, double most, boolean below, boolean whole, String what)
        implements Leaf {
    /** No measurement has more digits; reading a million of them is only work. */
    private static final int LONGEST = 64;

    static Amount atLeast(double least, double most) {
        return new Amount(least, false, most, false, false, "");
    }

    static Amount above(double least, double most) {
        return new Amount(least, true, most, false, false, "");
    }

    static Amount count(int most) {
        return new Amount(0, false, most, false, true, "");
    }

    Amount butBelow() {
        return new Amount(least, above, most, true, whole, what);
    }

    /** The same, said in words with its unit: "the width of a gutter in millimetres". */
    Amount as(String words) {
        return new Amount(least, above, most, below, whole, words);
    }

    @Override
    public @Nullable Object value(JsonToken token, String raw) {
        if (!token.isNumeric() || raw.length() > LONGEST) {
            return null;
        }
        double value = Double.parseDouble(raw) + 0.0; // + 0.0: there is no minus nought to measure
        if (!within(value) || vanished(value, raw)) {
            return null;
        }
        if (!whole) {
            return value;
        }
        return value == StrictMath.rint(value) ? (Object) (int) value : null;
    }

    private boolean within(double value) {
        return (above ? value > least : value >= least) && (below ? value < most : value <= most);
    }

    /** Whether a number that is not nought became nought, for being too small for a double. */
    private static boolean vanished(double value, String raw) {
        if (value != 0) {
            return false;
        }
        int exponent = raw.toLowerCase(Locale.ROOT).indexOf('e');
        String digits = exponent < 0 ? raw : raw.substring(0, exponent);
        return digits.chars().anyMatch(digit -> digit >= '1' && digit <= '9');
    }

    @Override
    public String expected() {
        if (!what.isEmpty()) {
            return what + ", " + plain(least) + " to " + plain(most);
        }
        return (whole ? "a whole number " : "a number ")
                + (above ? "above " : "of at least ")
                + plain(least)
                + (below ? " and below " : " and at most ")
                + plain(most);
    }

    @Override
    public String type() {
        return whole ? "integer" : "number";
    }

    @Override
    public Map<String, Object> asks() {
        return Leaf.ordered(
                above ? "exclusiveMinimum" : "minimum",
                bound(least),
                below ? "exclusiveMaximum" : "maximum",
                bound(most));
    }

    private static BigDecimal bound(double value) {
        return new BigDecimal(plain(value));
    }

    static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
