package eavesproof.survey;

import eavesproof.job.Run.Straight;
import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Levels.Level;
import eavesproof.survey.Trough.Position;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The fall of a reach: how much lower the sole lies at the outlet than at the high end, over the
 * distance between the two readings, in mm for each metre. Below 0 where it falls away.
 *
 * <p>Another surface stands for the sole where that was not read: it runs parallel to it.
 */
final class Falls {
    /**
     * Our choice: readings stand for a reach if the outermost ones lie within 300 mm of its ends.
     */
    private static final double END_MM = 300;

    /** What the sum of lengths may be off by in its last bits. */
    private static final double ROUNDING_MM = 1e-6;

    private final Trough trough;
    private final Levels levels;
    private final Answers answers;

    Falls(Trough trough, Levels levels, Answers answers) {
        this.trough = trough;
        this.levels = levels;
        this.answers = answers;
    }

    private record Pair(Level high, Level low, double apartMm) {}

    void answer(Reach reach) {
        List<Level> read = read(reach);
        for (String surface : Words.SURFACES) {
            List<Level> of = read.stream().filter(it -> it.surface().equals(surface)).toList();
            Optional<Pair> pair =
                    best(reach, of, Level::setUp).or(() -> best(reach, of, levels::datum));
            if (pair.isPresent()) {
                known(reach, pair.get());
                return;
            }
        }
        reach.shownOn(trough, answers)
                .gap(
                        Facts.ReachFall.class,
                        why(reach, read),
                        trough.id(),
                        reach.outlet().id(),
                        reach.side());
    }

    /** All readings from the high end to the far edge of the outlet's fitting. */
    private List<Level> read(Reach reach) {
        double beyond = reach.halfBodyMm();
        double station = reach.at().stationMm() + (reach.left() ? beyond : -beyond);
        Position end = new Position(reach.at().straight(), station);
        Position high = reach.high().position();
        return reach.left() ? levels.between(high, end) : levels.between(end, high);
    }

    /** The pair that lies farthest apart of those that can be compared with each other. */
    private Optional<Pair> best(Reach reach, List<Level> read, Function<Level, String> comparable) {
        Map<String, List<Level>> groups = new LinkedHashMap<>();
        read.forEach(
                it ->
                        groups.computeIfAbsent(comparable.apply(it), key -> new ArrayList<>())
                                .add(it));
        Pair best = null;
        for (List<Level> group : groups.values()) {
            Optional<Pair> pair = pair(reach, group);
            if (pair.isPresent() && (best == null || pair.get().apartMm() > best.apartMm())) {
                best = pair.get();
            }
        }
        return Optional.ofNullable(best);
    }

    private Optional<Pair> pair(Reach reach, Collection<Level> group) {
        Optional<Level> high = atHighEnd(reach, group);
        Optional<Level> low = atOutlet(reach, group);
        if (high.isEmpty() || low.isEmpty()) {
            return Optional.empty();
        }
        double apart = toOutlet(reach, high.get()) - toOutlet(reach, low.get());
        return apart > ROUNDING_MM
                ? Optional.of(new Pair(high.get(), low.get(), apart))
                : Optional.empty();
    }

    private Optional<Level> atHighEnd(Reach reach, Collection<Level> group) {
        double end = Math.abs(along(reach.high()) - along(reach.at()));
        Level outermost = null;
        for (Level level : group) {
            double to = toOutlet(reach, level);
            if (to <= end + ROUNDING_MM
                    && to >= end - END_MM
                    && (outermost == null || to > toOutlet(reach, outermost))) {
                outermost = level;
            }
        }
        return Optional.ofNullable(outermost);
    }

    /**
     * The reading next to the outlet's fitting; or failing that, one within it, where no sump draws
     * the sole down.
     */
    private Optional<Level> atOutlet(Reach reach, Collection<Level> group) {
        double edge = reach.halfBodyMm();
        Level outside = null;
        Level inside = null;
        for (Level level : group) {
            double to = toOutlet(reach, level);
            if (to < edge) {
                inside = inside == null || to > toOutlet(reach, inside) ? level : inside;
            } else if (to <= edge + END_MM) {
                outside = outside == null || to < toOutlet(reach, outside) ? level : outside;
            }
        }
        Double sump = reach.outlet().sumpDepthMm();
        boolean sunk = sump != null && sump > 0;
        return outside != null || sunk ? Optional.ofNullable(outside) : Optional.ofNullable(inside);
    }

    /** From the outlet's centre towards the high end, mm. */
    private double toOutlet(Reach reach, Level level) {
        double toTheRight = level.alongMm() - along(reach.at());
        return reach.left() ? -toTheRight : toTheRight;
    }

    private double along(Trough.Spot spot) {
        return trough.along(spot.position());
    }

    private void known(Reach reach, Pair pair) {
        Uncertain drop = levels.drop(pair.high(), pair.low());
        Found<Uncertain> distance =
                reach.left()
                        ? trough.distance(pair.high().spot(), pair.low().spot())
                        : trough.distance(pair.low().spot(), pair.high().spot());
        distance.map(mm -> known(reach, pair, drop, mm));
    }

    private Uncertain known(Reach reach, Pair pair, Uncertain drop, Uncertain distance) {
        Uncertain fall = drop.over(distance).times(1000);
        String run = trough.id();
        reach.shownOn(trough, answers)
                .known(
                        new Facts.ReachFall(run, reach.outlet().id(), reach.side(), fall.value()),
                        fall,
                        reading("high end", pair.high()),
                        reading("outlet end", pair.low()),
                        Answers.working("drop", drop, Unit.MM, from(pair, drop)),
                        Answers.working("distance", distance, Unit.MM, "between the readings"),
                        Answers.working("fall", fall, Unit.MM_PER_M, "drop / distance"));
        return fall;
    }

    private Working reading(String which, Level level) {
        String stood =
                levels.standKnown(level)
                        ? ""
                        : "; where the instrument stood is not recorded, so taken to be at the end";
        return Answers.working(
                level.surface() + " below datum, " + which,
                level.below(),
                Unit.MM,
                level.spot().name() + stood);
    }

    private static String from(Pair pair, Uncertain drop) {
        String joined = pair.high().setUp().equals(pair.low().setUp()) ? "" : ", joined by ties";
        String sure =
                drop.isStated()
                        ? "; expanded uncertainty "
                                + Decimals.with(drop.expandedUncertainty(), Unit.MM)
                        : "";
        return "below datum at the outlet end - at the high end" + joined + sure;
    }

    private String why(Reach reach, List<Level> read) {
        boolean high = atHighEnd(reach, read).isPresent();
        boolean low = atOutlet(reach, read).isPresent();
        String near = "no reading within " + Decimals.plain(END_MM, 0) + " mm of ";
        if (high && low) {
            return reach.text()
                    + " has no two readings of one surface and one set-up, or of set-ups joined by"
                    + " ties, at its two ends";
        }
        if (read.isEmpty()) {
            return nothingRead(reach);
        }
        String missing = high ? "" : reach.high().name();
        String outlet = low ? "" : (high ? "" : " nor of ") + reach.at().name();
        return reach.text() + " has " + near + missing + outlet;
    }

    private String nothingRead(Reach reach) {
        int from = Math.min(reach.at().straight(), reach.high().straight());
        int to = Math.max(reach.at().straight(), reach.high().straight());
        for (Straight straight : trough.straights().subList(from, to + 1)) {
            if (straight.readings() == null) {
                return "the readings of straight " + straight.id() + " are not recorded";
            }
        }
        return reach.text() + " has no reading that names its station, surface and set-up";
    }
}
