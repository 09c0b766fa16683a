package eavesproof.exchange;

import eavesproof.rules.Decision;
import eavesproof.rules.Rule;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads what {@link RuleSheet} wrote, and takes nothing else. */
final class SheetReader {
    private SheetReader() {}

    static List<Rule> read(String file, byte[] sheet) {
        Problems problems = new Problems();
        Found rules = LocatedJson.read(sheet, problems);
        if (rules == null || !problems.none() || !(rules.value() instanceof List<?>)) {
            throw fault("another text");
        }
        return rules.items().stream().map(rule -> rule(file, rule)).toList();
    }

    private static Rule rule(String file, Found rule) {
        return new Rule(
                text(rule, "name"),
                text(rule, "topic"),
                text(rule, "says"),
                new Rule.Cited(text(rule, "document"), text(rule, "clause")),
                Optional.ofNullable(rule.number("guard")).map(Decision::new),
                pattern(need(rule, "subject")),
                need(rule, "circumstances").items().stream().map(SheetReader::pattern).toList(),
                demand(need(rule, "demand")),
                file,
                line(rule));
    }

    private static int line(Found rule) {
        Double line = rule.number("line");
        if (line == null) {
            throw fault("no line");
        }
        return line.intValue();
    }

    private static Rule.Pattern pattern(Found pattern) {
        return new Rule.Pattern(
                text(pattern, "kind"),
                text(pattern, "variable"),
                need(pattern, "conditions").items().stream().map(SheetReader::condition).toList());
    }

    private static Rule.Condition condition(Found condition) {
        String field = text(condition, "field");
        String bind = condition.text("bind");
        String join = condition.text("join");
        if (bind != null) {
            return new Rule.Bind(bind, field);
        }
        if (join != null) {
            return new Rule.Join(field, join);
        }
        String sign = text(condition, "operator");
        Rule.Operator operator =
                Arrays.stream(Rule.Operator.values())
                        .filter(one -> one.sign().equals(sign))
                        .findFirst()
                        .orElseThrow(() -> fault("the operator " + sign));
        String number = condition.text("number");
        Rule.Literal literal =
                number != null ? number(number) : new Rule.Text(text(condition, "word"));
        return new Rule.Compare(field, operator, literal);
    }

    private static Rule.Demand demand(Found demand) {
        Found most = demand.at("at_most");
        Found least = demand.at("at_least");
        if (most != null) {
            return new Rule.AtMost(limit(most), text(demand, "unit"));
        }
        if (least != null) {
            return new Rule.AtLeast(limit(least), text(demand, "unit"));
        }
        Found table = demand.at("one_of_table");
        if (table != null) {
            return new Rule.OneOfTable(lookup(table));
        }
        return new Rule.OneOf(
                need(demand, "one_of").items().stream().map(SheetReader::string).toList());
    }

    private static Rule.Limit limit(Found limit) {
        if (limit.value() instanceof String written) {
            return written.startsWith("$")
                    ? new Rule.Bound(written)
                    : new Rule.Constant(number(written));
        }
        if (limit.at("table") != null) {
            return lookup(limit);
        }
        List<Found> parts = limit.items();
        if (parts.size() != 3) {
            throw fault("a limit of " + parts.size() + " parts");
        }
        char operator = string(parts.get(0)).charAt(0);
        return new Rule.Arithmetic(operator, limit(parts.get(1)), limit(parts.get(2)));
    }

    private static Rule.Lookup lookup(Found limit) {
        return new Rule.Lookup(
                text(limit, "table"),
                need(limit, "keys").items().stream().map(SheetReader::key).toList(),
                Optional.empty());
    }

    private static Rule.Key key(Found key) {
        String written = string(key);
        if (written.startsWith("$")) {
            return new Rule.Bound(written);
        }
        return written.startsWith("\"")
                ? new Rule.Text(written.substring(1, written.length() - 1))
                : number(written);
    }

    private static Rule.Num number(String written) {
        return new Rule.Num(Double.parseDouble(written), written);
    }

    private static Found need(Found object, String key) {
        return there(object.at(key), key);
    }

    private static String text(Found object, String key) {
        return there(object.text(key), key);
    }

    private static String string(Found found) {
        return there(found.value() instanceof String text ? text : null, "text");
    }

    private static <T> T there(@Nullable T value, String key) {
        if (value == null) {
            throw fault("no " + key);
        }
        return value;
    }

    private static IllegalStateException fault(String found) {
        return new IllegalStateException("a sheet of rules has " + found);
    }
}
