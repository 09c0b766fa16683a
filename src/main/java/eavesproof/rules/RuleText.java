package eavesproof.rules;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A rule printed in the plain form of the rule files; what is read back from it is the same rule.
 */
public final class RuleText {
    private static final int SUM = 1;
    private static final int PRODUCT = 2;
    private static final int ATOM = 3;

    private RuleText() {}

    /** The rules one after the other, as a rule file has them. */
    public static String of(List<Rule> rules) {
        return rules.stream().map(RuleText::of).collect(Collectors.joining("\n"));
    }

    public static String of(Rule rule) {
        StringBuilder text = new StringBuilder();
        text.append("rule \"").append(rule.name()).append("\"\n");
        annotation(text, "topic", rule.topic());
        annotation(text, "says", rule.says());
        annotation(text, "source", rule.source().text());
        rule.decision().ifPresent(decision -> annotation(text, "decision", decision(decision)));
        text.append("when\n  ").append(pattern(rule.subject())).append('\n');
        for (Rule.Pattern circumstance : rule.circumstances()) {
            text.append("  ").append(pattern(circumstance)).append('\n');
        }
        text.append("then\n  require.").append(demand(rule)).append(";\nend\n");
        return text.toString();
    }

    /** As {@code @decision} has it: simple, or guarded 1. */
    public static String decision(Decision decision) {
        return decision.text().replace("r=", "");
    }

    /** {@code $spacing : BracketSpacing($run : run)}. */
    public static String pattern(Rule.Pattern pattern) {
        String conditions =
                pattern.conditions().stream()
                        .map(RuleText::condition)
                        .collect(Collectors.joining(", ", "(", ")"));
        String name = pattern.variable().isEmpty() ? "" : pattern.variable() + " : ";
        return name + pattern.kind() + conditions;
    }

    public static String condition(Rule.Condition condition) {
        if (condition instanceof Rule.Bind bind) {
            return bind.variable() + " : " + bind.field();
        }
        if (condition instanceof Rule.Join join) {
            return join.field() + " == " + join.variable();
        }
        Rule.Compare compare = (Rule.Compare) condition;
        String literal =
                compare.literal() instanceof Rule.Num number
                        ? number.written()
                        : "\"" + ((Rule.Text) compare.literal()).word() + "\"";
        return compare.field() + " " + compare.operator().sign() + " " + literal;
    }

    /** What is demanded, as people read it: at most 500 mm. */
    public static String words(Rule.Demand demand) {
        if (demand instanceof Rule.AtMost most) {
            return "at most " + limit(most.limit()) + " " + most.unit();
        }
        if (demand instanceof Rule.AtLeast least) {
            return "at least " + limit(least.limit()) + " " + least.unit();
        }
        if (demand instanceof Rule.OneOfTable choice) {
            return "one of " + limit(choice.lookup());
        }
        return "one of " + String.join(", ", ((Rule.OneOf) demand).words());
    }

    /** The tree of a limit with no more parentheses than it needs. */
    public static String limit(Rule.Limit limit) {
        if (limit instanceof Rule.Constant constant) {
            return constant.number().written();
        }
        if (limit instanceof Rule.Bound bound) {
            return bound.variable();
        }
        if (limit instanceof Rule.Lookup lookup) {
            return lookup.keys().stream()
                    .map(RuleText::key)
                    .collect(Collectors.joining(", ", "table(\"" + lookup.table() + "\", ", ")"));
        }
        Rule.Arithmetic sum = (Rule.Arithmetic) limit;
        int rank = rank(sum);
        String left = within(sum.left(), rank(sum.left()) < rank);
        String right = within(sum.right(), rank(sum.right()) <= rank);
        return left + " " + sum.operator() + " " + right;
    }

    /** As a rule file writes it. */
    public static String key(Rule.Key key) {
        if (key instanceof Rule.Bound bound) {
            return bound.variable();
        }
        return key instanceof Rule.Num number
                ? number.written()
                : "\"" + ((Rule.Text) key).word() + "\"";
    }

    private static String within(Rule.Limit limit, boolean parentheses) {
        return parentheses ? "(" + limit(limit) + ")" : limit(limit);
    }

    private static int rank(Rule.Limit limit) {
        if (limit instanceof Rule.Arithmetic sum) {
            return sum.operator() == '+' || sum.operator() == '-' ? SUM : PRODUCT;
        }
        return ATOM;
    }

    private static String demand(Rule rule) {
        String subject = rule.subject().variable();
        if (rule.demand() instanceof Rule.AtMost most) {
            return call("atMost", subject, limit(most.limit()), most.unit());
        }
        if (rule.demand() instanceof Rule.AtLeast least) {
            return call("atLeast", subject, limit(least.limit()), least.unit());
        }
        if (rule.demand() instanceof Rule.OneOfTable choice) {
            return "oneOf(" + subject + ", " + limit(choice.lookup()) + ")";
        }
        String words = String.join("|", ((Rule.OneOf) rule.demand()).words());
        return String.format(Locale.ROOT, "oneOf(%s, \"%s\")", subject, words);
    }

    private static String call(String name, String subject, String limit, String unit) {
        return String.format(Locale.ROOT, "%s(%s, %s, \"%s\")", name, subject, limit, unit);
    }

    private static void annotation(StringBuilder text, String name, String value) {
        text.append("  @").append(name).append("(\"").append(value).append("\")\n");
    }
}
