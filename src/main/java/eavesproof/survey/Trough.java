package eavesproof.survey;

import eavesproof.job.Gutter;
import eavesproof.job.Run;
import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart.Outlet;
import eavesproof.job.Words;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A run as it lies, from left to right round its corners: where things are on it, and how far
 * apart.
 */
final class Trough {
    /** Of one straight among those of the run. */
    record Position(int straight, double stationMm) implements Comparable<Position> {
        private static final Comparator<Position> FROM_THE_LEFT =
                Comparator.comparingInt(Position::straight)
                        .thenComparingDouble(Position::stationMm);

        @Override
        public int compareTo(Position other) {
            return FROM_THE_LEFT.compare(this, other);
        }
    }

    /**
     * A thing at its place.
     *
     * @param id of the thing
     * @param name with its word: "bracket b3"
     */
    record Spot(String id, String name, int straight, Uncertain station)
            implements Comparable<Spot> {
        private static final Comparator<Spot> FROM_THE_LEFT =
                Comparator.comparing(Spot::position)
                        .thenComparing(Spot::id)
                        .thenComparing(Spot::name);

        double stationMm() {
            return station.value();
        }

        Position position() {
            return new Position(straight, stationMm());
        }

        @Override
        public int compareTo(Spot other) {
            return FROM_THE_LEFT.compare(this, other);
        }
    }

    private final Run run;
    private final Found<Gutter> gutter;
    private final List<Straight> straights;
    private final Way way;
    private final Instruments instruments;
    private final int[] island;
    private final double[] beginsAt;

    Trough(
            Run run,
            Found<Gutter> gutter,
            List<Straight> straights,
            Way way,
            Instruments instruments) {
        this.run = run;
        this.gutter = gutter;
        this.straights = straights;
        this.way = way;
        this.instruments = instruments;
        island = new int[straights.size()];
        beginsAt = new double[straights.size()];
        for (int i = 1; i < straights.size(); i++) {
            Double before = straights.get(i - 1).lengthMm();
            island[i] = before == null ? island[i - 1] + 1 : island[i - 1];
            beginsAt[i] = before == null ? 0 : beginsAt[i - 1] + before;
        }
    }

    String id() {
        return run.id();
    }

    Run run() {
        return run;
    }

    Found<Gutter> gutter() {
        return gutter;
    }

    List<Straight> straights() {
        return straights;
    }

    Straight straight(int index) {
        return straights.get(index);
    }

    /** The index of a straight of this run; below 0 where the run has none of that id. */
    int indexOf(String straight) {
        for (int i = 0; i < straights.size(); i++) {
            if (straights.get(i).id().equals(straight)) {
                return i;
            }
        }
        return -1;
    }

    Way way() {
        return way;
    }

    Instruments instruments() {
        return instruments;
    }

    List<Outlet> outletsOn(int index) {
        return way.outletsOn(straight(index).id());
    }

    /** All outlets that are known to be on the run. */
    List<Outlet> outlets() {
        return straights.stream()
                .flatMap(straight -> way.outletsOn(straight.id()).stream())
                .toList();
    }

    static String leftEndOf(Straight straight) {
        return straight.id() + ".left";
    }

    static String rightEndOf(Straight straight) {
        return straight.id() + ".right";
    }

    static Optional<String> endKind(Run.@Nullable End end) {
        return Optional.ofNullable(end).map(Run.End::kind).filter(Words.END_KINDS::contains);
    }

    /** A length along a straight, or a station of it, with the instrument of the straight. */
    Uncertain read(int index, double mm, String what) {
        Straight straight = straight(index);
        String thing = "straight " + straight.id();
        return instruments.read(mm, what + " on " + straight.id(), straight.measuredWith(), thing);
    }

    Found<Spot> spot(int index, String id, String name, @Nullable Double stationMm) {
        return Found.recorded(stationMm, "the station of " + name)
                .map(mm -> new Spot(id, name, index, read(index, mm, "station of " + name)));
    }

    Found<Spot> spot(int index, Outlet outlet) {
        return spot(index, outlet.id(), "outlet " + outlet.id(), outlet.stationMm());
    }

    Spot leftEnd(int index) {
        String id = leftEndOf(straight(index));
        return new Spot(id, "the left end of " + straight(index).id(), index, Uncertain.exact(0));
    }

    Found<Spot> rightEnd(int index) {
        String id = rightEndOf(straight(index));
        String name = "the right end of " + straight(index).id();
        return length(index).map(length -> new Spot(id, name, index, length));
    }

    Found<Uncertain> length(int index) {
        String what = "the length of straight " + straight(index).id();
        return Found.recorded(straight(index).lengthMm(), what)
                .map(mm -> read(index, mm, "length"));
    }

    /** How far apart on one straight, whichever lies to the left. */
    static Uncertain apart(Spot one, Spot other) {
        return one.stationMm() <= other.stationMm()
                ? other.station().minus(one.station())
                : one.station().minus(other.station());
    }

    /** The station of a thing as a step of the workings. */
    Working working(Spot spot) {
        String from = instruments.named(straight(spot.straight()).measuredWith());
        return Answers.working("station of " + spot.name(), spot.station(), Unit.MM, from);
    }

    /** Along the gutter, the second of the two lying to the right of the first. */
    Found<Uncertain> distance(Spot from, Spot to) {
        Found<Uncertain> distance = Found.of(to.station().minus(from.station()));
        for (int i = from.straight(); i < to.straight(); i++) {
            Found<Uncertain> length = length(i);
            distance = distance.then(sum -> length.map(sum::plus));
        }
        return distance;
    }

    /** From the left end of the straights that can be compared with this one, mm. */
    double along(Position position) {
        return beginsAt[position.straight()] + position.stationMm();
    }

    /** The place that lies so far along, among the straights that can be compared with this one. */
    Position place(int comparable, double alongMm) {
        int at = comparable;
        while (at > 0 && island[at - 1] == island[comparable] && beginsAt[at] > alongMm) {
            at--;
        }
        while (at + 1 < island.length
                && island[at + 1] == island[comparable]
                && beginsAt[at + 1] <= alongMm) {
            at++;
        }
        return new Position(at, alongMm - beginsAt[at]);
    }

    /** The same for straights whose lengths in between are recorded, so that places compare. */
    int island(int index) {
        return island[index];
    }
}
