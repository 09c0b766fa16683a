package eavesproof.rules;

import java.util.List;
import java.util.Optional;

/**
 * One rule of a rule set as a value: which subject, under which circumstances, must meet what.
 *
 * @param says the requirement in words for people
 * @param source where it comes from
 * @param decision overrides the rule set's decision rule
 * @param file and {@code line} where it was read
 */
public record Rule(
        String name,
        String topic,
        String says,
        Cited source,
        Optional<Decision> decision,
        Pattern subject,
        List<Pattern> circumstances,
        Demand demand,
        String file,
        int line) {

    public Rule {
        circumstances = List.copyOf(circumstances);
    }

    /** The same rule with its source settled. */
    public Rule citing(Cited settled) {
        return new Rule(
                name, topic, says, settled, decision, subject, circumstances, demand, file, line);
    }

    /** The same rule with another demand. */
    Rule demanding(Demand now) {
        return new Rule(
                name, topic, says, source, decision, subject, circumstances, now, file, line);
    }

    /** A document of the rule set by its key, and the clause in it (may be empty). */
    public record Cited(String document, String clause) {
        /** As {@code @source} has it. */
        public String text() {
            return clause.isEmpty() ? document : document + " " + clause;
        }
    }

    /**
     * A fact kind by name, with what is asked of its components.
     *
     * @param variable what the subject is bound to ("$spacing"); empty for a circumstance
     */
    public record Pattern(String kind, String variable, List<Condition> conditions) {
        public Pattern {
            conditions = List.copyOf(conditions);
        }
    }

    /** What a pattern asks of one component. */
    public sealed interface Condition {
        String field();
    }

    /** {@code field op literal}; the literal is a number, or a word with the operator EQUAL. */
    public record Compare(String field, Operator operator, Literal literal) implements Condition {}

    /** {@code $variable : field}. */
    public record Bind(String variable, String field) implements Condition {}

    /** {@code key == $variable}. */
    public record Join(String field, String variable) implements Condition {}

    public enum Operator {
        EQUAL("=="),
        LESS("<"),
        AT_MOST("<="),
        MORE(">"),
        AT_LEAST(">=");

        private final String sign;

        Operator(String sign) {
            this.sign = sign;
        }

        public String sign() {
            return sign;
        }
    }

    public sealed interface Literal {}

    /** A number as written, so that it prints again as it was written. */
    public record Num(double value, String written) implements Literal, Key {}

    public record Text(String word) implements Literal, Key {}

    /** What is demanded of the subject's measure. */
    public sealed interface Demand {}

    public record AtMost(Limit limit, String unit) implements Demand {}

    public record AtLeast(Limit limit, String unit) implements Demand {}

    public record OneOf(List<String> words) implements Demand {
        public OneOf {
            words = List.copyOf(words);
        }
    }

    /** The words are those that a table answers. */
    public record OneOfTable(Lookup lookup) implements Demand {}

    /** The tree of a limit: a number, a bound number, a table, or arithmetic on them. */
    public sealed interface Limit {}

    /** What a table is entered with: a number or word of a circumstance, or one as written. */
    public sealed interface Key {}

    public record Constant(Num number) implements Limit {}

    public record Bound(String variable) implements Limit, Key {}

    /**
     * @param operator one of + - * /
     */
    public record Arithmetic(char operator, Limit left, Limit right) implements Limit {}

    /**
     * What a table answers.
     *
     * @param figures the table itself; empty until the folder of the rule has been read
     */
    public record Lookup(String table, List<Key> keys, Optional<Table> figures) implements Limit {
        public Lookup {
            keys = List.copyOf(keys);
        }
    }
}
