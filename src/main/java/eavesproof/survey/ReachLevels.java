package eavesproof.survey;

import eavesproof.job.Run.Straight;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.Levels.Level;
import eavesproof.survey.Trough.Position;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** The readings of one reach, and where they lie between its high end and its outlet. */
final class ReachLevels {
    /**
     * Our choice: readings stand for a reach if the outermost ones lie within 300 mm of its ends.
     */
    private static final double END_MM = 300;

    /** What the sum of lengths may be off by in its last bits. */
    static final double ROUNDING_MM = 1e-6;

    private final Trough trough;
    private final Reach reach;
    private final Position from;
    private final Position to;
    private final List<Level> all;
    private final List<LostReading> lost;

    ReachLevels(Trough trough, Levels levels, Reach reach) {
        this.trough = trough;
        this.reach = reach;
        double beyond = reach.halfBodyMm();
        double station = reach.at().stationMm() + (reach.left() ? beyond : -beyond);
        Position end = new Position(reach.at().straight(), station);
        Position high = reach.high().position();
        from = reach.left() ? high : end;
        to = reach.left() ? end : high;
        all = levels.between(from, to);
        lost =
                levels.lost().stream()
                        .filter(
                                it ->
                                        it.at()
                                                .map(at -> touches(at, at))
                                                .orElseGet(() -> touches(it.straight())))
                        .toList();
    }

    /** Why some reading of one of these surfaces here cannot be used. */
    Optional<String> lost(List<String> surfaces) {
        return lost.stream()
                .filter(it -> surfaces.stream().anyMatch(it::mayBeOf))
                .map(LostReading::why)
                .findFirst();
    }

    /** The same of those that may lie no nearer to the middle than two readings. */
    Optional<String> lostBeyond(Level high, Level low) {
        return lost.stream()
                .filter(it -> it.mayBeOf(high.surface()))
                .filter(it -> it.at().map(at -> !isBetween(at, high, low)).orElse(true))
                .map(LostReading::why)
                .findFirst();
    }

    private boolean isBetween(Position at, Level high, Level low) {
        double along = trough.along(at);
        double left = Math.min(high.alongMm(), low.alongMm());
        double right = Math.max(high.alongMm(), low.alongMm());
        return left < along && along < right;
    }

    Reach reach() {
        return reach;
    }

    /** All readings from the high end to the far edge of the outlet's fitting, left to right. */
    List<Level> all() {
        return all;
    }

    /** Whether some of the reach lies on a straight. */
    boolean touches(int straight) {
        return from.straight() <= straight && straight <= to.straight();
    }

    /** Whether some of the reach lies between two places. */
    boolean touches(Position left, Position right) {
        return left.compareTo(to) <= 0 && right.compareTo(from) >= 0;
    }

    /** As people read it: "2400 mm on a1". */
    String text(Position place) {
        String mm = Decimals.with(place.stationMm(), Unit.MM);
        return mm + " on " + trough.straight(place.straight()).id();
    }

    /** The place so far from the outlet's centre towards the high end, on the straight it is on. */
    Position place(double toOutletMm) {
        return trough.place(
                reach.at().straight(),
                along(reach.at()) + (reach.left() ? -toOutletMm : toOutletMm));
    }

    /** From the outlet's centre towards the high end, mm. */
    double toOutlet(Level level) {
        double toTheRight = level.alongMm() - along(reach.at());
        return reach.left() ? -toTheRight : toTheRight;
    }

    /** From the outlet's centre to the high end, mm. */
    double endMm() {
        return Math.abs(along(reach.high()) - along(reach.at()));
    }

    /** The outermost reading near the high end. */
    Optional<Level> atHighEnd(Collection<Level> group) {
        double end = endMm();
        Level outermost = null;
        for (Level level : group) {
            double to = toOutlet(level);
            if (to <= end + ROUNDING_MM
                    && to >= end - END_MM
                    && (outermost == null || to > toOutlet(outermost))) {
                outermost = level;
            }
        }
        return Optional.ofNullable(outermost);
    }

    /**
     * The reading next to the outlet's fitting; or failing that, one within it, where no sump draws
     * the sole down.
     */
    Optional<Level> atOutlet(Collection<Level> group) {
        Level outside = null;
        Level inside = null;
        for (Level level : group) {
            double to = toOutlet(level);
            if (isWithinFitting(level)) {
                inside = inside == null || to > toOutlet(inside) ? level : inside;
            } else if (to <= reach.halfBodyMm() + END_MM) {
                outside = outside == null || to < toOutlet(outside) ? level : outside;
            }
        }
        Double sump = reach.outlet().sumpDepthMm();
        boolean sunk = sump != null && sump > 0;
        return outside != null || sunk ? Optional.ofNullable(outside) : Optional.ofNullable(inside);
    }

    boolean isWithinFitting(Level level) {
        return toOutlet(level) < reach.halfBodyMm();
    }

    /** Why a group of readings does not reach from one end to the other; empty where it does. */
    Optional<String> whyNotWhole(Collection<Level> group) {
        if (all.isEmpty()) {
            return Optional.of(nothingRead());
        }
        boolean high = atHighEnd(group).isPresent();
        boolean low = atOutlet(group).isPresent();
        if (high && low) {
            return Optional.empty();
        }
        String missing = high ? "" : reach.high().name();
        String outlet = low ? "" : (high ? "" : " nor of ") + reach.at().name();
        String near = "no reading within " + Decimals.plain(END_MM, 0) + " mm of ";
        return Optional.of(reach.text() + " has " + near + missing + outlet);
    }

    private String nothingRead() {
        int from = Math.min(reach.at().straight(), reach.high().straight());
        int to = Math.max(reach.at().straight(), reach.high().straight());
        for (Straight straight : trough.straights().subList(from, to + 1)) {
            if (straight.readings() == null) {
                return "the readings of straight " + straight.id() + " are not recorded";
            }
        }
        return lost.isEmpty() ? reach.text() + " has no reading" : lost.get(0).why();
    }

    private double along(Trough.Spot spot) {
        return trough.along(spot.position());
    }
}
