package eavesproof.check;

import eavesproof.check.Requirement.Limit;
import eavesproof.check.Requirement.NoLimit;
import eavesproof.check.Requirement.NumberLimit;
import eavesproof.check.Requirement.WordLimit;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.rules.Rule;
import eavesproof.survey.FactKind;
import eavesproof.survey.Measure;
import eavesproof.survey.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Evaluates the tree of a limit on what its rule has bound. Where a key of a table lies so near the
 * edge of a band that several rows may be meant, the strictest limit counts, and that is said: a
 * limit that may be another is never shown to be missed.
 */
final class LimitEvaluator {
    /** Far more than any table gives; beyond it nobody could say which row decided. */
    private static final int MOST_WAYS = 64;

    private final Map<String, Measure> bound;
    private final Set<String> near = new LinkedHashSet<>();

    private LimitEvaluator(Map<String, Measure> bound) {
        this.bound = bound;
    }

    /**
     * @param near keys of tables that lie within their uncertainty of another row
     */
    record Evaluated(Limit limit, List<String> near) {}

    /** One value that the limit may have. */
    private record Reckoned(Uncertain value, List<Working> workings) {}

    /** The limit in the unit of the subject's measure, or why there is none. */
    static Evaluated evaluate(Rule.Demand demand, FactKind subject, Map<String, Measure> bound) {
        LimitEvaluator evaluator = new LimitEvaluator(bound);
        try {
            return new Evaluated(evaluator.limit(demand, subject), List.copyOf(evaluator.near));
        } catch (CannotTell reason) {
            return none(reason.why());
        } catch (IllegalArgumentException | ArithmeticException reason) {
            return none("the limit cannot be computed: " + reason.getMessage());
        }
    }

    private static Evaluated none(String why) {
        return new Evaluated(new NoLimit(why), List.of());
    }

    private Limit limit(Rule.Demand demand, FactKind subject) throws CannotTell {
        if (demand instanceof Rule.AtMost most) {
            return number(most.limit(), most.unit(), subject, false);
        }
        if (demand instanceof Rule.AtLeast least) {
            return number(least.limit(), least.unit(), subject, true);
        }
        if (demand instanceof Rule.OneOfTable choice) {
            return words(lookedUp(choice.lookup()));
        }
        return new WordLimit(((Rule.OneOf) demand).words());
    }

    private Limit number(Rule.Limit tree, String symbol, FactKind subject, boolean greatest)
            throws CannotTell {
        Unit unit = Unit.of(symbol).orElseThrow();
        Unit measured = subject.unit().orElseThrow();
        Comparator<Reckoned> byValue = Comparator.comparingDouble(one -> one.value().value());
        Reckoned written =
                value(tree).stream().max(greatest ? byValue : byValue.reversed()).orElseThrow();
        Uncertain value = written.value().times(unit.convert(1, measured));
        // A constant is converted as a number, so that 500 mm stays exactly 500 mm.
        if (tree instanceof Rule.Constant constant) {
            value = Uncertain.exact(unit.convert(constant.number().value(), measured));
        }
        String text = text(tree, written.value(), unit);
        return new NumberLimit(value, measured, text, written.workings());
    }

    /** What every row that may be meant allows. */
    private static Limit words(List<TableLookup.Found> rows) {
        List<String> allowed = new ArrayList<>(rows.get(0).words());
        rows.forEach(row -> allowed.retainAll(row.words()));
        return new WordLimit(allowed);
    }

    private static String text(Rule.Limit tree, Uncertain value, Unit unit) {
        if (tree instanceof Rule.Constant constant) {
            String number = constant.number().written();
            return unit.after(number);
        }
        return Decimals.with(value.value(), unit);
    }

    private List<Reckoned> value(Rule.Limit tree) throws CannotTell {
        if (tree instanceof Rule.Constant constant) {
            return List.of(new Reckoned(Uncertain.exact(constant.number().value()), List.of()));
        }
        if (tree instanceof Rule.Bound variable) {
            return List.of(new Reckoned(number(variable), List.of()));
        }
        if (tree instanceof Rule.Lookup lookup) {
            return lookedUp(lookup).stream()
                    .map(row -> new Reckoned(row.number(), List.of(row.working())))
                    .toList();
        }
        Rule.Arithmetic sum = (Rule.Arithmetic) tree;
        List<Reckoned> results = new ArrayList<>();
        List<Reckoned> rights = value(sum.right());
        for (Reckoned left : value(sum.left())) {
            rights.forEach(right -> results.add(reckoned(sum.operator(), left, right)));
        }
        if (results.size() > MOST_WAYS) {
            throw new CannotTell("too many rows of the tables may be meant");
        }
        return results;
    }

    private Uncertain number(Rule.Bound variable) throws CannotTell {
        if (bound.get(variable.variable()) instanceof Measure.Number number) {
            return number.value();
        }
        throw notRecorded(variable);
    }

    private static CannotTell notRecorded(Rule.Bound variable) {
        return new CannotTell(
                "the limit needs a value that is not recorded (" + variable.variable() + ")");
    }

    private static Reckoned reckoned(char operator, Reckoned left, Reckoned right) {
        Uncertain a = left.value();
        Uncertain b = right.value();
        Uncertain result =
                switch (operator) {
                    case '+' -> a.plus(b);
                    case '-' -> a.minus(b);
                    case '*' -> a.times(b);
                    case '/' -> a.over(b);
                    default -> throw new IllegalStateException("operator " + operator);
                };
        String from =
                Decimals.plain(a.value(), 6) + " " + operator + " " + Decimals.plain(b.value(), 6);
        Working step = new Working("limit", Decimals.plain(result.value(), 6), from);
        return new Reckoned(
                result,
                Stream.of(left.workings(), right.workings(), List.of(step))
                        .flatMap(List::stream)
                        .toList());
    }

    private List<TableLookup.Found> lookedUp(Rule.Lookup lookup) throws CannotTell {
        List<Measure> keys = new ArrayList<>();
        for (int i = 0; i < lookup.keys().size(); i++) {
            keys.add(key(lookup, i));
        }
        TableLookup in = new TableLookup(lookup.figures().orElseThrow(), keys);
        List<TableLookup.Found> rows = in.rows();
        near.addAll(in.near());
        return rows;
    }

    private Measure key(Rule.Lookup lookup, int index) throws CannotTell {
        Rule.Key key = lookup.keys().get(index);
        if (key instanceof Rule.Bound variable) {
            Measure measure = bound.get(variable.variable());
            if (measure == null) {
                throw notRecorded(variable);
            }
            return measure;
        }
        if (key instanceof Rule.Num number) {
            Unit unit = lookup.figures().orElseThrow().keys().get(index).unit().orElseThrow();
            return new Measure.Number(Uncertain.exact(number.value()), unit);
        }
        return new Measure.Word(((Rule.Text) key).word());
    }
}
