package eavesproof.exchange;

import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What may stand at one place of a record. The one source of its reader, its published schema and
 * its blank form.
 */
sealed interface Shape permits Leaf, Shape.ListOf, Shape.MapOf, Shape.Thing, Shape.Kinds {
    /** More elements than this are a mistake or an attack. */
    int MOST_ELEMENTS = 1000;

    /** The shape in words, as the answer to "expected". */
    String expected();

    /** The kinds of id that are given within this shape. */
    Set<IdKind> gives();

    record ListOf(Shape element) implements Shape {
        @Override
        public String expected() {
            return "a list of at most " + MOST_ELEMENTS + " elements";
        }

        @Override
        public Set<IdKind> gives() {
            return element.gives();
        }
    }

    /** Things by their id; the key of an entry is its id. */
    record MapOf(Leaf.Id ids, Thing element) implements Shape {
        @Override
        public String expected() {
            return "an object with at most " + MOST_ELEMENTS + " entries by id";
        }

        @Override
        public Set<IdKind> gives() {
            return together(List.of(ids, element));
        }
    }

    /** An object of known keys that becomes a value of a record type. */
    record Thing(String name, Class<? extends Record> type, Map<String, Field> keys)
            implements Shape {

        static Thing of(String name, Class<? extends Record> type, Field... keys) {
            Map<String, Field> byName = new LinkedHashMap<>();
            for (Field key : keys) {
                if (byName.put(key.name(), key) != null) {
                    throw new IllegalArgumentException(name + " has " + key.name() + " twice");
                }
            }
            return new Thing(name, type, Collections.unmodifiableMap(byName));
        }

        @Nullable Field fills(String component) {
            for (Field key : keys.values()) {
                if (key.component().equals(component)) {
                    return key;
                }
            }
            return null;
        }

        @Override
        public String expected() {
            return "an object";
        }

        @Override
        public Set<IdKind> gives() {
            return together(keys.values().stream().map(Field::shape).toList());
        }
    }

    /**
     * An object whose keys depend on the word under one of them, its tag.
     *
     * @param any every key of every kind: what can be known before the tag has been read
     */
    record Kinds(String name, Field tag, Map<String, Thing> things, Thing any) implements Shape {

        static Kinds of(String name, String tag, Map<String, Thing> things) {
            Field words = Field.of(tag, new Leaf.Word(List.copyOf(things.keySet()))).must();
            Map<String, Field> all = new LinkedHashMap<>(Map.of(tag, words));
            for (Thing thing : things.values()) {
                thing.keys().forEach(all::putIfAbsent);
            }
            Thing any = new Thing(name, Record.class, Collections.unmodifiableMap(all));
            return new Kinds(name, words, things, any);
        }

        @Override
        public String expected() {
            return "an object with a `" + tag.name() + "`";
        }

        @Override
        public Set<IdKind> gives() {
            return together(things.values());
        }
    }

    /**
     * @param component the component of the record type that it fills
     * @param needed whether an object without it, or with null for it, is refused
     * @param says what it means, where its name does not
     */
    record Field(String name, String component, Shape shape, boolean needed, String says) {

        static Field of(String name, Shape shape) {
            return new Field(name, camel(name), shape, false, "");
        }

        Field must() {
            return new Field(name, component, shape, true, says);
        }

        Field fills(String other) {
            return new Field(name, other, shape, needed, says);
        }

        Field says(String words) {
            return new Field(name, component, shape, needed, words);
        }

        private static String camel(String name) {
            StringBuilder camel = new StringBuilder();
            for (String word : name.split("_", -1)) {
                camel.append(camel.isEmpty() ? word.charAt(0) : upper(word)).append(rest(word));
            }
            return camel.toString();
        }

        private static char upper(String word) {
            return Character.toUpperCase(word.charAt(0));
        }

        private static String rest(String word) {
            return word.substring(1);
        }
    }

    private static Set<IdKind> together(Iterable<? extends Shape> shapes) {
        Set<IdKind> kinds = EnumSet.noneOf(IdKind.class);
        shapes.forEach(shape -> kinds.addAll(shape.gives()));
        return kinds;
    }

    /** Words as a person lists them. */
    static String oneOf(List<String> words) {
        return words.stream().map(word -> '"' + word + '"').collect(Collectors.joining(", "));
    }
}
