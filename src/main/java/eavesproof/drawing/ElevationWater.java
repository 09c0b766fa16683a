package eavesproof.drawing;

import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.WaterLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * The water that stands in a straight in the design rain. The part of it that would be over the lip
 * is not drawn but said: where it goes is no longer the gutter's.
 *
 * @param on from left to right, two or more
 */
record ElevationWater(String straight, WaterLine line, List<WaterLine.At> on) {

    static Optional<ElevationWater> of(Built built) {
        String straight = built.straight().id();
        return built.water()
                .map(line -> new ElevationWater(straight, line, line.on(straight)))
                .filter(water -> water.on().size() > 1);
    }

    double lipMm() {
        return line.lipMm();
    }

    /**
     * Where on this straight it comes nearest to the lip, if it does so nowhere else in the run.
     */
    Optional<WaterLine.At> nearest() {
        return Optional.of(line.nearest()).filter(at -> at.straight().equals(straight));
    }

    /**
     * @param soleY by station
     * @param soles stations where the sole bends
     * @param tall how many mm of paper stand for one mm of height
     */
    List<Mark> marks(
            StationScale scale, DoubleUnaryOperator soleY, List<Double> soles, double tall) {
        List<Point> surface = new ArrayList<>();
        for (WaterLine.At at : on) {
            surface.add(new Point(scale.x(at.stationMm()), surfaceY(at, soleY, tall)));
        }
        List<Point> outline = new ArrayList<>(surface);
        double first = on.get(0).stationMm();
        double last = on.get(on.size() - 1).stationMm();
        outline.add(new Point(scale.x(last), soleY.applyAsDouble(last)));
        for (int i = soles.size() - 1; i >= 0; i--) {
            double station = soles.get(i);
            if (station > first && station < last) {
                outline.add(new Point(scale.x(station), soleY.applyAsDouble(station)));
            }
        }
        outline.add(new Point(scale.x(first), soleY.applyAsDouble(first)));
        return List.of(
                new Mark.Area(outline, Fill.TINT, Line.NONE), new Mark.Stroke(surface, Line.FINE));
    }

    /** The sign of a water level, at the place that is nearest to the lip. */
    List<Mark> sign(StationScale scale, DoubleUnaryOperator soleY, double tall) {
        return nearest()
                .map(at -> level(scale.x(at.stationMm()), surfaceY(at, soleY, tall)))
                .map(List::of)
                .orElse(List.of());
    }

    private double surfaceY(WaterLine.At at, DoubleUnaryOperator soleY, double tall) {
        double shown = Math.min(at.depthMm(), line.lipMm());
        return soleY.applyAsDouble(at.stationMm()) - shown * tall;
    }

    static Mark level(double x, double y) {
        return new Mark.Area(
                List.of(
                        new Point(x, y),
                        new Point(x - 1.05, y - 1.8),
                        new Point(x + 1.05, y - 1.8)),
                Fill.INK,
                Line.NONE);
    }

    /** How the water comes to the lip: "31.2 mm below the front lip". */
    static String near(WaterLine.At at, WaterLine.Lip lower) {
        double mm = at.freeboardMm();
        return Decimals.with(Math.abs(mm), Unit.MM) + (mm < 0 ? " above " : " below ") + lip(lower);
    }

    static String lip(WaterLine.Lip lower) {
        return switch (lower) {
            case FRONT -> "the front lip";
            case BACK -> "the back lip";
            case BOTH -> "both lips";
            case NOT_TOLD -> "the lower lip";
        };
    }
}
