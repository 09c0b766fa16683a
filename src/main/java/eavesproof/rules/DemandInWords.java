package eavesproof.rules;

import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What a rule demands, as people read it: at most 500 mm; at least 2.5 mm/m (1:400); at least 4 ×
 * gutter width, in mm; at most table half-round by gutter section, in m2.
 */
public final class DemandInWords {
    private final Map<String, String> names = new TreeMap<>();

    private DemandInWords(Rule rule) {
        for (Rule.Pattern circumstance : rule.circumstances()) {
            for (Rule.Condition condition : circumstance.conditions()) {
                if (condition instanceof Rule.Bind bind) {
                    names.putIfAbsent(bind.variable(), title(circumstance.kind()));
                }
            }
        }
    }

    public static String of(Rule rule) {
        return new DemandInWords(rule).words(rule.demand());
    }

    /** A fact kind as people read it: bracket spacing. */
    private static String title(String kind) {
        return kind.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    private String words(Rule.Demand demand) {
        if (demand instanceof Rule.AtMost most) {
            return "at most " + limit(most.limit(), most.unit());
        }
        if (demand instanceof Rule.AtLeast least) {
            return "at least " + limit(least.limit(), least.unit());
        }
        if (demand instanceof Rule.OneOfTable choice) {
            return "what " + limit(choice.lookup()) + " allows";
        }
        List<String> words = ((Rule.OneOf) demand).words();
        return (words.size() == 1 ? "must be " : "one of ") + String.join(", ", words);
    }

    private String limit(Rule.Limit limit, String symbol) {
        Unit unit = Unit.of(symbol).orElseThrow();
        boolean bare = unit.isBare();
        OptionalDouble value = value(limit);
        if (value.isEmpty()) {
            return limit(limit) + (bare ? "" : ", in " + symbol);
        }
        String number =
                limit instanceof Rule.Constant constant
                        ? constant.number().written()
                        : Decimals.plain(value.getAsDouble(), unit.decimals());
        return number + (bare ? "" : " " + symbol) + Decimals.asRatio(value.getAsDouble(), unit);
    }

    /** Of a limit that nothing in the job changes. */
    private static OptionalDouble value(Rule.Limit limit) {
        if (limit instanceof Rule.Constant constant) {
            return OptionalDouble.of(constant.number().value());
        }
        if (!(limit instanceof Rule.Arithmetic sum)) {
            return OptionalDouble.empty();
        }
        OptionalDouble left = value(sum.left());
        OptionalDouble right = value(sum.right());
        if (left.isEmpty() || right.isEmpty()) {
            return OptionalDouble.empty();
        }
        double a = left.getAsDouble();
        double b = right.getAsDouble();
        double result =
                switch (sum.operator()) {
                    case '+' -> a + b;
                    case '-' -> a - b;
                    case '*' -> a * b;
                    default -> a / b;
                };
        return Double.isFinite(result) ? OptionalDouble.of(result) : OptionalDouble.empty();
    }

    private String limit(Rule.Limit limit) {
        if (limit instanceof Rule.Constant constant) {
            return constant.number().written();
        }
        if (limit instanceof Rule.Bound bound) {
            return name(bound);
        }
        if (limit instanceof Rule.Lookup lookup) {
            return lookup.keys().stream()
                    .map(this::key)
                    .collect(Collectors.joining(" and ", "table " + lookup.table() + " by ", ""));
        }
        Rule.Arithmetic sum = (Rule.Arithmetic) limit;
        String sign = sum.operator() == '*' ? "×" : String.valueOf(sum.operator());
        return within(sum.left(), sum) + " " + sign + " " + within(sum.right(), sum);
    }

    /** A product within a product or a sum reads well as it is; all else is held together. */
    private String within(Rule.Limit part, Rule.Arithmetic whole) {
        boolean plain =
                part instanceof Rule.Constant
                        || part instanceof Rule.Bound
                        || (part instanceof Rule.Arithmetic inner
                                && part == whole.left()
                                && (inner.operator() == '*'
                                        || inner.operator() == '/'
                                        || whole.operator() == '+'
                                        || whole.operator() == '-'));
        return plain ? limit(part) : "(" + limit(part) + ")";
    }

    private String key(Rule.Key key) {
        return key instanceof Rule.Bound bound ? name(bound) : RuleText.key(key);
    }

    private String name(Rule.Bound bound) {
        return names.getOrDefault(bound.variable(), bound.variable());
    }
}
