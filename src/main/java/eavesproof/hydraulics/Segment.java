package eavesproof.hydraulics;

import eavesproof.hydraulics.Trough.Inflow;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A stretch of gutter in small steps, with what has flowed into it up to each place. Places that
 * share an x are just before and just behind a point inflow or a corner.
 */
final class Segment {
    private final double[] x;
    private final double[] bed;

    /** What flows in to the left of each place, m³/s. */
    private final double[] gathered;

    /** Whether there is a corner between a place and the one before. */
    private final boolean[] corner;

    private Segment(int places) {
        x = new double[places];
        bed = new double[places];
        gathered = new double[places];
        corner = new boolean[places];
    }

    private record Place(double x, double gathered, boolean corner) {}

    /**
     * @param soles by rising x; straight between them
     * @param perMetre inflow along the way
     * @param corners places where momentum is lost
     * @param longestStep m
     */
    static Segment of(
            Soles soles,
            double from,
            double to,
            double perMetre,
            List<Inflow> inflows,
            Collection<Double> corners,
            double longestStep) {
        List<Place> places = new ArrayList<>();
        double gathered = 0;
        double before = from;
        for (double x : kinks(soles, from, to, inflows, corners)) {
            int pieces = (int) Math.ceil((x - before) / longestStep - 1e-9);
            for (int i = 1; i < pieces; i++) {
                double at = before + (x - before) * i / pieces;
                places.add(new Place(at, gathered + perMetre * (at - before), false));
            }
            gathered += perMetre * (x - before);
            places.add(new Place(x, gathered, false));
            if (corners.contains(x)) {
                places.add(new Place(x, gathered, true));
            }
            double arriving =
                    inflows.stream().filter(i -> i.x() == x).mapToDouble(Inflow::flow).sum();
            if (arriving > 0) {
                gathered += arriving;
                places.add(new Place(x, gathered, false));
            }
            before = x;
        }
        return of(soles, places);
    }

    private static Segment of(Soles soles, List<Place> places) {
        int n = places.size();
        Segment segment = new Segment(n);
        for (int i = 0; i < n; i++) {
            Place place = places.get(i);
            segment.x[i] = place.x();
            segment.bed[i] = soles.heightAt(place.x());
            segment.gathered[i] = place.gathered();
            segment.corner[i] = place.corner();
        }
        return segment;
    }

    private static Set<Double> kinks(
            Soles soles, double from, double to, List<Inflow> inflows, Collection<Double> corners) {
        TreeSet<Double> kinks = new TreeSet<>(soles.between(from, to));
        inflows.stream().map(Inflow::x).filter(x -> x > from && x < to).forEach(kinks::add);
        corners.stream().filter(x -> x > from && x < to).forEach(kinks::add);
        kinks.add(from);
        kinks.add(to);
        return kinks;
    }

    double bedAtLeft() {
        return bed[0];
    }

    double bedAtRight() {
        return bed[bed.length - 1];
    }

    /** All that flows in. */
    double total() {
        return gathered[gathered.length - 1];
    }

    /** The same seen from behind, its stations counted downwards from 0. */
    Segment mirrored() {
        int n = x.length;
        Segment seen = new Segment(n);
        for (int i = 0; i < n; i++) {
            int from = n - 1 - i;
            seen.x[i] = -x[from];
            seen.bed[i] = bed[from];
            seen.gathered[i] = total() - gathered[from];
            seen.corner[i] = i > 0 && corner[from + 1];
        }
        return seen;
    }

    /**
     * The part from which the water flows to the right end.
     *
     * @param share what flows to the left of all that arrives, m³/s; below 0 where more than that
     *     comes in at the left end and passes through
     */
    Grid toTheRight(double share) {
        int first = 0;
        while (first < x.length - 1 && gathered[first] < share) {
            first++;
        }
        int n = x.length - first + 1;
        Grid grid = new Grid(n);
        double t = part(first, share);
        int before = Math.max(0, first - 1);
        grid.x[0] = x[before] + t * (x[first] - x[before]);
        grid.bed[0] = bed[before] + t * (bed[first] - bed[before]);
        for (int i = 1; i < n; i++) {
            int at = first + i - 1;
            grid.x[i] = x[at];
            grid.bed[i] = bed[at];
            grid.flow[i] = Math.max(0, gathered[at] - share);
            grid.corner[i] = i > 1 && corner[at];
        }
        return grid;
    }

    /** Where between the place before the first one and it as much as the share has gathered. */
    private double part(int first, double share) {
        if (first == 0 || x[first] == x[first - 1]) {
            return 1;
        }
        double t = (share - gathered[first - 1]) / (gathered[first] - gathered[first - 1]);
        return Math.min(1, Math.max(0, t));
    }
}
