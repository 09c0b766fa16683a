package eavesproof.exchange;

import static eavesproof.exchange.Keys.YES_NO;
import static eavesproof.exchange.Keys.id;
import static eavesproof.exchange.Keys.key;
import static eavesproof.exchange.Keys.list;
import static eavesproof.exchange.Keys.ref;
import static eavesproof.exchange.Keys.said;
import static eavesproof.exchange.Keys.word;

import eavesproof.exchange.Shape.Field;
import eavesproof.exchange.Shape.Kinds;
import eavesproof.exchange.Shape.Thing;
import eavesproof.job.WayPart;
import eavesproof.job.Words;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The shape of the way of the water: one list of parts, each of its kind. */
final class WayShape {
    private static final Field TO =
            ref("to", IdKind.WAY_PART).says("the part that the water goes to next");
    private static final Field BELOW_DATUM =
            key("below_datum_mm", Ranges.SIGNED_MM).says("below the one datum of the way");
    private static final Field MEASURED_WITH = ref("measured_with", IdKind.INSTRUMENT);
    private static final Field LENGTH = key("length_mm", Ranges.ON_PLAN_MM).says("on plan");
    private static final Field DROP = key("drop_mm", Ranges.SIGNED_MM).says("negative if it rises");
    private static final Field SIZE = key("size_mm", Ranges.PIPE_MM).says("inside diameter");
    private static final Field ANGLE = key("junction_angle_deg", Ranges.ANGLE_DEG);
    private static final Field NEW_OR_EXISTING = word("new_or_existing", Words.NEW_OR_EXISTING);

    private static final Thing OUTLET =
            Thing.of(
                    "outlet",
                    WayPart.Outlet.class,
                    id(IdKind.WAY_PART),
                    TO,
                    BELOW_DATUM,
                    ref("on", IdKind.STRAIGHT),
                    key("station_mm", Ranges.DISTANCE_MM).says("of its centre"),
                    key("body_mm", Ranges.BODY_MM).says("length of its body along the gutter"),
                    word("hold", Words.OUTLET_HOLDS),
                    said("cemented_to_gutter", "yes-or-no", YES_NO),
                    said("set_for_temperature", "yes-or-no", YES_NO)
                            .says("set for the temperature of the gutter on the day"),
                    key("gap_mm", Ranges.ROOM_MM)
                            .says("room left in a sliding outlet when it was set"),
                    key("insertion_mm", Ranges.ROOM_MM)
                            .says("how deep the gutter then sat in it, where it sits least"),
                    key("screwed_to_fascia", YES_NO),
                    RunShape.FIXED,
                    SIZE,
                    word("edge", Words.OUTLET_EDGES),
                    key("sump_depth_mm", Ranges.DISTANCE_MM),
                    key("strainer", YES_NO).says("a strainer or leaf guard"),
                    key("spout", YES_NO)
                            .says("whether the water falls from it freely, without any pipe"));

    private static final Thing BRANCH =
            Thing.of(
                    "branch",
                    WayPart.Branch.class,
                    id(IdKind.WAY_PART),
                    TO,
                    BELOW_DATUM,
                    LENGTH,
                    DROP,
                    SIZE,
                    ANGLE,
                    MEASURED_WITH);

    private static final Thing OTHER_ROOF =
            Thing.of(
                    "other-roof",
                    WayPart.OtherRoof.class,
                    id(IdKind.OTHER_ROOF),
                    key("what", Texts.LINE),
                    said("plan_area_m2", "area", Ranges.AREA_M2));

    private static final Field ALSO_CARRIES =
            list("also_carries", OTHER_ROOF)
                    .says("every other roof on it; an empty list if there is none");

    private static final Thing CLIP =
            Thing.of(
                    "clip",
                    WayPart.Clip.class,
                    id(IdKind.CLIP),
                    key("below_top_mm", Ranges.DISTANCE_MM).says("from the top of the downpipe"),
                    word("hold", Words.CLIP_HOLDS));

    private static final Thing OFFSET =
            Thing.of(
                    "offset",
                    WayPart.Offset.class,
                    key("length_mm", Ranges.ON_PLAN_MM),
                    key("angle_deg", Ranges.ANGLE_DEG).says("from the horizontal"));

    private static final Thing DOWNPIPE =
            Thing.of(
                    "downpipe",
                    WayPart.Downpipe.class,
                    id(IdKind.WAY_PART),
                    TO,
                    BELOW_DATUM,
                    SIZE,
                    key("width_mm", Ranges.PIPE_MM).says("inside, of a rectangular one"),
                    key("depth_mm", Ranges.PIPE_MM).says("inside, of a rectangular one"),
                    key("material", Texts.LINE),
                    NEW_OR_EXISTING,
                    ALSO_CARRIES,
                    list("clips", CLIP),
                    list("offsets", OFFSET),
                    key("socket_gap_mm", Ranges.DISTANCE_MM),
                    key("sockets_with_flow", YES_NO),
                    key("shoe_height_mm", Ranges.DISTANCE_MM),
                    MEASURED_WITH);

    private static final Thing DRAIN =
            Thing.of(
                    "drain",
                    WayPart.Drain.class,
                    id(IdKind.WAY_PART),
                    TO,
                    BELOW_DATUM,
                    SIZE,
                    LENGTH,
                    DROP,
                    ANGLE,
                    NEW_OR_EXISTING,
                    ALSO_CARRIES,
                    MEASURED_WITH);

    private static final Thing TANK =
            Thing.of(
                    "tank",
                    WayPart.Tank.class,
                    id(IdKind.WAY_PART),
                    ref("to", IdKind.WAY_PART).says("where its overflow goes"),
                    BELOW_DATUM,
                    key("inlet_size_mm", Ranges.PIPE_MM),
                    key("screened", YES_NO),
                    key("first_flush_l", Ranges.VOLUME_L),
                    key("overflow_size_mm", Ranges.PIPE_MM),
                    key("drinking_water", YES_NO));

    private static final Thing DISCHARGE =
            Thing.of(
                    "discharge",
                    WayPart.Discharge.class,
                    id(IdKind.WAY_PART),
                    BELOW_DATUM,
                    said("place", "discharge", new Leaf.Word(Words.DISCHARGE_KINDS)),
                    said("approved", "yes-or-no", YES_NO),
                    said("traced", "tracing", new Leaf.Word(Words.TRACINGS)));

    static final Kinds PART = Kinds.of("way-part", "kind", kinds());

    private WayShape() {}

    private static Map<String, Thing> kinds() {
        Map<String, Thing> kinds = new LinkedHashMap<>();
        for (Thing kind : new Thing[] {OUTLET, BRANCH, DOWNPIPE, DRAIN, TANK, DISCHARGE}) {
            kinds.put(kind.name(), kind);
        }
        return Collections.unmodifiableMap(kinds);
    }
}
