package eavesproof.job;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One part of the way of the water from the gutter to where it finally goes. Each names the part
 * that it leads to; a discharge leads nowhere.
 */
public sealed interface WayPart {
    String id();

    /** The id of the next part; null where nobody recorded it (and at a discharge). */
    @Nullable String to();

    /** Height below the one datum of the way, mm. */
    @Nullable Double belowDatumMm();

    /**
     * Whether it is said how the water gets from this part to the next. What leaves the eaves comes
     * down in a pipe, unless it falls from a free spout; of its own a branch leads into a tank at
     * most. Where no such pipe is recorded one may be there all the same, with other water in it.
     */
    default boolean leadsDownTo(WayPart next) {
        if (next instanceof Downpipe || next instanceof Branch) {
            return true;
        }
        return this instanceof Outlet outlet
                ? Words.YES.equals(outlet.spout())
                : !(this instanceof Branch) || next instanceof Tank;
    }

    /**
     * @param on the id of its straight
     * @param stationMm of its centre
     * @param bodyMm length of its fitting along the gutter
     * @param hold sliding or fixed
     * @param cementedToGutter yes, no or unknown
     * @param setForTemperature yes if it was set for the gutter's temperature on the day
     * @param gapMm room left in a sliding outlet for the gutter to grow into, when it was set
     * @param insertionMm how deep the gutter sat in a sliding outlet then, where it sits least
     * @param fixing to the fascia
     * @param spout yes if the water falls from it freely, without any pipe
     */
    record Outlet(
            String id,
            @Nullable String to,
            @Nullable Double belowDatumMm,
            @Nullable String on,
            @Nullable Double stationMm,
            @Nullable Double bodyMm,
            @Nullable String hold,
            Said<String> cementedToGutter,
            Said<String> setForTemperature,
            @Nullable Double gapMm,
            @Nullable Double insertionMm,
            @Nullable String screwedToFascia,
            Run.@Nullable Fixing fixing,
            @Nullable Double sizeMm,
            @Nullable String edge,
            @Nullable Double sumpDepthMm,
            @Nullable String strainer,
            @Nullable String spout)
            implements WayPart {}

    /**
     * The sloping piece that joins a downpipe.
     *
     * @param lengthMm on plan
     * @param dropMm from its start to the downpipe; negative where it rises
     */
    record Branch(
            String id,
            @Nullable String to,
            @Nullable Double belowDatumMm,
            @Nullable Double lengthMm,
            @Nullable Double dropMm,
            @Nullable Double sizeMm,
            @Nullable Double junctionAngleDeg,
            @Nullable String measuredWith)
            implements WayPart {}

    /**
     * @param sizeMm inside diameter of a round pipe
     * @param widthMm inside width of a rectangular one, with depthMm
     * @param alsoCarries every other roof that drains into it; an empty list says there is none
     */
    record Downpipe(
            String id,
            @Nullable String to,
            @Nullable Double belowDatumMm,
            @Nullable Double sizeMm,
            @Nullable Double widthMm,
            @Nullable Double depthMm,
            @Nullable String material,
            @Nullable String newOrExisting,
            @Nullable List<OtherRoof> alsoCarries,
            @Nullable List<Clip> clips,
            @Nullable List<Offset> offsets,
            @Nullable Double socketGapMm,
            @Nullable String socketsWithFlow,
            @Nullable Double shoeHeightMm,
            @Nullable String measuredWith)
            implements WayPart {}

    record OtherRoof(String id, @Nullable String what, Said<Double> planAreaM2) {}

    /**
     * @param belowTopMm from the top of the downpipe
     * @param hold sliding or fixed
     */
    record Clip(String id, @Nullable Double belowTopMm, @Nullable String hold) {}

    /** A sloping piece within a downpipe; the angle is from the horizontal. */
    record Offset(@Nullable Double lengthMm, @Nullable Double angleDeg) {}

    /**
     * @param alsoCarries every other roof that drains into it, as of a downpipe
     */
    record Drain(
            String id,
            @Nullable String to,
            @Nullable Double belowDatumMm,
            @Nullable Double sizeMm,
            @Nullable Double lengthMm,
            @Nullable Double dropMm,
            @Nullable Double junctionAngleDeg,
            @Nullable String newOrExisting,
            @Nullable List<OtherRoof> alsoCarries,
            @Nullable String measuredWith)
            implements WayPart {}

    /** A tank; {@code to} is where its overflow goes, since a tank is no discharge. */
    record Tank(
            String id,
            @Nullable String to,
            @Nullable Double belowDatumMm,
            @Nullable Double inletSizeMm,
            @Nullable String screened,
            @Nullable Double firstFlushL,
            @Nullable Double overflowSizeMm,
            @Nullable String drinkingWater)
            implements WayPart {}

    /**
     * Where the water finally goes.
     *
     * @param place one of {@link Words#DISCHARGE_KINDS}; not called kind, which says in a record
     *     that this part is a discharge
     * @param approved yes, no or unknown, by whom and under which reference
     * @param traced one of {@link Words#TRACINGS}
     */
    record Discharge(
            String id,
            @Nullable Double belowDatumMm,
            Said<String> place,
            Said<String> approved,
            Said<String> traced)
            implements WayPart {
        @Override
        public @Nullable String to() {
            return null;
        }
    }
}
