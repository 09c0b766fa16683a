package eavesproof.survey;

import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import java.util.List;
import java.util.Optional;

/**
 * Several readings of one thing, and what their scatter says of how sure their mean is.
 *
 * <p>Readings that agree make their mean surer than each of them (JCGM 100:2008 4.2.3). How far it
 * does so is seen from how they scatter: all repeats of a set-up are pooled (4.2.4), and since they
 * are few, Student's t widens what they show (annex G, table G.2). The scatter takes back at most
 * what averaging gave: within what the instrument explains, a mean is as sure as one reading.
 * Readings that differ by more than that contradict each other, and then none is to be believed.
 */
final class Repeats {
    /**
     * Our choice: two readings contradict each other where they differ by more than three standard
     * uncertainties of their difference; two readings within their greatest errors of the truth do
     * not come that far apart.
     */
    static final double CONTRADICTION = 3;

    /** t for 95.45 %, by degrees of freedom from 1 (JCGM 100:2008 table G.2, from memory). */
    private static final double[] T = {
        13.97, 4.53, 3.31, 2.87, 2.65, 2.52, 2.43, 2.37, 2.32, 2.28, 2.25, 2.23, 2.21, 2.20, 2.18,
        2.17, 2.16, 2.15, 2.14, 2.13
    };

    /** The factor for which an expanded uncertainty is reckoned elsewhere. */
    private static final double K = 2;

    private double squares;
    private int freedom;

    /** Takes the readings of one thing into the pool. */
    void pool(List<Uncertain> readings) {
        double mean = readings.stream().mapToDouble(Uncertain::value).average().orElseThrow();
        readings.forEach(it -> squares += (it.value() - mean) * (it.value() - mean));
        freedom += readings.size() - 1;
    }

    /** The mean of readings of which each has sources of its own. */
    Uncertain mean(List<Uncertain> readings) {
        Uncertain mean = Datums.mean(readings);
        double averaged = mean.standardUncertainty();
        double once = averaged * StrictMath.sqrt(readings.size());
        if (averaged == 0 || readings.size() == 1) {
            return mean;
        }
        double shown = scatter() / StrictMath.sqrt(readings.size());
        double wider = Math.min(once, Math.max(averaged, shown)) / averaged;
        return new Uncertain(mean.value(), mean.times(wider).sources(), mean.unstated());
    }

    /** What the pool says of one reading, as sure as if it came from many. */
    private double scatter() {
        double t = freedom > T.length ? T[T.length - 1] : T[Math.max(freedom, 1) - 1];
        return StrictMath.sqrt(squares / Math.max(freedom, 1)) * t / K;
    }

    /** How much the two that lie farthest apart differ, where that contradicts itself. */
    static Optional<String> contradiction(List<Uncertain> readings) {
        Uncertain least = readings.get(0);
        Uncertain most = least;
        for (Uncertain reading : readings) {
            least = reading.value() < least.value() ? reading : least;
            most = reading.value() > most.value() ? reading : most;
        }
        Uncertain apart = most.minus(least);
        double explained = CONTRADICTION * apart.standardUncertainty();
        return apart.isStated() && apart.value() > explained
                ? Optional.of(
                        Decimals.with(apart.value(), Unit.MM)
                                + " apart, and what they were read with explains "
                                + Decimals.with(explained, Unit.MM))
                : Optional.empty();
    }
}
