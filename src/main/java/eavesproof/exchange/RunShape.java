package eavesproof.exchange;

import static eavesproof.exchange.Keys.DATE;
import static eavesproof.exchange.Keys.YES_NO;
import static eavesproof.exchange.Keys.id;
import static eavesproof.exchange.Keys.key;
import static eavesproof.exchange.Keys.list;
import static eavesproof.exchange.Keys.ref;
import static eavesproof.exchange.Keys.said;
import static eavesproof.exchange.Keys.word;
import static eavesproof.exchange.Keys.words;

import eavesproof.exchange.Shape.Field;
import eavesproof.exchange.Shape.Thing;
import eavesproof.job.Run;
import eavesproof.job.Words;

/** The shape of a run and of everything on its straights. */
final class RunShape {
    private static final Field STATION =
            key("station_mm", Ranges.DISTANCE_MM).says("from the left end of the straight");

    private static final Thing END =
            Thing.of(
                    "end",
                    Run.End.class,
                    word("kind", Words.END_KINDS),
                    key("gap_to_wall_mm", Ranges.DISTANCE_MM));

    private static final Thing READING =
            Thing.of(
                    "reading",
                    Run.Reading.class,
                    STATION,
                    word("surface", Words.SURFACES),
                    key("below_mm", Ranges.LEVEL_MM).says("how far below the datum of the set-up"),
                    ref("set_up", IdKind.SET_UP),
                    ref("measured_with", IdKind.INSTRUMENT),
                    key("tie", Texts.LINE)
                            .says("the same word on readings of one point by two set-ups"));

    /** The edge of the fascia is the one surface of these, so that it is not named. */
    private static final Thing EDGE_READING =
            Thing.of(
                    "edge-reading",
                    Run.Reading.class,
                    STATION,
                    key("below_mm", Ranges.LEVEL_MM).says("how far below the datum of the set-up"),
                    ref("set_up", IdKind.SET_UP),
                    ref("measured_with", IdKind.INSTRUMENT),
                    key("tie", Texts.LINE)
                            .says("the same word on readings of one point by two set-ups"));

    private static final Thing BRACKET =
            Thing.of(
                    "bracket",
                    Run.Bracket.class,
                    id(IdKind.ON_RUN),
                    STATION,
                    key("screws_fitted", Ranges.COUNT),
                    key("holes_provided", Ranges.COUNT),
                    word("screw_metal", Words.SCREW_METALS),
                    key("screw_diameter_mm", Ranges.SCREW_MM),
                    key("bite_mm", Ranges.BITE_MM).says("how deep the screws sit in sound timber"));

    private static final Thing FIXING =
            Thing.of(
                    "fixing",
                    Run.Fixing.class,
                    key("screws_fitted", Ranges.COUNT),
                    key("holes_provided", Ranges.COUNT),
                    word("screw_metal", Words.SCREW_METALS),
                    key("screw_diameter_mm", Ranges.SCREW_MM),
                    key("bite_mm", Ranges.BITE_MM).says("how deep the screws sit in sound timber"),
                    said("carries_n", "force", Ranges.FORCE_N)
                            .says("what it carries, as its maker states it"));

    /** Of what is no bracket and is screwed to the fascia all the same. */
    static final Field FIXED =
            key("fixing", FIXING).says("where it is screwed on: asked as of a bracket");

    private static final Thing FITTING =
            Thing.of(
                    "fitting",
                    Run.Fitting.class,
                    id(IdKind.ON_RUN),
                    key("what", Texts.LINE),
                    STATION,
                    key("screwed_to_fascia", YES_NO).says("whether it is fixed to the building"),
                    key("gutter_slides", YES_NO).says("whether the gutter can move in it"),
                    key("carries_gutter", YES_NO)
                            .says("whether the gutter lies in it; if so, and screwed, a support"),
                    FIXED);

    private static final Thing JOINT =
            Thing.of(
                    "joint",
                    Run.Joint.class,
                    id(IdKind.ON_RUN),
                    word("kind", Words.JOINT_KINDS),
                    STATION,
                    key("lap_mm", Ranges.DISTANCE_MM),
                    key("lap_with_flow", YES_NO)
                            .says("whether the upper length lies inside the lower one"),
                    key("gap_mm", Ranges.ROOM_MM).says("room left when it was fitted"),
                    key("insertion_mm", Ranges.ROOM_MM),
                    key("screwed_to_fascia", YES_NO).says("if so it supports the gutter too"),
                    FIXED);

    private static final Thing KEEP_CLEAR =
            Thing.of(
                    "keep-clear",
                    Run.KeepClear.class,
                    id(IdKind.ON_RUN),
                    key("what", Texts.LINE).says("such as a door below"),
                    key("from_mm", Ranges.SIGNED_MM),
                    key("to_mm", Ranges.SIGNED_MM));

