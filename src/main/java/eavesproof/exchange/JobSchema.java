package eavesproof.exchange;

import eavesproof.exchange.Shape.Field;
import eavesproof.exchange.Shape.Kinds;
import eavesproof.exchange.Shape.ListOf;
import eavesproof.exchange.Shape.MapOf;
import eavesproof.exchange.Shape.Thing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The shape of a job's record as JSON Schema 2020-12, for editors and other programs. It cannot say
 * what the reader also asks: keys and ids only once, references that lead somewhere, and whatever
 * two values must agree on.
 */
public final class JobSchema {
    private final Map<String, Object> definitions = new LinkedHashMap<>();

    private JobSchema() {}

    /** The published schema; the same text lies beside the classes as job.schema.json. */
    public static String text() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("$id", "urn:eavesproof:job:1");
        schema.put("title", "The record of an eaves-gutter job");
        JobSchema writer = new JobSchema();
        schema.putAll(writer.body(JobShape.JOB));
        schema.put("$defs", writer.definitions);
        return JsonLayout.of(schema);
    }

    private Map<String, Object> body(Thing thing) {
        return object(properties(thing), needed(thing));
    }

    private Map<String, Object> properties(Thing thing) {
        Map<String, Object> properties = new LinkedHashMap<>();
        thing.keys().forEach((name, key) -> properties.put(name, property(key)));
        return properties;
    }

    private static List<String> needed(Thing thing) {
        return thing.keys().values().stream().filter(Field::needed).map(Field::name).toList();
    }

    private static Map<String, Object> object(Map<String, Object> properties, List<String> needed) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("type", "object");
        if (!needed.isEmpty()) {
            object.put("required", needed);
        }
        object.put("properties", properties);
        object.put("additionalProperties", false);
        return object;
    }

    private Map<String, Object> property(Field key) {
        Map<String, Object> property = key.needed() ? of(key.shape()) : orNull(key.shape());
        if (!key.says().isEmpty()) {
            property.put("description", key.says());
        }
        return property;
    }

    private Map<String, Object> orNull(Shape shape) {
        Map<String, Object> schema = of(shape);
        if (schema.get("type") instanceof String type) {
            schema.put("type", List.of(type, "null"));
            schema.computeIfPresent("enum", (key, words) -> withNull((List<?>) words));
            return schema;
        }
        Map<String, Object> either = new LinkedHashMap<>();
        either.put("anyOf", List.of(schema, Map.of("type", "null")));
        return either;
    }

    private static List<Object> withNull(List<?> words) {
        List<Object> all = new ArrayList<>(words);
        all.add(null);
        return all;
    }

    private Map<String, Object> of(Shape shape) {
        Map<String, Object> schema = new LinkedHashMap<>();
        if (shape instanceof Leaf leaf) {
            schema.put("type", leaf.type());
            schema.putAll(asks(leaf));
        } else if (shape instanceof ListOf list) {
            schema.put("type", "array");
            schema.put("maxItems", Shape.MOST_ELEMENTS);
            schema.put("items", of(list.element()));
        } else if (shape instanceof MapOf map) {
            schema.put("type", "object");
            schema.put("maxProperties", Shape.MOST_ELEMENTS);
            schema.put("propertyNames", asks(map.ids()));
            schema.put("additionalProperties", of(map.element()));
        } else if (shape instanceof Thing thing) {
            schema.put("$ref", define(thing.name(), body(thing)));
        } else if (shape instanceof Kinds kinds) {
            schema.put("$ref", define(kinds.name(), body(kinds)));
        }
        return schema;
    }

    private Map<String, Object> asks(Leaf leaf) {
        if (leaf instanceof Leaf.Name) {
            return asks(Texts.ID);
        } else if (leaf instanceof Leaf.Text text) {
            return Map.of("$ref", define(text.name(), text.asks()));
        }
        return leaf.asks();
    }

    private Map<String, Object> body(Kinds kinds) {
        String tag = kinds.tag().name();
        Map<String, Object> body = new LinkedHashMap<>();
        body.put("type", "object");
        body.put("required", List.of(tag));
        body.put("properties", Leaf.ordered(tag, property(kinds.tag())));
        List<Object> each = new ArrayList<>();
        kinds.things()
                .forEach(
                        (word, thing) -> {
                            Map<String, Object> choice = new LinkedHashMap<>();
                            choice.put(
                                    "if", Map.of("properties", Map.of(tag, Map.of("const", word))));
                            choice.put(
                                    "then", Map.of("$ref", define(word, ofKind(thing, tag, word))));
                            each.add(choice);
                        });
        body.put("allOf", each);
        return body;
    }

    private Map<String, Object> ofKind(Thing thing, String tag, String word) {
        Map<String, Object> properties = properties(thing);
        properties.put(tag, Leaf.ordered("const", word));
        List<String> needed = new ArrayList<>(needed(thing));
        needed.add(tag);
        return object(properties, needed);
    }

    /** Keeps a definition under its name and refers to it; one name stands for one thing. */
    private String define(String name, Map<String, Object> definition) {
        Object known = definitions.putIfAbsent(name, definition);
        if (known != null && !known.equals(definition)) {
            throw new IllegalArgumentException("two definitions of " + name);
        }
        return "#/$defs/" + name;
    }
}
