package eavesproof.check.drools;

import java.util.List;
import java.util.Optional;

/** The words of one line, taken one after the other. */
final class Words {
    /** A word that does not belong there. */
    static final class Unexpected extends Exception {
        private static final long serialVersionUID = 1L;

        private final int line;
        private final String found;
        private final String expected;

        private Unexpected(int line, String found, String expected) {
            super(found);
            this.line = line;
            this.found = found;
            this.expected = expected;
        }

        int line() {
            return line;
        }

        String found() {
            return found;
        }

        String expected() {
            return expected;
        }
    }

    private final List<Token> words;
    private final int firstLine;
    private int at;

    /**
     * @param firstLine of the file, where the words count their own from 1
     */
    Words(List<Token> words, int firstLine) {
        this.words = words;
        this.firstLine = firstLine;
    }

    Token next(String expected) throws Unexpected {
        if (at == words.size()) {
            throw unexpected(words.get(at - 1), expected);
        }
        return words.get(at++);
    }

    /** The next word if it is one of these signs. */
    Optional<Token> take(String... signs) {
        boolean one = at < words.size() && List.of(signs).stream().anyMatch(words.get(at)::is);
        return one ? Optional.of(words.get(at++)) : Optional.empty();
    }

    /** Whether the next word was that name, which is then taken. */
    boolean takeName(String name) {
        boolean there = at < words.size() && words.get(at).isName(name);
        at += there ? 1 : 0;
        return there;
    }

    void sign(String sign, String expected) throws Unexpected {
        Token token = next(expected);
        if (!token.is(sign)) {
            throw unexpected(token, expected);
        }
    }

    void name(String name, String expected) throws Unexpected {
        Token token = next(expected);
        if (!token.isName(name)) {
            throw unexpected(token, expected);
        }
    }

    Token string(String expected) throws Unexpected {
        Token token = next(expected);
        if (token.kind() != Token.Kind.STRING) {
            throw unexpected(token, expected);
        }
        return token;
    }

    void end(String expected) throws Unexpected {
        if (at < words.size()) {
            throw unexpected(words.get(at), expected);
        }
    }

    Unexpected unexpected(Token token, String expected) {
        return new Unexpected(firstLine + token.line() - 1, token.shown(), expected);
    }
}
