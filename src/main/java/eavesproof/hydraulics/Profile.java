package eavesproof.hydraulics;

import java.util.ArrayList;
import java.util.List;

/**
 * What a channel looks like across: the points of its inside from the back lip to the front lip, m,
 * y upwards. An edge that is rolled inwards beyond a lip is part of it and takes room. One that
 * crosses or touches itself is refused.
 */
public record Profile(List<Point> points) {
    private static final int MOST_POINTS = 400;

    /** A half-circle is drawn with so many chords that its area is right within 0.006 %. */
    private static final int CHORDS = 180;

    /** A point across the channel, m. */
    public record Point(double x, double y) {
        public Point {
            if (!(Math.abs(x) < 1000) || !(Math.abs(y) < 1000)) {
                throw Refused.saying(
                        "a point of a profile is within a kilometre, not {}, {}", x, y);
            }
        }
    }

    public Profile {
        points = List.copyOf(points);
        if (points.size() < 3 || points.size() > MOST_POINTS) {
            throw new Refused(
                    "a profile has from 3 to " + MOST_POINTS + " points, not " + points.size());
        }
        Crossings.refuse(points);
    }

    /** Half of a circle of the given inside diameter. */
    public static Profile halfRound(double diameter) {
        return halfRound(diameter, diameter / 2, diameter / 2);
    }

    /**
     * A half-circle whose sides go on upright, or end below its diameter, so that its lips lie as
     * high above its sole as given.
     */
    public static Profile halfRound(double diameter, double backHeight, double frontHeight) {
        positive(diameter, "the diameter of a half-round");
        positive(backHeight, "the height of a back");
        positive(frontHeight, "the height of a front");
        double radius = diameter / 2;
        List<Point> points = new ArrayList<>();
        points.add(new Point(-reach(radius, backHeight), backHeight));
        for (int i = 0; i <= CHORDS; i++) {
            double angle = Math.PI * i / CHORDS;
            boolean end = i == 0 || i == CHORDS;
            double height = end ? radius : radius * (1 - StrictMath.sin(angle));
            if (height < (2 * i < CHORDS ? backHeight : frontHeight)) {
                points.add(new Point(-radius * StrictMath.cos(angle), height));
            }
        }
        points.add(new Point(reach(radius, frontHeight), frontHeight));
        return new Profile(points);
    }

    /** How far from the middle a half-circle is at a height above its lowest point. */
    private static double reach(double radius, double height) {
        double below = radius - height;
        return below <= 0 ? radius : StrictMath.sqrt(radius * radius - below * below);
    }

    public static Profile rectangle(double width, double depth) {
        return trapezoid(width, width, depth, depth);
    }

    /** Upright at the back, sloping at the front to its full width at the front lip. */
    public static Profile trapezoid(
            double soleWidth, double topWidth, double backHeight, double frontHeight) {
        positive(soleWidth, "the width of a sole");
        positive(backHeight, "the height of a back");
        positive(frontHeight, "the height of a front");
        if (!(topWidth >= soleWidth)) {
            throw Refused.saying(
                    "a trapezoid is wider at the top than at the sole, not {}", topWidth);
        }
        return new Profile(
                List.of(
                        new Point(0, backHeight),
                        new Point(0, 0),
                        new Point(soleWidth, 0),
                        new Point(topWidth, frontHeight)));
    }

    /**
     * The same, hung so that its front lip lies this much lower than its back lip, m; negative
     * where it lies higher.
     */
    public Profile tilted(double frontLower) {
        Point back = points.get(highest(0, lowest()));
        Point front = points.get(highest(lowest(), points.size() - 1));
        double dx = front.x() - back.x();
        double dy = front.y() - back.y();
        double apart = StrictMath.hypot(dx, dy);
        if (!(Math.abs(frontLower) < apart / 2)) {
            throw Refused.saying("a gutter that is tilted by {} m holds no water", frontLower);
        }
        double turn = StrictMath.asin(-frontLower / apart) - StrictMath.atan2(dy, dx);
        double cos = StrictMath.cos(turn);
        double sin = StrictMath.sin(turn);
        return new Profile(
                points.stream()
                        .map(p -> new Point(p.x() * cos - p.y() * sin, p.x() * sin + p.y() * cos))
                        .toList());
    }

    public Section section() {
        return Section.of(this);
    }

    /** Index of the lowest point. */
    int lowest() {
        int lowest = 0;
        for (int i = 1; i < points.size(); i++) {
            lowest = points.get(i).y() < points.get(lowest).y() ? i : lowest;
        }
        return lowest;
    }

    /** Index of the highest point from one to another, both included: a lip. */
    int highest(int from, int to) {
        int highest = from;
        for (int i = from; i <= to; i++) {
            highest = points.get(i).y() > points.get(highest).y() ? i : highest;
        }
        return highest;
    }

    private static void positive(double length, String what) {
        if (!(length > 0)) {
            throw Refused.saying(what + " is above 0, not {}", length);
        }
    }
}
