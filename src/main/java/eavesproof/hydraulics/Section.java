package eavesproof.hydraulics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * The cross-section of an open channel, from the points across it. Lengths in m, depth from its
 * lowest point.
 *
 * <p>Between two levels at which a point lies, the surface width and the wetted perimeter are
 * linear in the depth and the area is quadratic, so that all four are exact. Above the lower lip
 * the sides are taken as carried up vertically: a depth there says by how much the water is over.
 */
public final class Section {
    /** Points this near to each other, in m, are one point. */
    private static final double SAME = 1e-9;

    private static final int MOST_POINTS = 400;

    /** Between two levels: what lies below, and how it grows. */
    private record Slab(
            double from,
            double to,
            double area,
            double moment,
            double perimeter,
            double width,
            double widthGrowth,
            double perimeterGrowth) {}

    private final Slab[] slabs;
    private final double[] starts;
    private final double backLip;
    private final double frontLip;

    private Section(List<Slab> slabs, double backLip, double frontLip) {
        this.slabs = slabs.toArray(Slab[]::new);
        this.starts = slabs.stream().mapToDouble(Slab::from).toArray();
        this.backLip = backLip;
        this.frontLip = frontLip;
    }

    /** A point across the channel, m; y is upwards. */
    public record Point(double x, double y) {
        public Point {
            if (!Double.isFinite(x) || !Double.isFinite(y)) {
                throw new IllegalArgumentException(
                        "a point of a profile is finite, not " + x + ", " + y);
            }
        }
    }

    /**
     * Any profile, from its back lip to its front lip.
     *
     * @throws IllegalArgumentException if it crosses itself, holds no water, or has too many points
     */
    public static Section through(List<Point> points) {
        refuseWhatHoldsNoWater(points);
        double bottom = points.stream().mapToDouble(Point::y).min().orElseThrow();
        List<Point> chain = points.stream().map(p -> new Point(p.x(), p.y() - bottom)).toList();
        double back = chain.get(0).y();
        double front = chain.get(chain.size() - 1).y();
        double lip = Math.min(back, front);
        TreeSet<Double> levels = new TreeSet<>(List.of(0.0, lip));
        chain.stream().map(Point::y).filter(y -> y < lip).forEach(levels::add);
        List<Slab> slabs = new ArrayList<>();
        Slab below = null;
        Double from = null;
        for (double to : levels) {
            if (from != null && to - from > SAME) {
                below = slab(chain, from, to, below);
                slabs.add(below);
                from = to;
            } else if (from == null) {
                from = to;
            }
        }
        if (below == null) {
            throw new IllegalArgumentException("the profile holds no water");
        }
        slabs.add(aboveTheLip(below));
        return new Section(slabs, back, front);
    }

