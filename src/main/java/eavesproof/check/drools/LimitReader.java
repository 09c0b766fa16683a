package eavesproof.check.drools;

import eavesproof.quantity.Unit;
import eavesproof.rules.Rule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads a limit: a number, a bound number, a table, or arithmetic on them, products before sums and
 * from left to right. How deep it may go was settled when the words were taken apart.
 */
final class LimitReader {
    private static final String FORM =
            "a number, a bound $variable, table(\"name\", $key), or + - * / and parentheses on them";

    private static final String TABLE =
            "table(\"name\", its keys: $variables, numbers or \"words\")";
    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9.-]{0,60}");
    private static final int MOST_KEYS = 5;

    private final Scope scope;
    private final Words words;
    private final List<Scope.Bound> used = new ArrayList<>();

    LimitReader(Scope scope, Words words) {
        this.scope = scope;
        this.words = words;
    }

    Rule.Limit read() throws Words.Unexpected {
        Rule.Limit left = product();
        for (Optional<Token> sign = words.take("+", "-");
                sign.isPresent();
                sign = words.take("+", "-")) {
            left = new Rule.Arithmetic(sign.get().text().charAt(0), left, product());
        }
        return left;
    }

    /**
     * A bound length in mm and a limit in inches would meet as bare numbers, so that 125 mm became
     * 125 in: within one dimension there is one unit.
     */
    void mustBeIn(Unit unit, Token symbol) throws Words.Unexpected {
        for (Scope.Bound bound : used) {
            Unit own = bound.kind().unit().orElseThrow();
            if (own.dimension() == unit.dimension() && own != unit) {
                throw words.unexpected(symbol, own.symbol() + ", the unit of " + bound.field());
            }
        }
    }

    private Rule.Limit product() throws Words.Unexpected {
        Rule.Limit left = atom();
        for (Optional<Token> sign = words.take("*", "/");
                sign.isPresent();
                sign = words.take("*", "/")) {
            Rule.Limit right = atom();
            if (sign.get().is("/") && isZero(right)) {
                throw words.unexpected(sign.get(), "no division by zero");
            }
            left = new Rule.Arithmetic(sign.get().text().charAt(0), left, right);
        }
        return left;
    }

    private Rule.Limit atom() throws Words.Unexpected {
        Token token = words.next(FORM);
        if (token.is("(")) {
            Rule.Limit within = read();
            words.sign(")", FORM);
            return within;
        }
        if (token.is("-")) {
            return constant(List.of(token, words.next(FORM)));
        }
        if (token.kind() == Token.Kind.VARIABLE) {
            return bound(token);
        }
        return token.isName("table") ? lookup() : constant(List.of(token));
    }

    /** What stands after the word table. */
    Rule.Lookup lookup() throws Words.Unexpected {
        words.sign("(", TABLE);
        Token name = words.string(TABLE);
        if (!NAME.matcher(name.text()).matches()) {
            throw words.unexpected(name, "the name of a table: its file without .csv");
        }
        List<Rule.Key> keys = new ArrayList<>();
        while (words.take(",").isPresent()) {
            Token key = words.next(TABLE);
            keys.add(key(key));
            if (keys.size() > MOST_KEYS) {
                throw words.unexpected(key, "at most " + MOST_KEYS + " keys");
            }
        }
        if (keys.isEmpty()) {
            throw words.unexpected(name, TABLE);
        }
        words.sign(")", TABLE);
        return new Rule.Lookup(name.text(), keys, Optional.empty());
    }

    private Rule.Key key(Token token) throws Words.Unexpected {
        if (token.kind() == Token.Kind.STRING) {
            return new Rule.Text(token.text());
        }
        if (token.kind() == Token.Kind.VARIABLE) {
            if (scope.variable(token.text()).filter(LimitReader::isMeasure).isEmpty()) {
                throw words.unexpected(token, "a variable bound to what a circumstance measures");
            }
            return new Rule.Bound(token.text());
        }
        Optional<Rule.Num> number = ComparisonReader.number(List.of(token));
        if (number.isEmpty()) {
            throw words.unexpected(token, TABLE);
        }
        return number.get();
    }

    private static boolean isMeasure(Scope.Bound variable) {
        return variable.field().equals(variable.kind().measure());
    }

    private Rule.Limit constant(List<Token> written) throws Words.Unexpected {
        Optional<Rule.Num> number = ComparisonReader.number(written);
        if (number.isEmpty()) {
            throw words.unexpected(written.get(0), FORM);
        }
        return new Rule.Constant(number.get());
    }

    private Rule.Limit bound(Token token) throws Words.Unexpected {
        Optional<Scope.Bound> bound =
                scope.variable(token.text())
                        .filter(variable -> variable.kind().isNumber())
                        .filter(LimitReader::isMeasure);
        if (bound.isEmpty()) {
            throw words.unexpected(token, "a variable bound to the number of a circumstance");
        }
        used.add(bound.get());
        return new Rule.Bound(token.text());
    }

    private static boolean isZero(Rule.Limit limit) {
        return limit instanceof Rule.Constant constant && constant.number().value() == 0;
    }
}
