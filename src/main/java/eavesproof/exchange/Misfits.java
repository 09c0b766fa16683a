package eavesproof.exchange;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import eavesproof.exchange.Shape.Field;
import eavesproof.exchange.Shape.Thing;
import java.io.IOException;
import java.util.Optional;

/**
 * Says what does not fit the shape at the place that the reading has come to. What is lost with it
 * may have given ids, and is no reason to complain of references too.
 */
final class Misfits {
    private final JsonParser in;
    private final Problems problems;
    private final Names names;

    Misfits(JsonParser in, Problems problems, Names names) {
        this.in = in;
        this.problems = problems;
        this.names = names;
    }

    void again(String key, String pointer) {
        add(pointer, "the key " + Shown.quoted(key) + " again", "each key only once");
    }

    void missing(Field key, String pointer, JsonLocation place) {
        names.lost(key.shape().gives());
        add(pointer, place, "no `" + key.name() + "`", key.shape().expected());
    }

    /** A key that this thing does not have. */
    void unknown(Thing thing, String name, String pointer, JsonLocation place) {
        Optional<String> meant = Spelling.meant(name, thing.keys().keySet());
        meant.map(thing.keys()::get).ifPresent(key -> names.lost(key.shape().gives()));
        String keys = "one of the keys " + String.join(", ", thing.keys().keySet());
        String expected =
                meant.map(word -> "`" + word + "`")
                        .or(() -> Spelling.ourWord(name).map(word -> "`" + word + "`; " + keys))
                        .orElse(keys);
        add(pointer, place, "the unknown key " + Shown.quoted(name) + blank(name), expected);
    }

    /** A value that cannot stand here. */
    void value(Shape shape, String pointer) throws IOException {
        String found =
                switch (in.currentToken()) {
                    case START_OBJECT -> "an object";
                    case START_ARRAY -> "a list";
                    case VALUE_STRING -> Shown.quoted(in.getText()) + blank(in.getText());
                    default -> Shown.plain(in.getText());
                };
        names.lost(shape.gives());
        add(pointer, found, expected(shape));
    }

    /** Nobody sees a blank at an end. */
    private static String blank(String text) {
        boolean first = !text.isEmpty() && isBlank(text.charAt(0));
        boolean last = !text.isEmpty() && isBlank(text.charAt(text.length() - 1));
        if (!first && !last) {
            return "";
        }
        String where = first ? (last ? "either end" : "its beginning") : "its end";
        return ", which has a blank at " + where;
    }

    private static boolean isBlank(char letter) {
        return Character.isWhitespace(letter) || Character.isSpaceChar(letter);
    }

    private String expected(Shape shape) throws IOException {
        Optional<String> meant =
                shape instanceof Leaf.Word word && in.hasToken(JsonToken.VALUE_STRING)
                        ? Spelling.meant(in.getText(), word.words())
                        : Optional.empty();
        return meant.map(word -> "`" + word + "`").orElse(shape.expected());
    }

    void add(String pointer, String found, String expected) {
        add(pointer, in.currentTokenLocation(), found, expected);
    }

    void add(String pointer, JsonLocation place, String found, String expected) {
        problems.add(
                new RecordProblem(
                        pointer, place.getLineNr(), place.getColumnNr(), found, expected));
    }
}
