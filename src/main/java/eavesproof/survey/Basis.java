package eavesproof.survey;

import eavesproof.job.Words;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the engineering needs from a country and a rule set states: which rain counts, how roofs and
 * walls catch it, how rough things are, by which method they are reckoned. Each with its source.
 * What is not stated becomes a gap, and never a number of ours.
 */
public final class Basis {
    static final String PLAN = "plan";
    static final String PLAN_AND_HALF_THE_RISE = "plan and half the rise";
    static final String EN_12056_3 = "EN 12056-3";
    static final String WYLY_EATON = "Wyly-Eaton";
    static final String SEVEN_24THS = "7/24 full";
    static final String COLEBROOK = "Colebrook-White";
    static final String MANNING = "Manning";
    static final String CORNER_HOLDS = "yes";
    static final String CORNER_MOVES = "no";

    /** States nothing, so that all that would rest on it is a gap. */
    public static final Basis NOTHING = new Basis(Map.of());

    private final Map<String, Stated> entries;

    /** What is stated, and where it comes from, in words. */
    public sealed interface Stated {
        String source();
    }

    public record Amount(double value, String source) implements Stated {}

    public record Choice(String word, String source) implements Stated {}

    /**
     * @throws IllegalArgumentException if something is stated for which {@link #problem} has words
     */
    public Basis(Map<String, Stated> entries) {
        this.entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        this.entries.forEach(
                (key, stated) ->
                        problem(key, stated)
                                .ifPresent(
                                        expected -> {
                                            throw new IllegalArgumentException(
                                                    key + " is " + stated + ", not " + expected);
                                        }));
    }

    /** What was expected instead, if this cannot be stated. */
    public static Optional<String> problem(String key, Stated stated) {
        String[] parts = key.split(" ", 2);
        Optional<BasisKey> known = BasisKey.of(parts[0]);
        if (known.isEmpty()) {
            return Optional.of("a key of the basis");
        }
        BasisKey of = known.get();
        if (of.isOfSeveral() != (parts.length == 2)) {
            return Optional.of(of.isOfSeveral() ? key + " and of what" : parts[0] + " alone");
        }
        if (of.isByMaterial() && !Words.MATERIALS.contains(parts[1])) {
            return Optional.of("one of the materials of gutters");
        }
        if (of.isByOverflow() && !Words.OVERFLOW_MEASURES.contains(parts[1])) {
            return Optional.of("one of the measures by which a gutter overflows");
        }
        if (of == BasisKey.LENGTH_FACTOR && !parts[1].matches("[1-9][0-9]{0,3}")) {
            return Optional.of("length_factor and a whole number");
        }
        boolean admitted =
                stated instanceof Amount amount
                        ? of.admits(amount.value())
                        : of.words().contains(((Choice) stated).word());
        return admitted ? Optional.empty() : Optional.of(of.expected());
    }

    Found<Amount> amount(BasisKey key) {
        return of(key.key(), key.says()).map(Amount.class::cast);
    }

    Found<Choice> choice(BasisKey key) {
        return of(key.key(), key.says()).map(Choice.class::cast);
    }

    Found<Amount> manningN(String material) {
        return of(BasisKey.MANNING_N, material);
    }

    /** What is stated of one material, or of one kind of thing. */
    Found<Amount> of(BasisKey key, String one) {
        return of(key.key() + " " + one, key.says() + " for " + one).map(Amount.class::cast);
    }

    /** The design rain at a place, if the rule set has it. */
    Optional<Amount> rainAt(String place) {
        return rainAt(BasisKey.RAIN_AT, place);
    }

    /** One of the rains at a place, if the rule set has it. */
    Optional<Amount> rainAt(BasisKey rain, String place) {
        return Optional.ofNullable((Amount) entries.get(rain.key() + " " + place));
    }

    /** By how many times a gutter is as long as deep. */
    NavigableMap<Double, Amount> lengthFactors() {
        NavigableMap<Double, Amount> factors = new TreeMap<>();
        String prefix = BasisKey.LENGTH_FACTOR.key() + " ";
        entries.forEach(
                (key, stated) -> {
                    if (key.startsWith(prefix)) {
                        double times = Double.parseDouble(key.substring(prefix.length()));
                        factors.put(times, (Amount) stated);
                    }
                });
        return factors;
    }

    private Found<Stated> of(String key, String says) {
        return Found.orElse(entries.get(key), "the rule set does not state " + says);
    }
}
