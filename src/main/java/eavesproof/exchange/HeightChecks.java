package eavesproof.exchange;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Whether heights and drops down the way of the water agree with each other. */
final class HeightChecks {
    /** Our choice: heights are taken somewhere on a pipe, which is as thick as that. */
    private static final double PIPE_MM = 50;

    /** Our choice: a sloping piece that is steeper is a downpipe, or slipped by a unit. */
    private static final double STEEPEST_BRANCH = 3;

    private static final double STEEPEST_DRAIN = 1;

    /** Our choice, as of readings: no gutter falls by more than that from outlet to outlet. */
    private static final double STEEPEST_GUTTER = 0.1;

    /** Their height is that of a rim or an inlet and says nothing of the pipe that comes in. */
    private static final Set<String> RIMS = Set.of("discharge", "tank");

    /** The water falls down these whatever they lead to. */
    private static final Set<String> UPRIGHT = Set.of("outlet", "downpipe");

    private final Problems problems;
    private final Map<String, Found> parts = new LinkedHashMap<>();

    private HeightChecks(Problems problems) {
        this.problems = problems;
    }

    static void check(Found job, Problems problems) {
        HeightChecks checks = new HeightChecks(problems);
        List<Found> way = job.items("way");
        for (Found part : way) {
            String id = part.text("id");
            if (id != null) {
                checks.parts.putIfAbsent(id, part);
            }
        }
        way.forEach(checks::slope);
        way.forEach(checks::below);
        for (Found run : job.items("runs")) {
            checks.outlets(run, way);
        }
    }

    private void slope(Found part) {
        Found drop = part.at("drop_mm");
        Double length = part.number("length_mm");
        double steepest = "drain".equals(part.text("kind")) ? STEEPEST_DRAIN : STEEPEST_BRANCH;
        if (drop != null && length != null && Math.abs(mm(drop)) > steepest * length) {
            add(drop, "millimetres, for a length of " + Amount.plain(length) + " mm on plan");
        }
    }

    /** What a part leads to lies lower, and by its drop where that is recorded. */
    private void below(Found part) {
        String to = part.text("to");
        Found next = to == null ? null : parts.get(to);
        Found height = next == null ? null : next.at("below_datum_mm");
        Double from = part.number("below_datum_mm");
        String kind = next == null ? null : next.text("kind");
        if (height == null || from == null || kind == null) {
            return;
        }
        Double drop = part.number("drop_mm");
        String leads = part.text("id") + " leads to it from " + Amount.plain(from);
        if (drop != null && !RIMS.contains(kind) && Math.abs(mm(height) - from - drop) > PIPE_MM) {
            String drops = " and drops " + Amount.plain(drop);
            add(height, "about " + Amount.plain(from + drop) + ": " + leads + drops);
        } else if (UPRIGHT.contains(part.text("kind")) && mm(height) < from - PIPE_MM) {
            add(height, "at least " + Amount.plain(from) + ": " + leads);
        }
    }

    private void add(Found number, String expected) {
        problems.add(number, Amount.plain(mm(number)), expected);
    }

    private void outlets(Found run, List<Found> way) {
        Map<String, Double> begins = new HashMap<>();
        double along = 0;
        for (Found straight : run.items("straights")) {
            Double length = straight.number("length_mm");
            begins.put(straight.text("id"), along);
            along += length == null ? Double.NaN : length;
        }
        Found first = null;
        for (Found part : way) {
            if ("outlet".equals(part.text("kind")) && place(part, begins) != null) {
                together(part, first, begins);
                first = first == null ? part : first;
            }
        }
    }

    private static @Nullable Double place(Found outlet, Map<String, Double> begins) {
        Double begin = begins.get(outlet.text("on"));
        Double station = outlet.number("station_mm");
        Double height = outlet.number("below_datum_mm");
        return begin == null || station == null || height == null ? null : begin + station;
    }

    private void together(Found outlet, @Nullable Found first, Map<String, Double> begins) {
        Double here = place(outlet, begins);
        Double there = first == null ? null : place(first, begins);
        Found height = outlet.at("below_datum_mm");
        Double other = first == null ? null : first.number("below_datum_mm");
        if (here == null || there == null || height == null || other == null) {
            return;
        }
        double most = PIPE_MM + STEEPEST_GUTTER * Math.abs(here - there);
        if (Math.abs(mm(height) - other) > most) {
            add(height, "about " + Amount.plain(other) + ", as another outlet of the same gutter");
        }
    }

    private static double mm(Found number) {
        return ((Number) number.value()).doubleValue();
    }
}
