package eavesproof.hydraulics;

import eavesproof.hydraulics.Trough.Sole;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The sole of a gutter from end to end, straight between the places where it is known. */
final class Soles {
    /** Steeper than 1 in 10, m per m, the depth is no longer what it is taken for. */
    private static final double STEEPEST = 0.1;

    private final double[] x;
    private final double[] height;

    /**
     * @throws Refused if they do not begin at 0, do not rise in x, or are steep
     */
    Soles(List<Sole> soles) {
        if (soles.size() < 2 || soles.get(0).x() != 0) {
            throw new Refused("a bed needs two stations or more, from 0");
        }
        for (int i = 1; i < soles.size(); i++) {
            Sole before = soles.get(i - 1);
            Sole here = soles.get(i);
            if (!(here.x() > before.x())) {
                throw Refused.saying("the stations of a bed rise, unlike {} m", here.x());
            }
            double slope = (here.height() - before.height()) / (here.x() - before.x());
            if (!(Math.abs(slope) <= STEEPEST)) {
                throw Refused.saying(
                        "the sole is steeper than 1 in 10 between {} and {} m",
                        before.x(),
                        here.x());
            }
        }
        x = soles.stream().mapToDouble(Sole::x).toArray();
        height = soles.stream().mapToDouble(Sole::height).toArray();
    }

    double length() {
        return x[x.length - 1];
    }

    double heightAt(double place) {
        int at = Arrays.binarySearch(x, place);
        if (at >= 0) {
            return height[at];
        }
        int i = Math.min(x.length - 2, Math.max(0, -at - 2));
        return height[i] + (place - x[i]) / (x[i + 1] - x[i]) * (height[i + 1] - height[i]);
    }

    /** Stations between two places, these left out. */
    List<Double> between(double from, double to) {
        List<Double> between = new ArrayList<>();
        for (double station : x) {
            if (station > from && station < to) {
                between.add(station);
            }
        }
        return between;
    }
}
