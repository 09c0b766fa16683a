package eavesproof.job;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One piece of work at one address, as recorded. Null is what nobody recorded; an empty list says
 * that there are none. Maps keep the order of the record.
 *
 * @param ruleSet the name of the rule set that it is to be checked against
 * @param measuredWith the instrument of everything that does not name its own
 */
public record Job(
        String id,
        @Nullable String title,
        @Nullable String ruleSet,
        @Nullable Site site,
        @Nullable Consent consent,
        @Nullable Dates dates,
        @Nullable List<Person> people,
        @Nullable Circumstances circumstances,
        @Nullable Map<String, Instrument> instruments,
        @Nullable String measuredWith,
        @Nullable Map<String, Instrument.SetUp> setUps,
        @Nullable Map<String, Gutter> gutters,
        @Nullable List<Run> runs,
        @Nullable List<Catchment> catchments,
        @Nullable List<WayPart> way,
        @Nullable List<WaterTest> tests,
        @Nullable List<Photograph> photographs,
        @Nullable List<String> leftOut,
        @Nullable List<String> remarks) {

    /**
     * @param north where north lies seen from the front, in words
     * @param part the part of the building that was worked on
     */
    public record Site(
            @Nullable String address,
            @Nullable String buildingKind,
            @Nullable String part,
            @Nullable String north,
            @Nullable String boundary,
            @Nullable String place) {}

    public record Consent(
            @Nullable String number,
            @Nullable String date,
            @Nullable List<String> drawings,
            @Nullable List<String> departures) {}

    /** Dates as YYYY-MM-DD. */
    public record Dates(
            @Nullable String workBegan,
            @Nullable String workEnded,
            @Nullable String measured,
            @Nullable String weather,
            @Nullable Double airTemperatureC) {}

    /**
     * @param role "client", "installer", "measured" or another word for what they did
     * @param licenceCovers what the licence allows its holder to do
     */
    public record Person(
            String id,
            @Nullable String role,
            @Nullable String name,
            @Nullable String company,
            @Nullable String contact,
            @Nullable String licence,
            @Nullable String licenceCovers) {}

    /** What the place does to a gutter, each with who says so. */
    public record Circumstances(
            Said<String> snowLies,
            Said<String> heavyRain,
            Said<Double> groundSnowKnM2,
            Said<Double> saltWaterKm,
            Said<String> corrosionClass,
            Said<String> windZone,
            Said<String> bushfireLevel,
            @Nullable List<Rainfall> rainfall) {}

    /**
     * @param aepPercent annual exceedance probability
     */
    public record Rainfall(
            @Nullable Double intensityMmH,
            @Nullable Double durationMin,
            @Nullable Double aepPercent,
            @Nullable String source) {}

    /**
     * The roof that drains to a run, or with a station what arrives at one place of it.
     *
     * @param eaves where along the run it drains, if not along all of it
     * @param meanWidthMm on plan, from its eaves to its top, as measured apart from the area
     * @param measuredWith instrument of that width; the job's where null
     * @param metal one of {@link Words#ALL_ROOF_METALS}
     * @param lead yes or no: whether there is any on it
     */
    public record Catchment(
            String id,
            @Nullable String run,
            @Nullable Double planAreaM2,
            @Nullable Double pitchDeg,
            @Nullable String cover,
            @Nullable List<Wall> walls,
            @Nullable Inflow inflow,
            @Nullable EavesPart eaves,
            @Nullable Double meanWidthMm,
            @Nullable String measuredWith,
            @Nullable String metal,
            @Nullable String lead) {}

    /** A part of a straight. */
    public record EavesPart(@Nullable String on, @Nullable Double fromMm, @Nullable Double toMm) {}

    public record Wall(@Nullable Double areaM2, @Nullable String facing) {}

    /**
     * @param kind one of {@link Words#INFLOW_KINDS}
     */
    public record Inflow(@Nullable String kind, @Nullable String on, @Nullable Double stationMm) {}

    /**
     * A test with water.
     *
     * @param kind one of {@link Words#TEST_KINDS}
     * @param drips yes, no or unknown
     * @param seenAt the part of the way where the water was seen to arrive
     */
    public record WaterTest(
            String id,
            @Nullable String kind,
            @Nullable String run,
            @Nullable Double litres,
            @Nullable Double minutes,
            @Nullable Double depthMm,
            @Nullable String drips,
            @Nullable String seenAt,
            @Nullable List<Stood> stood) {}

    /** Water that still stood after a test. */
    public record Stood(
            @Nullable String on,
            @Nullable Double fromMm,
            @Nullable Double toMm,
            @Nullable Double depthMm) {}

    public record Photograph(
            String id,
            @Nullable String file,
            @Nullable String shows,
            @Nullable String taken,
            @Nullable String run,
            @Nullable String beforeCovering) {}
}
