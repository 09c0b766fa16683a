package eavesproof.setout;

import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart.Outlet;
import eavesproof.survey.Facts;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Where on a straight something can be put: not on top of what is there already. */
final class Room {
    /** Our choice: a bracket, a fitting or a joint takes up no more than this to either side. */
    static final double HALF_MM = 40;

    /** Our choice where the length of an outlet's fitting is not recorded. */
    private static final double HALF_OUTLET_MM = 100;

    private record Taken(double fromMm, double toMm) {
        boolean holds(double stationMm) {
            return stationMm > fromMm && stationMm < toMm;
        }
    }

    private final double lengthMm;
    private final List<Taken> taken = new ArrayList<>();

    private Room(Straight straight) {
        Double length = straight.lengthMm();
        lengthMm = length == null ? Double.POSITIVE_INFINITY : length;
    }

    /** For a bracket: clear of outlets by what the rules ask, off joints and fittings. */
    static Room forBracket(Case here, String run, Straight straight) {
        Room room = new Room(straight);
        double clear = here.limits(Facts.OutletClearance.class, run).atLeast();
        room.outlets(here, straight, Math.max(clear, HALF_MM));
        Parts.of(straight.joints()).forEach(it -> room.around(it.stationMm(), HALF_MM));
        Parts.of(straight.fittings()).forEach(it -> room.around(it.stationMm(), HALF_MM));
        return room;
    }

    /**
     * For a joint: outside every length to be kept clear, clear of outlets, off brackets and
     * fittings.
     */
    static Room forJoint(Case here, String run, Straight straight, String besides) {
        Room room = new Room(straight);
        double clear = here.limits(Facts.OutletClearance.class, run).atLeast();
        room.outlets(here, straight, Math.max(clear, 2 * HALF_MM));
        Parts.of(straight.brackets()).forEach(it -> room.around(it.stationMm(), HALF_MM));
        Parts.of(straight.fittings()).forEach(it -> room.around(it.stationMm(), HALF_MM));
        Parts.of(straight.joints()).stream()
                .filter(it -> !it.id().equals(besides))
                .forEach(it -> room.around(it.stationMm(), 2 * HALF_MM));
        Parts.of(straight.keepClear())
                .forEach(
                        zone -> {
                            Double from = zone.fromMm();
                            Double to = zone.toMm();
                            if (from != null && to != null) {
                                room.taken.add(new Taken(from - HALF_MM, to + HALF_MM));
                            }
                        });
        return room;
    }

    boolean free(double stationMm) {
        return stationMm >= 0
                && stationMm <= lengthMm
                && taken.stream().noneMatch(it -> it.holds(stationMm));
    }

    /** The free station nearest to a wanted one, within a stretch. */
    OptionalDouble nearest(double wantedMm, double fromMm, double toMm) {
        double best = Double.NaN;
        List<Double> tries = new ArrayList<>(List.of(Grid.near(wantedMm)));
        for (Taken one : taken) {
            tries.add(Grid.down(one.fromMm()));
            tries.add(Grid.up(one.toMm()));
        }
        for (double at : tries) {
            boolean nearer =
                    Double.isNaN(best) || Math.abs(at - wantedMm) < Math.abs(best - wantedMm);
            if (at >= fromMm && at <= toMm && free(at) && nearer) {
                best = at;
            }
        }
        return Double.isNaN(best) ? OptionalDouble.empty() : OptionalDouble.of(best);
    }

    /**
     * The fewest stations that leave no more than a distance from one to the next; evenly spaced if
     * that can be. Empty if there is no room for them.
     */
    List<Double> between(double fromMm, double toMm, double atMostMm) {
        int fewest = (int) StrictMath.ceil((toMm - fromMm) / atMostMm) - 1;
        if (!(atMostMm > 0) || fewest < 1 || fewest > 10_000) {
            return List.of();
        }
        List<Double> even = new ArrayList<>();
        for (int i = 1; i <= fewest; i++) {
            even.add(Grid.near(fromMm + (toMm - fromMm) * i / (fewest + 1)));
        }
        return serves(even, fromMm, toMm, atMostMm) ? even : asFarAsCanBe(fromMm, toMm, atMostMm);
    }

    private boolean serves(List<Double> stations, double fromMm, double toMm, double atMostMm) {
        double last = fromMm;
        for (double at : stations) {
            if (at - last > atMostMm || !free(at)) {
                return false;
            }
            last = at;
        }
        return toMm - last <= atMostMm;
    }

    private List<Double> asFarAsCanBe(double fromMm, double toMm, double atMostMm) {
        List<Double> stations = new ArrayList<>();
        double last = fromMm;
        while (toMm - last > atMostMm) {
            OptionalDouble next = nearest(Grid.down(last + atMostMm), last + 1, last + atMostMm);
            if (next.isEmpty() || stations.size() > 10_000) {
                return List.of();
            }
            last = next.getAsDouble();
            stations.add(last);
        }
        return stations;
    }

    private void outlets(Case here, Straight straight, double clearMm) {
        for (Outlet outlet : Parts.outletsOn(here.job(), straight.id())) {
            Double body = outlet.bodyMm();
            around(
                    outlet.stationMm(),
                    (body == null ? HALF_OUTLET_MM : body / 2) + Grid.up(clearMm));
        }
    }

    private void around(@Nullable Double stationMm, double halfMm) {
        if (stationMm != null) {
            taken.add(new Taken(stationMm - halfMm, stationMm + halfMm));
        }
    }
}
