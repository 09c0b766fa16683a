package eavesproof.survey;

import eavesproof.hydraulics.Trough.Sole;
import eavesproof.job.WayPart.Outlet;
import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.Levels.Level;
import eavesproof.survey.Trough.Position;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The sole of a run as it was built, from its left end to its right end: as read, straight between
 * the readings, level from the outermost ones to the ends. Another surface stands for the sole
 * where that was not read: it runs parallel to it.
 *
 * @param soles by distance from the left end, m
 */
record AsBuilt(List<Sole> soles, Working working) {
    /** Our choice: readings stand for a run if the outermost lie within 300 mm of its ends. */
    private static final double END_MM = 300;

    /** Our choice: no outlet's fitting is taken to be longer than 1 m. */
    private static final double HALF_OF_LONGEST_FITTING_MM = 500;

    private static final double MM_PER_M = 1000;

    static Found<AsBuilt> of(Trough trough, double lengthMm) {
        Levels levels = new Levels(trough);
        int last = trough.straights().size() - 1;
        List<Level> all =
                levels
                        .between(
                                new Position(0, Double.NEGATIVE_INFINITY),
                                new Position(last, Double.POSITIVE_INFINITY))
                        .stream()
                        .filter(level -> !isSunk(trough, level))
                        .filter(level -> level.alongMm() >= 0 && level.alongMm() <= lengthMm)
                        .toList();
        if (all.isEmpty()) {
            return Found.missing(
                    levels.lost().stream()
                            .map(LostReading::why)
                            .findFirst()
                            .orElse("the levels of run " + trough.id() + " are not recorded"));
        }
        for (String surface : Words.SURFACES) {
            for (Map<Double, List<Double>> read : byDatum(levels, all, surface)) {
                if (reaches(List.copyOf(read.keySet()), lengthMm)) {
                    return levels.lost().stream()
                            .filter(it -> it.mayBeOf(surface))
                            .findFirst()
                            .<Found<AsBuilt>>map(it -> Found.missing(it.why()))
                            .orElseGet(() -> Found.of(of(surface, read, lengthMm)));
                }
            }
        }
        return Found.missing(
                "no readings of one surface, by one set-up or by set-ups joined by ties, reach to "
                        + Decimals.plain(END_MM, 0)
                        + " mm from both ends of run "
                        + trough.id());
    }

    /** Whether a sump may draw the sole down there. */
    private static boolean isSunk(Trough trough, Level level) {
        for (Outlet outlet : trough.outletsOn(level.spot().straight())) {
            Double at = outlet.stationMm();
            Double sump = outlet.sumpDepthMm();
            Double body = outlet.bodyMm();
            double half = body == null ? HALF_OF_LONGEST_FITTING_MM : body / 2;
            if (at != null
                    && sump != null
                    && sump > 0
                    && Math.abs(level.spot().stationMm() - at) < half) {
                return true;
            }
        }
        return false;
    }

    /** For each datum the heights read at each place, those with the most places first. */
    private static List<Map<Double, List<Double>>> byDatum(
            Levels levels, List<Level> all, String surface) {
        Map<String, Map<Double, List<Double>>> byDatum = new LinkedHashMap<>();
        for (Level level : all) {
            if (level.surface().equals(surface)) {
                byDatum.computeIfAbsent(levels.datum(level), it -> new TreeMap<>())
                        .computeIfAbsent(level.alongMm(), it -> new ArrayList<>())
                        .add(-levels.belowDatum(level).value());
            }
        }
        List<Map<Double, List<Double>>> sorted = new ArrayList<>(byDatum.values());
        sorted.sort((one, other) -> Integer.compare(other.size(), one.size()));
        return sorted;
    }

    private static boolean reaches(List<Double> places, double lengthMm) {
        return places.size() >= 2
                && places.get(0) <= END_MM
                && places.get(places.size() - 1) >= lengthMm - END_MM;
    }

    private static AsBuilt of(String surface, Map<Double, List<Double>> read, double lengthMm) {
        TreeMap<Double, Double> heights = new TreeMap<>();
        read.forEach((along, at) -> heights.put(along, mean(at)));
        heights.putIfAbsent(0.0, heights.firstEntry().getValue());
        heights.putIfAbsent(lengthMm, heights.lastEntry().getValue());
        List<Sole> soles = new ArrayList<>();
        heights.forEach(
                (along, height) -> soles.add(new Sole(along / MM_PER_M, height / MM_PER_M)));
        double lowest = heights.values().stream().mapToDouble(it -> it).min().orElseThrow();
        double highest = heights.values().stream().mapToDouble(it -> it).max().orElseThrow();
        return new AsBuilt(
                List.copyOf(soles),
                new Working(
                        "sole as built",
                        Decimals.with(highest - lowest, Unit.MM)
                                + " from its highest to its lowest",
                        read.size() + " places of the " + surface + ", straight between them"));
    }

    private static double mean(List<Double> heights) {
        return heights.stream().mapToDouble(it -> it).average().orElseThrow();
    }
}
