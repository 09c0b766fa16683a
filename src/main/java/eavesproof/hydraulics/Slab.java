package eavesproof.hydraulics;

import eavesproof.hydraulics.Section.Wet;

/**
 * The part of a section between two levels: what is wet up to the lower one, and how it grows from
 * there. SI units.
 *
 * @param to infinite for the part above the lip
 */
record Slab(double from, double to, Wet below, double widthGrowth, double perimeterGrowth) {
    private static final int ENOUGH = 80;

    Wet at(double depth) {
        double t = depth - from;
        double halfGrowth = t * widthGrowth / 2;
        return new Wet(
                below.area() + t * (below.width() + halfGrowth),
                below.width() + 2 * halfGrowth,
                below.perimeter() + t * perimeterGrowth,
                below.moment() + t * (below.area() + t * (below.width() / 2 + halfGrowth / 3)));
    }

    /** The flow that is critical at this depth: A √(g A / T). */
    double criticalFlow(double depth) {
        Wet wet = at(depth);
        return wet.area() == 0
                ? 0
                : wet.area() * StrictMath.sqrt(Channel.G * wet.area() / wet.width());
    }

    /** The depth in this slab at which the flow is critical; it is more than at the bottom. */
    double criticalDepth(double flow) {
        if (widthGrowth == 0) {
            double area = StrictMath.cbrt(flow * flow * below.width() / Channel.G);
            return from + Math.max(0, area - below.area()) / below.width();
        }
        double low = from;
        double high = to;
        for (int i = 0; i < ENOUGH && high - low > 1e-15 * high; i++) {
            double middle = (low + high) / 2;
            if (criticalFlow(middle) < flow) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
