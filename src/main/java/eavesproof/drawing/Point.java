package eavesproof.drawing;

/** A place on the paper: mm from the left edge of the drawing, mm down from its top edge. */
public record Point(double xMm, double yMm) {
    public Point {
        if (!Double.isFinite(xMm) || !Double.isFinite(yMm)) {
            throw new IllegalArgumentException(
                    "a point needs two finite numbers, not " + xMm + ", " + yMm);
        }
    }
}
