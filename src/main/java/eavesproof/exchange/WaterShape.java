package eavesproof.exchange;

import static eavesproof.exchange.Keys.DATE;
import static eavesproof.exchange.Keys.YES_NO;
import static eavesproof.exchange.Keys.id;
import static eavesproof.exchange.Keys.key;
import static eavesproof.exchange.Keys.list;
import static eavesproof.exchange.Keys.ref;
import static eavesproof.exchange.Keys.word;

import eavesproof.exchange.Shape.Thing;
import eavesproof.job.Job;
import eavesproof.job.Words;

/** The shape of what brings water to a run, and of what was seen of it. */
final class WaterShape {
    private static final Thing WALL =
            Thing.of(
                    "wall",
                    Job.Wall.class,
                    key("area_m2", Ranges.AREA_M2).says("seen from the front, above the roof"),
                    key("facing", Texts.LINE));

    private static final Thing INFLOW =
            Thing.of(
                    "inflow",
                    Job.Inflow.class,
                    word("kind", Words.INFLOW_KINDS),
                    ref("on", IdKind.STRAIGHT),
                    key("station_mm", Ranges.DISTANCE_MM));

    private static final Thing EAVES_PART =
            Thing.of(
                    "eaves-part",
                    Job.EavesPart.class,
                    ref("on", IdKind.STRAIGHT),
                    key("from_mm", Ranges.DISTANCE_MM),
                    key("to_mm", Ranges.DISTANCE_MM));

    static final Thing CATCHMENT =
            Thing.of(
                    "catchment",
                    Job.Catchment.class,
                    id(IdKind.CATCHMENT),
                    ref("run", IdKind.RUN),
                    key("plan_area_m2", Ranges.AREA_M2),
                    key("pitch_deg", Ranges.PITCH_DEG),
                    key("cover", Texts.LINE),
                    word("metal", Words.ALL_ROOF_METALS)
                            .says("that it is covered with; none for tiles, slates, felt, plastic"),
                    key("lead", YES_NO).says("whether there is any on it, flashings among it"),
                    list("walls", WALL),
                    key("inflow", INFLOW)
                            .says("where it arrives, if at one place of the run; leave out if not"),
                    key("eaves", EAVES_PART)
                            .says("the part of the run that it drains to; leave out if to all"),
                    key("mean_width_mm", Ranges.ON_PLAN_MM)
                            .says("on plan, from eaves to top, measured apart from the area"),
                    ref("measured_with", IdKind.INSTRUMENT).says("for its mean width"));

    private static final Thing STOOD =
            Thing.of(
                    "stood",
                    Job.Stood.class,
                    ref("on", IdKind.STRAIGHT),
                    key("from_mm", Ranges.DISTANCE_MM),
                    key("to_mm", Ranges.DISTANCE_MM),
                    key("depth_mm", Ranges.DISTANCE_MM));

    static final Thing TEST =
            Thing.of(
                    "test",
                    Job.WaterTest.class,
                    id(IdKind.WATER_TEST),
                    word("kind", Words.TEST_KINDS),
                    ref("run", IdKind.RUN),
                    key("litres", Ranges.POURED_L),
                    key("minutes", Ranges.DURATION_MIN),
                    key("depth_mm", Ranges.DISTANCE_MM),
                    key("drips", YES_NO),
                    ref("seen_at", IdKind.WAY_PART).says("where the water was seen to arrive"),
                    list("stood", STOOD).says("water that still stood afterwards"));

    static final Thing PHOTOGRAPH =
            Thing.of(
                    "photograph",
                    Job.Photograph.class,
                    id(IdKind.PHOTOGRAPH),
                    key("file", Texts.FILE),
                    key("shows", Texts.LINE),
                    key("taken", DATE),
                    ref("run", IdKind.RUN),
                    key("before_covering", YES_NO));

    private WaterShape() {}
}
