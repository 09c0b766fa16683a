package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart.Outlet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** A run as one line from its left end, round its corners; only where every length is recorded. */
final class Along {
    /** A station of a straight. */
    record Spot(Straight straight, double stationMm) {}

    private final List<Straight> straights;
    private final double[] begins;

    private Along(List<Straight> straights, double[] begins) {
        this.straights = straights;
        this.begins = begins;
    }

    static Optional<Along> of(Job job, String run) {
        List<Straight> straights = Parts.run(job, run).map(Run::straights).orElse(List.of());
        double[] begins = new double[straights.size() + 1];
        for (int i = 0; i < straights.size(); i++) {
            Double length = straights.get(i).lengthMm();
            if (length == null) {
                return Optional.empty();
            }
            begins[i + 1] = begins[i] + length;
        }
        return straights.isEmpty() ? Optional.empty() : Optional.of(new Along(straights, begins));
    }

    double lengthMm() {
        return begins[straights.size()];
    }

    OptionalDouble of(@Nullable String straight, @Nullable Double stationMm) {
        for (int i = 0; i < straights.size() && stationMm != null; i++) {
            if (straights.get(i).id().equals(straight)) {
                return OptionalDouble.of(begins[i] + stationMm);
            }
        }
        return OptionalDouble.empty();
    }

    /** Of an end of a straight, a joint or an outlet, by its id. */
    OptionalDouble named(Job job, String id) {
        for (int i = 0; i < straights.size(); i++) {
            Straight straight = straights.get(i);
            if (id.equals(straight.id() + ".left") || id.equals(straight.id() + ".right")) {
                return OptionalDouble.of(begins[id.endsWith(".left") ? i : i + 1]);
            }
            Optional<Run.Joint> joint = Parts.first(straight.joints(), it -> it.id().equals(id));
            if (joint.isPresent()) {
                return of(straight.id(), joint.get().stationMm());
            }
        }
        return Parts.outlet(job, id)
                .map(it -> of(it.on(), it.stationMm()))
                .orElse(OptionalDouble.empty());
    }

    Spot at(double alongMm) {
        int i = 0;
        while (i + 1 < straights.size() && alongMm > begins[i + 1]) {
            i++;
        }
        return new Spot(straights.get(i), alongMm - begins[i]);
    }

    /** Of all outlets on the run, from left to right. */
    List<Double> outlets(Job job) {
        List<Double> all = new ArrayList<>();
        for (Straight straight : straights) {
            for (Outlet outlet : Parts.outletsOn(job, straight.id())) {
                of(straight.id(), outlet.stationMm()).ifPresent(all::add);
            }
        }
        all.sort(Comparator.naturalOrder());
        return all;
    }

    List<Straight> straights() {
        return straights;
    }
}
