package eavesproof.job;

import java.util.List;
import java.util.stream.Stream;

/**
 * The closed lists of words of a job record. Reader, schema, survey and vocabulary all take them
 * from here, so that a word which one of them knows is known to all.
 */
public final class Words {
    public static final String YES = "yes";
    public static final String NO = "no";
    public static final String UNKNOWN = "unknown";

    public static final List<String> YES_NO_UNKNOWN = List.of(YES, NO, UNKNOWN);
    public static final List<String> HOW = List.of("measured", "seen", "told", "assumed");

    public static final List<String> INSTRUMENT_KINDS =
            List.of(
                    "tape",
                    "staff",
                    "rule",
                    "laser",
                    "optical level",
                    "water level",
                    "string",
                    "bar level");
    public static final List<String> TAPE_CLASSES = List.of("I", "II", "III");
    public static final String SOLE = "sole";
    public static final List<String> SURFACES =
            List.of(SOLE, "bracket seat", "front bead", "back edge");

    public static final List<String> GUTTER_KINDS = List.of("eaves", "box", "valley", "concealed");
    public static final String PLASTIC = "plastic";
    public static final String METAL = "metal";
    public static final String OTHER = "other";
    public static final List<String> MATERIAL_FAMILIES = List.of(PLASTIC, METAL, OTHER);
    public static final List<String> METALS =
            List.of(
                    "steel",
                    "galvanised steel",
                    "zinc-aluminium coated steel",
                    "stainless steel",
                    "zinc",
                    "copper",
                    "aluminium",
                    "cast iron");
    public static final List<String> PLASTICS = List.of("PVC-U");
    public static final List<String> MATERIALS =
            List.of(
                    "PVC-U",
                    "steel",
                    "galvanised steel",
                    "zinc-aluminium coated steel",
                    "stainless steel",
                    "zinc",
                    "copper",
                    "aluminium",
                    "cast iron",
                    "fibre cement",
                    "timber",
                    OTHER);
    public static final List<String> JOINTINGS =
            List.of("cemented", "gasket", "sealed and riveted", "soldered", "seamless");
    public static final List<String> GUTTER_HELD =
            List.of("slides in its brackets", "fixed through");
    public static final String HALF_ROUND = "half-round";
    public static final List<String> PROFILE_SHAPES =
            List.of(HALF_ROUND, "rectangular", "trapezoid", "points");
    public static final String EXPANSION = "expansion";
    public static final List<String> JOINT_KINDS =
            List.of("cemented", "gasket", "sealed and riveted", "soldered", EXPANSION);
    public static final String CORNER = "corner";
    public static final String STOP_END = "stop end";
    public static final List<String> END_KINDS = List.of(STOP_END, CORNER, "open");
    public static final List<String> SCREW_METALS =
            List.of(
                    "stainless steel",
                    "galvanised steel",
                    "zinc-plated steel",
                    "brass",
                    "aluminium",
                    "copper",
                    OTHER);

    public static final List<String> PRESERVATIVES =
            List.of("none", "copper-based", "boron", OTHER);

    public static final String LEAD = "lead";

    /** What a roof may be covered with, as far as the tables of metals in contact name it. */
    public static final List<String> ROOF_METALS =
            List.of(
                    "none",
                    "copper",
                    "stainless steel",
                    "galvanised steel",
                    "zinc",
                    "zinc-aluminium coated steel",
                    LEAD);

    public static final List<String> ALL_ROOF_METALS =
            Stream.concat(ROOF_METALS.stream(), Stream.of("aluminium", OTHER)).toList();

    /** ISO 9223:2012, from very low to extreme. */
    public static final List<String> CORROSION_CLASSES =
            List.of("C1", "C2", "C3", "C4", "C5", "CX");

    /** Those that copper, and water that ran over it, eats away. */
    public static final List<String> WORN_BY_COPPER =
            List.of(
                    "steel",
                    "galvanised steel",
                    "zinc-aluminium coated steel",
                    "zinc",
                    "aluminium");

    /**
     * How an eaves gutter lets out what is too much; ABCB Housing Provisions 2022, 7.4.6 and 7.4.7.
     */
    public static final List<String> OVERFLOW_MEASURES =
            List.of(
                    "front slots",
                    "back gap",
                    "low front bead",
                    "end weir",
                    "front weir",
                    "inverted nozzle",
                    "rainhead");

    /** Those of them that go along the gutter; the others stand at one place. */
    public static final List<String> ALONG_THE_GUTTER =
            List.of("front slots", "back gap", "low front bead");

    public static final String SLIDING = "sliding";
    public static final String FIXED = "fixed";
    public static final List<String> OUTLET_HOLDS = List.of(SLIDING, FIXED);
    public static final List<String> OUTLET_EDGES = List.of("sharp", "tapered");
    public static final List<String> CLIP_HOLDS = List.of(SLIDING, FIXED);
    public static final String NEW = "new";
    public static final List<String> NEW_OR_EXISTING = List.of(NEW, "existing");
    public static final List<String> DISCHARGE_KINDS =
            List.of(
                    "surface-water gully",
                    "surface-water drain",
                    "pit or sump",
                    "kerb",
                    "soakaway",
                    "watercourse",
                    "combined sewer",
                    "foul gully",
                    "foul sewer",
                    "onto ground",
                    OTHER);
    public static final List<String> TRACINGS =
            List.of("dye", "water run and seen", "camera", "plan", "not traced");
    public static final List<String> INFLOW_KINDS = List.of("valley", "spreader", "upper downpipe");
    public static final List<String> LIGHTS = List.of("sun", "shade");
    public static final List<String> TEST_KINDS =
            List.of("water poured in", "outlet plugged", "hose at the high end");

    private Words() {}
}
