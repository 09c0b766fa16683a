package eavesproof.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.Shape.Field;
import eavesproof.exchange.Shape.Kinds;
import eavesproof.exchange.Shape.ListOf;
import eavesproof.exchange.Shape.MapOf;
import eavesproof.exchange.Shape.Thing;
import eavesproof.job.Said;
import eavesproof.job.WayPart;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ShapeTest {
    private static final Set<Thing> THINGS = new LinkedHashSet<>(Shapes.things(JobShape.JOB));

    /** Ids that are the keys of their map, and the surface of readings of the fascia's edge. */
    private static final Set<String> FILLED_BY_NO_KEY =
            Set.of("instrument.id", "set-up.id", "gutter.id", "edge-reading.surface");

    @Test
    void everyComponentIsFilledByAKey() {
        Set<String> empty = new TreeSet<>();
        for (Thing thing : THINGS) {
            for (RecordComponent component : thing.type().getRecordComponents()) {
                if (thing.fills(component.getName()) == null) {
                    empty.add(thing.name() + "." + component.getName());
                }
            }
        }
        assertEquals(new TreeSet<>(FILLED_BY_NO_KEY), empty);
    }

    @Test
    void everyKeyFillsAComponentOfItsType() {
        assertTrue(THINGS.size() > 30);
        for (Thing thing : THINGS) {
            Map<String, Type> components =
                    Arrays.stream(thing.type().getRecordComponents())
                            .collect(
                                    Collectors.toMap(
                                            RecordComponent::getName,
                                            RecordComponent::getGenericType));
            for (Field field : thing.keys().values()) {
                Type type = components.get(field.component());
                assertTrue(
                        type != null && fits(field.shape(), type),
                        () -> thing.name() + "." + field.name() + " does not fit " + type);
            }
        }
    }

    private static boolean fits(Shape shape, Type type) {
        if (shape instanceof Amount amount) {
            return type == (amount.whole() ? Integer.class : Double.class) || isVariable(type);
        } else if (shape instanceof Leaf) {
            return type == String.class || isVariable(type);
        } else if (shape instanceof Kinds kinds) {
            return type == WayPart.class
                    && kinds.things().values().stream()
                            .allMatch(kind -> WayPart.class.isAssignableFrom(kind.type()));
        } else if (shape instanceof Thing thing) {
            return thing.type() == Said.class ? saidOf(thing, type) : type == thing.type();
        }
        Type[] inside = ((ParameterizedType) type).getActualTypeArguments();
        Type outside = ((ParameterizedType) type).getRawType();
        if (shape instanceof ListOf list) {
            return outside == List.class && fits(list.element(), inside[0]);
        }
        return outside == Map.class && fits(((MapOf) shape).element(), inside[1]);
    }

    /** The value of {@code Said<T>} itself, whose type the component that holds it settles. */
    private static boolean isVariable(Type type) {
        return type.getTypeName().equals("T");
    }

    private static boolean saidOf(Thing said, Type type) {
        return type instanceof ParameterizedType whole
                && whole.getRawType() == Said.class
                && fits(said.keys().get("is").shape(), whole.getActualTypeArguments()[0]);
    }

    /** Or what may stand under it could not be told before the tag has been read. */
    @Test
    void aKeyIsOfOneShapeInEveryKindOfTheWay() {
        for (Thing kind : WayShape.PART.things().values()) {
            kind.keys()
                    .forEach(
                            (name, field) ->
                                    assertEquals(
                                            WayShape.PART.any().keys().get(name).shape(),
                                            field.shape(),
                                            () -> kind.name() + "." + name));
        }
    }

    @Test
    void everyKindOfTheWayHasAShape() {
        assertEquals(
                Set.of(WayPart.class.getPermittedSubclasses()),
                WayShape.PART.things().values().stream()
                        .map(Thing::type)
                        .collect(Collectors.toSet()));
    }
}
