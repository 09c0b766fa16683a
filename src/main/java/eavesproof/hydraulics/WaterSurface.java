package eavesproof.hydraulics;

import java.util.Comparator;
import java.util.List;

/**
 * The water along a gutter.
 *
 * @param points by rising x, at least at every station of the bed; two at one x are just before and
 *     just behind a point inflow, a corner or an outlet
 */
public record WaterSurface(List<At> points) {
    public WaterSurface {
        points = List.copyOf(points);
    }

    public enum Regime {
        SUBCRITICAL,
        CRITICAL,
        SUPERCRITICAL
    }

    /**
     * @param x m
     * @param flow m³/s; below 0 to the left
     * @param bed height of the sole, m
     * @param depth m
     * @param freeboard from the surface to the lower lip, m; negative where water spills
     */
    public record At(
            double x, double flow, double bed, double depth, double freeboard, Regime regime) {
        public double level() {
            return bed + depth;
        }

        /** The same seen from behind. */
        At mirrored() {
            return new At(0 - x, 0 - flow, bed, depth, freeboard, regime);
        }
    }

    /** Where the water comes nearest to the lip, or goes furthest over it. */
    public At worst() {
        return points.stream().min(Comparator.comparingDouble(At::freeboard)).orElseThrow();
    }

    /** The depth at x, straight between the points. */
    public double depthAt(double x) {
        At before = points.get(0);
        for (At point : points) {
            if (point.x() >= x) {
                if (point.x() == before.x()) {
                    return point.depth();
                }
                double t = (x - before.x()) / (point.x() - before.x());
                return before.depth() + t * (point.depth() - before.depth());
            }
            before = point;
        }
        return before.depth();
    }
}
