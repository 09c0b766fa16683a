package eavesproof.drawing;

import java.util.ArrayList;
import java.util.List;

/** The ruled lines of an area, cut to its outline, so that a pen needs neither clip nor pattern. */
final class Hatch {
    private Hatch() {}

    /** One straight line. */
    record Rule(Point from, Point to) {}

    static List<Rule> of(Mark.Area area) {
        double angle = StrictMath.toRadians(-area.fill().hatchDeg());
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.sin(angle);
        List<Point> turned = area.outline().stream().map(p -> turn(p, cos, -sin)).toList();
        double gap = area.fill().hatchGapMm();
        double top = turned.stream().mapToDouble(Point::yMm).min().orElseThrow();
        double bottom = turned.stream().mapToDouble(Point::yMm).max().orElseThrow();
        List<Rule> rules = new ArrayList<>();
        // Counted from the paper's own origin, so that the ruling of two areas side by side meets.
        for (double n = Math.ceil(top / gap); n * gap < bottom; n++) {
            double y = n * gap;
            double[] crossings = crossings(turned, y);
            for (int i = 0; i + 1 < crossings.length; i += 2) {
                rules.add(
                        new Rule(
                                turn(new Point(crossings[i], y), cos, sin),
                                turn(new Point(crossings[i + 1], y), cos, sin)));
            }
        }
        return rules;
    }

    private static double[] crossings(List<Point> outline, double y) {
        List<Double> found = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % outline.size());
            // Half open, so that a corner on the line counts once.
            if ((a.yMm() <= y) != (b.yMm() <= y)) {
                found.add(a.xMm() + (y - a.yMm()) / (b.yMm() - a.yMm()) * (b.xMm() - a.xMm()));
            }
        }
        return found.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }

    private static Point turn(Point p, double cos, double sin) {
        return new Point(p.xMm() * cos - p.yMm() * sin, p.xMm() * sin + p.yMm() * cos);
    }
}
