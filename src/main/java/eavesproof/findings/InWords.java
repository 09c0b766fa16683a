package eavesproof.findings;

import eavesproof.check.Coverage;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Places and numbers of findings in words, the same on every output. */
public final class InWords {
    private InWords() {}

    /** Where it is: run a, straight a1, from b3 to b4, 1450 to 1990 mm. */
    public static String place(Place place) {
        List<String> parts = new ArrayList<>();
        place.keys().forEach((key, id) -> key(parts, place, key, id));
        place.stretch()
                .ifPresent(
                        stretch -> {
                            if (place.key("straight").isEmpty()) {
                                parts.add(place.key("run").isPresent() ? 1 : 0, straight(stretch));
                            }
                            parts.add(along(stretch));
                        });
        return parts.isEmpty() ? "the whole job" : String.join(", ", parts);
    }

    /** How much of a run no rule speaks of: run a, at 3 places. */
    public static String place(Coverage.Uncovered uncovered) {
        String run = uncovered.run().isEmpty() ? "the whole job" : "run " + uncovered.run();
        return run + ", at " + count(uncovered.places(), "place");
    }

    /** What was found, with its expanded uncertainty: 540 ± 1.1 mm. */
    public static Optional<String> measured(Finding finding) {
        return finding.measured().map(found -> measured(found, Rounding.decimals(finding)));
    }

    private static String measured(Finding.Measured measured, int decimals) {
        if (measured instanceof Finding.MeasuredNumber number) {
            String sure =
                    number.expandedUncertainty()
                            .filter(expanded -> expanded > 0)
                            .map(
                                    u ->
                                            " ± "
                                                    + Decimals.plain(
                                                            u, Rounding.decimals(u, number.unit())))
                            .orElse("");
            return number(number.value(), sure, number.unit(), decimals);
        }
        return ((Finding.MeasuredWord) measured).word();
    }

    /** What was required: at most 914.4 mm (36 in). */
    public static Optional<String> limit(Finding finding) {
        return finding.limit().map(limit -> limit(limit, Rounding.decimals(finding)));
    }

    private static String limit(Finding.Limit limit, int decimals) {
        if (limit instanceof Finding.NumberLimit number) {
            String written = number.asWritten();
            boolean converted = !written.equals(Decimals.with(number.value(), number.unit()));
            int enough = Math.max(decimals, number.unit().decimals());
            return (number.atMost() ? "at most " : "at least ")
                    + number(number.value(), "", number.unit(), enough)
                    + (converted ? " (" + written + ")" : "");
        }
        List<String> words = ((Finding.WordLimit) limit).words();
        return (words.size() == 1 ? "must be " : "one of ") + String.join(", ", words);
    }

    /** How far inside or outside the limit the value lies; empty where that is no number. */
    public static Optional<String> margin(Finding finding) {
        if (finding.margin().isEmpty()
                || !(finding.limit().orElse(null) instanceof Finding.NumberLimit limit)) {
            return Optional.empty();
        }
        double margin = finding.margin().get();
        String amount = amount(Math.abs(margin), limit.unit(), Rounding.decimals(finding));
        if (margin == 0) {
            return Optional.of("nothing to spare");
        }
        if (margin > 0) {
            return Optional.of(amount + " to spare");
        }
        return Optional.of((limit.atMost() ? "over by " : "short by ") + amount);
    }

    /** Document, edition, clause, and what weight it has unless its name says so. */
    public static String source(Finding.Source source) {
        List<String> parts = new ArrayList<>(List.of(source.document()));
        if (!source.edition().isEmpty()) {
            parts.add(source.edition());
        }
        if (!source.clause().isEmpty()) {
            parts.add(source.clause());
        }
        String standing = source.standing().words();
        if (!source.document().toLowerCase(Locale.ROOT).contains(standing)) {
            parts.add(standing);
        }
        return String.join(", ", parts);
    }

    /** 1 check, 2 checks. */
    public static String count(int count, String one) {
        return count + " " + one + (count == 1 ? "" : "s");
    }

    /** a, b and c. */
    public static String list(List<String> parts) {
        int last = parts.size() - 1;
        return last < 1
                ? String.join("", parts)
                : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }

    /** A number with its unit; a fall also as a ratio, since that is how people set it. */
    private static String number(double value, String sure, Unit unit, int decimals) {
        String number = Decimals.plain(value, decimals) + sure;
        return unit.after(number) + Decimals.asRatio(value, unit);
    }

    private static String amount(double value, Unit unit, int decimals) {
        int printed = Math.max(decimals, unit.decimals());
        if (value > 0 && Decimals.rounded(value, printed) == 0) {
            return "less than " + Decimals.with(StrictMath.pow(10, -unit.decimals()), unit);
        }
        return unit.after(Decimals.plain(value, printed));
    }

    private static void key(List<String> parts, Place place, String key, String id) {
        switch (key) {
            case "from" ->
                    parts.add("from " + id + place.key("to").map(to -> " to " + to).orElse(""));
            case "to" -> {
                if (place.key("from").isEmpty()) {
                    parts.add("to " + id);
                }
            }
            case "side" -> parts.add(id + " side");
            case "zone" -> parts.add("keep-clear zone " + id);
            case "gutterEnd" -> parts.add("end " + id);
            default -> parts.add(key.toLowerCase(Locale.ROOT) + " " + id);
        }
    }

    private static String straight(Place.Stretch stretch) {
        return "straight " + stretch.straight();
    }

    private static String along(Place.Stretch stretch) {
        String to = Decimals.with(stretch.toMm(), Unit.MM);
        return stretch.fromMm() == stretch.toMm()
                ? "at " + to
                : Decimals.plain(stretch.fromMm(), Unit.MM.decimals()) + " to " + to;
    }
}
