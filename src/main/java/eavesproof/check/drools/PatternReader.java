package eavesproof.check.drools;

import eavesproof.rules.Rule;
import eavesproof.survey.FactKind;
import eavesproof.survey.Vocabulary;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.ExprConstraintDescr;
import org.drools.drl.ast.descr.PatternDescr;

/**
 * Reads the patterns of one rule, the subject first, and checks them against the vocabulary.
 *
 * <p>A circumstance joins by every one of its keys, each with the subject's key of that name, so
 * that a subject has at most one answer to it. A subject has no condition on its own measure, and
 * does not bind it either: a limit made from what it limits would always be met.
 */
final class PatternReader {
    private final Scope scope;
    private final Problems problems;
    private final Set<String> kinds = new HashSet<>();
    private boolean first = true;

    PatternReader(Scope scope, Problems problems) {
        this.scope = scope;
        this.problems = problems;
    }

    /** The pattern, or nothing where something is wrong with it. */
    Optional<Rule.Pattern> read(PatternDescr parsed) {
        boolean subject = first;
        first = false;
        int line = parsed.getLine();
        if (!isPlain(parsed)) {
            problems.add(line, "a pattern with more to it", "Kind(field op value, ...)");
            return Optional.empty();
        }
        String name = String.valueOf(parsed.getObjectType());
        Optional<FactKind> known = Vocabulary.kind(name);
        if (known.isEmpty()) {
            List<String> names = Vocabulary.kinds().stream().map(FactKind::name).toList();
            problems.add(line, "the fact kind " + name, Nearest.to(name, names));
            return Optional.empty();
        }
        FactKind kind = known.get();
        if (!kinds.add(name)) {
            problems.add(line, name + " again", "one pattern for each fact kind");
        }
        String variable = variable(parsed, kind, subject);
        List<Rule.Condition> conditions = new ArrayList<>();
        for (BaseDescr part : parsed.getDescrs()) {
            condition(part, kind, subject).ifPresent(conditions::add);
        }
        if (!subject) {
            joined(line, kind, conditions);
        }
        return Optional.of(new Rule.Pattern(name, variable, conditions));
    }

    private static boolean isPlain(PatternDescr parsed) {
        boolean generic =
                parsed.getGenericType() != null
                        && parsed.getGenericType().getRawType() != null
                        && !parsed.getGenericType().getRawType().equals(parsed.getObjectType());
        return !parsed.isQuery()
                && !generic
                && !parsed.isUnification()
                && parsed.getSource() == null
                && parsed.getBehaviors().isEmpty()
                && parsed.getAnnotations().isEmpty();
    }

    private String variable(PatternDescr parsed, FactKind kind, boolean subject) {
        String variable = parsed.getIdentifier() == null ? "" : parsed.getIdentifier();
        if (subject && !variable.startsWith("$")) {
            problems.add(
                    parsed.getLine(),
                    "a subject without a variable",
                    "the subject first, bound to one: $subject : " + kind.name() + "(...)");
        } else if (subject) {
            scope.subject(kind, variable);
        } else if (!variable.isEmpty()) {
            problems.add(parsed.getLine(), variable, "a variable on the subject only");
        }
        return variable;
    }

    private Optional<Rule.Condition> condition(BaseDescr part, FactKind kind, boolean subject) {
        if (part.getClass() != ExprConstraintDescr.class
                || ((ExprConstraintDescr) part).getType() != ExprConstraintDescr.Type.NAMED) {
            problems.add(part.getLine(), "a condition by position", "field op value");
            return Optional.empty();
        }
        String text = ((ExprConstraintDescr) part).getExpression();
        List<Token> words = Tokens.of(text, problems).words();
        int line = part.getLine();
        if (words.size() == 3 && words.get(0).kind() == Token.Kind.VARIABLE && at(words, 1, ":")) {
            return bind(line, words.get(0).text(), words.get(2).text(), kind, subject);
        }
        if (words.size() == 3
                && words.get(2).kind() == Token.Kind.VARIABLE
                && words.get(0).kind() == Token.Kind.NAME
                && at(words, 1, "==")) {
            return join(line, words.get(0).text(), words.get(2).text(), kind, subject);
        }
        if (words.size() >= 3 && words.get(0).kind() == Token.Kind.NAME) {
            return new ComparisonReader(kind, problems).read(line, text, words, subject);
        }
        problems.add(line, text, "field op value, $name : field, or key == $name");
        return Optional.empty();
    }

    private static boolean at(List<Token> words, int index, String sign) {
        return words.get(index).is(sign);
    }

    private Optional<Rule.Condition> bind(
            int line, String variable, String field, FactKind kind, boolean subject) {
        List<String> allowed = subject ? kind.keys() : List.of(kind.measure());
        if (!allowed.contains(field)) {
            problems.add(
                    line,
                    variable + " : " + field,
                    subject
                            ? "a key of the subject (" + String.join(", ", kind.keys()) + ")"
                            : "the measure of a circumstance: " + kind.measure());
            return Optional.empty();
        }
        if (!scope.bind(variable, kind, field)) {
            problems.add(line, variable + " again", "each variable bound once");
        }
        return Optional.of(new Rule.Bind(variable, field));
    }

    private Optional<Rule.Condition> join(
            int line, String field, String variable, FactKind kind, boolean subject) {
        boolean ofSubject = scope.subject().isEmpty() || isOfSubject(field, variable);
        if (subject || !kind.keys().contains(field) || !ofSubject) {
            problems.add(
                    line,
                    field + " == " + variable,
                    "a key of the circumstance, joined to the subject's key of that name");
            return Optional.empty();
        }
        return Optional.of(new Rule.Join(field, variable));
    }

    private boolean isOfSubject(String field, String variable) {
        return scope.variable(variable)
                .filter(bound -> Optional.of(bound.kind()).equals(scope.subject()))
                .filter(bound -> bound.field().equals(field))
                .isPresent();
    }

    private void joined(int line, FactKind kind, List<Rule.Condition> conditions) {
        List<String> joins =
                conditions.stream()
                        .filter(Rule.Join.class::isInstance)
                        .map(Rule.Condition::field)
                        .sorted()
                        .toList();
        if (!joins.equals(kind.keys().stream().sorted().toList())) {
            problems.add(
                    line,
                    kind.name() + " joined by " + (joins.isEmpty() ? "nothing" : joins),
                    "each of its keys joined once to the subject's: " + kind.keys());
        }
    }
}
