package eavesproof.job;

import org.jspecify.annotations.Nullable;

/**
 * What something was measured with. A tape's class stands for the error limits of Directive
 * 2014/32/EU annex MI-008 (OIML R 35); anything else states its own accuracy.
 *
 * @param kind one of {@link Words#INSTRUMENT_KINDS}
 * @param tapeClass one of {@link Words#TAPE_CLASSES}
 * @param fromHook yes if the tape is read from its hook, which adds to its error
 * @param accuracyMm greatest error of one reading, half-width, above 0
 * @param accuracyMmPerM greatest error of the level line for each metre away, half-width, above 0
 * @param resolutionMm smallest step that can be read, above 0
 * @param lastChecked a date, YYYY-MM-DD
 */
public record Instrument(
        String id,
        @Nullable String kind,
        @Nullable String tapeClass,
        @Nullable String fromHook,
        @Nullable Double accuracyMm,
        @Nullable Double accuracyMmPerM,
        @Nullable Double resolutionMm,
        @Nullable String lastChecked) {

    /**
     * One placing of a levelling instrument; its readings are comparable with each other only.
     *
     * @param instrument the id of what gives the level line
     * @param on the straight beside which it stood, with the station
     * @param clean whether the gutter was clean and empty
     * @param string how it was strung, where it is one
     */
    public record SetUp(
            String id,
            @Nullable String instrument,
            @Nullable String on,
            @Nullable Double stationMm,
            @Nullable String clean,
            @Nullable StringLine string) {}

    /**
     * A string from where the set-up stood to the right. How far it hangs in its middle is stated,
     * or follows from its mass and how hard it was pulled.
     */
    public record StringLine(
            @Nullable Double spanMm,
            @Nullable Double sagMm,
            @Nullable Double massGPerM,
            @Nullable Double tensionN) {}
}
