package eavesproof.drawing;

import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.WayPart;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One run seen from above, rolled out into a line: the roofs that drain to it, which way it falls,
 * its high points and outlets, and the way of the water to where it goes. Along the run it is to
 * scale; roofs and pipes are not, since no record says where they lie.
 */
public final class RoofPlan {
    private static final double EDGE_MM = 4;
    private static final double ROOF_TOP_MM = 1;
    private static final double LOW_ROOF_MM = 11;
    private static final double ROW_MM = 3.5;
    private static final double WIDE_MM = 3.4;
    private static final double HEAD_MM = 1.8;
    private static final double SIZE_PT = 7;
    private static final int ROOFS = 3;

    private final Job job;
    private final Run run;
    private final double widthMm;
    private final List<String> roofLines;
    private final double gutterMm;
    private final List<Mark> marks = new ArrayList<>();

    private RoofPlan(Job job, Run run, double widthMm) {
        this.job = job;
        this.run = run;
        this.widthMm = widthMm;
        roofLines = lines(roofs());
        gutterMm = LOW_ROOF_MM + ROW_MM * (roofLines.size() - 1);
    }

    /**
     * @param slopes the falls that were found, by straight
     * @return empty where no length is recorded
     */
    public static Optional<Drawing> of(
            Job job, Run run, Map<String, List<Slope>> slopes, double widthMm) {
        return new RoofPlan(job, run, widthMm).drawn(slopes);
    }

    private Optional<Drawing> drawn(Map<String, List<Slope>> slopes) {
        List<Run.Straight> straights =
                Objects.requireNonNullElse(run.straights(), List.<Run.Straight>of());
        double all = straights.stream().mapToDouble(RoofPlan::length).sum();
        if (straights.isEmpty() || straights.stream().anyMatch(s -> length(s) == 0)) {
            return Optional.empty();
        }
        roof();
        double below = gutterMm + WIDE_MM + (straights.size() > 1 ? 3 : 2) * ROW_MM;
        PlanWay way = new PlanWay(job, widthMm, below + 2);
        double left = EDGE_MM;
        for (Run.Straight straight : straights) {
            double right = left + length(straight) / all * (widthMm - 2 * EDGE_MM);
            StationScale scale = new StationScale(left, right, 0, length(straight));
            straight(straight, scale);
            if (straights.size() > 1) {
                String name = straight.id() + ", " + Decimals.with(length(straight), Unit.MM);
                double room = right - left - 2;
                words((left + right) / 2, below, fitting(name, room), Anchor.MIDDLE);
            }
            slopes.getOrDefault(straight.id(), List.of()).forEach(s -> slope(s, scale));
            roofs().forEach(roof -> inflow(roof, straight, scale));
            for (WayPart.Outlet outlet : outlets(straight)) {
                outlet(outlet, scale);
                way.from(outlet);
            }
            left = right;
        }
        marks.addAll(way.marks());
        return Optional.of(new Drawing(widthMm, way.bottomMm(), alt(straights, way), marks));
    }

    private static double length(Run.Straight straight) {
        return Math.max(0, Objects.requireNonNullElse(straight.lengthMm(), 0.0));
    }

    private List<Job.Catchment> roofs() {
        return Objects.requireNonNullElse(job.catchments(), List.<Job.Catchment>of()).stream()
                .filter(roof -> run.id().equals(roof.run()))
                .toList();
    }

    private List<WayPart.Outlet> outlets(Run.Straight straight) {
        return Objects.requireNonNullElse(job.way(), List.<WayPart>of()).stream()
                .filter(WayPart.Outlet.class::isInstance)
                .map(WayPart.Outlet.class::cast)
                .filter(outlet -> straight.id().equals(outlet.on()))
                .toList();
    }

    private void roof() {
        double width = widthMm - 2 * EDGE_MM;
        double high = gutterMm - ROOF_TOP_MM;
        marks.add(Mark.Area.box(EDGE_MM, ROOF_TOP_MM, width, high, Fill.NONE, Line.FINE));
        for (double share : new double[] {0.08, 0.92}) {
            double x = EDGE_MM + share * width;
            arrow(x, ROOF_TOP_MM + 2, x, gutterMm - 1.5);
        }
        double y = ROOF_TOP_MM + 4;
        for (String line : roofLines) {
            words(widthMm / 2, y, fitting(line, width * 0.8), Anchor.MIDDLE);
            y += ROW_MM;
        }
    }

    private static List<String> lines(List<Job.Catchment> roofs) {
        List<String> lines =
                roofs.stream()
                        .filter(roof -> roof.inflow() == null)
                        .map(RoofPlan::words)
                        .collect(Collectors.toCollection(ArrayList::new));
        if (lines.isEmpty()) {
            return List.of("roof not recorded");
        }
        if (lines.size() > ROOFS) {
            lines.set(ROOFS, "and " + (lines.size() - ROOFS) + " more");
        }
        return lines.subList(0, Math.min(ROOFS + 1, lines.size()));
    }

