package eavesproof.survey;

import eavesproof.survey.Trough.Spot;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The nearest of many things on one straight, sorted from left to right, found by halving. */
final class Nearest {
    private Nearest() {}

    /** On either side; of two equally near the left one. */
    static @Nullable Spot to(Spot here, List<Spot> sorted) {
        Spot left = leftOf(here, sorted);
        Spot right = rightOf(here, sorted);
        if (left == null || right == null) {
            return left == null ? right : left;
        }
        double toLeft = here.stationMm() - left.stationMm();
        double toRight = right.stationMm() - here.stationMm();
        return toLeft <= toRight ? left : right;
    }

    /** To the left, or at the very station. */
    static @Nullable Spot leftOf(Spot here, List<Spot> sorted) {
        int beyond = firstBeyond(here.stationMm(), sorted);
        return beyond == 0 ? null : sorted.get(beyond - 1);
    }

    static @Nullable Spot rightOf(Spot here, List<Spot> sorted) {
        int beyond = firstBeyond(here.stationMm(), sorted);
        return beyond == sorted.size() ? null : sorted.get(beyond);
    }

    /** The index of the first that lies to the right of a station; the size if none does. */
    static int firstBeyond(double stationMm, List<Spot> sorted) {
        int low = 0;
        int high = sorted.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted.get(middle).stationMm() <= stationMm) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
