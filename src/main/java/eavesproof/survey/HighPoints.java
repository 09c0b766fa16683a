package eavesproof.survey;

import eavesproof.job.Words;
import eavesproof.quantity.Uncertain;
import eavesproof.survey.Levels.Level;
import eavesproof.survey.Trough.Spot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where between two outlets the water parts: at the highest reading of one surface there, of the
 * sole if it was read.
 */
final class HighPoints {
    private static final double SQRT_3 = StrictMath.sqrt(3);

    private final Trough trough;
    private final Levels levels;

    HighPoints(Trough trough, Levels levels) {
        this.trough = trough;
        this.levels = levels;
    }

    /**
     * The high point; how sure its station is includes that it may lie anywhere from the reading
     * before it to the reading after it (a rectangular distribution, JCGM 100:2008 4.3.7).
     */
    Found<Spot> between(Spot left, Spot right) {
        if (trough.distance(left, right) instanceof Found.Missing<Uncertain> missing) {
            return Found.missing(missing.why());
        }
        List<Level> all = levels.between(left.position(), right.position());
        for (String surface : Words.SURFACES) {
            List<Level> read = ofOneDatum(all, surface);
            if (!read.isEmpty()) {
                return Found.of(highest(read, left, right));
            }
        }
        return Found.missing(
                "no reading between "
                        + left.name()
                        + " and "
                        + right.name()
                        + " says where the high point is");
    }

    /** Of the levels of a surface those of the set-ups, joined by ties, that hold the most. */
    private List<Level> ofOneDatum(List<Level> all, String surface) {
        Map<String, List<Level>> byDatum = new LinkedHashMap<>();
        for (Level level : all) {
            if (level.surface().equals(surface)) {
                byDatum.computeIfAbsent(levels.datum(level), it -> new ArrayList<>()).add(level);
            }
        }
        List<Level> most = List.of();
        for (List<Level> some : byDatum.values()) {
            most = some.size() > most.size() ? some : most;
        }
        return most;
    }

    private Spot highest(List<Level> read, Spot left, Spot right) {
        int highest = 0;
        for (int i = 1; i < read.size(); i++) {
            if (belowMm(read.get(i)) < belowMm(read.get(highest))) {
                highest = i;
            }
        }
        Spot at = read.get(highest).spot();
        Spot before = highest == 0 ? left : read.get(highest - 1).spot();
        Spot after = highest == read.size() - 1 ? right : read.get(highest + 1).spot();
        double halfWidth = Math.max(along(at) - along(before), along(after) - along(at));
        Uncertain between =
                Uncertain.of(
                        0,
                        "high point between " + left.name() + " and " + right.name(),
                        halfWidth / SQRT_3);
        String name = "the high point, " + at.name();
        return new Spot(at.id(), name, at.straight(), at.station().plus(between));
    }

    private double belowMm(Level level) {
        return levels.belowDatum(level).value();
    }

    private double along(Spot spot) {
        return trough.along(spot.position());
    }
}
