package eavesproof.report;

import eavesproof.findings.Finding;
import eavesproof.findings.Rounding;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Dimension;
import eavesproof.quantity.Unit;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Numbers as the paper prints them: figures of one column end at the same decimal. */
final class Amounts {
    private static final double MM_IN_A_METRE = 1000;
    private static final double RARE = 0.0001;
    private static final int LONG = 32;

    private Amounts() {}

    static String measured(Finding finding) {
        if (finding.measured().orElse(null) instanceof Finding.MeasuredNumber number) {
            return minus(Decimals.fixed(number.value(), Rounding.decimals(finding)));
        }
        return finding.measured().orElse(null) instanceof Finding.MeasuredWord word
                ? word.word()
                : "—";
    }

    /** The expanded uncertainty; none for what was counted or is a word. */
    static String sure(Finding finding) {
        if (!(finding.measured().orElse(null) instanceof Finding.MeasuredNumber number)) {
            return "";
        }
        double expanded = number.expandedUncertainty().orElse(0.0);
        if (number.expandedUncertainty().isEmpty()) {
            return "not stated";
        }
        return expanded == 0
                ? ""
                : "± " + Decimals.fixed(expanded, Rounding.decimals(expanded, number.unit()));
    }

    /** The limit with its unit. */
    static String limit(Finding finding) {
        if (finding.limit().orElse(null) instanceof Finding.NumberLimit limit) {
            String written = limit.asWritten();
            boolean converted = !written.equals(Decimals.with(limit.value(), limit.unit()));
            return (limit.atMost() ? "≤ " : "≥ ")
                    + minus(Decimals.fixed(limit.value(), decimals(finding, limit.unit())))
                    + (limit.unit().isBare() ? "" : " " + unit(limit.unit()))
                    + ratio(limit.value(), limit.unit())
                    + (converted ? " (" + written + ")" : "");
        }
        if (finding.limit().orElse(null) instanceof Finding.WordLimit words) {
            String joined = String.join(" or ", words.words());
            return joined.length() > LONG ? "one of " + words.words().size() : joined;
        }
        return "—";
    }

    /** All that is allowed, where that is too long for the column of limits. */
    static Optional<String> allowed(Finding finding) {
        return finding.limit()
                .filter(Finding.WordLimit.class::isInstance)
                .map(limit -> String.join(", ", ((Finding.WordLimit) limit).words()))
                .filter(words -> words.length() > LONG);
    }

    /** What is left of the limit; negative where it is broken. */
    static String spare(Finding finding) {
        if (finding.margin().isEmpty()
                || !(finding.limit().orElse(null) instanceof Finding.NumberLimit limit)) {
            return "";
        }
        double margin = finding.margin().get();
        return minus(Decimals.fixed(margin, decimals(finding, limit.unit())));
    }

    /** The chance that the true value meets the limit, never printed as more certain than it is. */
    static String probability(double probability) {
        if (probability < RARE) {
            return "< 0.01 %";
        }
        if (probability > 1 - RARE) {
            return "> 99.99 %";
        }
        return "= " + Decimals.plain(probability * 100, 2) + " %";
    }

    static @Nullable String with(@Nullable Double value, Unit unit) {
        String number = plain(value, unit.decimals());
        return number == null || unit.isBare() ? number : number + " " + unit(unit);
    }

    static @Nullable String plain(@Nullable Double value, int decimals) {
        return value == null ? null : minus(Decimals.plain(value, decimals));
    }

    /** As people write it on paper: mm², °C. */
    static String unit(Unit unit) {
        return switch (unit) {
            case COUNT, RATIO -> "";
            case MM2 -> "mm²";
            case CM2 -> "cm²";
            case M2 -> "m²";
            case FT2 -> "ft²";
            case KN_PER_M2 -> "kN/m²";
            case DEGREE -> "°";
            case CELSIUS -> "°C";
            default -> unit.symbol();
        };
    }

    /** A fall also as people set it: (1:500). */
    static String ratio(double value, Unit unit) {
        if (unit.dimension() != Dimension.SLOPE || value <= 0) {
            return "";
        }
        double mmPerM = unit.convert(value, Unit.MM_PER_M);
        return " (1:" + Decimals.plain(MM_IN_A_METRE / mmPerM, 0) + ")";
    }

    /** A hyphen is too short for a minus sign between figures. */
    private static String minus(String number) {
        return number.replace('-', '−');
    }

    private static int decimals(Finding finding, Unit unit) {
        return Math.max(unit.decimals(), Rounding.decimals(finding));
    }
}
