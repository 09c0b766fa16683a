package eavesproof.exchange;

import eavesproof.job.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether two things were recorded where only one can be. A bracket inside an outlet is no such
 * thing: it may hold the outlet.
 */
final class OverlapChecks {
    /** Our choice: no bracket is narrower along the gutter, and no piece that joins two lengths. */
    private static final double NARROWEST_MM = 20;

    /** Our choice: what overlaps by no more than that may be the tape. */
    private static final double TAPE_MM = 10;

    private final Problems problems;

    private OverlapChecks(Problems problems) {
        this.problems = problems;
    }

    static void check(Found job, Problems problems) {
        OverlapChecks checks = new OverlapChecks(problems);
        List<Found> way = job.items("way");
        for (Found run : job.items("runs")) {
            for (Found straight : run.items("straights")) {
                checks.along(straight, outletsOn(straight.text("id"), way));
            }
        }
    }

    private static List<Found> outletsOn(@Nullable String straight, List<Found> way) {
        return way.stream()
                .filter(it -> straight != null && straight.equals(it.text("on")))
                .filter(it -> it.number("station_mm") != null && it.number("body_mm") != null)
                .toList();
    }

    private void along(Found straight, List<Found> outlets) {
        List<Found> supports = new ArrayList<>(straight.items("brackets"));
        straight.items("fittings").stream()
                .filter(it -> Words.YES.equals(it.text("carries_gutter")))
                .forEach(supports::add);
        apart(supports, "what carries the gutter");
        apart(straight.items("joints"), "joints");
        for (int i = 0; i < outlets.size(); i++) {
            Found outlet = outlets.get(i);
            double half = number(outlet, "body_mm") / 2;
            for (Found joint : straight.items("joints")) {
                clear(joint, outlet, half);
            }
            for (Found other : outlets.subList(0, i)) {
                clear(outlet, other, half + number(other, "body_mm") / 2);
            }
        }
    }

    /** Only the first of many is told: the others are the same slip. */
    private void apart(List<Found> things, String what) {
        List<Found> sorted =
                things.stream()
                        .filter(it -> it.number("station_mm") != null)
                        .sorted(Comparator.comparingDouble(it -> number(it, "station_mm")))
                        .toList();
        for (int i = 1; i < sorted.size(); i++) {
            double before = number(sorted.get(i - 1), "station_mm");
            double here = number(sorted.get(i), "station_mm");
            if (here - before < NARROWEST_MM) {
                told(
                        sorted.get(i),
                        here,
                        what + " at least 20 mm apart; another is at " + Amount.plain(before));
                return;
            }
        }
    }

    private void clear(Found thing, Found outlet, double leastMm) {
        Double at = thing.number("station_mm");
        double centre = number(outlet, "station_mm");
        if (at != null && Math.abs(at - centre) < leastMm - TAPE_MM) {
            told(
                    thing,
                    at,
                    "a station outside outlet "
                            + outlet.text("id")
                            + ", at least "
                            + Amount.plain(leastMm)
                            + " from its centre at "
                            + Amount.plain(centre));
        }
    }

    private void told(Found thing, double at, String expected) {
        Found station = thing.at("station_mm");
        if (station != null) {
            problems.add(station, Amount.plain(at), expected);
        }
    }

    private static double number(Found thing, String key) {
        Double number = thing.number(key);
        return number == null ? Double.NaN : number;
    }
}
