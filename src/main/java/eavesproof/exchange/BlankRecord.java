package eavesproof.exchange;

import eavesproof.exchange.Shape.Field;
import eavesproof.exchange.Shape.Kinds;
import eavesproof.exchange.Shape.ListOf;
import eavesproof.exchange.Shape.MapOf;
import eavesproof.exchange.Shape.Thing;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A record of a shape in which nothing is known yet. */
final class BlankRecord {
    private BlankRecord() {}

    static String of(Thing job, String ruleSet) {
        Map<String, @Nullable Object> record = blank(job);
        record.put("rule_set", ruleSet);
        return JsonLayout.of(record);
    }

    private static Map<String, @Nullable Object> blank(Thing thing) {
        Map<String, @Nullable Object> keys = new LinkedHashMap<>();
        for (Field field : thing.keys().values()) {
            boolean id = field.shape() instanceof Leaf.Id;
            keys.put(field.name(), id ? exampleId(thing) : blank(field.shape()));
        }
        return keys;
    }

    private static @Nullable Object blank(Shape shape) {
        if (shape instanceof Leaf) {
            return null;
        } else if (shape instanceof ListOf list) {
            return list.element() instanceof Kinds kinds ? oneOfEach(kinds) : example(list);
        } else if (shape instanceof MapOf map) {
            return Map.of(exampleId(map.element()), blank(map.element()));
        } else if (shape instanceof Thing thing) {
            return blank(thing);
        }
        throw new IllegalStateException("only a list holds " + shape);
    }

    private static String exampleId(Thing thing) {
        return thing.name() + "-1";
    }

    private static @Nullable Object example(ListOf list) {
        Object element = blank(list.element());
        return element == null ? null : List.of(element);
    }

    private static List<Map<String, @Nullable Object>> oneOfEach(Kinds kinds) {
        return kinds.things().entrySet().stream().map(kind -> ofKind(kinds, kind)).toList();
    }

    private static Map<String, @Nullable Object> ofKind(
            Kinds kinds, Map.Entry<String, Thing> kind) {
        Map<String, @Nullable Object> part = new LinkedHashMap<>();
        blank(kind.getValue())
                .forEach(
                        (key, value) -> {
                            part.put(key, value);
                            part.putIfAbsent(kinds.tag().name(), kind.getKey()); // after the id
                        });
        return part;
    }
}
