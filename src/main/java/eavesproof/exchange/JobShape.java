package eavesproof.exchange;

import static eavesproof.exchange.Keys.DATE;
import static eavesproof.exchange.Keys.YES_NO;
import static eavesproof.exchange.Keys.id;
import static eavesproof.exchange.Keys.key;
import static eavesproof.exchange.Keys.lines;
import static eavesproof.exchange.Keys.list;
import static eavesproof.exchange.Keys.map;
import static eavesproof.exchange.Keys.ref;
import static eavesproof.exchange.Keys.said;
import static eavesproof.exchange.Keys.word;

import eavesproof.exchange.Shape.ListOf;
import eavesproof.exchange.Shape.Thing;
import eavesproof.job.Gutter;
import eavesproof.job.Instrument;
import eavesproof.job.Job;
import eavesproof.job.Words;

/**
 * The shape of a job's record, from the top; runs and the way of the water have their own files.
 */
final class JobShape {
    private static final Thing SITE =
            Thing.of(
                    "site",
                    Job.Site.class,
                    key("address", Texts.LINE),
                    key("building_kind", Texts.LINE),
                    key("part", Texts.LINE).says("the part of the building that was worked on"),
                    key("north", Texts.LINE).says("where north lies seen from the front"),
                    key("boundary", Texts.LINE).says("how near the boundary lies, and whose it is"),
                    key("place", Texts.LINE).says("the place by which a rule set knows its rain"));

    private static final Thing CONSENT =
            Thing.of(
                    "consent",
                    Job.Consent.class,
                    key("number", Texts.LINE),
                    key("date", DATE),
                    lines("drawings").says("the drawings consented to"),
                    lines("departures").says("where the work departs from them"));

    private static final Thing DATES =
            Thing.of(
                    "dates",
                    Job.Dates.class,
                    key("work_began", DATE),
                    key("work_ended", DATE),
                    key("measured", DATE),
                    key("weather", Texts.LINE),
                    key("air_temperature_c", Ranges.TEMPERATURE_C));

    private static final Thing PERSON =
            Thing.of(
                    "person",
                    Job.Person.class,
                    id(IdKind.PERSON),
                    key("role", Texts.LINE).says("client, installer, measured, …"),
                    key("name", Texts.LINE),
                    key("company", Texts.LINE),
                    key("contact", Texts.LINE),
                    key("licence", Texts.LINE),
                    key("licence_covers", Texts.LINE).says("what it allows its holder to do"));

    private static final Thing RAINFALL =
            Thing.of(
                    "rainfall",
                    Job.Rainfall.class,
                    key("intensity_mm_h", Ranges.INTENSITY_MM_H),
                    key("duration_min", Ranges.RAIN_MIN),
                    key("aep_percent", Ranges.AEP_PERCENT).says("chance of it in any one year"),
                    key("source", Texts.LINE));

    private static final Thing CIRCUMSTANCES =
            Thing.of(
                    "circumstances",
                    Job.Circumstances.class,
                    said("snow_lies", "yes-or-no", YES_NO),
                    said("heavy_rain", "yes-or-no", YES_NO),
                    said("ground_snow_kn_m2", "snow-load", Ranges.SNOW_KN_M2),
                    said("salt_water_km", "distance", Ranges.DISTANCE_KM)
                            .says("distance to the sea or other salt water"),
                    said("corrosion_class", "word", Texts.LINE).says("by ISO 9223: C1 to C5, CX"),
                    said("wind_zone", "word", Texts.LINE),
                    said("bushfire_level", "word", Texts.LINE),
                    list("rainfall", RAINFALL));

    private static final Thing INSTRUMENT =
            Thing.of(
                    "instrument",
                    Instrument.class,
                    word("kind", Words.INSTRUMENT_KINDS),
                    word("class", Words.TAPE_CLASSES).fills("tapeClass").says("as marked on it"),
                    key("from_hook", YES_NO).says("whether it is read from its hook"),
                    key("accuracy_mm", Ranges.ACCURACY_MM)
                            .says("greatest error of one reading, either way"),
                    key("accuracy_mm_per_m", Ranges.ACCURACY_MM)
                            .says("greatest error of the level line for each metre away"),
                    key("resolution_mm", Ranges.ACCURACY_MM).says("smallest step that can be read"),
                    key("last_checked", DATE));

