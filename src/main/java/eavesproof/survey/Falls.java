package eavesproof.survey;

import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Levels.Level;
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
    private static final String NOT_COMPARABLE =
            " has no two readings of one surface and one set-up, or of set-ups joined by ties, at its"
                    + " two ends";

    private final Trough trough;
    private final Levels levels;
    private final Answers answers;

    Falls(Trough trough, Levels levels, Answers answers) {
        this.trough = trough;
        this.levels = levels;
        this.answers = answers;
    }

    private record Pair(Level high, Level low, double apartMm) {}

    void answer(ReachLevels read) {
        Reach reach = read.reach();
        for (String surface : Words.SURFACES) {
            List<Level> of =
                    read.all().stream().filter(it -> it.surface().equals(surface)).toList();
            Optional<Pair> pair =
                    best(read, of, Level::setUp).or(() -> best(read, of, levels::datum));
            if (pair.isPresent()) {
                read.lostBeyond(pair.get().high(), pair.get().low())
                        .ifPresentOrElse(why -> gap(reach, why), () -> known(reach, pair.get()));
                return;
            }
        }
        gap(
                reach,
                read.lost(Words.SURFACES)
                        .or(() -> read.whyNotWhole(read.all()))
                        .orElse(reach.text() + NOT_COMPARABLE));
    }

    private void gap(Reach reach, String why) {
        reach.shownOn(trough, answers)
                .gap(Facts.ReachFall.class, why, trough.id(), reach.outlet().id(), reach.side());
    }

    /** The pair that lies farthest apart of those that can be compared with each other. */
    private Optional<Pair> best(
            ReachLevels reach, List<Level> read, Function<Level, String> comparable) {
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

    private static Optional<Pair> pair(ReachLevels reach, Collection<Level> group) {
        Optional<Level> high = reach.atHighEnd(group);
        Optional<Level> low = reach.atOutlet(group);
        if (high.isEmpty() || low.isEmpty()) {
            return Optional.empty();
        }
        double apart = reach.toOutlet(high.get()) - reach.toOutlet(low.get());
        return apart > ReachLevels.ROUNDING_MM
                ? Optional.of(new Pair(high.get(), low.get(), apart))
                : Optional.empty();
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
        List<Working> workings = new ArrayList<>();
        workings.add(reading("high end", pair.high()));
        workings.add(reading("outlet end", pair.low()));
        if (!pair.high().setUp().equals(pair.low().setUp())) {
            levels.closing(pair.high()).ifPresent(workings::add);
        }
        workings.add(Answers.working("drop", drop, Unit.MM, from(pair, drop)));
        workings.add(Answers.working("distance", distance, Unit.MM, "between the readings"));
        workings.add(Answers.working("fall", fall, Unit.MM_PER_M, "drop / distance"));
        reach.shownOn(trough, answers)
                .known(
                        new Facts.ReachFall(run, reach.outlet().id(), reach.side(), fall.value()),
                        fall,
                        workings.toArray(Working[]::new));
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
}
