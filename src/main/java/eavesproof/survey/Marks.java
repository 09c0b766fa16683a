package eavesproof.survey;

import eavesproof.survey.Trough.Spot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * All things of one sort along a straight, its supports say, and how far they are known. A thing
 * may be known to be there without its station; a thing at a known station may or may not be of the
 * sort; and there may be more of them than were recorded.
 */
final class Marks {
    private final Trough trough;
    private final int index;
    private final List<Spot> spots = new ArrayList<>();

    /** Stations of things that may be of the sort, with what is not recorded of them. */
    private final TreeMap<Double, String> perhaps = new TreeMap<>();

    private int count;
    private @Nullable String uncounted;
    private @Nullable String anywhere;

    Marks(Trough trough, int index) {
        this.trough = trough;
        this.index = index;
    }

    void add(String id, String name, @Nullable Double stationMm) {
        count++;
        trough.spot(index, id, name, stationMm).either(spots::add, this::anywhere);
    }

    /**
     * @param why what is not recorded of it
     */
    void addPerhaps(@Nullable Double stationMm, String why) {
        uncounted = uncounted == null ? why : uncounted;
        if (stationMm == null) {
            anywhere(why);
        } else {
            perhaps.putIfAbsent(stationMm, why);
        }
    }

    /** There may be more of them, anywhere. */
    void addPerhapsMore(String why) {
        addPerhaps(null, why);
    }

    /** A list in which there may be more of them. */
    void addListNotRecorded(String what) {
        String straight = trough.straight(index).id();
        addPerhapsMore("the " + what + " of straight " + straight + " are not recorded");
    }

    /** Those whose stations are known, from left to right. */
    List<Spot> sorted() {
        Collections.sort(spots);
        return spots;
    }

    /** How many there are, wherever they are. */
    Found<Integer> count() {
        return uncounted == null ? Found.of(count) : Found.missing(uncounted);
    }

    /** Why there may be one anywhere on the straight, besides the known ones. */
    Optional<String> anywhere() {
        return Optional.ofNullable(anywhere);
    }

    /** Why there may be one between two stations, these left out. */
    Optional<String> perhapsBetween(double fromMm, double toMm) {
        if (anywhere != null) {
            return Optional.of(anywhere);
        }
        Map.Entry<Double, String> next = perhaps.higherEntry(fromMm);
        return next != null && next.getKey() < toMm
                ? Optional.of(next.getValue())
                : Optional.empty();
    }

    /** Why there may be one between two places of a run, by the marks of all its straights. */
    static Optional<String> perhapsBetween(List<Marks> marks, Spot from, Spot to) {
        if (from.straight() == to.straight()) {
            return marks.get(from.straight()).perhapsBetween(from.stationMm(), to.stationMm());
        }
        Optional<String> why = marks.get(from.straight()).perhapsAfter(from.stationMm());
        for (int i = from.straight() + 1; i < to.straight() && why.isEmpty(); i++) {
            why = marks.get(i).perhapsMore();
        }
        return why.or(() -> marks.get(to.straight()).perhapsBefore(to.stationMm()));
    }

    /** Why there may be one to the left of a station. */
    Optional<String> perhapsBefore(double toMm) {
        return perhapsBetween(Double.NEGATIVE_INFINITY, toMm);
    }

    /** Why there may be one to the right of a station. */
    Optional<String> perhapsAfter(double fromMm) {
        return perhapsBetween(fromMm, Double.POSITIVE_INFINITY);
    }

    /** Why there may be more than the known ones. */
    Optional<String> perhapsMore() {
        return perhapsBefore(Double.POSITIVE_INFINITY);
    }

    private void anywhere(String why) {
        anywhere = anywhere == null ? why : anywhere;
    }
}
