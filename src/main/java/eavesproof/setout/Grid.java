package eavesproof.setout;

import eavesproof.quantity.Decimals;
import java.util.List;
import java.util.stream.Collectors;

/** Stations as they are marked out: whole 5 mm, always rounded to the safe side. */
final class Grid {
    private static final double STEP_MM = 5;

    /** More places than that are counted and not listed. */
    private static final int LISTED = 12;

    private Grid() {}

    static double down(double mm) {
        return StrictMath.floor(mm / STEP_MM) * STEP_MM;
    }

    static double up(double mm) {
        return StrictMath.ceil(mm / STEP_MM) * STEP_MM;
    }

    static double near(double mm) {
        return StrictMath.rint(mm / STEP_MM) * STEP_MM;
    }

    static String mm(double mm) {
        return Decimals.plain(mm, 1) + " mm";
    }

    /** 700, 1350 and 2100 mm. */
    static String stations(List<Double> stations) {
        return listed(stations.stream().map(it -> Decimals.plain(it, 1)).toList()) + " mm";
    }

    static String listed(List<String> all) {
        if (all.size() > LISTED) {
            return all.stream().limit(LISTED).collect(Collectors.joining(", "))
                    + " and "
                    + (all.size() - LISTED)
                    + " more";
        }
        int last = all.size() - 1;
        return last < 1
                ? String.join("", all)
                : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
    }
}
