package eavesproof.hydraulics;

import eavesproof.hydraulics.Trough.Inflow;
import eavesproof.hydraulics.Trough.Sole;
import java.util.ArrayList;
import java.util.List;

/**
 * A gutter from one closed end to the other, with all that flows into it and out of it. SI units.
 *
 * @param soles by rising x from 0 at its left end to its right end; straight between them
 * @param perMetre inflow along the whole length, m³/s per m
 * @param inflows what arrives at single places
 * @param corners where it turns, by x
 * @param outlets by rising x, one or more; those that are blocked left out
 */
public record GutterRun(
        Channel channel,
        List<Sole> soles,
        double perMetre,
        List<Inflow> inflows,
        List<Double> corners,
        List<OutletAt> outlets) {

    /** More places than this are not worked through. */
    private static final int MOST_PLACES = 2000;

    /** An outlet at its place. */
    public record OutletAt(double x, Outlet outlet) {}

    public GutterRun {
        soles = List.copyOf(soles);
        inflows = List.copyOf(inflows);
        corners = List.copyOf(corners);
        outlets = List.copyOf(outlets);
        int places = soles.size() + inflows.size() + corners.size() + outlets.size();
        if (places > MOST_PLACES) {
            throw new Refused(
                    places
                            + " levels, inflows, corners and outlets are more than the "
                            + MOST_PLACES
                            + " that are worked through");
        }
        double length = new Soles(soles).length();
        perMetre = new Inflow(0, perMetre).flow();
        for (Inflow inflow : inflows) {
            within(length, inflow.x(), "an inflow");
        }
        for (double corner : corners) {
            within(length, corner, "a corner");
        }
        if (outlets.isEmpty()) {
            throw new Refused("no outlet takes the water");
        }
        double last = Double.NEGATIVE_INFINITY;
        for (OutletAt outlet : outlets) {
            within(length, outlet.x(), "an outlet");
            if (!(outlet.x() > last)) {
                throw Refused.saying("two outlets at {} m", last);
            }
            last = outlet.x();
            refuseWider(channel, outlet.outlet());
        }
    }

    public double length() {
        return soles.get(soles.size() - 1).x();
    }

    /** All that flows in, m³/s. */
    public double inflow() {
        return perMetre * length() + inflows.stream().mapToDouble(Inflow::flow).sum();
    }

    /** The same with all inflows multiplied, as under stronger rain. */
    public GutterRun under(double factor) {
        return new GutterRun(
                channel,
                soles,
                perMetre * factor,
                inflows.stream().map(inflow -> inflow.times(factor)).toList(),
                corners,
                outlets);
    }

    /** The same with one outlet blocked. */
    public GutterRun without(int outlet) {
        List<OutletAt> open = new ArrayList<>(outlets);
        open.remove(outlet);
        return new GutterRun(channel, soles, perMetre, inflows, corners, open);
    }

    /** The same with its sole lying otherwise. */
    public GutterRun lying(List<Sole> otherwise) {
        return new GutterRun(channel, otherwise, perMetre, inflows, corners, outlets);
    }

    private static void within(double length, double x, String what) {
        if (!(x >= 0 && x <= length)) {
            throw Refused.saying(
                    what + " lies within the {} m of the gutter, not at {}", length, x);
        }
    }

    private static void refuseWider(Channel channel, Outlet outlet) {
        double width = channel.section().at(channel.section().lip()).width();
        if (outlet instanceof RoundOutlet round && round.diameter() > width) {
            throw Refused.saying(
                    "an outlet of {} m is wider than its gutter of {} m", round.diameter(), width);
        }
    }
}