    private static final Thing CROSS_TILT =
            Thing.of(
                    "cross-tilt",
                    Run.CrossTilt.class,
                    STATION,
                    key("front_lower_mm", Ranges.TILT_MM)
                            .says("front bead minus back edge; positive where the front is lower"),
                    ref("measured_with", IdKind.INSTRUMENT));

    private static final Thing FASCIA =
            Thing.of(
                    "fascia",
                    Run.Fascia.class,
                    key("begins_mm", Ranges.SIGNED_MM)
                            .says("a station; below 0 if left of the gutter"),
                    key("ends_mm", Ranges.SIGNED_MM),
                    key("material", Texts.LINE),
                    key("preservative", Texts.LINE).says("as it is named"),
                    said("treated_with", "preservative", new Leaf.Word(Words.PRESERVATIVES))
                            .says("what the preservative is made of"),
                    said("sound", "yes-or-no", YES_NO),
                    list("edge_readings", EDGE_READING).says("levels of its lower edge"));

    private static final Thing ROOF_EDGE =
            Thing.of(
                    "roof-edge",
                    Run.RoofEdge.class,
                    key("overhang_mm", Ranges.SIGNED_MM).says("of the roof past the back edge"),
                    key("drop_to_front_bead_mm", Ranges.SIGNED_MM),
                    key("underlay_past_fascia_mm", Ranges.SIGNED_MM),
                    said("snow_held", "yes-or-no", YES_NO)
                            .says("whether snow guards hold the snow on the roof above"));

    private static final Thing STRAIGHT =
            Thing.of(
                    "straight",
                    Run.Straight.class,
                    id(IdKind.STRAIGHT),
                    key("length_mm", Ranges.STRAIGHT_MM),
                    ref("measured_with", IdKind.INSTRUMENT)
                            .says("for its length and stations, if not with the job's"),
                    key("left_end", END).says("seen from outside"),
                    key("right_end", END),
                    list("readings", READING),
                    list("brackets", BRACKET),
                    list("fittings", FITTING).says("other than joints and outlets"),
                    list("joints", JOINT),
                    list("keep_clear", KEEP_CLEAR).says("where no joint may lie"),
                    list("cross_tilt", CROSS_TILT),
                    key("fascia", FASCIA).says("the timber that carries the gutter"),
                    key("roof_edge", ROOF_EDGE));

    private static final Thing FITTED =
            Thing.of(
                    "fitted",
                    Run.Fitted.class,
                    key("temperature_c", Ranges.TEMPERATURE_C).says("of the gutter itself"),
                    word("light", Words.LIGHTS),
                    key("date", DATE));

    private static final Thing OVERFLOW =
            Thing.of(
                    "overflow",
                    Run.Overflow.class,
                    id(IdKind.ON_RUN),
                    word("kind", Words.OVERFLOW_MEASURES),
                    key("length_mm", Ranges.ON_PLAN_MM)
                            .says("of gutter along which slots, a gap or a low front bead go"),
                    key("size_mm", Ranges.DISTANCE_MM)
                            .says("width of a weir, diameter of a hole, length of a nozzle, a gap"),
                    key("height_mm", Ranges.DISTANCE_MM)
                            .says("clear height of a weir, width of a nozzle across"),
                    key("open_mm2_per_m", Ranges.OPEN_MM2_PER_M)
                            .says("what slots leave open of each metre"),
                    key("below_fascia_top_mm", Ranges.SIGNED_MM)
                            .says("the edge that water goes over; of a round hole its centre"),
                    key("high_point_mm", Ranges.DISTANCE_MM)
                            .says("to the nearest high point of the gutter"));

    private static final Thing EAVES_SECTION =
            Thing.of(
                    "eaves-section",
                    Run.EavesSection.class,
                    key("back_edge_below_fascia_top_mm", Ranges.SIGNED_MM),
                    key("front_bead_below_fascia_top_mm", Ranges.SIGNED_MM),
                    key("gap_behind_mm", Ranges.DISTANCE_MM),
                    key("eaves_width_mm", Ranges.DISTANCE_MM),
                    said("lined", "yes-or-no", YES_NO),
                    words("overflow_provisions", Words.OVERFLOW_MEASURES),
                    list("overflows", OVERFLOW).says("how large each of them is"));

    static final Thing RUN =
            Thing.of(
                    "run",
                    Run.class,
                    id(IdKind.RUN),
                    key("title", Texts.LINE),
                    ref("gutter", IdKind.GUTTER),
                    list("straights", STRAIGHT).says("from left to right, seen from outside"),
                    key("fitted", FITTED),
                    key("eaves_section", EAVES_SECTION),
                    word("held", Words.GUTTER_HELD).says("by its brackets"));

    private RunShape() {}
}
