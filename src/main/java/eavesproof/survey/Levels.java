package eavesproof.survey;

import eavesproof.job.Instrument.SetUp;
import eavesproof.job.Run.Reading;
import eavesproof.job.Words;
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
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How far below the datum of their set-ups the surfaces of a run lie, by place.
 *
 * <p>Each reading has two kinds of error: its own, and that of the level line over the distance
 * from where the instrument stood. Repeats at one place are averaged: their own errors become
 * smaller by it as far as they agree ({@link Repeats}), and that of the level line does not (JCGM
 * 100:2008 5.2.4).
 *
 * <p>Readings that cannot be used are kept as lost: of those that do not say where, of what or from
 * which set-up they were taken; of a sole that was not clean; of repeats that contradict each
 * other; and of set-ups whose ties do.
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
    private final List<LostReading> lost = new ArrayList<>();

    Levels(Trough trough) {
        this.trough = trough;
        for (int i = 0; i < trough.straights().size(); i++) {
            indexes.putIfAbsent(trough.straight(i).id(), i);
        }
        Map<Key, List<Read>> repeats = new TreeMap<>();
        for (int i = 0; i < trough.straights().size(); i++) {
            read(i, repeats);
        }
        datums.values().forEach(Datums::join);
        put(repeats);
    }

    /** Readings that were taken and cannot be used. */
    List<LostReading> lost() {
        return lost;
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

    /** How well the ties of its set-up close, where they go round. */
    Optional<Working> closing(Level level) {
        return datumsAt(level.spot().straight()).closing(level.setUp());
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

    /**
     * @param own error of the reading
     * @param line the level line's error at its place, the same for all repeats
     */
    private record Read(Uncertain own, Uncertain line) {}

    private void read(int index, Map<Key, List<Read>> repeats) {
        List<Reading> readings = trough.straight(index).readings();
        int nth = 0;
        for (Reading reading : readings == null ? List.<Reading>of() : readings) {
            nth++;
            Double station = reading.stationMm();
            Double below = reading.belowMm();
            String surface = reading.surface();
            String setUp = reading.setUp();
            Optional<String> unusable = unusable(reading, index, nth);
            if (unusable.isPresent()
                    || station == null
                    || below == null
                    || surface == null
                    || setUp == null) {
                lose(index, station, surface, unusable.orElse(""));
                continue;
            }
            Key key = new Key(new Position(index, station), surface, setUp);
            List<Read> others = repeats.computeIfAbsent(key, it -> new ArrayList<>());
            Read read = level(key, others.size() + 1, below, reading.measuredWith());
            others.add(read);
            String tie = reading.tie();
            if (tie != null) {
                datumsAt(index).tie(tie, setUp, read.own().plus(read.line()));
            }
        }
    }

    private void lose(int index, @Nullable Double station, @Nullable String surface, String why) {
        Optional<Position> at = Optional.ofNullable(station).map(mm -> new Position(index, mm));
        lost.add(new LostReading(index, at, surface, why));
    }

    private Optional<String> unusable(Reading reading, int index, int nth) {
        String of = " of reading " + nth + " of straight " + trough.straight(index).id();
        String setUp = reading.setUp();
        if (reading.stationMm() == null) {
            return Optional.of("the station" + of + " is not recorded");
        } else if (reading.surface() == null) {
            return Optional.of("the surface" + of + " is not recorded");
        } else if (setUp == null) {
            return Optional.of("the set-up" + of + " is not recorded");
        } else if (reading.belowMm() == null) {
            return Optional.of("the level" + of + " is not recorded");
        }
        return Words.SOLE.equals(reading.surface()) ? dirty(setUp) : Optional.empty();
    }

    /** What lies in a gutter hides its sole. */
    private Optional<String> dirty(String setUp) {
        String clean = trough.instruments().setUp(setUp).map(SetUp::clean).orElse(null);
        if (Words.YES.equals(clean)) {
            return Optional.empty();
        }
        String what = "whether the gutter was clean and empty at set-up " + setUp;
        return Optional.of(
                Words.NO.equals(clean)
                        ? "the gutter was not clean and empty at set-up " + setUp
                        : what + " is not recorded");
    }

    private Read level(Key key, int nth, double belowMm, @Nullable String with) {
        String straight = trough.straight(key.at().straight()).id();
        String name = (nth == 1 ? "reading of " : "reading " + nth + " of ") + text(key);
        double along = trough.along(key.at());
        double stood = stand(key.setUp(), key.at().straight()).orElse(0);
        return new Read(
                trough.instruments().read(belowMm, name, with, "the readings on " + straight),
                trough.instruments().levelLine(key.setUp(), along - stood));
    }

    private String text(Key key) {
        String straight = trough.straight(key.at().straight()).id();
        String at = number(key.at().stationMm());
        return key.surface() + " at " + at + " on " + straight + " from " + key.setUp();
    }

    private static String number(double mm) {
        return Decimals.plain(mm, Unit.MM.decimals());
    }

    private void put(Map<Key, List<Read>> repeats) {
        Map<String, Repeats> pools = new HashMap<>();
        repeats.forEach(
                (key, reads) -> {
                    List<Uncertain> own = reads.stream().map(Read::own).toList();
                    Repeats.contradiction(own)
                            .ifPresentOrElse(
                                    why -> contradict(key, why),
                                    () ->
                                            pools.computeIfAbsent(key.setUp(), it -> new Repeats())
                                                    .pool(own));
                });
        repeats.forEach(
                (key, reads) -> {
                    List<Uncertain> own = reads.stream().map(Read::own).toList();
                    Repeats pool = pools.get(key.setUp());
                    Optional<String> open = datumsAt(key.at().straight()).unclosed(key.setUp());
                    if (open.isPresent()) {
                        lose(key.at().straight(), key.at().stationMm(), key.surface(), open.get());
                    } else if (pool != null && Repeats.contradiction(own).isEmpty()) {
                        put(key, pool.mean(own).plus(reads.get(0).line()));
                    }
                });
    }

    private void contradict(Key key, String why) {
        String what = "the readings of " + text(key) + " contradict each other: " + why;
        lose(key.at().straight(), key.at().stationMm(), key.surface(), what);
    }

    private void put(Key key, Uncertain below) {
        int index = key.at().straight();
        double mm = key.at().stationMm();
        String name = "reading of " + text(key);
        Uncertain station = trough.read(index, mm, "station of readings at " + number(mm));
        Spot spot = new Spot(name, name, index, station);
        double along = trough.along(key.at());
        byPlace.computeIfAbsent(key.at(), it -> new ArrayList<>())
                .add(new Level(spot, along, key.surface(), key.setUp(), below));
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
