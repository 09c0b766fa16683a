package eavesproof.check.drools;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A rule file taken apart into words by a lexer of our own, which knows no more than the plain form
 * needs: no escapes, no single quotes, no exponents, no octal numbers.
 *
 * @param words all of them, in order
 * @param bare the text without its comments, every line still in its place, so that the parser of
 *     Drools never meets a comment and cannot differ from us over where it ends
 */
record Tokens(List<Token> words, String bare) {
    /** Deep nesting overflows the stack of the parser that comes next. */
    private static final int DEEPEST = 8;

    private static final String EXPECTED =
            "words, $variables, numbers, \"text\" and the signs ( ) , ; : @ . + - * / < <= > >= ==";

    private static final Pattern WORD =
            Pattern.compile(
                    "(?<comment>//[^\\n]*|/\\*(?s:.*?)\\*/)"
                            + "|(?<blank>[ \\t\\r\\n]+)"
                            + "|(?<string>\"[^\"\\n]*\")"
                            + "|(?<variable>\\$[a-z][A-Za-z0-9]{0,30}(?![A-Za-z0-9_$]))"
                            + "|(?<number>(0|[1-9][0-9]{0,8})(\\.[0-9]{1,6})?(?![A-Za-z0-9_.$]))"
                            + "|(?<name>[A-Za-z][A-Za-z0-9]{0,60}(?![A-Za-z0-9_$]))"
                            + "|(?<sign>==|<=|>=|[(),;:@.+*/<>-])");

    /** What is no word of the plain form becomes a problem, and ends the reading. */
    static Tokens of(String text, Problems problems) {
        List<Token> words = new ArrayList<>();
        StringBuilder bare = new StringBuilder();
        Matcher matcher = WORD.matcher(text);
        int line = 1;
        int depth = 0;
        for (int at = 0; at < text.length(); at = matcher.end()) {
            if (!matcher.region(at, text.length()).lookingAt()) {
                problems.add(line, startOf(text, at), EXPECTED);
                break;
            }
            String piece = matcher.group();
            boolean comment = matcher.group("comment") != null;
            bare.append(comment ? piece.replaceAll("[^\\n]", " ") : piece);
            if (!comment && matcher.group("blank") == null) {
                Token word = new Token(kind(matcher), unquoted(piece), line);
                words.add(word);
                depth += word.is("(") ? 1 : word.is(")") ? -1 : 0;
                if (depth < 0 || depth > DEEPEST) {
                    problems.add(line, "a parenthesis too many", "at most " + DEEPEST + " deep");
                    break;
                }
            }
            line += (int) piece.chars().filter(c -> c == '\n').count();
        }
        return new Tokens(words, bare.toString());
    }

    /** The line of what follows the first such name on that line or below it. */
    int lineAfter(String name, int line) {
        boolean seen = false;
        for (Token word : words) {
            if (seen) {
                return word.line();
            }
            seen = word.line() >= line && word.isName(name);
        }
        return line;
    }

    private static Token.Kind kind(Matcher matcher) {
        for (Token.Kind kind : Token.Kind.values()) {
            if (matcher.group(kind.name().toLowerCase(java.util.Locale.ROOT)) != null) {
                return kind;
            }
        }
        throw new IllegalStateException("no kind of word: " + matcher.group());
    }

    private static String unquoted(String piece) {
        return piece.startsWith("\"") ? piece.substring(1, piece.length() - 1) : piece;
    }

    private static String startOf(String text, int at) {
        String rest = text.substring(at, Math.min(text.length(), at + 20));
        return rest.lines().findFirst().orElse("").strip();
    }
}