    private static final Thing STRING_LINE =
            Thing.of(
                    "string-line",
                    Instrument.StringLine.class,
                    key("span_mm", Ranges.SPAN_MM).says("to the right of where it begins"),
                    key("sag_mm", Ranges.DISTANCE_MM)
                            .says("how far it hangs in its middle, if that is known"),
                    key("mass_g_per_m", Ranges.MASS_G_PER_M),
                    key("tension_n", Ranges.FORCE_N).says("how hard it was pulled"));

    private static final Thing SET_UP =
            Thing.of(
                    "set-up",
                    Instrument.SetUp.class,
                    ref("instrument", IdKind.INSTRUMENT).says("what gives the level line"),
                    ref("on", IdKind.STRAIGHT).says("the straight beside which it stood"),
                    key("station_mm", Ranges.SIGNED_MM).says("where beside it"),
                    key("clean", YES_NO).says("whether the gutter was clean and empty"),
                    key("string", STRING_LINE).says("how it was strung, if it is a string"));

    private static final Thing POINT =
            Thing.of(
                    "point",
                    Gutter.Point.class,
                    key("x_mm", Ranges.SIGNED_MM),
                    key("y_mm", Ranges.SIGNED_MM));

    private static final Thing PROFILE =
            Thing.of(
                    "profile",
                    Gutter.Profile.class,
                    word("shape", Words.PROFILE_SHAPES),
                    key("width_mm", Ranges.WIDTH_MM).says("across the top"),
                    key("depth_mm", Ranges.DEPTH_MM).says("from the sole to the lower lip"),
                    key("sole_width_mm", Ranges.HEIGHT_MM).says("of a trapezoid"),
                    key("back_height_mm", Ranges.HEIGHT_MM).says("from the sole to the back edge"),
                    key("front_height_mm", Ranges.HEIGHT_MM)
                            .says("from the sole to the front bead"),
                    list("points", POINT).says("from back to front, for a shape of points"));

    private static final Thing GUTTER =
            Thing.of(
                    "gutter",
                    Gutter.class,
                    word("kind", Words.GUTTER_KINDS),
                    word("material", Words.MATERIALS),
                    word("jointing", Words.JOINTINGS),
                    key("profile", PROFILE),
                    said("area_mm2", "area-of-section", Ranges.AREA_MM2)
                            .says("cross-section below the lowest edge that water spills over"),
                    said("bracket_capacity_n", "force", Ranges.FORCE_N)
                            .says("what one bracket carries"),
                    key("thickness_mm", Ranges.THICKNESS_MM),
                    key("coating", Texts.LINE),
                    key("colour", Texts.LINE),
                    key("standard_marked", Texts.LINE).says("the standard marked on the part"));

    static final Thing JOB =
            Thing.of(
                    "job",
                    Job.class,
                    id(IdKind.JOB),
                    key("title", Texts.LINE),
                    key("rule_set", Texts.ID).says("the name of the rule set to check against"),
                    key("site", SITE),
                    key("consent", CONSENT),
                    key("dates", DATES),
                    list("people", PERSON),
                    key("circumstances", CIRCUMSTANCES),
                    map("instruments", IdKind.INSTRUMENT, INSTRUMENT),
                    ref("measured_with", IdKind.INSTRUMENT)
                            .says("the instrument of everything that does not name its own"),
                    map("set_ups", IdKind.SET_UP, SET_UP),
                    map("gutters", IdKind.GUTTER, GUTTER),
                    list("runs", RunShape.RUN),
                    list("catchments", WaterShape.CATCHMENT),
                    key("way", new ListOf(WayShape.PART))
                            .says("the way of the water, each part with the part it leads to"),
                    list("tests", WaterShape.TEST),
                    list("photographs", WaterShape.PHOTOGRAPH),
                    lines("left_out").says("what was deliberately not done or not looked at"),
                    lines("remarks"));

    private JobShape() {}
}
