package eavesproof.drawing;

import eavesproof.job.Run;
import eavesproof.job.WayPart;
import eavesproof.quantity.Decimals;
import eavesproof.survey.WaterLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/** What stands under a gutter: names, falls, lengths to keep clear, stations. */
final class ElevationFeet {
    private static final double SIZE = ElevationSheet.SMALL_PT;
    private static final double[] NEARLY_THERE = {0, -0.8, 0.8, -1.6, 1.6, -2.4, 2.4};
    private static final double[] ABOUT_THERE = {0, -2, 2, -4, 4, -6, 6, -9, 9};
    private static final double CLEAR_MM = 0.35;
    private static final int MOST_SINGLED_OUT = 8;

    private final Run.Straight straight;
    private final Built built;
    private final StationScale scale;
    private final Rooms rooms;
    private final double namesMm;
    private double bottomMm;

    ElevationFeet(Built built, StationScale scale, Rooms rooms, double namesMm) {
        this.built = built;
        this.straight = built.straight();
        this.scale = scale;
        this.rooms = rooms;
        this.namesMm = namesMm + 2.8;
        bottomMm = this.namesMm + 1;
        // No name comes to lie on the bounds of a length that is to be kept clear.
        double reach = this.namesMm + (hasFalls() ? 9 : 2.4);
        for (Run.KeepClear zone : zones()) {
            rooms.takeUpright(left(zone), 0, reach);
            rooms.takeUpright(right(zone), 0, reach);
        }
    }

    private boolean hasFalls() {
        return !built.slopes().isEmpty() || Sole.of(straight).highestMm().isPresent();
    }

    private List<Run.KeepClear> zones() {
        return ElevationSheet.or(straight.keepClear()).stream()
                .filter(z -> z.fromMm() != null && z.toMm() != null && right(z) > left(z))
                .toList();
    }

    private double left(Run.KeepClear zone) {
        return Math.max(x(Objects.requireNonNull(zone.fromMm())), scale.leftMm());
    }

    private double right(Run.KeepClear zone) {
        return Math.min(x(Objects.requireNonNull(zone.toMm())), scale.rightMm());
    }

    double bottomMm() {
        return bottomMm;
    }

    /** Joints, fittings and outlets in a row of their own; brackets under their feet. */
    List<Mark> names(DoubleUnaryOperator soleY) {
        List<Mark> marks = new ArrayList<>();
        for (Placed<WayPart.Outlet> outlet : Placed.outlets(built)) {
            name(marks, outlet.id(), x(outlet.stationMm()), namesMm, ABOUT_THERE);
        }
        Placed.joints(straight).forEach(j -> ticked(marks, j.id(), j.stationMm(), soleY));
        Placed.fittings(straight).forEach(f -> ticked(marks, f.id(), f.stationMm(), soleY));
        for (Placed<Run.Bracket> bracket : byNeed()) {
            double station = bracket.stationMm();
            name(marks, bracket.id(), x(station), soleY.applyAsDouble(station) + 4.2, NEARLY_THERE);
        }
        return marks;
    }

    private void ticked(List<Mark> marks, String id, double station, DoubleUnaryOperator soleY) {
        int before = marks.size();
        name(marks, id, x(station), namesMm, ABOUT_THERE);
        if (marks.size() > before) {
            Mark.Words words = (Mark.Words) marks.get(before);
            double from = soleY.applyAsDouble(station) + 0.6;
            double bend = namesMm - 3.4;
            marks.add(
                    new Mark.Stroke(
                            List.of(
                                    new Point(x(station), from),
                                    new Point(x(station), bend),
                                    new Point(words.at().xMm(), namesMm - 2.2)),
                            Line.FINE));
            rooms.takeUpright(x(station), from, bend);
        }
    }

    /** Brackets of findings first, then both ends, then every n-th as far as there is room. */
    private List<Placed<Run.Bracket>> byNeed() {
        List<Placed<Run.Bracket>> brackets =
                Placed.brackets(straight).stream()
                        .sorted(Comparator.comparingDouble(Placed::stationMm))
                        .toList();
        if (brackets.isEmpty()) {
            return brackets;
        }
        Set<Placed<Run.Bracket>> sorted = new LinkedHashSet<>();
        List<Numbered> found = Elevation.marked(built);
        // Where findings are everywhere, naming their brackets first would leave no order.
        for (Numbered one : found.size() > MOST_SINGLED_OUT ? List.<Numbered>of() : found) {
            brackets.stream()
                    .filter(b -> b.stationMm() == one.fromMm() || b.stationMm() == one.toMm())
                    .forEach(sorted::add);
        }
        sorted.add(brackets.get(0));
        sorted.add(brackets.get(brackets.size() - 1));
        int step = step(brackets);
        for (int i = 0; i < brackets.size(); i += step) {
            sorted.add(brackets.get(i));
        }
        return List.copyOf(sorted);
    }

    private int step(List<Placed<Run.Bracket>> brackets) {
        double widest =
                brackets.stream()
                        .mapToDouble(b -> Lettering.widthMm(b.id(), SIZE, Weight.REGULAR))
                        .max()
                        .orElse(0);
        double each = (scale.rightMm() - scale.leftMm()) / brackets.size();
        return List.of(1, 2, 5, 10, 20, 50).stream()
                .filter(n -> n * each >= widest + 1)
                .findFirst()
                .orElse(100);
    }

