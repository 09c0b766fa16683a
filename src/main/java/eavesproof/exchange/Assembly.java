package eavesproof.exchange;

import eavesproof.exchange.Shape.Field;
import eavesproof.exchange.Shape.Kinds;
import eavesproof.exchange.Shape.ListOf;
import eavesproof.exchange.Shape.MapOf;
import eavesproof.exchange.Shape.Thing;
import eavesproof.job.Said;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Makes values of record types from what was found. A component whose key is absent becomes null,
 * or for what somebody may say {@link Said#nothing()}; nothing else is ever filled in.
 */
final class Assembly {
    private Assembly() {}

    static Object made(Shape shape, Found found) {
        if (shape instanceof Thing thing) {
            return made(thing, found, null);
        } else if (shape instanceof Kinds kinds) {
            Thing kind = kinds.things().get(found.text(kinds.tag().name()));
            if (kind == null) {
                throw new IllegalStateException("read without its kind: " + found.pointer());
            }
            return made(kind, found, null);
        } else if (shape instanceof ListOf list) {
            return found.items().stream().map(item -> made(list.element(), item)).toList();
        } else if (shape instanceof MapOf map) {
            Map<String, Object> things = new LinkedHashMap<>();
            found.keys().forEach((id, item) -> things.put(id, made(map.element(), item, id)));
            return Collections.unmodifiableMap(things);
        } else {
            return found.value();
        }
    }

    private static Object made(Thing thing, Found found, @Nullable String id) {
        RecordComponent[] components = thing.type().getRecordComponents();
        @Nullable Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            values[i] = component(thing, components[i], found, id);
        }
        try {
            return thing.type()
                    .getDeclaredConstructor(
                            Arrays.stream(components)
                                    .map(RecordComponent::getType)
                                    .toArray(Class<?>[]::new))
                    .newInstance(values);
        } catch (ReflectiveOperationException wrongShape) {
            throw new IllegalStateException("the shape of " + thing.name(), wrongShape);
        }
    }

    private static @Nullable Object component(
            Thing thing, RecordComponent component, Found found, @Nullable String id) {
        Field key = thing.fills(component.getName());
        Found value = key == null ? null : found.at(key.name());
        if (key != null && value != null) {
            return made(key.shape(), value);
        }
        if (component.getType() == Said.class) {
            return Said.nothing();
        }
        return key == null && component.getName().equals("id") ? id : null;
    }
}
