package eavesproof.exchange;

import eavesproof.job.Words;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Whether a run hangs together: round its corners, by its joints, and in its levels. */
final class RunChecks {
    /**
     * Our choice: no gutter falls or sags by more than that for each metre, and no more than that
     * besides; levels that do were written in another unit or below another datum.
     */
    private static final double STEEPEST_MM_PER_M = 100;

    private static final double UNEVEN_MM = 50;
    private static final double MM_PER_M = 1000;

    /** Our choice: nothing that joints must keep clear of is narrower. */
    private static final double NARROWEST_ZONE_MM = 50;

    /** Our choice: no roof is less than 100 mm deep in front of its whole gutter. */
    private static final double SHALLOWEST_ROOF_M = 0.1;

    /** A gutter of one of these has no joint of the other, nor of any third kind. */
    private static final Set<String> OF_PLASTIC = Set.of("cemented", "gasket");

    private static final String SEAMLESS = "seamless";

    private final Problems problems;

    private RunChecks(Problems problems) {
        this.problems = problems;
    }

    static void check(Found job, Problems problems) {
        RunChecks checks = new RunChecks(problems);
        Found gutters = job.at("gutters");
        for (Found run : job.items("runs")) {
            checks.ends(run.items("straights"));
            String id = run.text("gutter");
            Found gutter = gutters == null || id == null ? null : gutters.at(id);
            for (Found straight : run.items("straights")) {
                straight.items("joints").forEach(joint -> checks.jointing(joint, gutter));
                straight.items("keep_clear").forEach(checks::width);
                checks.levels(straight);
            }
            checks.roofs(run, job.items("catchments"));
        }
    }

    /** Between two straights of a run lies a corner, and at its own ends there is none. */
    private void ends(List<Found> straights) {
        for (int i = 0; i < straights.size(); i++) {
            end(straights.get(i), "left_end", i > 0);
            end(straights.get(i), "right_end", i < straights.size() - 1);
        }
    }

    private void end(Found straight, String key, boolean within) {
        Found end = straight.at(key);
        Found kind = end == null ? null : end.at("kind");
        if (kind == null || Words.CORNER.equals(kind.value()) == within) {
            return;
        }
        String quoted = Shown.quoted(kind.value().toString());
        problems.add(
                kind,
                quoted + (within ? " between two straights of a run" : " that leads nowhere"),
                within
                        ? "\"corner\"; where the gutter stops another run begins"
                        : "\"stop end\" or \"open\", or a straight that goes on there");
    }

    /** A seamless gutter has joints at its corners all the same, made in whatever way. */
    private void jointing(Found joint, @Nullable Found gutter) {
        Found kind = joint.at("kind");
        String jointing = gutter == null ? null : gutter.text("jointing");
        if (kind == null
                || jointing == null
                || kind.value().equals(jointing)
                || kind.value().equals(Words.EXPANSION)
                || jointing.equals(SEAMLESS)) {
            return;
        }
        if (OF_PLASTIC.contains(jointing) || OF_PLASTIC.contains(kind.value())) {
            String found = Shown.quoted(kind.value().toString()) + " in a gutter that is ";
            problems.add(kind, found + jointing, Shape.oneOf(List.of(jointing, Words.EXPANSION)));
        }
    }

    private void width(Found zone) {
        Double from = zone.number("from_mm");
        Double to = zone.number("to_mm");
        if (from != null && to != null && to >= from && to - from < NARROWEST_ZONE_MM) {
            problems.add(
                    zone,
                    "a zone " + Amount.plain(to - from) + " wide",
                    "stations in millimetres, at least 50 apart");
        }
    }

    /** The soles that one set-up read on one straight. */
    private void levels(Found straight) {
        Map<String, Found> first = new TreeMap<>();
        for (Found reading : straight.items("readings")) {
            String setUp = reading.text("set_up");
            if (setUp != null && Words.SOLE.equals(reading.text("surface"))) {
                Found other = first.putIfAbsent(setUp, reading);
                if (other != null) {
                    together(reading, other);
                }
            }
        }
    }

    private void together(Found reading, Found other) {
        Found below = reading.at("below_mm");
        Double otherBelow = other.number("below_mm");
        Double here = reading.number("station_mm");
        Double there = other.number("station_mm");
        if (below == null || otherBelow == null || here == null || there == null) {
            return;
        }
        double apart = Math.abs(here - there);
        double mm = ((Number) below.value()).doubleValue();
        if (Math.abs(mm - otherBelow) > UNEVEN_MM + STEEPEST_MM_PER_M * apart / MM_PER_M) {
            problems.add(
                    below,
                    Amount.plain(mm),
                    "millimetres below the same datum as "
                            + Amount.plain(otherBelow)
                            + " at "
                            + Amount.plain(there)
                            + "; no gutter is so steep");
        }
    }

    private void roofs(Found run, List<Found> catchments) {
        String id = run.text("id");
        double lengthMm = 0;
        for (Found straight : run.items("straights")) {
            Double mm = straight.number("length_mm");
            lengthMm += mm == null ? 0 : mm;
        }
        double areaM2 = 0;
        Found last = null;
        for (Found catchment : catchments) {
            Double m2 = catchment.number("plan_area_m2");
            boolean ofThis = id != null && id.equals(catchment.text("run"));
            if (ofThis && catchment.at("eaves") != null) {
                return;
            }
            if (m2 != null && ofThis) {
                areaM2 += m2;
                last = catchment.at("plan_area_m2");
            }
        }
        if (last != null && areaM2 < SHALLOWEST_ROOF_M * lengthMm / MM_PER_M) {
            problems.add(
                    last,
                    Amount.plain(areaM2),
                    "square metres of roof for " + Amount.plain(lengthMm) + " mm of gutter");
        }
    }
}