    /** How near the water comes to the lip, under the place where it comes nearest. */
    List<Mark> water(ElevationWater water) {
        List<Mark> marks = new ArrayList<>();
        WaterLine.At at = water.nearest().orElse(null);
        if (at != null) {
            String text = ElevationWater.near(at, water.line().lower());
            double y = bottomMm + 3.2;
            name(marks, text, x(at.stationMm()), y, along((scale.rightMm() - scale.leftMm()) / 2));
            if (!marks.isEmpty()) {
                Mark.Words words = (Mark.Words) marks.get(0);
                double sign = words.at().xMm() - words.widthMm() / 2 - 1.9;
                // At the very edge there is no room for it, and the words stand without it.
                if (sign >= 2) {
                    marks.add(ElevationWater.level(sign, y + 0.1));
                }
                bottomMm = y + 0.6;
            }
        }
        return marks;
    }

    /** Arrows along the reaches, the way the water runs. */
    List<Mark> falls(Sole sole) {
        if (!hasFalls()) {
            return List.of();
        }
        List<Mark> marks = new ArrayList<>();
        double y = bottomMm + 3.6;
        for (Slope slope : built.slopes()) {
            double left = Math.max(scale.x(slope.fromMm()), scale.leftMm());
            double right = Math.min(scale.x(slope.toMm()), scale.rightMm());
            if (right - left > 4) {
                Point from = new Point(slope.towardsRight() ? left + 0.8 : right - 0.8, y);
                Point tip = new Point(slope.towardsRight() ? right - 0.8 : left + 0.8, y);
                marks.add(new Mark.Stroke(List.of(from, tip), Line.FINE));
                marks.add(Mark.Area.arrowHead(from, tip, 2.4));
            }
            name(marks, slope.text(), (left + right) / 2, y - 0.9, along((right - left) / 2));
        }
        sole.highestMm()
                .filter(at -> at >= 0 && at <= scale.lastStationMm())
                .ifPresent(
                        at -> {
                            double x = x(at);
                            marks.add(
                                    new Mark.Area(
                                            List.of(
                                                    new Point(x, y - 1),
                                                    new Point(x - 0.9, y + 0.6),
                                                    new Point(x + 0.9, y + 0.6)),
                                            Fill.INK,
                                            Line.NONE));
                            name(marks, "highest", x, y + 3, ABOUT_THERE);
                        });
        bottomMm = y + (sole.highestMm().isPresent() ? 3.4 : 1);
        return marks;
    }

    /** From the middle of a length outwards, to either side in turn. */
    private static double[] along(double halfMm) {
        int steps = Math.max(4, (int) (halfMm / 2));
        double[] shifts = new double[2 * steps + 1];
        for (int i = 1; i <= steps; i++) {
            shifts[2 * i - 1] = -2.0 * i;
            shifts[2 * i] = 2.0 * i;
        }
        return shifts;
    }

    /** Hatched, and bounded up through the gutter. */
    List<Mark> keepClear(double gutterTopMm) {
        List<Mark> marks = new ArrayList<>();
        double y = bottomMm + 1.6;
        for (Run.KeepClear zone : zones()) {
            double left = left(zone);
            double right = right(zone);
            marks.add(Mark.Area.box(left, y, right - left, 2.6, Fill.HATCHED, Line.FINE));
            marks.add(Mark.Stroke.between(left, gutterTopMm - 1, left, y, Line.DASHED));
            marks.add(Mark.Stroke.between(right, gutterTopMm - 1, right, y, Line.DASHED));
            name(
                    marks,
                    zone.what() == null ? zone.id() : zone.what(),
                    (left + right) / 2,
                    y + 5.2,
                    ABOUT_THERE);
            bottomMm = y + 5.8;
        }
        return marks;
    }

    List<Mark> stations(double lengthMm) {
        List<Mark> marks = new ArrayList<>();
        double y = bottomMm + 2.2;
        marks.add(Mark.Stroke.between(x(0), y, x(lengthMm), y, Line.FINE));
        tick(marks, lengthMm, y);
        name(marks, metres(lengthMm) + " m", x(lengthMm), y + 3.4, new double[] {0});
        for (double station : scale.ticks(lengthMm)) {
            tick(marks, station, y);
            name(
                    marks,
                    station == 0 ? "0" : metres(station),
                    x(station),
                    y + 3.4,
                    new double[] {0});
        }
        bottomMm = y + 4;
        return marks;
    }

    private void tick(List<Mark> marks, double station, double y) {
        marks.add(Mark.Stroke.between(x(station), y, x(station), y + 1.1, Line.FINE));
    }

    private static String metres(double mm) {
        return Decimals.plain(mm / 1000, 3);
    }

    private void name(List<Mark> marks, String text, double x, double y, double[] shifts) {
        rooms.place(Mark.Words.level(x, y, text, Anchor.MIDDLE, SIZE), CLEAR_MM, shifts)
                .ifPresent(marks::add);
    }

    private double x(double stationMm) {
        return scale.x(stationMm);
    }
}
