package eavesproof.survey;

import static eavesproof.survey.FactKind.number;
import static eavesproof.survey.FactKind.word;

import eavesproof.job.Words;
import eavesproof.quantity.Unit;
import java.util.List;

/** What is asked of a gutter: what it is, how it hangs, falls, moves and is joined. */
final class KindsOfGutter {
    private static final List<String> YES_NO = List.of(Words.YES, Words.NO);

    static final List<FactKind> ALL =
            List.of(
                    word(Facts.GutterKind.class, Words.GUTTER_KINDS, "the kind of gutter of a run"),
                    word(
                            Facts.GutterMaterial.class,
                            Words.MATERIALS,
                            "what the gutter of a run is made of"),
                    word(
                            Facts.MaterialFamily.class,
                            Words.MATERIAL_FAMILIES,
                            "whether the gutter of a run is plastic or metal"),
                    word(
                            Facts.Jointing.class,
                            Words.JOINTINGS,
                            "how the lengths of a run are joined"),
                    word(
                            Facts.WornByCopper.class,
                            YES_NO,
                            "whether the gutter of a run is of a metal that copper eats away"),
                    word(
                            Facts.GutterShape.class,
                            Words.PROFILE_SHAPES,
                            "the shape of the gutter of a run across"),
                    number(
                            Facts.GutterWidth.class,
                            Unit.MM,
                            "the width of the gutter across its top"),
                    word(
                            Facts.GutterHeld.class,
                            Words.GUTTER_HELD,
                            "whether the gutter of a run slides in its brackets or is fixed through"),
                    word(Facts.SnowArea.class, YES_NO, "whether snow lies at the site"),
                    word(Facts.HeavyRain.class, YES_NO, "whether the site has heavy rain"),
                    number(
                            Facts.PlaceRain.class,
                            Unit.MM_PER_H,
                            "the design rain that the rule set has for the place of the site"),
                    number(
                            Facts.EavesWidth.class,
                            Unit.MM,
                            "how wide the eaves are that the gutter hangs on"),
                    word(
                            Facts.EavesLined.class,
                            YES_NO,
                            "whether the eaves have a lining underneath"),
                    word(
                            Facts.RoofMetal.class,
                            Words.ROOF_METALS,
                            "which metal a roof is covered with whose water comes to the gutter"),
                    word(
                            Facts.RoofLead.class,
                            YES_NO,
                            "whether there is lead on a roof whose water comes to the gutter, flashings among it"),
                    word(
                            Facts.CorrosionClass.class,
                            Words.CORROSION_CLASSES,
                            "how the air at the site eats away metals, by ISO 9223"),
                    word(
                            Facts.DrinkingWater.class,
                            YES_NO,
                            "whether the water of a run comes to a tank from which it is drunk"),
                    number(
                            Facts.OverflowMeasures.class,
                            Unit.COUNT,
                            "how many measures are recorded by which a full gutter overflows"),
                    number(Facts.OutletCount.class, Unit.COUNT, "how many outlets a run has"),
                    number(Facts.StraightLength.class, Unit.MM, "the length of a straight"),
                    number(
                            Facts.SupportCount.class,
                            Unit.COUNT,
                            "how many supports a straight has, screwed fittings counted"),
                    number(
                            Facts.BracketSpacing.class,
                            Unit.MM,
                            "from one support to the next, centre to centre"),
                    number(
                            Facts.EndSupport.class,
                            Unit.MM,
                            "from a stop end, corner or open end to the nearest support"),
                    number(
                            Facts.TimberEndBracket.class,
                            Unit.MM,
                            "from the end of the timber that carries the gutter to the first bracket"),
                    number(
                            Facts.JointSupport.class,
                            Unit.MM,
                            "from a joint to the nearest support"),
                    number(
                            Facts.OutletClearance.class,
                            Unit.MM,
                            "from an outlet's fitting to the nearest bracket on one side"),
                    number(
                            Facts.BracketHoles.class,
                            Unit.COUNT,
                            "how many fixing holes a bracket has, or what else is screwed on and holds the gutter up"),
                    number(
                            Facts.EmptyHoles.class,
                            Unit.COUNT,
                            "how many fixing holes of a bracket, or of what else holds the gutter up, were left empty"),
                    word(
                            Facts.ScrewMetal.class,
                            Words.SCREW_METALS,
                            "what the screws of a bracket are made of"),
                    number(
                            Facts.ScrewBite.class,
                            Unit.MM,
                            "how deep the screws of a bracket sit in the timber"),
                    word(
                            Facts.TimberSound.class,
                            YES_NO,
                            "whether the timber that a bracket is screwed to is sound"),
                    word(
                            Facts.TimberTreatment.class,
                            Words.PRESERVATIVES,
                            "what the timber that a bracket is screwed to was treated with"),
                    number(
                            Facts.BracketShare.class,
                            Unit.MM,
                            "the length of gutter that hangs on a bracket"),
                    number(
                            Facts.BracketCapacity.class,
                            Unit.NEWTON,
                            "what a bracket carries, or what else holds the gutter up, as stated"),
                    number(
                            Facts.BracketLoad.class,
                            Unit.NEWTON,
                            "what hangs on a bracket when the gutter is full of water"),
                    number(
                            Facts.BracketSnowLoad.class,
                            Unit.NEWTON,
                            "what hangs on a bracket when the gutter is full and snow lies on it"),
                    number(
                            Facts.OverhangingSnow.class,
                            Unit.KN_PER_M,
                            "the snow that hangs over the edge of the roof, for each metre of it"),
                    word(
                            Facts.SnowHeld.class,
                            YES_NO,
                            "whether snow guards hold the snow on the roof above a straight"),
                    number(
                            Facts.ReachLength.class,
                            Unit.MM,
                            "the length of a reach, from its high point or stop end to its outlet"),
                    number(
                            Facts.ReachFall.class,
                            Unit.MM_PER_M,
                            "the fall of a reach towards its outlet; negative where it falls away"),
                    number(
                            Facts.PondDepth.class,
                            Unit.MM,
                            "the deepest water that stands in a reach when the rain is over"),
                    number(
                            Facts.SoleSag.class,
                            Unit.MM,
                            "how far the sole of a reach hangs below the line from its one end to the other"),
                    number(
                            Facts.FasciaSag.class,
                            Unit.MM,
                            "how far the edge of the fascia hangs below the line between its two outermost readings, where it departs from it most; negative where it stands above"),
                    number(
                            Facts.ReachRoof.class,
                            Unit.M2,
                            "the roof that drains to a reach, as the rule set counts it"),
                    number(
                            Facts.GutterSection.class,
                            Unit.MM2,
                            "the cross-section of the gutter along a reach, below its lip"),
                    number(
                            Facts.RoofPitch.class,
                            Unit.DEGREE,
                            "the pitch of the steepest roof that drains to a run"),
                    number(
                            Facts.FreeLength.class,
                            Unit.MM,
                            "the length that grows and shrinks together, between two breaks"),
                    number(
                            Facts.ExpansionBreaks.class,
                            Unit.COUNT,
                            "how many expansion joints and sliding outlets a straight has"),
                    number(
                            Facts.JointGapLeft.class,
                            Unit.MM,
                            "what is left of the gap in an expansion joint when it is warmest; negative where it closes"),
                    number(
                            Facts.JointInsertionLeft.class,
                            Unit.MM,
                            "how far the gutter sits in an expansion joint when it is coldest; negative where it slips out"),
                    number(
                            Facts.OutletGapLeft.class,
                            Unit.MM,
                            "what is left of the gap in a sliding outlet when it is warmest; negative where it closes"),
                    number(
                            Facts.OutletInsertionLeft.class,
                            Unit.MM,
                            "how far the gutter sits in a sliding outlet when it is coldest; negative where it slips out"),
                    number(
                            Facts.EndGapLeft.class,
                            Unit.MM,
                            "what is left between an end of a run and the wall there when it is warmest"),
                    word(
                            Facts.OutletHold.class,
                            Words.OUTLET_HOLDS,
                            "whether an outlet lets the gutter slide"),
                    word(
                            Facts.OutletSet.class,
                            YES_NO,
                            "whether a sliding outlet was set for the temperature on the day"),
                    word(
                            Facts.OutletCemented.class,
                            YES_NO,
                            "whether an outlet is cemented to the gutter"),
                    word(
                            Facts.TestDrips.class,
                            YES_NO,
                            "whether the gutter dripped in a test with water"),
                    number(
                            Facts.JointsInZone.class,
                            Unit.COUNT,
                            "how many joints lie within a length to be kept clear"));

    private KindsOfGutter() {}
}
