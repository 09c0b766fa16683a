package eavesproof.survey;

import eavesproof.hydraulics.Profile;
import eavesproof.hydraulics.WaterSurface;
import eavesproof.survey.Trough.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The water in one run in the design rain, for those who show it.
 *
 * @param along from the left end of the run to its right end, two at a corner
 * @param nearest where the water comes nearest to the lower lip, or goes furthest over it
 * @param lower which lip is the lower one, so that water spills over it first
 * @param lipMm how high that lip lies above the sole
 * @param across the inside of the gutter as it hangs, from its back to its front; its sole at 0
 */
public record WaterLine(List<At> along, At nearest, Lip lower, double lipMm, List<Across> across) {
    private static final double MM_PER_M = 1000;

    public WaterLine {
        along = List.copyOf(along);
        across = List.copyOf(across);
    }

    /** Not told where the readings are not sure enough to say which of the two it is. */
    public enum Lip {
        FRONT,
        BACK,
        BOTH,
        NOT_TOLD
    }

    /**
     * @param freeboardMm from the water to the lower lip; negative where it spills
     */
    public record At(String straight, double stationMm, double depthMm, double freeboardMm) {}

    /** A point of the section; x to the front. */
    public record Across(double xMm, double yMm) {}

    /** What lies on one straight, from its left end to its right end. */
    public List<At> on(String straight) {
        return along.stream().filter(at -> at.straight().equals(straight)).toList();
    }

    static WaterLine of(Trough trough, RunWater water) {
        Along where = new Along(trough);
        List<At> along = new ArrayList<>();
        for (WaterSurface.At at : water.surface().surface().points()) {
            along.add(where.at(at));
        }
        return new WaterLine(
                along,
                along.stream().min(Comparator.comparingDouble(At::freeboardMm)).orElseThrow(),
                lower(trough, water),
                water.hung().section().lip() * MM_PER_M,
                across(water.hung().profile()));
    }

    private static Lip lower(Trough trough, RunWater water) {
        boolean told =
                FrontLower.of(trough).then(FrontLower::lowerAllAlong)
                        instanceof Found.Value<Boolean>;
        return switch (water.surface().spillsOver()) {
            case FRONT -> told ? Lip.FRONT : Lip.NOT_TOLD;
            case BACK -> told ? Lip.BACK : Lip.NOT_TOLD;
            case BOTH -> told ? Lip.BOTH : Lip.NOT_TOLD;
        };
    }

    private static List<Across> across(Profile profile) {
        double sole = profile.points().stream().mapToDouble(Profile.Point::y).min().orElseThrow();
        return profile.points().stream()
                .map(point -> new Across(point.x() * MM_PER_M, (point.y() - sole) * MM_PER_M))
                .toList();
    }

    /** From places along the run to stations; of two points at a corner, each on its own side. */
    private static final class Along {
        /** Rounding of metres, mm. */
        private static final double NO_DISTANCE_MM = 1e-6;

        private final Trough trough;
        private int straight;
        private double lastMm = Double.NaN;

        Along(Trough trough) {
            this.trough = trough;
        }

        At at(WaterSurface.At at) {
            double mm = at.x() * MM_PER_M;
            while (straight + 1 < trough.straights().size() && isOver(mm)) {
                straight++;
            }
            lastMm = mm;
            return new At(
                    trough.straight(straight).id(),
                    mm - beginOf(straight),
                    at.depth() * MM_PER_M,
                    at.freeboard() * MM_PER_M);
        }

        private boolean isOver(double mm) {
            double end = beginOf(straight + 1);
            boolean second = Math.abs(mm - lastMm) <= NO_DISTANCE_MM;
            return mm > end + NO_DISTANCE_MM || (second && mm >= end - NO_DISTANCE_MM);
        }

        private double beginOf(int index) {
            return trough.along(new Position(index, 0));
        }
    }
}
