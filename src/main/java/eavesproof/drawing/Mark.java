package eavesproof.drawing;

import java.util.List;

/** One mark on the paper. Later marks lie over earlier ones. */
public sealed interface Mark {

    /** A line through the points, in order. */
    record Stroke(List<Point> points, Line line) implements Mark {
        public Stroke {
            points = List.copyOf(points);
            if (points.size() < 2) {
                throw new IllegalArgumentException("a line needs two points, not " + points.size());
            }
            if (line == Line.NONE) {
                throw new IllegalArgumentException("a line must have a style other than NONE");
            }
        }

        public static Stroke between(
                double x1Mm, double y1Mm, double x2Mm, double y2Mm, Line line) {
            return new Stroke(List.of(new Point(x1Mm, y1Mm), new Point(x2Mm, y2Mm)), line);
        }
    }

    /** A closed outline; filled by the even-odd rule. */
    record Area(List<Point> outline, Fill fill, Line edge) implements Mark {
        public Area {
            outline = List.copyOf(outline);
            if (outline.size() < 3) {
                throw new IllegalArgumentException(
                        "an area needs three points, not " + outline.size());
            }
        }

        public static Area box(
                double xMm, double yMm, double widthMm, double heightMm, Fill fill, Line edge) {
            return new Area(
                    List.of(
                            new Point(xMm, yMm),
                            new Point(xMm + widthMm, yMm),
                            new Point(xMm + widthMm, yMm + heightMm),
                            new Point(xMm, yMm + heightMm)),
                    fill,
                    edge);
        }

        /**
         * A slender solid head whose tip lies at {@code tip} and which points away from {@code
         * from}.
         */
        public static Area arrowHead(Point from, Point tip, double lengthMm) {
            double dx = tip.xMm() - from.xMm();
            double dy = tip.yMm() - from.yMm();
            double distance = StrictMath.hypot(dx, dy);
            if (!(distance > 0) || !(lengthMm > 0)) {
                throw new IllegalArgumentException("an arrow head needs a direction and a length");
            }
            double ux = dx / distance * lengthMm;
            double uy = dy / distance * lengthMm;
            double half = 0.28;
            return new Area(
                    List.of(
                            tip,
                            new Point(tip.xMm() - ux - uy * half, tip.yMm() - uy + ux * half),
                            new Point(tip.xMm() - ux + uy * half, tip.yMm() - uy - ux * half)),
                    Fill.INK,
                    Line.NONE);
        }
    }

    /** A circle; its fill is a tone, since only areas are ruled. */
    record Circle(Point centre, double radiusMm, Fill fill, Line edge) implements Mark {
        public Circle {
            if (!(radiusMm > 0) || !Double.isFinite(radiusMm)) {
                throw new IllegalArgumentException(
                        "a circle needs a radius above 0, not " + radiusMm);
            }
            if (fill.isRuled()) {
                throw new IllegalArgumentException("a circle cannot be filled with " + fill);
            }
        }
    }

    /** One line of words. A turn of 90° reads upwards. */
    record Words(Point at, String text, Anchor anchor, double sizePt, Weight weight, double turnDeg)
            implements Mark {
        public Words {
            if (!(sizePt >= 5) || !(sizePt <= 100)) {
                throw new IllegalArgumentException(
                        "lettering is from 5 pt to 100 pt, not " + sizePt);
            }
            if (!Double.isFinite(turnDeg)) {
                throw new IllegalArgumentException("words cannot be turned by " + turnDeg);
            }
        }

        public static Words level(
                double xMm, double yMm, String text, Anchor anchor, double sizePt) {
            return new Words(new Point(xMm, yMm), text, anchor, sizePt, Weight.REGULAR, 0);
        }

        public double widthMm() {
            return Lettering.widthMm(text, sizePt, weight);
        }

        /**
         * The four corners of the room that the words take, for keeping clear of other marks; from
         * 0.75 em above the base line to 0.25 em below it.
         */
        public List<Point> room(double clearMm) {
            double em = sizePt * Lettering.MM_PER_PT;
            double left = -anchor.share() * widthMm() - clearMm;
            double right = left + widthMm() + 2 * clearMm;
            double top = -0.75 * em - clearMm;
            double bottom = 0.25 * em + clearMm;
            return List.of(
                    turned(left, top),
                    turned(right, top),
                    turned(right, bottom),
                    turned(left, bottom));
        }

        private Point turned(double x, double y) {
            double turn = StrictMath.toRadians(-turnDeg);
            double cos = StrictMath.cos(turn);
            double sin = StrictMath.sin(turn);
            return new Point(at.xMm() + x * cos - y * sin, at.yMm() + x * sin + y * cos);
        }
    }
}
