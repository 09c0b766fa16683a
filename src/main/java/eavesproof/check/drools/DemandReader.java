package eavesproof.check.drools;

import eavesproof.quantity.Dimension;
import eavesproof.quantity.Unit;
import eavesproof.rules.Rule;
import eavesproof.survey.FactKind;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/**
 * Reads the one line after {@code then}: {@code require.atMost|atLeast($subject, LIMIT, "unit");}
 * or {@code require.oneOf($subject, "a|b");}, where a table may stand for limit or words. What it
 * cannot use ends the reading.
 */
final class DemandReader {
    private static final int MOST_WORDS = 60;
    private static final String FORM =
            "require.atMost or atLeast($subject, limit, \"unit\"); or require.oneOf($subject, \"a|b\");";

    private final Scope scope;
    private final Problems problems;

    DemandReader(Scope scope, Problems problems) {
        this.scope = scope;
        this.problems = problems;
    }

    /** What is demanded, or nothing where something is wrong with it. */
    Optional<Rule.Demand> read(String then, int line) {
        List<Token> words = Tokens.of(then, problems).words();
        Optional<FactKind> subject = scope.subject();
        if (subject.isEmpty()) {
            return Optional.empty();
        }
        if (words.isEmpty() || words.size() > MOST_WORDS) {
            problems.add(line, words.size() + " words after then", FORM);
            return Optional.empty();
        }
        try {
            return Optional.of(demand(new Words(words, line), subject.get()));
        } catch (Words.Unexpected e) {
            problems.add(e.line(), e.found(), e.expected());
            return Optional.empty();
        }
    }

    private Rule.Demand demand(Words words, FactKind subject) throws Words.Unexpected {
        words.name("require", FORM);
        words.sign(".", FORM);
        Token asked = words.next(FORM);
        boolean most = asked.isName("atMost");
        boolean choice = asked.isName("oneOf");
        if (!most && !choice && !asked.isName("atLeast")) {
            throw words.unexpected(asked, FORM);
        }
        if (choice == subject.isNumber()) {
            throw words.unexpected(
                    asked,
                    subject.isNumber()
                            ? "atMost or atLeast, since " + subject.name() + " is a number"
                            : "oneOf, since " + subject.name() + " is a word");
        }
        words.sign("(", FORM);
        Token of = words.next(FORM);
        if (of.kind() != Token.Kind.VARIABLE || !of.text().equals(scope.subjectVariable())) {
            throw words.unexpected(of, "the subject, " + scope.subjectVariable());
        }
        words.sign(",", FORM);
        Rule.Demand demand = choice ? oneOf(words, subject) : number(words, subject, most);
        words.sign(")", FORM);
        words.sign(";", FORM);
        words.end(FORM);
        return demand;
    }

    private Rule.Demand oneOf(Words words, FactKind subject) throws Words.Unexpected {
        if (words.takeName("table")) {
            return new Rule.OneOfTable(new LimitReader(scope, words).lookup());
        }
        Token text = words.string("words of " + subject.name() + " with | between");
        List<String> choices = List.of(text.text().split("\\|", -1));
        boolean once = new HashSet<>(choices).size() == choices.size();
        if (!once || !subject.words().containsAll(choices)) {
            throw words.unexpected(
                    text, "some of " + String.join("|", subject.words()) + ", each once");
        }
        return new Rule.OneOf(choices);
    }

    private Rule.Demand number(Words words, FactKind subject, boolean most)
            throws Words.Unexpected {
        Unit own = subject.unit().orElseThrow();
        LimitReader reader = new LimitReader(scope, words);
        Rule.Limit limit = reader.read();
        words.sign(
                ",",
                own.dimension() == Dimension.SLOPE
                        ? "a comma and the unit; a fall of 1:400 is 1000 / 400, \"mm/m\""
                        : "a comma and the unit");
        Token symbol = words.string("the unit in quotes");
        Unit unit = Unit.of(symbol.text()).orElse(null);
        if (unit == null) {
            throw words.unexpected(symbol, "one of " + String.join(", ", Unit.symbols()));
        }
        if (unit.dimension() != own.dimension()) {
            throw words.unexpected(symbol, "a unit that " + own.symbol() + " can be turned into");
        }
        reader.mustBeIn(unit, symbol);
        return most
                ? new Rule.AtMost(limit, symbol.text())
                : new Rule.AtLeast(limit, symbol.text());
    }
}
