package eavesproof.job;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A kind of gutter used on the job, as its maker marks it.
 *
 * @param kind one of {@link Words#GUTTER_KINDS}
 * @param material one of {@link Words#MATERIALS}
 * @param jointing one of {@link Words#JOINTINGS}
 * @param areaMm2 cross-section below the lowest edge that water spills over, and who states it
 * @param bracketCapacityN what one bracket carries, and who states it
 */
public record Gutter(
        String id,
        @Nullable String kind,
        @Nullable String material,
        @Nullable String jointing,
        @Nullable Profile profile,
        Said<Double> areaMm2,
        Said<Double> bracketCapacityN,
        @Nullable Double thicknessMm,
        @Nullable String coating,
        @Nullable String colour,
        @Nullable String standardMarked) {

    /**
     * The cross-section of a gutter, inside.
     *
     * @param shape one of {@link Words#PROFILE_SHAPES}
     * @param widthMm across the top
     * @param depthMm from the sole to the lower lip
     * @param soleWidthMm across the sole of a trapezoid
     * @param backHeightMm from the sole to the back edge
     * @param frontHeightMm from the sole to the front bead
     * @param points (x, y) in mm from back to front for a shape of points
     */
    public record Profile(
            @Nullable String shape,
            @Nullable Double widthMm,
            @Nullable Double depthMm,
            @Nullable Double soleWidthMm,
            @Nullable Double backHeightMm,
            @Nullable Double frontHeightMm,
            @Nullable List<Point> points) {}

    /** A point of a profile, mm. */
    public record Point(@Nullable Double xMm, @Nullable Double yMm) {}
}
