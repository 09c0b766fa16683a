package eavesproof.survey;

import eavesproof.job.Instrument.SetUp;
import eavesproof.job.Run.Reading;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Trough.Position;
import eavesproof.survey.Trough.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How far below the datum of their set-ups the surfaces of a run lie, by place.
 *
 * <p>Each reading has two kinds of error: its own, and that of the level line over the distance
 * from where the instrument stood. Repeats at one place are averaged: their own errors become
 * smaller by it, and that of the level line does not (JCGM 100:2008 4.2.3 and 5.2.4).
 */
final class Levels {
    /**
     * @param alongMm from the left end of the straights that can be compared with each other
     */
    record Level(Spot spot, double alongMm, String surface, String setUp, Uncertain below) {}

    private record Key(Position at, String surface, String setUp) implements Comparable<Key> {
        private static final Comparator<Key> IN_ORDER =
                Comparator.comparing(Key::at).thenComparing(Key::surface).thenComparing(Key::setUp);

        @Override
        public int compareTo(Key other) {
            return IN_ORDER.compare(this, other);
        }
    }

    private final Trough trough;
    private final NavigableMap<Position, List<Level>> byPlace = new TreeMap<>();
    private final Map<Integer, Datums> datums = new HashMap<>();
    private final Map<String, Integer> indexes = new HashMap<>();

    Levels(Trough trough) {
        this.trough = trough;
        for (int i = 0; i < trough.straights().size(); i++) {
            indexes.putIfAbsent(trough.straight(i).id(), i);
        }
        for (int i = 0; i < trough.straights().size(); i++) {
            read(i);
        }
        datums.values().forEach(Datums::join);
    }

    /** From one place to another, both included, from left to right. */
    List<Level> between(Position from, Position to) {
        if (from.compareTo(to) > 0) {
            return List.of();
        }
        return byPlace.subMap(from, true, to, true).values().stream()
                .flatMap(List::stream)
                .toList();
    }

    /** The same for all levels whose set-ups are joined by ties. */
    String datum(Level level) {
        return datumsAt(level.spot().straight()).root(level.setUp());
    }

    /** Below the datum that all levels of joined set-ups share. */
    Uncertain belowDatum(Level level) {
        return datumsAt(level.spot().straight()).toRoot(level.setUp(), level.below());
    }

    /** How much lower the second is than the first; both of one set-up, or of joined ones. */
    Uncertain drop(Level from, Level to) {
        return from.setUp().equals(to.setUp())
                ? to.below().minus(from.below())
                : belowDatum(to).minus(belowDatum(from));
    }

    /** Whether it is recorded where on these straights the set-up stood. */
    boolean standKnown(Level level) {
        return stand(level.setUp(), level.spot().straight()).isPresent();
    }

    private Datums datumsAt(int index) {
        return datums.computeIfAbsent(trough.island(index), island -> new Datums());
    }

    private void read(int index) {
        List<Reading> readings = trough.straight(index).readings();
        Map<Key, List<Uncertain>> repeats = new TreeMap<>();
        for (Reading reading : readings == null ? List.<Reading>of() : readings) {
            Double station = reading.stationMm();
            Double below = reading.belowMm();
            String surface = reading.surface();
            String setUp = reading.setUp();
            if (station == null || below == null || surface == null || setUp == null) {
                continue;
            }
            Key key = new Key(new Position(index, station), surface, setUp);
            List<Uncertain> others = repeats.computeIfAbsent(key, it -> new ArrayList<>());
            Uncertain level = level(key, others.size() + 1, below, reading.measuredWith());
            others.add(level);
            String tie = reading.tie();
            if (tie != null) {
                datumsAt(index).tie(tie, setUp, level);
            }
        }
        repeats.forEach(this::put);
    }

    private Uncertain level(Key key, int nth, double belowMm, @Nullable String with) {
        String straight = trough.straight(key.at().straight()).id();
        String name = (nth == 1 ? "reading of " : "reading " + nth + " of ") + text(key);
        double along = trough.along(key.at());
        double stood = stand(key.setUp(), key.at().straight()).orElse(0);
        return trough.instruments()
                .read(belowMm, name, with, "the readings on " + straight)
                .plus(trough.instruments().levelLine(key.setUp(), along - stood));
    }

    private String text(Key key) {
        String straight = trough.straight(key.at().straight()).id();
        String at = number(key.at().stationMm());
        return key.surface() + " at " + at + " on " + straight + " from " + key.setUp();
    }

    private static String number(double mm) {
        return Decimals.plain(mm, Unit.MM.decimals());
    }

    private void put(Key key, List<Uncertain> readings) {
        int index = key.at().straight();
        double mm = key.at().stationMm();
        String name = "reading of " + text(key);
        Uncertain station = trough.read(index, mm, "station of readings at " + number(mm));
        Spot spot = new Spot(name, name, index, station);
        byPlace.computeIfAbsent(key.at(), it -> new ArrayList<>())
                .add(
                        new Level(
                                spot,
                                trough.along(key.at()),
                                key.surface(),
                                key.setUp(),
                                Datums.mean(readings)));
    }

    /**
     * Where the instrument stood, from the left end of the straights that can be compared with this
     * one. Where that is not known it is taken to be that end: between two readings a line that is
     * read from one end is the least sure.
     */
    private OptionalDouble stand(String setUpId, int index) {
        SetUp setUp = trough.instruments().setUp(setUpId).orElse(null);
        String on = setUp == null ? null : setUp.on();
        Double station = setUp == null ? null : setUp.stationMm();
        Integer stood = on == null ? null : indexes.get(on);
        if (station == null || stood == null || trough.island(stood) != trough.island(index)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(trough.along(new Position(stood, station)));
    }
}
