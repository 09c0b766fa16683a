package eavesproof.exchange;

import eavesproof.exchange.Shape.Kinds;
import eavesproof.exchange.Shape.ListOf;
import eavesproof.exchange.Shape.MapOf;
import eavesproof.exchange.Shape.Thing;
import java.util.ArrayList;
import java.util.List;

/** Walks a shape. */
final class Shapes {
    private Shapes() {}

    /** Every object of known keys within a shape, itself first; some come more than once. */
    static List<Thing> things(Shape shape) {
        List<Thing> things = new ArrayList<>();
        collect(shape, things);
        return things;
    }

    private static void collect(Shape shape, List<Thing> things) {
        if (shape instanceof Thing thing) {
            things.add(thing);
            thing.keys().values().forEach(field -> collect(field.shape(), things));
        } else if (shape instanceof ListOf list) {
            collect(list.element(), things);
        } else if (shape instanceof MapOf map) {
            collect(map.element(), things);
        } else if (shape instanceof Kinds kinds) {
            kinds.things().values().forEach(thing -> collect(thing, things));
        }
    }
}
