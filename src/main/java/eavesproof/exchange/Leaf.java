package eavesproof.exchange;

import com.fasterxml.jackson.core.JsonToken;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A place for one text or number. Each kind says the same thing twice: to the reader, in schema.
 */
sealed interface Leaf extends Shape permits Leaf.Text, Leaf.Name, Leaf.Word, Leaf.Date, Amount {

    /** The value of a token, or null if it cannot stand here. */
    @Nullable Object value(JsonToken token, String raw);

    /** The JSON type, in the words of JSON Schema. */
    default String type() {
        return "string";
    }

    /** What JSON Schema asks of it beside its type. */
    Map<String, Object> asks();

    @Override
    default Set<IdKind> gives() {
        return Set.of();
    }

    /**
     * @param pattern what the whole text must match, in the common part of Java's and JavaScript's
     *     regular expressions; between ^ and $
     */
    record Text(String name, Pattern pattern, int longest, String expected) implements Leaf {
        @Override
        public @Nullable String value(JsonToken token, String raw) {
            return token == JsonToken.VALUE_STRING
                            && raw.codePointCount(0, raw.length()) <= longest
                            && pattern.matcher(raw).matches()
                    ? raw
                    : null;
        }

        @Override
        public Map<String, Object> asks() {
            return ordered("maxLength", longest, "pattern", pattern.pattern());
        }
    }

    /** An id of something of a kind. */
    sealed interface Name extends Leaf permits Id, Ref {
        IdKind kind();

        @Override
        default @Nullable String value(JsonToken token, String raw) {
            return Texts.ID.value(token, raw);
        }

        @Override
        default Map<String, Object> asks() {
            return Texts.ID.asks();
        }
    }

    /** The id of what stands here. */
    record Id(IdKind kind) implements Name {
        @Override
        public String expected() {
            return "an id: " + Texts.ID.expected();
        }

        @Override
        public Set<IdKind> gives() {
            return Set.of(kind);
        }
    }

    /** The id of something that stands elsewhere in the record. */
    record Ref(IdKind kind) implements Name {
        @Override
        public String expected() {
            return "the id of " + kind.words();
        }
    }

    record Word(List<String> words) implements Leaf {
        @Override
        public @Nullable String value(JsonToken token, String raw) {
            return token == JsonToken.VALUE_STRING && words.contains(raw) ? raw : null;
        }

        @Override
        public String expected() {
            return words.size() == 1 ? Shape.oneOf(words) : "one of " + Shape.oneOf(words);
        }

        @Override
        public Map<String, Object> asks() {
            return ordered("enum", words);
        }
    }

    record Date() implements Leaf {
        private static final Pattern WRITTEN = Pattern.compile("^[0-9]{4}-[0-9]{2}-[0-9]{2}$");

        @Override
        public @Nullable String value(JsonToken token, String raw) {
            if (token != JsonToken.VALUE_STRING || !WRITTEN.matcher(raw).matches()) {
                return null;
            }
            try {
                LocalDate.parse(raw);
                return raw;
            } catch (DateTimeParseException noSuchDay) {
                return null;
            }
        }

        @Override
        public String expected() {
            return "a date as \"YYYY-MM-DD\"";
        }

        @Override
        public Map<String, Object> asks() {
            return ordered("format", "date", "pattern", WRITTEN.pattern());
        }
    }

    static Map<String, Object> ordered(Object... keysAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            map.put((String) keysAndValues[i], keysAndValues[i + 1]);
        }
        return map;
    }
}
