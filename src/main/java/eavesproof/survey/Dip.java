package eavesproof.survey;

import eavesproof.quantity.Uncertain;
import eavesproof.survey.SoleProfile.Point;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The lowest place behind a sill; or where nothing lies lower than what is nearer to the outlet,
 * the two that come nearest to it.
 */
record Dip(SoleProfile profile, Point sill, Point low, double mm) {

    static Optional<Dip> deepest(List<SoleProfile> profiles) {
        return profiles.stream()
                .flatMap(profile -> deepest(profile).stream())
                .max(Comparator.comparingDouble(Dip::mm));
    }

    private static Optional<Dip> deepest(SoleProfile profile) {
        List<Point> points = profile.points();
        Dip deepest = null;
        Point sill = null;
        for (Point point : points) {
            if (sill != null) {
                double mm = point.belowMm() - sill.belowMm();
                if (deepest == null || mm > deepest.mm()) {
                    deepest = new Dip(profile, sill, point, mm);
                }
            }
            sill = sill == null || point.belowMm() < sill.belowMm() ? point : sill;
        }
        return Optional.ofNullable(deepest);
    }

    boolean holdsWater() {
        return mm > ReachLevels.ROUNDING_MM;
    }

    /**
     * As deep as the readings have it, and never less than nothing. Every two readings count: a
     * less sure pair may be the deepest.
     */
    Uncertain depth(List<SoleProfile> profiles) {
        Worst worst = new Worst().add(least(mm, low.below().minus(sill.below())));
        profiles.forEach(each -> pairs(each, worst));
        return worst.get();
    }

    private static void pairs(SoleProfile profile, Worst worst) {
        List<Point> points = profile.points();
        double[] expanded = new double[points.size()];
        // Of all readings up to each one from the outlet, the highest, by value and at most.
        double[] highest = new double[points.size()];
        double[] maybe = new double[points.size()];
        for (int far = 0; far < points.size(); far++) {
            Point point = points.get(far);
            expanded[far] = point.below().expandedUncertainty();
            highest[far] = point.belowMm();
            maybe[far] = point.belowMm() - expanded[far];
            worst.unstated(point.below().unstated());
            if (far > 0) {
                highest[far] = Math.min(highest[far], highest[far - 1]);
                maybe[far] = Math.min(maybe[far], maybe[far - 1]);
            }
            double atMost = point.belowMm() + expanded[far];
            for (int near = far - 1;
                    near >= 0
                            && worst.isReachedBy(
                                    point.belowMm() - highest[near], atMost - maybe[near]);
                    near--) {
                pair(points.get(near), point, expanded[near] + expanded[far], worst);
            }
        }
    }

    /**
     * @param expandedAtMost the sum of both, less where they share a source: only where that could
     *     change anything it is worked out
     */
    private static void pair(Point near, Point far, double expandedAtMost, Worst worst) {
        double mm = far.belowMm() - near.belowMm();
        if (worst.isReachedBy(mm, mm + expandedAtMost)) {
            Uncertain deeper = far.below().minus(near.below());
            if (mm > 0) {
                worst.add(deeper);
            } else {
                worst.mayBe(mm + deeper.expandedUncertainty());
            }
        }
    }

    private static Uncertain least(double mm, Uncertain deeper) {
        return new Uncertain(Math.max(0, mm), deeper.sources(), deeper.unstated());
    }
}
