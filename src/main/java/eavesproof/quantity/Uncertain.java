package eavesproof.quantity;

import java.util.Collections;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A number and how sure it is: its value, the signed standard uncertainty that each error source
 * puts into it, and the sources whose size nobody stated.
 *
 * <p>Sums combine the maps linearly (JCGM 100:2008 5.1.2 with sensitivity coefficients, sources
 * independent of each other), so that a source shared by two numbers cancels or adds by itself.
 * While anything is unstated the uncertainty is not known, and never taken as zero.
 *
 * @param value finite, in a unit that the holder names
 * @param sources error source to signed standard uncertainty, in the unit of the value
 * @param unstated what was not said about how sure the value is, in words for people
 */
public record Uncertain(
        double value, SortedMap<String, Double> sources, SortedSet<String> unstated) {

    public Uncertain {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("an uncertain number must be finite, not " + value);
        }
        sources.forEach(
                (source, u) -> {
                    if (!Double.isFinite(u)) {
                        throw new IllegalArgumentException(
                                "the uncertainty from " + source + " must be finite, not " + u);
                    }
                });
        sources = Collections.unmodifiableSortedMap(new TreeMap<>(sources));
        unstated = Collections.unmodifiableSortedSet(new TreeSet<>(unstated));
    }

    /** A number that is exact by its nature: a count, a limit as printed. */
    public static Uncertain exact(double value) {
        return new Uncertain(value, new TreeMap<>(), new TreeSet<>());
    }

    /** A number with one error source of the given standard uncertainty. */
    public static Uncertain of(double value, String source, double standardUncertainty) {
        return new Uncertain(
                value,
                new TreeMap<>(java.util.Map.of(source, standardUncertainty)),
                new TreeSet<>());
    }

    /** A number of which nobody said how sure it is. */
    public static Uncertain unstated(double value, String why) {
        return new Uncertain(value, new TreeMap<>(), new TreeSet<>(java.util.Set.of(why)));
    }

    public Uncertain plus(Uncertain other) {
        return combine(other, 1, value + other.value);
    }

    public Uncertain minus(Uncertain other) {
        return combine(other, -1, value - other.value);
    }

    public Uncertain times(double factor) {
        TreeMap<String, Double> scaled = new TreeMap<>();
        sources.forEach((source, u) -> scaled.put(source, u * factor));
        return new Uncertain(value * factor, scaled, unstated);
    }

    /**
     * The product, to first order (JCGM 100:2008 5.1.2: the sensitivities are the other factors).
     */
    public Uncertain times(Uncertain other) {
        return linear(other, other.value, value, value * other.value);
    }

    /**
     * The quotient, to first order.
     *
     * @throws ArithmeticException if the divisor is zero
     */
    public Uncertain over(Uncertain divisor) {
        if (divisor.value == 0) {
            throw new ArithmeticException("division by zero");
        }
        double q = value / divisor.value;
        return linear(divisor, 1 / divisor.value, -q / divisor.value, q);
    }

    /** Whether every error source has a stated size. */
    public boolean isStated() {
        return unstated.isEmpty();
    }

    /** The root of the sum of squares (JCGM 100:2008 5.1.2); meaningless unless stated. */
    public double standardUncertainty() {
        double sum = 0;
        for (double u : sources.values()) {
            sum += u * u;
        }
        return StrictMath.sqrt(sum);
    }

    /** Expanded uncertainty with coverage factor k = 2 (JCGM 100:2008 6.2). */
    public double expandedUncertainty() {
        return 2 * standardUncertainty();
    }

    private Uncertain combine(Uncertain other, double sign, double result) {
        return linear(other, 1, sign, result);
    }

    private Uncertain linear(Uncertain other, double ofThis, double ofOther, double result) {
        TreeMap<String, Double> sum = new TreeMap<>();
        sources.forEach((source, u) -> sum.merge(source, u * ofThis, Double::sum));
        other.sources.forEach((source, u) -> sum.merge(source, u * ofOther, Double::sum));
        TreeSet<String> reasons = new TreeSet<>(unstated);
        reasons.addAll(other.unstated);
        return new Uncertain(result, sum, reasons);
    }
}
