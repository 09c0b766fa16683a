package eavesproof.survey;

import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Levels.Level;
import eavesproof.survey.Trough.Position;
import eavesproof.survey.Trough.Spot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How the sole of a reach lies, as it was read from set-ups that can be compared with each other.
 *
 * @param datum of the set-ups
 * @param points from the outlet to the high end
 * @param doubt why readings of this profile do not show the whole reach; empty where they do
 */
record SoleProfile(String surface, String datum, List<Point> points, Optional<String> doubt) {
    /**
     * Our choice: a pond cannot hide between readings that lie no further apart than two of the
     * widest spacings of brackets that guidance knows for a metal gutter (750 mm, New Zealand
     * roofing code of practice 5.4.2.3), so that next to every bracket there is one that was read.
     */
    static final double APART_MM = 1500;

    /** What stands for the sole: the gutter lies on the seats of its brackets. */
    static final List<String> SURFACES = Words.SURFACES.subList(0, 2);

    /**
     * @param text "2400 mm on a1"
     * @param toOutletMm along the gutter
     * @param below the datum of the profile, the mean of all readings at this place
     */
    record Point(Spot spot, String text, double toOutletMm, Uncertain below) {
        double belowMm() {
            return below.value();
        }
    }

    /**
     * The profiles that count: every one of the sole. If none of these shows the whole reach, one
     * of bracket seats that does counts beside them.
     */
    static List<SoleProfile> of(ReachLevels read, Levels levels) {
        List<SoleProfile> counting = new ArrayList<>();
        for (String surface : SURFACES) {
            for (SoleProfile profile : of(read, levels, surface)) {
                boolean needed = counting.stream().noneMatch(SoleProfile::isWhole);
                if (surface.equals(SURFACES.get(0)) || (needed && profile.isWhole())) {
                    counting.add(profile);
                }
            }
        }
        return counting;
    }

    boolean isWhole() {
        return doubt.isEmpty();
    }

    /** The greatest distance between two neighbouring readings, mm; 0 where there is only one. */
    double widestMm() {
        return points.size() < 2 ? 0 : apart(widest());
    }

    private int widest() {
        int widest = 1;
        for (int i = 2; i < points.size(); i++) {
            widest = apart(i) > apart(widest) ? i : widest;
        }
        return widest;
    }

    private static List<SoleProfile> of(ReachLevels read, Levels levels, String surface) {
        Map<String, List<Level>> byDatum = new LinkedHashMap<>();
        for (Level level : read.all()) {
            if (level.surface().equals(surface)) {
                byDatum.computeIfAbsent(levels.datum(level), it -> new ArrayList<>()).add(level);
            }
        }
        return byDatum.entrySet().stream()
                .map(group -> of(read, levels, surface, group.getKey(), group.getValue()))
                .toList();
    }

    private static SoleProfile of(
            ReachLevels read, Levels levels, String surface, String datum, List<Level> group) {
        Optional<Level> low = read.atOutlet(group);
        Map<Position, List<Level>> byPlace = new TreeMap<>();
        for (Level level : group) {
            if (!read.isWithinFitting(level) || low.filter(level::equals).isPresent()) {
                byPlace.computeIfAbsent(level.spot().position(), it -> new ArrayList<>())
                        .add(level);
            }
        }
        List<Point> points = new ArrayList<>();
        byPlace.forEach((place, here) -> points.add(point(read, levels, place, here)));
        if (read.reach().left()) {
            Collections.reverse(points);
        }
        SoleProfile asRead = new SoleProfile(surface, datum, points, Optional.empty());
        Optional<String> doubt =
                contradiction(read, levels, byPlace).or(() -> asRead.whyNotWhole(read, group));
        return new SoleProfile(surface, datum, points, doubt);
    }

    /** What two set-ups that are joined by ties say differently of one place. */
    private static Optional<String> contradiction(
            ReachLevels read, Levels levels, Map<Position, List<Level>> byPlace) {
        return byPlace.entrySet().stream()
                .flatMap(
                        at ->
                                Repeats.contradiction(
                                                at.getValue().stream()
                                                        .map(levels::belowDatum)
                                                        .toList())
                                        .stream()
                                        .map(
                                                why ->
                                                        "the set-ups contradict each other at "
                                                                + read.text(at.getKey())
                                                                + ": "
                                                                + why))
                .findFirst();
    }

    /**
     * Why readings of the sole say nothing although others show the whole reach: nobody can hold
     * them against those, and one of them may lie in a hollow.
     */
    static Optional<String> untied(List<SoleProfile> profiles) {
        return profiles.stream()
                .filter(it -> !it.isWhole() && !it.points().isEmpty())
                .filter(
                        it ->
                                profiles.stream()
                                        .filter(SoleProfile::isWhole)
                                        .noneMatch(whole -> whole.datum().equals(it.datum())))
                .map(
                        it ->
                                "the "
                                        + it.surface()
                                        + " at "
                                        + it.points().get(0).text()
                                        + " was read by a set-up that no tie joins to the others")
                .findFirst();
    }

    private static Point point(ReachLevels read, Levels levels, Position place, List<Level> here) {
        Level first = here.get(0);
        Uncertain mean = Datums.mean(here.stream().map(levels::belowDatum).toList());
        return new Point(first.spot(), read.text(place), read.toOutlet(first), mean);
    }

    private Optional<String> whyNotWhole(ReachLevels read, List<Level> group) {
        Optional<String> ends = read.whyNotWhole(group);
        if (ends.isPresent()) {
            return read.whyNotWhole(read.all()).isPresent()
                    ? ends
                    : Optional.of(
                            read.reach().text()
                                    + " was not read from end to end by one set-up, or by set-ups"
                                    + " joined by ties");
        }
        if (points.size() < 2) {
            return Optional.of(read.reach().text() + " has only one reading of its sole");
        }
        int widest = widest();
        return apart(widest) > APART_MM + ReachLevels.ROUNDING_MM
                ? Optional.of("the " + surface + " was not read between " + unread(widest))
                : Optional.empty();
    }

    private String unread(int i) {
        String mm = Decimals.with(apart(i), Unit.MM);
        return points.get(i).text() + " and " + points.get(i - 1).text() + ", " + mm;
    }

    private double apart(int i) {
        return points.get(i).toOutletMm() - points.get(i - 1).toOutletMm();
    }
}