    /** A half-circle of the given inside diameter, as 180 chords (area within 0.006 %). */
    public static Section halfRound(double diameter) {
        int chords = 180;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= chords; i++) {
            double angle = Math.PI * i / chords;
            points.add(
                    new Point(
                            -diameter / 2 * StrictMath.cos(angle),
                            i == 0 || i == chords ? 0 : -diameter / 2 * StrictMath.sin(angle)));
        }
        return through(points);
    }

    public static Section rectangle(double width, double depth) {
        return trapezoid(width, width, depth);
    }

    /** Upright at the back, sloping at the front. */
    public static Section trapezoid(double soleWidth, double topWidth, double depth) {
        return through(
                List.of(
                        new Point(0, depth),
                        new Point(0, 0),
                        new Point(soleWidth, 0),
                        new Point(topWidth, depth)));
    }

    /** Depth at which water reaches the lower lip. */
    public double lip() {
        return Math.min(backLip, frontLip);
    }

    /** Whether the back lip is the lower one, so that water would spill towards the building. */
    public boolean spillsBackwards() {
        return backLip < frontLip - SAME;
    }

    /** Wetted area, m². */
    public double area(double depth) {
        Slab s = slab(depth);
        double t = depth - s.from;
        return s.area + t * (s.width + t * s.widthGrowth / 2);
    }

    /** Width of the surface, m. */
    public double surfaceWidth(double depth) {
        Slab s = slab(depth);
        return s.width + (depth - s.from) * s.widthGrowth;
    }

    /** Wetted perimeter, m. */
    public double perimeter(double depth) {
        Slab s = slab(depth);
        return s.perimeter + (depth - s.from) * s.perimeterGrowth;
    }

    /**
     * First moment of the wetted area about its surface, m³: area times the depth of its centroid,
     * which is the integral of the area over the depth.
     */
    public double moment(double depth) {
        Slab s = slab(depth);
        double t = depth - s.from;
        return s.moment + t * (s.area + t * (s.width / 2 + t * s.widthGrowth / 6));
    }

    private Slab slab(double depth) {
        int at = Arrays.binarySearch(starts, depth);
        return slabs[Math.max(0, at >= 0 ? at : -at - 2)];
    }

    private static Slab slab(
            List<Point> chain,
            double from,
            double to,
            @org.jspecify.annotations.Nullable Slab below) {
        double middle = (from + to) / 2;
        List<Side> sides = new ArrayList<>();
        double flat = 0;
        for (int i = 1; i < chain.size(); i++) {
            Point a = chain.get(i - 1);
            Point b = chain.get(i);
            if (Math.abs(a.y() - b.y()) <= SAME) {
                flat += Math.abs(a.y() - from) <= SAME ? Math.abs(a.x() - b.x()) : 0;
            } else if (Math.min(a.y(), b.y()) < middle && Math.max(a.y(), b.y()) > middle) {
                sides.add(new Side(a, b));
            }
        }
        sides.sort(java.util.Comparator.comparingDouble(side -> side.x(middle)));
        double widthFrom = 0;
        double widthTo = 0;
        for (int i = 0; i + 1 < sides.size(); i += 2) {
            widthFrom += sides.get(i + 1).x(from) - sides.get(i).x(from);
            widthTo += sides.get(i + 1).x(to) - sides.get(i).x(to);
        }
        double height = to - from;
        double area = below == null ? 0 : below.area + areaOf(below);
        double moment = below == null ? 0 : below.moment + momentOf(below);
        double perimeter =
                below == null
                        ? 0
                        : below.perimeter + (below.to - below.from) * below.perimeterGrowth;
        return new Slab(
                from,
                to,
                area,
                moment,
                perimeter + flat,
                widthFrom,
                (widthTo - widthFrom) / height,
                sides.stream().mapToDouble(Side::lengthPerHeight).sum());
    }

    private static Slab aboveTheLip(Slab below) {
        double height = below.to - below.from;
        return new Slab(
                below.to,
                Double.POSITIVE_INFINITY,
                below.area + areaOf(below),
                below.moment + momentOf(below),
                below.perimeter + height * below.perimeterGrowth,
                below.width + height * below.widthGrowth,
                0,
                2);
    }

    private static double areaOf(Slab s) {
        double t = s.to - s.from;
        return t * (s.width + t * s.widthGrowth / 2);
    }

    private static double momentOf(Slab s) {
        double t = s.to - s.from;
        return t * (s.area + t * (s.width / 2 + t * s.widthGrowth / 6));
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

    private static void refuseWhatHoldsNoWater(List<Point> points) {
        if (points.size() < 3 || points.size() > MOST_POINTS) {
            throw new IllegalArgumentException(
                    "a profile has from 3 to " + MOST_POINTS + " points, not " + points.size());
        }
        for (int i = 1; i < points.size(); i++) {
            for (int j = i + 2; j < points.size(); j++) {
                if (cross(points.get(i - 1), points.get(i), points.get(j - 1), points.get(j))) {
                    throw new IllegalArgumentException(
                            "the profile crosses itself between points " + i + " and " + (j + 1));
                }
            }
        }
    }

    private static boolean cross(Point a, Point b, Point c, Point d) {
        return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
    }

    private static double turn(Point a, Point b, Point c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }
}
