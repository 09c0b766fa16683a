package eavesproof.hydraulics;

import eavesproof.hydraulics.Profile.Point;
import java.util.List;

/** Refuses the points of a profile that crosses, touches or folds back on itself. */
final class Crossings {
    private Crossings() {}

    static void refuse(List<Point> points) {
        for (int i = 1; i < points.size(); i++) {
            if (same(points.get(i), points.get(i - 1))) {
                throw new Refused(
                        "points " + i + " and " + (i + 1) + " of the profile are the same");
            }
        }
        for (int i = 2; i < points.size(); i++) {
            if (foldsBack(points.get(i - 2), points.get(i - 1), points.get(i))) {
                throw new Refused("the profile folds back on itself at point " + i);
            }
        }
        for (int i = 1; i < points.size(); i++) {
            for (int j = i + 2; j < points.size(); j++) {
                if (meet(points.get(i - 1), points.get(i), points.get(j - 1), points.get(j))) {
                    throw new Refused(
                            "the profile crosses itself between points " + i + " and " + (j + 1));
                }
            }
        }
    }

    private static boolean same(Point a, Point b) {
        return a.x() == b.x() && a.y() == b.y();
    }

    private static boolean foldsBack(Point a, Point b, Point c) {
        double along = (b.x() - a.x()) * (c.x() - b.x()) + (b.y() - a.y()) * (c.y() - b.y());
        return turn(a, b, c) == 0 && along < 0;
    }

    /** Whether two pieces have a point in common. */
    private static boolean meet(Point a, Point b, Point c, Point d) {
        double atC = turn(a, b, c);
        double atD = turn(a, b, d);
        double atA = turn(c, d, a);
        double atB = turn(c, d, b);
        return (opposite(atC, atD) && opposite(atA, atB))
                || (atC == 0 && within(a, b, c))
                || (atD == 0 && within(a, b, d))
                || (atA == 0 && within(c, d, a))
                || (atB == 0 && within(c, d, b));
    }

    private static boolean opposite(double one, double other) {
        return (one > 0 && other < 0) || (one < 0 && other > 0);
    }

    /** Whether a point in line with a piece lies on it. */
    private static boolean within(Point a, Point b, Point p) {
        return Math.min(a.x(), b.x()) <= p.x()
                && p.x() <= Math.max(a.x(), b.x())
                && Math.min(a.y(), b.y()) <= p.y()
                && p.y() <= Math.max(a.y(), b.y());
    }

    private static double turn(Point a, Point b, Point c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }
}
