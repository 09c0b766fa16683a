package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.job.Run.Bracket;
import eavesproof.job.Run.Fixing;
import eavesproof.job.Run.Straight;
import eavesproof.job.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What holds a straight up at one station.
 *
 * @param isBracket whether it can be moved; what is screwed to the fascia stays where it is
 */
record Support(String id, double stationMm, boolean isBracket) {

    /** The known supports of a straight from left to right. */
    static List<Support> of(Job job, Straight straight) {
        List<Support> all = new ArrayList<>();
        for (Bracket bracket : Parts.of(straight.brackets())) {
            Integer screws = bracket.screwsFitted();
            if (screws != null && screws > 0) {
                add(all, bracket.id(), bracket.stationMm(), true);
            }
        }
        Parts.of(straight.joints()).stream()
                .filter(it -> screwed(it.screwedToFascia(), it.fixing()))
                .forEach(it -> add(all, it.id(), it.stationMm(), false));
        Parts.of(straight.fittings()).stream()
                .filter(it -> screwed(it.screwedToFascia(), it.fixing()))
                .filter(it -> Words.YES.equals(it.carriesGutter()))
                .forEach(it -> add(all, it.id(), it.stationMm(), false));
        Parts.outletsOn(job, straight.id()).stream()
                .filter(it -> screwed(it.screwedToFascia(), it.fixing()))
                .forEach(it -> add(all, it.id(), it.stationMm(), false));
        all.sort(Comparator.comparingDouble(Support::stationMm).thenComparing(Support::id));
        return all;
    }

    private static boolean screwed(@Nullable String said, @Nullable Fixing fixing) {
        Integer screws = fixing == null ? null : fixing.screwsFitted();
        return Words.YES.equals(said) && (screws == null || screws > 0);
    }

    private static void add(
            List<Support> all, String id, @Nullable Double stationMm, boolean isBracket) {
        if (stationMm != null) {
            all.add(new Support(id, stationMm, isBracket));
        }
    }
}
