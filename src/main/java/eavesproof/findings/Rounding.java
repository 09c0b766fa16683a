package eavesproof.findings;

import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;

/**
 * How many decimals a finding is printed with on every output: those of its unit, and more where
 * these would print a value that misses its limit as the limit itself, or an uncertainty as none.
 */
public final class Rounding {
    /** Beyond this a difference is one of arithmetic and not of gutters. */
    private static final int MOST = 9;

    private Rounding() {}

    /** For the measured value, the limit and the margin of a finding alike. */
    public static int decimals(Finding finding) {
        if (!(finding.measured().orElse(null) instanceof Finding.MeasuredNumber number)) {
            return 0;
        }
        int decimals = number.unit().decimals();
        if (!(finding.limit().orElse(null) instanceof Finding.NumberLimit limit)
                || !finding.verdict().needsAction()
                || number.value() == limit.value()) {
            return decimals;
        }
        while (decimals < MOST
                && Decimals.rounded(number.value(), decimals)
                        == Decimals.rounded(limit.value(), decimals)) {
            decimals++;
        }
        return decimals;
    }

    /** Of an uncertainty in this unit; one that is not zero is never printed as zero. */
    public static int decimals(double expanded, Unit unit) {
        int decimals = unit.decimals();
        while (decimals < MOST && expanded > 0 && Decimals.rounded(expanded, decimals) == 0) {
            decimals++;
        }
        return decimals;
    }
}
