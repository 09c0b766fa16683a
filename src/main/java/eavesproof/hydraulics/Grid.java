package eavesproof.hydraulics;

/**
 * The places along a trough at which the water surface is worked out, from where nothing flows to
 * the outlet. Two places at the same x are just before and just behind a point inflow or a corner.
 */
final class Grid {
    /** From the high end, m. */
    final double[] x;

    /** Height of the sole, m. */
    final double[] bed;

    /** In m³/s. */
    final double[] flow;

    /**
     * Whether the water, on its way to a place from the one before, turns a corner and loses what
     * momentum it has along the gutter.
     */
    final boolean[] corner;

    Grid(int places) {
        x = new double[places];
        bed = new double[places];
        flow = new double[places];
        corner = new boolean[places];
    }

    int last() {
        return x.length - 1;
    }

    /** From the place before. */
    double step(int i) {
        return x[i] - x[i - 1];
    }

    /** The fall of the bed from the place before, positive towards the outlet. */
    double slope(int i) {
        return (bed[i - 1] - bed[i]) / step(i);
    }
}
