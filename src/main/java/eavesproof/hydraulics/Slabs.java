package eavesproof.hydraulics;

import eavesproof.hydraulics.Profile.Point;
import eavesproof.hydraulics.Section.Wet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * Cuts a profile at the level of each of its points.
 *
 * <p>Water lies between the sides that go down from the back lip and those that come up to the
 * front lip, in as many troughs as the sole has. What is rolled inwards beyond a lip takes the
 * water off behind it.
 */
final class Slabs {
    /** Levels this near to each other, m, are one. */
    private static final double SAME = 1e-9;

    private final List<Point> chain;
    private final List<Point> behindBack;
    private final List<Point> beyondFront;
    private final double backLip;
    private final double frontLip;

    Slabs(Profile profile) {
        int lowest = profile.lowest();
        double bottom = profile.points().get(lowest).y();
        List<Point> all =
                profile.points().stream().map(p -> new Point(p.x(), p.y() - bottom)).toList();
        int back = profile.highest(0, lowest);
        int front = profile.highest(lowest, all.size() - 1);
        chain = all.subList(back, front + 1);
        behindBack = all.subList(0, back + 1);
        beyondFront = all.subList(front, all.size());
        backLip = all.get(back).y();
        frontLip = all.get(front).y();
        if (!(Math.min(backLip, frontLip) > SAME) || !(all.get(back).x() < all.get(front).x())) {
            throw new Refused(
                    "the profile holds no water: its points run from the back lip down to the sole"
                            + " and up to the front lip");
        }
    }

    double backLip() {
        return backLip;
    }

    double frontLip() {
        return frontLip;
    }

    List<Slab> all() {
        double lip = Math.min(backLip, frontLip);
        TreeSet<Double> levels = new TreeSet<>(List.of(lip));
        for (List<Point> part : List.of(chain, behindBack, beyondFront)) {
            part.stream()
                    .map(Point::y)
                    .filter(y -> y > SAME && y < lip - SAME)
                    .forEach(levels::add);
        }
        List<Slab> slabs = new ArrayList<>();
        Wet below = new Wet(0, 0, 0, 0);
        double from = 0;
        for (double to : levels) {
            if (to - from > SAME) {
                Slab slab = between(from, to, below);
                slabs.add(slab);
                below = slab.at(to);
                from = to;
            }
        }
        slabs.add(new Slab(from, Double.POSITIVE_INFINITY, below, 0, 2));
        return slabs;
    }

    private Slab between(double from, double to, Wet below) {
        double middle = (from + to) / 2;
        List<Side> sides = sides(chain, middle);
        Trimmed trimmed = new Trimmed(sides(behindBack, middle), sides(beyondFront, middle));
        double widthFrom = 0;
        double widthTo = 0;
        double perHeight = 0;
        for (int i = 0; i + 1 < sides.size(); i += 2) {
            Side left = trimmed.left(sides.get(i), middle);
            Side right = trimmed.right(sides.get(i + 1), middle);
            if (right.x(middle) > left.x(middle)) {
                widthFrom += Math.max(0, right.x(from) - left.x(from));
                widthTo += Math.max(0, right.x(to) - left.x(to));
                perHeight += left.lengthPerHeight() + right.lengthPerHeight();
            }
        }
        if (!(widthFrom + widthTo > 0)) {
            throw Refused.saying("the profile holds no water at {} m", middle);
        }
        double flat = Math.max(0, widthFrom - below.width());
        return new Slab(
                from,
                to,
                new Wet(below.area(), widthFrom, below.perimeter() + flat, below.moment()),
                (widthTo - widthFrom) / (to - from),
                perHeight);
    }

    /** The pieces that reach through a level, from the back to the front. */
    private static List<Side> sides(List<Point> part, double level) {
        List<Side> sides = new ArrayList<>();
        for (int i = 1; i < part.size(); i++) {
            Point a = part.get(i - 1);
            Point b = part.get(i);
            if (Math.min(a.y(), b.y()) < level && Math.max(a.y(), b.y()) > level) {
                sides.add(new Side(a, b));
            }
        }
        sides.sort(Comparator.comparingDouble(side -> side.x(level)));
        return sides;
    }

    /** Rolled edges that stand within the trough. */
    private record Trimmed(List<Side> atBack, List<Side> atFront) {
        Side left(Side side, double level) {
            Side left = side;
            for (Side rolled : atBack) {
                left = rolled.x(level) > left.x(level) ? rolled : left;
            }
            return left;
        }

        Side right(Side side, double level) {
            Side right = side;
            for (Side rolled : atFront) {
                right = rolled.x(level) < right.x(level) ? rolled : right;
            }
            return right;
        }
    }

    /** A side of the channel between two points of different height. */
    private record Side(Point a, Point b) {
        double x(double y) {
            return a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
        }

        double lengthPerHeight() {
            return StrictMath.hypot(1, (b.x() - a.x()) / (b.y() - a.y()));
        }
    }
}
