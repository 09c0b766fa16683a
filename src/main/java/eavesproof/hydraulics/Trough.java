package eavesproof.hydraulics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * A piece of gutter that drains one way: from x = 0, where nothing flows, to its outlet at the
 * other end. SI units: m, m³/s.
 */
public final class Trough {
    private final Channel channel;
    private final double[] stations;
    private final double[] bed;
    private final double perMetre;
    private final List<Inflow> inflows;

    /** The sole at x lies this high above any one level. */
    public record Sole(double x, double height) {
        public Sole {
            if (!Double.isFinite(x) || !Double.isFinite(height)) {
                throw new IllegalArgumentException("a sole is finite, not " + x + ", " + height);
            }
        }
    }

    /** What arrives at x without momentum along the gutter, m³/s. */
    public record Inflow(double x, double flow) {
        public Inflow {
            if (!(flow >= 0) || !Double.isFinite(flow) || !Double.isFinite(x)) {
                throw new IllegalArgumentException(
                        "an inflow is 0 or more, not " + flow + " at " + x);
            }
        }
    }

    /**
     * @param soles by rising x from 0 to the outlet, two or more; straight between them
     * @param perMetre inflow along the whole length, m³/s per m
     * @param inflows what arrives at single places
     */
    public Trough(Channel channel, List<Sole> soles, double perMetre, List<Inflow> inflows) {
        if (soles.size() < 2 || soles.get(0).x() != 0) {
            throw new IllegalArgumentException("a bed needs two stations or more, from 0");
        }
        for (int i = 1; i < soles.size(); i++) {
            if (!(soles.get(i).x() > soles.get(i - 1).x())) {
                throw new IllegalArgumentException(
                        "the stations of a bed rise, unlike " + soles.get(i));
            }
        }
        if (!(perMetre >= 0) || !Double.isFinite(perMetre)) {
            throw new IllegalArgumentException("an inflow is 0 or more, not " + perMetre);
        }
        this.channel = channel;
        this.stations = soles.stream().mapToDouble(Sole::x).toArray();
        this.bed = soles.stream().mapToDouble(Sole::height).toArray();
        this.perMetre = perMetre;
        this.inflows = inflows.stream().sorted(Comparator.comparingDouble(Inflow::x)).toList();
    }

    public Channel channel() {
        return channel;
    }

    /** Places where the bed is known or where water arrives, by rising x. */
    List<Double> places() {
        TreeSet<Double> places = new TreeSet<>();
        Arrays.stream(stations).forEach(places::add);
        inflows.stream().map(Inflow::x).filter(x -> x > 0 && x < length()).forEach(places::add);
        return List.copyOf(places);
    }

    /** Inflow along the whole length, m³/s per m. */
    public double perMetre() {
        return perMetre;
    }

    public double length() {
        return stations[stations.length - 1];
    }

    /** What flows at x, with what arrives there at x itself. */
    public double flow(double x) {
        double sum = perMetre * x;
        for (Inflow inflow : inflows) {
            if (inflow.x() <= x) {
                sum += inflow.flow();
            }
        }
        return sum;
    }

    /** Height of the sole at x. */
    public double bedAt(double x) {
        int i = piece(x);
        double t = (x - stations[i]) / (stations[i + 1] - stations[i]);
        return bed[i] + t * (bed[i + 1] - bed[i]);
    }

    /** The fall of the bed at x, positive towards the outlet; just upstream of a kink. */
    double slopeBefore(double x) {
        int i = piece(x);
        return (bed[i] - bed[i + 1]) / (stations[i + 1] - stations[i]);
    }

    private int piece(double x) {
        int at = Arrays.binarySearch(stations, x);
        int i = at >= 0 ? at - 1 : -at - 2;
        return Math.min(stations.length - 2, Math.max(0, i));
    }

    /** The same with all inflows multiplied, as under stronger rain. */
    public Trough under(double factor) {
        List<Sole> soles = new ArrayList<>();
        for (int i = 0; i < stations.length; i++) {
            soles.add(new Sole(stations[i], bed[i]));
        }
        return new Trough(
                channel,
                soles,
                perMetre * factor,
                inflows.stream().map(i -> new Inflow(i.x(), i.flow() * factor)).toList());
    }
}
