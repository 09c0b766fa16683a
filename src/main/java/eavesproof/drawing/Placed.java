package eavesproof.drawing;

import eavesproof.job.Run;
import eavesproof.job.WayPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A thing on a straight whose station is known, so that it can be drawn. */
record Placed<T>(T thing, String id, double stationMm) {

    static List<Placed<Run.Bracket>> brackets(Run.Straight straight) {
        return on(straight, straight.brackets(), Run.Bracket::id, Run.Bracket::stationMm);
    }

    static List<Placed<Run.Joint>> joints(Run.Straight straight) {
        return on(straight, straight.joints(), Run.Joint::id, Run.Joint::stationMm);
    }

    static List<Placed<Run.Fitting>> fittings(Run.Straight straight) {
        return on(straight, straight.fittings(), Run.Fitting::id, Run.Fitting::stationMm);
    }

    static List<Placed<WayPart.Outlet>> outlets(Built built) {
        return on(built.straight(), built.outlets(), WayPart.Outlet::id, WayPart.Outlet::stationMm);
    }

    private static <T> List<Placed<T>> on(
            Run.Straight straight,
            @Nullable List<T> things,
            Function<T, String> id,
            Function<T, @Nullable Double> station) {
        double length = Objects.requireNonNullElse(straight.lengthMm(), 0.0);
        List<Placed<T>> placed = new ArrayList<>();
        for (T thing : Objects.requireNonNullElse(things, List.<T>of())) {
            Double at = station.apply(thing);
            if (at != null && at >= 0 && at <= length) {
                placed.add(new Placed<>(thing, id.apply(thing), at));
            }
        }
        return List.copyOf(placed);
    }
}
