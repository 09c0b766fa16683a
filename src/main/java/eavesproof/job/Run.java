package eavesproof.job;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One continuous trough, from stop end to stop end round its corners, seen from outside.
 *
 * @param gutter the id of its {@link Gutter}
 * @param straights from left to right; the right end of one meets the left end of the next
 * @param held one of {@link Words#GUTTER_HELD}
 */
public record Run(
        String id,
        @Nullable String title,
        @Nullable String gutter,
        @Nullable List<Straight> straights,
        @Nullable Fitted fitted,
        @Nullable EavesSection eavesSection,
        @Nullable String held) {

    /**
     * The gutter's own temperature when it was fitted.
     *
     * @param light one of {@link Words#LIGHTS}
     * @param date of the fitting, YYYY-MM-DD
     */
    public record Fitted(
            @Nullable Double temperatureC, @Nullable String light, @Nullable String date) {}

    /** How the gutter lies against the building; positive is below the top of the fascia. */
    public record EavesSection(
            @Nullable Double backEdgeBelowFasciaTopMm,
            @Nullable Double frontBeadBelowFasciaTopMm,
            @Nullable Double gapBehindMm,
            @Nullable Double eavesWidthMm,
            Said<String> lined,
            @Nullable List<String> overflowProvisions,
            @Nullable List<Overflow> overflows) {}

    /**
     * A measure by which a full gutter overflows.
     *
     * @param kind one of {@link Words#OVERFLOW_MEASURES}
     * @param lengthMm of gutter along which it goes
     * @param sizeMm clear width of a weir, diameter of a hole, length of a nozzle, depth of a gap
     * @param heightMm clear height of a weir, width of a nozzle across
     * @param openMm2PerM what slots leave open of each metre
     * @param belowFasciaTopMm the edge that water goes over; of a round hole its centre
     * @param highPointMm how far away the nearest high point of the gutter is
     */
    public record Overflow(
            String id,
            @Nullable String kind,
            @Nullable Double lengthMm,
            @Nullable Double sizeMm,
            @Nullable Double heightMm,
            @Nullable Double openMm2PerM,
            @Nullable Double belowFasciaTopMm,
            @Nullable Double highPointMm) {}

    /**
     * One straight length between ends or corners. Stations are mm from its left end.
     *
     * @param measuredWith instrument of its lengths and stations; the job's where null
     */
    public record Straight(
            String id,
            @Nullable Double lengthMm,
            @Nullable String measuredWith,
            @Nullable End leftEnd,
            @Nullable End rightEnd,
            @Nullable List<Reading> readings,
            @Nullable List<Bracket> brackets,
            @Nullable List<Fitting> fittings,
            @Nullable List<Joint> joints,
            @Nullable List<KeepClear> keepClear,
            @Nullable List<CrossTilt> crossTilt,
            @Nullable Fascia fascia,
            @Nullable RoofEdge roofEdge) {}

    /**
     * @param kind one of {@link Words#END_KINDS}
     * @param gapToWallMm room left between a stop end and a wall
     */
    public record End(@Nullable String kind, @Nullable Double gapToWallMm) {}

    /**
     * How far a surface lies below the datum of a set-up.
     *
     * @param surface one of {@link Words#SURFACES}
     * @param tie the same word on readings of one point by two set-ups ties them together
     */
    public record Reading(
            @Nullable Double stationMm,
            @Nullable String surface,
            @Nullable Double belowMm,
            @Nullable String setUp,
            @Nullable String measuredWith,
            @Nullable String tie) {}

    /**
     * @param screwMetal one of {@link Words#SCREW_METALS}
     * @param biteMm how deep the screws sit in sound timber
     */
    public record Bracket(
            String id,
            @Nullable Double stationMm,
            @Nullable Integer screwsFitted,
            @Nullable Integer holesProvided,
            @Nullable String screwMetal,
            @Nullable Double screwDiameterMm,
            @Nullable Double biteMm) {}

    /**
     * How something that is no bracket is screwed to the fascia, and what it carries as somebody
     * states it: what holds the gutter up is asked what a bracket is asked.
     *
     * @param screwMetal one of {@link Words#SCREW_METALS}
     * @param biteMm how deep the screws sit in sound timber
     */
    public record Fixing(
            @Nullable Integer screwsFitted,
            @Nullable Integer holesProvided,
            @Nullable String screwMetal,
            @Nullable Double screwDiameterMm,
            @Nullable Double biteMm,
            Said<Double> carriesN) {
        /** One of which nothing is recorded. */
        public static final Fixing NOTHING =
                new Fixing(null, null, null, null, null, Said.nothing());
    }

    /**
     * A fitting on the gutter other than a joint or an outlet.
     *
     * @param screwedToFascia yes if it is fixed to the building
     * @param gutterSlides yes if the gutter can move in it
     * @param carriesGutter yes if the gutter lies in it
     * @param fixing to the fascia
     */
    public record Fitting(
            String id,
            @Nullable String what,
            @Nullable Double stationMm,
            @Nullable String screwedToFascia,
            @Nullable String gutterSlides,
            @Nullable String carriesGutter,
            @Nullable Fixing fixing) {}

    /**
     * @param kind one of {@link Words#JOINT_KINDS}
     * @param lapWithFlow yes if the upper length lies inside the lower one
     * @param gapMm room left in an expansion joint when fitted
     * @param fixing to the fascia
     */
    public record Joint(
            String id,
            @Nullable String kind,
            @Nullable Double stationMm,
            @Nullable Double lapMm,
            @Nullable String lapWithFlow,
            @Nullable Double gapMm,
            @Nullable Double insertionMm,
            @Nullable String screwedToFascia,
            @Nullable Fixing fixing) {}

    /** A length in which no joint may lie. */
    public record KeepClear(
            String id, @Nullable String what, @Nullable Double fromMm, @Nullable Double toMm) {}

    /**
     * Front bead minus back edge, mm; positive where the front lies lower.
     *
     * @param measuredWith instrument of the tilt; that of its straight where null
     */
    public record CrossTilt(
            @Nullable Double stationMm,
            @Nullable Double frontLowerMm,
            @Nullable String measuredWith) {}

    /**
     * The timber that carries the gutter, by stations of the straight (may begin below 0).
     *
     * @param preservative as it is named
     * @param treatedWith what it is made of, one of {@link Words#PRESERVATIVES}
     */
    public record Fascia(
            @Nullable Double beginsMm,
            @Nullable Double endsMm,
            @Nullable String material,
            @Nullable String preservative,
            Said<String> treatedWith,
            Said<String> sound,
            @Nullable List<Reading> edgeReadings) {}

    /**
     * @param snowHeld whether snow guards hold the snow on the roof above
     */
    public record RoofEdge(
            @Nullable Double overhangMm,
            @Nullable Double dropToFrontBeadMm,
            @Nullable Double underlayPastFasciaMm,
            Said<String> snowHeld) {}
}
