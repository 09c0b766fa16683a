package eavesproof.survey;

import eavesproof.quantity.Uncertain;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The greatest of several amounts, when a smaller one that is less sure may be the greatest. It is
 * at least as great as any of them surely is, and at most as great as any of them may be.
 */
final class Worst {
    private static final double ROUNDING = 1e-9;

    private final TreeSet<String> unstated = new TreeSet<>();
    private @Nullable Uncertain greatest;
    private double least = Double.NEGATIVE_INFINITY;
    private double most = Double.NEGATIVE_INFINITY;

    Worst add(Uncertain amount) {
        unstated.addAll(amount.unstated());
        double expanded = amount.expandedUncertainty();
        least = Math.max(least, amount.value() - expanded);
        most = Math.max(most, amount.value() + expanded);
        greatest = greatest == null || amount.value() > greatest.value() ? amount : greatest;
        return this;
    }

    /** It may be as much as that, and nothing says that it is. */
    Worst mayBe(double amount) {
        most = Math.max(most, amount);
        return this;
    }

    Worst unstated(Iterable<String> reasons) {
        reasons.forEach(unstated::add);
        return this;
    }

    /** Whether an amount above nothing, or one that may be so much, could change anything. */
    boolean isReachedBy(double value, double atMost) {
        return (value > 0 && value > least) || atMost > most;
    }

    Uncertain get() {
        Uncertain one = Objects.requireNonNull(greatest, "the worst of nothing");
        double expanded = one.expandedUncertainty();
        boolean alone =
                one.value() - expanded >= least - ROUNDING
                        && one.value() + expanded >= most - ROUNDING;
        return alone
                ? new Uncertain(one.value(), one.sources(), unstated)
                : new Uncertain(
                        (least + most) / 2,
                        new TreeMap<>(
                                Map.of("which of several is the greatest", (most - least) / 4)),
                        unstated);
    }
}
