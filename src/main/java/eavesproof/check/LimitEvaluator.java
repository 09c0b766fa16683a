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
import eavesproof.survey.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Evaluates the tree of a limit on the numbers that its rule has bound. */
final class LimitEvaluator {
    private final Map<String, Uncertain> bound;
    private final List<Working> workings = new ArrayList<>();

    private LimitEvaluator(Map<String, Uncertain> bound) {
        this.bound = bound;
    }

    /** The limit in the unit of the subject's measure, or why there is none. */
    static Limit evaluate(Rule.Demand demand, FactKind subject, Map<String, Uncertain> bound) {
        if (demand instanceof Rule.AtMost most) {
            return number(most.limit(), most.unit(), subject, bound);
        }
        if (demand instanceof Rule.AtLeast least) {
            return number(least.limit(), least.unit(), subject, bound);
        }
        return new WordLimit(((Rule.OneOf) demand).words());
    }

    private static Limit number(
            Rule.Limit tree, String symbol, FactKind subject, Map<String, Uncertain> bound) {
        Unit unit = Unit.of(symbol).orElseThrow();
        Unit measured = subject.unit().orElseThrow();
        LimitEvaluator evaluator = new LimitEvaluator(bound);
        try {
            Uncertain written = evaluator.value(tree);
            Uncertain value = written.times(unit.convert(1, measured));
            // A constant is converted as a number, so that 500 mm stays exactly 500 mm.
            if (tree instanceof Rule.Constant constant) {
                value = Uncertain.exact(unit.convert(constant.number().value(), measured));
            }
            return new NumberLimit(value, measured, text(tree, written, unit), evaluator.workings);
        } catch (CannotTell reason) {
            return new NoLimit(reason.why);
        } catch (IllegalArgumentException | ArithmeticException reason) {
            return new NoLimit("the limit cannot be computed: " + reason.getMessage());
        }
    }

    private static String text(Rule.Limit tree, Uncertain value, Unit unit) {
        if (tree instanceof Rule.Constant constant) {
            String number = constant.number().written();
            return unit == Unit.COUNT ? number : number + " " + unit.symbol();
        }
        return Decimals.with(value.value(), unit);
    }

    private Uncertain value(Rule.Limit tree) throws CannotTell {
        if (tree instanceof Rule.Constant constant) {
            return Uncertain.exact(constant.number().value());
        }
        if (tree instanceof Rule.Bound variable) {
            Uncertain number = bound.get(variable.variable());
            if (number == null) {
                throw new CannotTell(
                        "the limit needs a value that is not recorded ("
                                + variable.variable()
                                + ")");
            }
            return number;
        }
        Rule.Arithmetic sum = (Rule.Arithmetic) tree;
        Uncertain left = value(sum.left());
        Uncertain right = value(sum.right());
        Uncertain result =
                switch (sum.operator()) {
                    case '+' -> left.plus(right);
                    case '-' -> left.minus(right);
                    case '*' -> left.times(right);
                    case '/' -> left.over(right);
                    default -> throw new IllegalStateException("operator " + sum.operator());
                };
        workings.add(
                new Working(
                        "limit",
                        Decimals.plain(result.value(), 6),
                        Decimals.plain(left.value(), 6)
                                + " "
                                + sum.operator()
                                + " "
                                + Decimals.plain(right.value(), 6)));
        return result;
    }

    private static final class CannotTell extends Exception {
        private static final long serialVersionUID = 1L;

        private final String why;

        CannotTell(String why) {
            super(why);
            this.why = why;
        }
    }
}
