package eavesproof.drawing;

import eavesproof.job.Run;
import eavesproof.job.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The line of the sole as it was read, by stations; each line begins 0 mm down at its highest
 * reading. Readings of two set-ups make one line only where a tie joins them.
 *
 * @param surface the surface that was read; empty where nothing was
 */
record Sole(String surface, List<TreeMap<Double, Double>> lines) {

    static Sole of(Run.Straight straight) {
        List<Run.Reading> readings =
                Objects.requireNonNullElse(straight.readings(), List.<Run.Reading>of());
        for (String surface : Words.SURFACES) {
            List<TreeMap<Double, Double>> lines = lines(readings, surface);
            if (lines.stream().anyMatch(line -> line.size() > 1)) {
                return new Sole(surface, lines);
            }
        }
        return new Sole("", List.of());
    }

    boolean isRead() {
        return !lines.isEmpty();
    }

    /** From the highest to the lowest reading of a line, mm. */
    double dropMm() {
        return lines.stream()
                .flatMap(line -> line.values().stream())
                .mapToDouble(below -> below)
                .max()
                .orElse(0);
    }

    /**
     * How far the sole lies below the highest reading; beyond the readings, level with the last.
     */
    double belowMm(double stationMm) {
        for (TreeMap<Double, Double> line : lines) {
            if (stationMm >= line.firstKey() && stationMm <= line.lastKey()) {
                return between(line, stationMm);
            }
        }
        return lines.stream()
                .min(Comparator.comparingDouble(line -> away(line, stationMm)))
                .map(
                        line ->
                                between(
                                        line,
                                        Math.min(
                                                Math.max(stationMm, line.firstKey()),
                                                line.lastKey())))
                .orElse(0.0);
    }

    /** The station of the highest reading, where one is higher than the others. */
    Optional<Double> highestMm() {
        if (lines.size() != 1 || dropMm() == 0) {
            return Optional.empty();
        }
        List<Double> highest =
                lines.get(0).entrySet().stream()
                        .filter(reading -> reading.getValue() == 0)
                        .map(Map.Entry::getKey)
                        .toList();
        return highest.size() == 1 ? Optional.of(highest.get(0)) : Optional.empty();
    }

    private static double away(TreeMap<Double, Double> line, double stationMm) {
        return Math.max(line.firstKey() - stationMm, stationMm - line.lastKey());
    }

    private static double between(TreeMap<Double, Double> line, double stationMm) {
        Map.Entry<Double, Double> left = Objects.requireNonNull(line.floorEntry(stationMm));
        Map.Entry<Double, Double> right = Objects.requireNonNull(line.ceilingEntry(stationMm));
        double width = right.getKey() - left.getKey();
        double share = width == 0 ? 0 : (stationMm - left.getKey()) / width;
        return left.getValue() + share * (right.getValue() - left.getValue());
    }

    private static List<TreeMap<Double, Double>> lines(List<Run.Reading> readings, String surface) {
        Map<String, TreeMap<Double, List<Double>>> bySetUp = new LinkedHashMap<>();
        Map<String, Double> offsets = offsets(readings);
        for (Run.Reading reading : readings) {
            Double station = reading.stationMm();
            Double below = reading.belowMm();
            if (station == null || below == null || !surface.equals(reading.surface())) {
                continue;
            }
            String setUp = Objects.requireNonNullElse(reading.setUp(), "");
            Double offset = offsets.get(setUp);
            bySetUp.computeIfAbsent(
                            offset == null ? "apart " + setUp : "joined", s -> new TreeMap<>())
                    .computeIfAbsent(station, s -> new ArrayList<>())
                    .add(below + (offset == null ? 0 : offset));
        }
        return bySetUp.values().stream().map(Sole::fromItsHighest).toList();
    }

    private static TreeMap<Double, Double> fromItsHighest(TreeMap<Double, List<Double>> readings) {
        TreeMap<Double, Double> line = new TreeMap<>();
        readings.forEach(
                (station, repeats) ->
                        line.put(
                                station,
                                repeats.stream()
                                        .mapToDouble(below -> below)
                                        .average()
                                        .orElseThrow()));
        double highest = line.values().stream().mapToDouble(below -> below).min().orElseThrow();
        line.replaceAll((station, below) -> below - highest);
        return line;
    }

    /** What brings a set-up to the datum of the first one, where a tie joins the two directly. */
    private static Map<String, Double> offsets(List<Run.Reading> readings) {
        Map<String, Map<String, Double>> ties = new LinkedHashMap<>();
        String first = null;
        for (Run.Reading reading : readings) {
            String setUp = Objects.requireNonNullElse(reading.setUp(), "");
            first = first == null ? setUp : first;
            String tie = reading.tie();
            Double below = reading.belowMm();
            if (tie != null && below != null) {
                ties.computeIfAbsent(tie, t -> new LinkedHashMap<>()).putIfAbsent(setUp, below);
            }
        }
        Map<String, Double> offsets = new LinkedHashMap<>();
        if (first != null) {
            offsets.put(first, 0.0);
            for (Map<String, Double> point : ties.values()) {
                Double here = point.get(first);
                if (here != null) {
                    point.forEach((setUp, below) -> offsets.putIfAbsent(setUp, here - below));
                }
            }
        }
        return offsets;
    }
}
