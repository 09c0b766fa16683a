package eavesproof.hydraulics;

import java.util.List;

/**
 * A piece of gutter that drains one way: from x = 0, where nothing flows, to its outlet at the
 * other end. SI units: m, m³/s.
 */
public final class Trough {
    private final Channel channel;
    private final Soles soles;
    private final double perMetre;
    private final List<Inflow> inflows;

    /** The sole at x lies this high above any one level. */
    public record Sole(double x, double height) {
        public Sole {
            if (!Double.isFinite(x) || !Double.isFinite(height)) {
                throw Refused.saying("a sole is finite, not {}, {}", x, height);
            }
        }
    }

    /** What arrives at x without momentum along the gutter, m³/s. */
    public record Inflow(double x, double flow) {
        public Inflow {
            if (!(flow >= 0) || !Double.isFinite(flow) || !Double.isFinite(x)) {
                throw Refused.saying("an inflow is 0 or more, not {} at {}", flow, x);
            }
        }

        Inflow times(double factor) {
            return new Inflow(x, flow * factor);
        }
    }

    /**
     * @param soles by rising x from 0 to the outlet, two or more; straight between them
     * @param perMetre inflow along the whole length, m³/s per m
     * @param inflows what arrives at single places
     */
    public Trough(Channel channel, List<Sole> soles, double perMetre, List<Inflow> inflows) {
        this(channel, new Soles(soles), new Inflow(0, perMetre).flow(), List.copyOf(inflows));
    }

    private Trough(Channel channel, Soles soles, double perMetre, List<Inflow> inflows) {
        this.channel = channel;
        this.soles = soles;
        this.perMetre = perMetre;
        this.inflows = inflows;
    }

    public Channel channel() {
        return channel;
    }

    public double length() {
        return soles.length();
    }

    /** The same with all inflows multiplied, as under stronger rain. */
    public Trough under(double factor) {
        return new Trough(
                channel,
                soles,
                perMetre * factor,
                inflows.stream().map(inflow -> inflow.times(factor)).toList());
    }

    Grid grid(int steps) {
        return Segment.of(soles, 0, length(), perMetre, inflows, List.of(), length() / steps)
                .toTheRight(0);
    }
}
