package eavesproof.check.drools;

import eavesproof.quantity.Unit;
import eavesproof.rules.Rule;
import eavesproof.survey.FactKind;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads {@code field op literal} and checks that the literal is one that the field could have. */
final class ComparisonReader {
    private final FactKind kind;
    private final Problems problems;

    ComparisonReader(FactKind kind, Problems problems) {
        this.kind = kind;
        this.problems = problems;
    }

    Optional<Rule.Condition> read(int line, String text, List<Token> words, boolean subject) {
        String field = words.get(0).text();
        if (!field.equals(kind.measure())) {
            problems.add(line, text, expectedField(field));
            return Optional.empty();
        }
        if (subject) {
            problems.add(line, text, "no condition on what the rule itself judges");
            return Optional.empty();
        }
        Optional<Rule.Operator> operator = operator(words.get(1));
        Optional<Rule.Literal> literal =
                kind.isNumber()
                        ? number(words.subList(2, words.size())).map(Rule.Literal.class::cast)
                        : word(words.subList(2, words.size())).map(Rule.Literal.class::cast);
        if (operator.isEmpty() || literal.isEmpty() || !fits(operator.get())) {
            problems.add(line, text, expectedComparison());
            return Optional.empty();
        }
        return Optional.of(new Rule.Compare(field, operator.get(), literal.get()));
    }

    /** A number as the plain form writes it, with or without a minus. */
    static Optional<Rule.Num> number(List<Token> words) {
        boolean minus = words.size() == 2 && words.get(0).is("-");
        Token last = words.get(words.size() - 1);
        if (last.kind() != Token.Kind.NUMBER || words.size() != (minus ? 2 : 1)) {
            return Optional.empty();
        }
        String written = (minus ? "-" : "") + last.text();
        return Optional.of(new Rule.Num(Double.parseDouble(written), written));
    }

    private Optional<Rule.Text> word(List<Token> words) {
        Token only = words.get(0);
        boolean known =
                words.size() == 1
                        && only.kind() == Token.Kind.STRING
                        && kind.words().contains(only.text());
        return known ? Optional.of(new Rule.Text(only.text())) : Optional.empty();
    }

    private static Optional<Rule.Operator> operator(Token word) {
        return Arrays.stream(Rule.Operator.values())
                .filter(operator -> word.is(operator.sign()))
                .findFirst();
    }

    /** A number that was measured is never shown to be exactly something; a count is. */
    private boolean fits(Rule.Operator operator) {
        boolean equal = operator == Rule.Operator.EQUAL;
        return kind.isNumber() ? !equal || isCount() : equal;
    }

    private boolean isCount() {
        return kind.unit().filter(Unit.COUNT::equals).isPresent();
    }

    private String expectedField(String field) {
        if (kind.keys().contains(field)) {
            return "no condition on a key but " + field + " == $" + field;
        }
        List<String> fields = new java.util.ArrayList<>(kind.keys());
        fields.add(kind.measure());
        return Nearest.to(field, fields);
    }

    private String expectedComparison() {
        if (kind.isNumber()) {
            String signs = isCount() ? "== < <= > >=" : "< <= > >=";
            return kind.measure() + ", one of " + signs + ", and a number";
        }
        return kind.measure() + " == one of " + String.join(", ", kind.words());
    }
}
