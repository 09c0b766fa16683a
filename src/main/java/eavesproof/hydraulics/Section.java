package eavesproof.hydraulics;

import java.util.Arrays;
import java.util.List;

/**
 * The cross-section of an open channel at every depth, from its lowest point. SI units: m, m³/s.
 *
 * <p>Between two levels at which a point of the profile lies, the surface width and the wetted
 * perimeter are linear in the depth and the area is quadratic, so that all are exact. Above the
 * lower lip the sides are taken as carried up vertically: a depth there says by how much the water
 * is over.
 */
public final class Section {
    /** Lips this near to each other, m, are level. */
    private static final double LEVEL = 1e-6;

    /**
     * What is wet at one depth.
     *
     * @param area m²
     * @param width of the surface, m
     * @param perimeter m
     * @param moment first moment of the area about the surface, m³: area times the depth of its
     *     centroid, which is the integral of the area over the depth
     */
    public record Wet(double area, double width, double perimeter, double moment) {}

    /** Which lip is the lower one, so that water goes over it first. */
    public enum Lip {
        BACK,
        FRONT,
        BOTH
    }

    private final Slab[] slabs;
    private final double[] starts;
    private final double backLip;
    private final double frontLip;

    /**
     * For each slab the least critical flow at the bottom of it or of one above: the last slab that
     * has less than a flow holds the highest critical depth of that flow.
     */
    private final double[] leastCriticalFlow;

    private Section(List<Slab> slabs, double backLip, double frontLip) {
        this.slabs = slabs.toArray(Slab[]::new);
        this.starts = slabs.stream().mapToDouble(Slab::from).toArray();
        this.backLip = backLip;
        this.frontLip = frontLip;
        this.leastCriticalFlow = new double[starts.length];
        double least = Double.POSITIVE_INFINITY;
        for (int i = starts.length - 1; i >= 0; i--) {
            least = Math.min(least, this.slabs[i].criticalFlow(starts[i]));
            leastCriticalFlow[i] = least;
        }
    }

    static Section of(Profile profile) {
        Slabs slabs = new Slabs(profile);
        return new Section(slabs.all(), slabs.backLip(), slabs.frontLip());
    }

    /** Depth at which water reaches the lower lip. */
    public double lip() {
        return Math.min(backLip, frontLip);
    }

    public Lip lowerLip() {
        if (Math.abs(backLip - frontLip) <= LEVEL) {
            return Lip.BOTH;
        }
        return backLip < frontLip ? Lip.BACK : Lip.FRONT;
    }

    public Wet at(double depth) {
        return slab(depth).at(depth);
    }

    /** Wetted area, m². */
    public double area(double depth) {
        return at(depth).area();
    }

    /**
     * The depth at which the flow is critical, Q² T = g A³ (Chow, Open-Channel Hydraulics, 1959,
     * 4-2); the highest, where a ledge of the profile allows of several. 0 without flow.
     */
    double criticalDepth(double flow) {
        if (flow == 0) {
            return 0;
        }
        int at = Arrays.binarySearch(leastCriticalFlow, flow);
        return slabs[Math.max(0, at >= 0 ? at : -at - 2)].criticalDepth(flow);
    }

    private Slab slab(double depth) {
        int at = Arrays.binarySearch(starts, depth);
        return slabs[Math.max(0, at >= 0 ? at : -at - 2)];
    }
}
