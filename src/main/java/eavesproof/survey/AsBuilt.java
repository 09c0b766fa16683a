package eavesproof.survey;

import eavesproof.hydraulics.Trough.Sole;
import eavesproof.job.WayPart.Outlet;
import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Levels.Level;
import eavesproof.survey.Trough.Position;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * The sole of a run as it was built, with how sure each reading is, from its left end to its right
 * end: as read, straight between the readings, level from the outermost ones to the ends. Another
 * surface stands for the sole where that was not read: it runs parallel to it.
 *
 * @param heightsMm by distance from the left end, mm, above the datum that they share
 */
record AsBuilt(SortedMap<Double, Uncertain> heightsMm, Working working) {
    /** Our choice: readings stand for a run if the outermost lie within 300 mm of its ends. */
    private static final double END_MM = 300;

    /** Our choice: no outlet's fitting is taken to be longer than 1 m. */
    private static final double HALF_OF_LONGEST_FITTING_MM = 500;

    private static final double MM_PER_M = 1000;

    AsBuilt {
        heightsMm = Collections.unmodifiableSortedMap(new TreeMap<>(heightsMm));
    }

    List<Sole> soles() {
        return soles(Uncertain::value);
    }

    /** As it would lie if one of its readings were higher. */
    List<Sole> moved(Uncertain reading, double byMm) {
        return soles(height -> height.value() + (height.equals(reading) ? byMm : 0));
    }

    private List<Sole> soles(ToDoubleFunction<Uncertain> mm) {
        List<Sole> soles = new ArrayList<>();
        heightsMm.forEach(
                (along, height) ->
                        soles.add(new Sole(along / MM_PER_M, mm.applyAsDouble(height) / MM_PER_M)));
        return List.copyOf(soles);
    }

    /** Each once; beyond the outermost ones the sole lies as these have it. */
    List<Uncertain> readings() {
        return heightsMm.values().stream().distinct().toList();
    }

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
            for (Map<Double, List<Uncertain>> read : byDatum(levels, all, surface)) {
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
    private static List<Map<Double, List<Uncertain>>> byDatum(
            Levels levels, List<Level> all, String surface) {
        Map<String, Map<Double, List<Uncertain>>> byDatum = new LinkedHashMap<>();
        for (Level level : all) {
            if (level.surface().equals(surface)) {
                byDatum.computeIfAbsent(levels.datum(level), it -> new TreeMap<>())
                        .computeIfAbsent(level.alongMm(), it -> new ArrayList<>())
                        .add(levels.belowDatum(level).times(-1));
            }
        }
        List<Map<Double, List<Uncertain>>> sorted = new ArrayList<>(byDatum.values());
        sorted.sort((one, other) -> Integer.compare(other.size(), one.size()));
        return sorted;
    }

    private static boolean reaches(List<Double> places, double lengthMm) {
        return places.size() >= 2
                && places.get(0) <= END_MM
                && places.get(places.size() - 1) >= lengthMm - END_MM;
    }

    private static AsBuilt of(String surface, Map<Double, List<Uncertain>> read, double lengthMm) {
        TreeMap<Double, Uncertain> heights = new TreeMap<>();
        read.forEach((along, at) -> heights.put(along, Datums.mean(at)));
        heights.putIfAbsent(0.0, heights.firstEntry().getValue());
        heights.putIfAbsent(lengthMm, heights.lastEntry().getValue());
        double lowest = heights.values().stream().mapToDouble(Uncertain::value).min().orElseThrow();
        double highest =
                heights.values().stream().mapToDouble(Uncertain::value).max().orElseThrow();
        return new AsBuilt(
                heights,
                new Working(
                        "sole as built",
                        Decimals.with(highest - lowest, Unit.MM)
                                + " from its highest to its lowest",
                        read.size() + " places of the " + surface + ", straight between them"));
    }
}
