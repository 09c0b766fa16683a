package eavesproof.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import eavesproof.exchange.Shape.Field;
import eavesproof.exchange.Shape.Kinds;
import eavesproof.exchange.Shape.ListOf;
import eavesproof.exchange.Shape.MapOf;
import eavesproof.exchange.Shape.Thing;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Reads a text once, token by token, by its shape. Whatever does not fit becomes a problem and is
 * left out of what was found; the reading goes on after it.
 */
final class RecordReader {
    /** Far deeper than any shape; a text beyond it is no record. */
    private static final int DEEPEST = 64;

    private static final JsonFactory JSON =
            JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxNestingDepth(DEEPEST)
                                    .maxStringLength(FileText.MOST_BYTES)
                                    .maxNameLength(FileText.MOST_BYTES)
                                    .maxNumberLength(FileText.MOST_BYTES)
                                    .build())
                    .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
                    .build();

    private final JsonParser in;
    private final Problems problems;
    private final Names names;
    private final Misfits misfits;

    private RecordReader(JsonParser in, Problems problems, Names names) {
        this.in = in;
        this.problems = problems;
        this.names = names;
        this.misfits = new Misfits(in, problems, names);
    }

    /** What was found, or null if the text is not well formed or has another value at its top. */
    static @Nullable Found read(String text, Shape shape, Problems problems, Names names) {
        try (JsonParser in = JSON.createParser(text)) {
            return new RecordReader(in, problems, names).whole(text, shape);
        } catch (IOException readingFromMemory) {
            throw new IllegalStateException(readingFromMemory);
        }
    }

    private @Nullable Found whole(String text, Shape shape) throws IOException {
        try {
            if (in.nextToken() == null) {
                misfits.add("", in.currentLocation(), "an empty file", shape.expected());
                return null;
            }
            Found found = value(shape, "");
            if (!problems.full() && in.nextToken() != null) {
                misfits.add("", "more after the end of the record", "nothing");
            }
            return found;
        } catch (JsonProcessingException broken) {
            problems.add(BrokenText.problem(text, broken, in.currentLocation()));
            return null;
        }
    }

    private @Nullable Found value(Shape shape, String pointer) throws IOException {
        if (shape instanceof Leaf leaf) {
            return leaf(leaf, pointer);
        } else if (shape instanceof ListOf list) {
            return in.hasToken(JsonToken.START_ARRAY) ? list(list, pointer) : other(list, pointer);
        } else if (!in.hasToken(JsonToken.START_OBJECT)) {
            return other(shape, pointer);
        } else if (shape instanceof MapOf map) {
            return map(map, pointer);
        } else if (shape instanceof Kinds kinds) {
            return ofItsKind(kinds, pointer);
        } else {
            return thing((Thing) shape, pointer, new LinkedHashMap<>());
        }
    }

    private @Nullable Found leaf(Leaf leaf, String pointer) throws IOException {
        JsonToken token = in.currentToken();
        Object value = token.isScalarValue() ? leaf.value(token, in.getText()) : null;
        if (value == null) {
            return other(leaf, pointer);
        }
        Found found = found(pointer, value);
        if (leaf instanceof Leaf.Id id) {
            names.give(id.kind(), (String) value, found);
        } else if (leaf instanceof Leaf.Ref ref) {
            names.refer(ref.kind(), (String) value, found);
        }
        return found;
    }

    private Found list(ListOf list, String pointer) throws IOException {
        JsonLocation start = in.currentTokenLocation();
        List<Found> elements = new ArrayList<>();
        int count = 0;
        while (goesOn(JsonToken.END_ARRAY)) {
            if (count == Shape.MOST_ELEMENTS) {
                misfits.add(pointer, "a list of more elements", list.expected());
            }
            if (count >= Shape.MOST_ELEMENTS) {
                in.skipChildren();
            } else {
                Found element = value(list.element(), pointer + "/" + count);
                if (element != null) {
                    elements.add(element);
                }
            }
            count++;
        }
        return new Found(pointer, start.getLineNr(), start.getColumnNr(), elements);
    }

    private Found map(MapOf map, String pointer) throws IOException {
        JsonLocation start = in.currentTokenLocation();
        Map<String, Found> entries = new LinkedHashMap<>();
        Set<String> seen = new HashSet<>();
        while (goesOn(JsonToken.END_OBJECT)) {
            String id = in.currentName();
            String inside = pointer + Shown.step(id);
            boolean good = isNew(seen, id, inside);
            if (good && map.ids().value(JsonToken.VALUE_STRING, id) == null) {
                misfits.add(inside, Shown.quoted(id), map.ids().expected());
                good = false;
            } else if (good && seen.size() == Shape.MOST_ELEMENTS + 1) {
                misfits.add(pointer, "an object of more entries", map.expected());
            }
            if (good && seen.size() <= Shape.MOST_ELEMENTS) {
                names.give(map.ids().kind(), id, found(inside, id));
                in.nextToken();
                Found entry = value(map.element(), inside);
                if (entry != null) {
                    entries.put(id, entry);
                }
            } else {
                skip(map);
            }
        }
        return new Found(pointer, start.getLineNr(), start.getColumnNr(), entries);
    }

    private Found ofItsKind(Kinds kinds, String pointer) throws IOException {
        Map<String, JsonLocation> places = new LinkedHashMap<>();
        Found found = thing(kinds.any(), pointer, places);
        String tag = kinds.tag().name();
        Thing kind = kinds.things().get(found.text(tag));
        if (kind != null) {
            places.remove(tag);
            places.keySet().removeAll(kind.keys().keySet());
            places.forEach((key, at) -> misfits.unknown(kind, key, pointer + Shown.step(key), at));
            found.keys().keySet().removeAll(places.keySet());
        }
        return found;
    }

    /**
     * @param places filled with the place of each known key
     */
    private Found thing(Thing thing, String pointer, Map<String, JsonLocation> places)
            throws IOException {
        JsonLocation start = in.currentTokenLocation();
        Map<String, Found> keys = new LinkedHashMap<>();
        Set<String> seen = new HashSet<>();
        while (goesOn(JsonToken.END_OBJECT)) {
            String name = in.currentName();
            String inside = pointer + Shown.step(name);
            Field key = thing.keys().get(name);
            if (key == null) {
                if (isNew(seen, name, inside)) {
                    misfits.unknown(thing, name, inside, in.currentTokenLocation());
                }
                in.nextToken();
                in.skipChildren();
            } else if (!isNew(seen, name, inside)) {
                skip(key.shape());
            } else {
                places.put(name, in.currentTokenLocation());
                Found value =
                        in.nextToken() == JsonToken.VALUE_NULL && !key.needed()
                                ? null
                                : value(key.shape(), inside);
                if (value != null) {
                    keys.put(name, value);
                }
            }
        }
        for (Field key : thing.keys().values()) {
            if (key.needed() && !seen.contains(key.name())) {
                misfits.missing(key, pointer, start);
            }
        }
        return new Found(pointer, start.getLineNr(), start.getColumnNr(), keys);
    }

    /** Moves on in a list or object; ends with it, or for good when enough is wrong. */
    private boolean goesOn(JsonToken end) throws IOException {
        return !problems.full() && in.nextToken() != end;
    }

    private boolean isNew(Set<String> seen, String name, String pointer) {
        boolean isNew = seen.add(name);
        if (!isNew) {
            misfits.again(name, pointer);
        }
        return isNew;
    }

    /** Passes over the value of a key, which may have held ids. */
    private void skip(Shape shape) throws IOException {
        names.lost(shape.gives());
        in.nextToken();
        in.skipChildren();
    }

    /** Another value than the shape allows; passes over it. */
    private @Nullable Found other(Shape shape, String pointer) throws IOException {
        misfits.value(shape, pointer);
        in.skipChildren();
        return null;
    }

    private Found found(String pointer, Object value) {
        JsonLocation place = in.currentTokenLocation();
        return new Found(pointer, place.getLineNr(), place.getColumnNr(), value);
    }
}