    private static String words(Job.Catchment roof) {
        List<String> parts = new ArrayList<>(List.of("roof " + roof.id()));
        parts.add(
                roof.planAreaM2() == null
                        ? "area not recorded"
                        : Decimals.plain(roof.planAreaM2(), Unit.M2.decimals()) + " m² on plan");
        parts.add(
                roof.pitchDeg() == null
                        ? "pitch not recorded"
                        : "pitch " + Decimals.plain(roof.pitchDeg(), 1) + "°");
        if (roof.cover() != null) {
            parts.add(roof.cover());
        }
        Job.EavesPart part = roof.eaves();
        if (part != null) {
            parts.add("to a part of " + Objects.requireNonNullElse(part.on(), "the gutter"));
        }
        return String.join(", ", parts);
    }

    private void straight(Run.Straight straight, StationScale scale) {
        double left = scale.x(0);
        double right = scale.x(length(straight));
        double bottom = gutterMm + WIDE_MM;
        marks.add(Mark.Stroke.between(left, gutterMm, right, gutterMm, Line.PLAIN));
        marks.add(Mark.Stroke.between(left, bottom, right, bottom, Line.HEAVY));
        marks.add(Mark.Stroke.between(left, gutterMm, left, bottom, end(straight.leftEnd())));
        marks.add(Mark.Stroke.between(right, gutterMm, right, bottom, end(straight.rightEnd())));
    }

    private static Line end(Run.@Nullable End end) {
        return end != null && "corner".equals(end.kind()) ? Line.DASHED : Line.PLAIN;
    }

    /** An arrow the way the sole falls, and a triangle where it is highest. */
    private void slope(Slope slope, StationScale scale) {
        double from = scale.x(slope.towardsRight() ? slope.fromMm() : slope.toMm());
        double to = scale.x(slope.towardsRight() ? slope.toMm() : slope.fromMm());
        double y = gutterMm + WIDE_MM / 2;
        double room = Math.abs(to - from);
        if (room > 4 * HEAD_MM) {
            double third = (to - from) / 3;
            arrow(from + third, y, to - third, y);
            String text = "falls " + slope.text();
            boolean fits = fitting(text, room - 2).equals(text);
            double below = gutterMm + WIDE_MM + 2 * ROW_MM;
            words((from + to) / 2, below, fits ? text : "", Anchor.MIDDLE);
        }
        double high = Math.min(Math.max(from, EDGE_MM + 1.2), widthMm - EDGE_MM - 1.2);
        marks.add(
                new Mark.Area(
                        List.of(
                                new Point(high, gutterMm + WIDE_MM + 0.9),
                                new Point(high - 1.1, gutterMm + WIDE_MM + 2.8),
                                new Point(high + 1.1, gutterMm + WIDE_MM + 2.8)),
                        Fill.INK,
                        Line.NONE));
    }

    private void inflow(Job.Catchment roof, Run.Straight straight, StationScale scale) {
        Job.Inflow inflow = roof.inflow();
        if (inflow == null || inflow.stationMm() == null || !straight.id().equals(inflow.on())) {
            return;
        }
        double x = scale.x(inflow.stationMm());
        arrow(x, gutterMm - 6, x, gutterMm);
        String what = Objects.requireNonNullElse(inflow.kind(), "inflow") + " " + roof.id();
        boolean onTheRight = x > widthMm / 2;
        words(
                onTheRight ? x - 1.2 : x + 1.2,
                gutterMm - 2,
                what,
                onTheRight ? Anchor.END : Anchor.START);
    }

    private void outlet(WayPart.Outlet outlet, StationScale scale) {
        if (outlet.stationMm() == null) {
            return;
        }
        double x = scale.x(outlet.stationMm());
        double y = gutterMm + WIDE_MM / 2;
        marks.add(new Mark.Circle(new Point(x, y), 1.5, Fill.WHITE, Line.HEAVY));
        boolean onTheRight = x > widthMm / 2;
        words(
                onTheRight ? x + 1.5 : x - 1.5,
                gutterMm + WIDE_MM + ROW_MM,
                outlet.id(),
                onTheRight ? Anchor.END : Anchor.START);
    }

    private void arrow(double x1, double y1, double x2, double y2) {
        Point tip = new Point(x2, y2);
        marks.add(Mark.Stroke.between(x1, y1, x2, y2, Line.FINE));
        marks.add(Mark.Area.arrowHead(new Point(x1, y1), tip, HEAD_MM));
    }

    private void words(double x, double y, String text, Anchor anchor) {
        if (!text.isBlank()) {
            marks.add(Mark.Words.level(x, y, text, anchor, SIZE_PT));
        }
    }

    /** As much of the text as there is room for; what is cut off stands elsewhere on the paper. */
    static String fitting(String text, double roomMm) {
        String fitting = text;
        while (!fitting.isEmpty()
                && Lettering.widthMm(fitting + " …", SIZE_PT, Weight.REGULAR) > roomMm) {
            fitting = fitting.substring(0, fitting.offsetByCodePoints(fitting.length(), -1));
        }
        return Lettering.widthMm(text, SIZE_PT, Weight.REGULAR) <= roomMm
                ? text
                : fitting.isEmpty() ? "" : fitting.strip() + " …";
    }

    private String alt(List<Run.Straight> straights, PlanWay way) {
        return "Run "
                + run.id()
                + " from above, schematic: "
                + roofs().stream().map(RoofPlan::words).collect(Collectors.joining("; "))
                + "; straights "
                + straights.stream().map(Run.Straight::id).collect(Collectors.joining(", "))
                + "; "
                + way.inWords()
                + ".";
    }
}
