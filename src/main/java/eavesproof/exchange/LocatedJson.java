package eavesproof.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Reads any JSON text once, token by token, into values that know where they stood. It knows
 * nothing of what should stand there; only a key that comes twice is a problem by itself.
 */
final class LocatedJson {
    /** The value of a null. */
    enum Nothing {
        NULL
    }

    private static final int DEEPEST = 64;

    private static final JsonFactory JSON =
            JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxNestingDepth(DEEPEST)
                                    .maxStringLength(FileText.MOST_BYTES)
                                    .maxNumberLength(100)
                                    .build())
                    .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
                    .build();

    private final JsonParser in;
    private final Problems problems;

    private LocatedJson(JsonParser in, Problems problems) {
        this.in = in;
        this.problems = problems;
    }

    /** What stands in the file; null if it is no JSON, which is then a problem. */
    static @Nullable Found read(byte[] bytes, Problems problems) {
        String text = FileText.of(bytes, problems);
        if (text == null) {
            return null;
        }
        try (JsonParser in = JSON.createParser(text)) {
            return new LocatedJson(in, problems).whole();
        } catch (JsonProcessingException broken) {
            problems.add(BrokenText.problem(text, broken, JsonLocation.NA));
            return null;
        } catch (IOException readingFromMemory) {
            throw new IllegalStateException(readingFromMemory);
        }
    }

    private @Nullable Found whole() throws IOException {
        if (in.nextToken() == null) {
            problems.add(new RecordProblem("", 1, 1, "an empty file", "an object"));
            return null;
        }
        Found found = value("");
        if (in.nextToken() != null) {
            problems.add(at(""), "more after the end", "nothing");
        }
        return found;
    }

    private Found value(String pointer) throws IOException {
        Found here = at(pointer);
        return switch (in.currentToken()) {
            case START_OBJECT -> with(here, object(pointer));
            case START_ARRAY -> with(here, list(pointer));
            case VALUE_NULL -> here;
            case VALUE_TRUE, VALUE_FALSE -> with(here, in.getBooleanValue());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> with(here, in.getDoubleValue());
            default -> with(here, in.getText());
        };
    }

    private static Found with(Found place, Object value) {
        return new Found(place.pointer(), place.line(), place.column(), value);
    }

    private Map<String, Found> object(String pointer) throws IOException {
        Map<String, Found> keys = new LinkedHashMap<>();
        while (in.nextToken() != JsonToken.END_OBJECT) {
            String name = in.currentName();
            String inside = pointer + Shown.step(name);
            if (keys.containsKey(name)) {
                String again = "the key " + Shown.quoted(name) + " again";
                problems.add(at(inside), again, "each key only once");
            }
            in.nextToken();
            keys.putIfAbsent(name, value(inside));
        }
        return keys;
    }

    private List<Found> list(String pointer) throws IOException {
        List<Found> elements = new ArrayList<>();
        while (in.nextToken() != JsonToken.END_ARRAY) {
            elements.add(value(pointer + "/" + elements.size()));
        }
        return elements;
    }

    private Found at(String pointer) {
        JsonLocation place = in.currentTokenLocation();
        return new Found(pointer, place.getLineNr(), place.getColumnNr(), Nothing.NULL);
    }
}
