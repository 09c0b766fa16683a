package eavesproof.setout;

import eavesproof.job.Instrument;
import eavesproof.job.Instrument.SetUp;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Run.Reading;
import eavesproof.job.Run.Straight;
import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Answer;
import eavesproof.survey.Measure;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What would settle a verdict that is too close to call: how sure the next reading must be, what
 * makes this one unsure, and which better way of measuring the whole check finds good enough,
 * should the reading come out the same.
 */
final class Doubts {
    /** An uncertainty is printed finer than its measure; a finer one no reading of a gutter has. */
    private static final int DIGITS = 1;

    private static final String BOTH = "a tape of class I and the instrument in the middle";

    private final Job job;
    private final Mending mending;
    private @Nullable Map<String, Map<Trial.Key, Verdict>> better;

    Doubts(Job job, Mending mending) {
        this.job = job;
        this.mending = mending;
    }

    String settle(Ruling ruling) {
        Optional<Uncertain> known = ruling.margin().filter(it -> it.standardUncertainty() > 0);
        if (known.isEmpty() || ruling.guard() == 0 || isDoubtOfRule(ruling, known.get())) {
            return "measure again, more surely: " + String.join("; ", ruling.because());
        }
        Uncertain margin = known.get();
        Unit unit = unit(ruling);
        String symbol = unit.isBare() ? "" : " " + unit.symbol();
        double enough = Math.abs(margin.value()) / ruling.guard();
        double now = margin.expandedUncertainty();
        double step = StrictMath.pow(10, unit.decimals() + DIGITS);
        String most =
                Decimals.plain(StrictMath.floor(enough * step) / step, unit.decimals() + DIGITS);
        if (most.equals("0")) {
            return "the reading lies on the limit itself, where no reading is sure enough: it must"
                    + " come to "
                    + Asking.demanded(ruling);
        }
        return "read it again with an expanded uncertainty of at most "
                + most
                + symbol
                + " (now "
                + Decimals.plain(now, unit.decimals() + DIGITS)
                + symbol
                + ", most of it from the "
                + dominant(margin)
                + ")"
                + wouldSettle(ruling)
                + "; or bring it to "
                + Asking.demanded(ruling);
    }

    /** Whether it is the rule's circumstance that is unsure, and not the measure. */
    private static boolean isDoubtOfRule(Ruling ruling, Uncertain margin) {
        return Math.abs(margin.value()) > ruling.guard() * margin.expandedUncertainty();
    }

    private static Unit unit(Ruling ruling) {
        return ruling.subject() instanceof Answer.Known known
                        && known.measure() instanceof Measure.Number number
                ? number.unit()
                : Unit.RATIO;
    }

    private static String dominant(Uncertain margin) {
        String name = "";
        double greatest = -1;
        for (Map.Entry<String, Double> source : margin.sources().entrySet()) {
            if (Math.abs(source.getValue()) > greatest) {
                greatest = Math.abs(source.getValue());
                name = source.getKey();
            }
        }
        return name;
    }

    private String wouldSettle(Ruling ruling) {
        List<String> ways = new ArrayList<>();
        betterWays()
                .forEach(
                        (way, verdicts) -> {
                            Verdict verdict = verdicts.get(Trial.Key.of(ruling));
                            if (verdict == Verdict.COMPLIES || verdict == Verdict.DOES_NOT_COMPLY) {
                                ways.add(way);
                            }
                        });
        return ways.isEmpty()
                ? ""
                : "; the same reading would settle it with "
                        + String.join(", or with ", ways.size() > 1 ? alone(ways) : ways);
    }

    /** Both together are worth a word only where neither is enough. */
    private static List<String> alone(List<String> ways) {
        return ways.stream().filter(it -> !it.equals(BOTH)).toList();
    }

    /** One check for each way, whatever the number of findings. */
    private Map<String, Map<Trial.Key, Verdict>> betterWays() {
        Map<String, Map<Trial.Key, Verdict>> known = better;
        if (known == null) {
            known = new LinkedHashMap<>();
            Job tapes = classOne(job);
            Job middle = inTheMiddle(job);
            add(known, "a tape of class I", tapes);
            add(known, "the instrument in the middle of its readings", middle);
            add(
                    known,
                    "both, the instrument in the middle and a tape of class I",
                    classOne(middle));
            better = known;
        }
        return known;
    }

    private void add(Map<String, Map<Trial.Key, Verdict>> ways, String way, Job edited) {
        if (edited.equals(job)) {
            return;
        }
        mending.checked(edited)
                .ifPresent(
                        after -> {
                            Map<Trial.Key, Verdict> verdicts = new LinkedHashMap<>();
                            after.rulings()
                                    .forEach(it -> verdicts.put(Trial.Key.of(it), it.verdict()));
                            ways.put(way, verdicts);
                        });
    }

    private static Job classOne(Job job) {
        Map<String, Instrument> instruments = job.instruments();
        if (instruments == null) {
            return job;
        }
        Map<String, Instrument> better = new LinkedHashMap<>(instruments);
        better.replaceAll(
                (id, it) -> it.tapeClass() == null ? it : Edits.with(it, "tapeClass", "I"));
        return Edits.with(job, "instruments", better);
    }

    private static Job inTheMiddle(Job job) {
        Map<String, SetUp> setUps = job.setUps();
        if (setUps == null) {
            return job;
        }
        Map<String, SetUp> better = new LinkedHashMap<>(setUps);
        better.replaceAll((id, it) -> inTheMiddle(job, it));
        return Edits.with(job, "setUps", better);
    }

    /** Of the readings on the straight beside which it stood. */
    private static SetUp inTheMiddle(Job job, SetUp setUp) {
        DoubleSummaryStatistics stations = new DoubleSummaryStatistics();
        for (Run run : Parts.of(job.runs())) {
            for (Straight straight : Parts.of(run.straights())) {
                for (Reading reading : Parts.of(straight.readings())) {
                    Double at = reading.stationMm();
                    if (straight.id().equals(setUp.on())
                            && setUp.id().equals(reading.setUp())
                            && at != null) {
                        stations.accept(at);
                    }
                }
            }
        }
        return stations.getCount() < 2
                ? setUp
                : Edits.with(setUp, "stationMm", (stations.getMin() + stations.getMax()) / 2);
    }
}
