package eavesproof.survey;

import static eavesproof.survey.FactKind.number;
import static eavesproof.survey.FactKind.word;

import eavesproof.job.Words;
import eavesproof.quantity.Unit;
import java.util.List;

/** What is asked of the water: the rain, what each part carries, and where it goes. */
final class KindsOfWater {
    private static final List<String> YES_NO = List.of(Words.YES, Words.NO);

    static final List<FactKind> ALL =
            List.of(
                    number(
                            Facts.DesignRain.class,
                            Unit.MM_PER_H,
                            "the rain that a run is reckoned for"),
                    number(Facts.RunDemand.class, Unit.L_PER_S, "what that rain brings to a run"),
                    number(
                            Facts.GutterFreeboard.class,
                            Unit.MM,
                            "from the water to the lower lip, where that is least; negative where it spills"),
                    number(
                            Facts.BlockedFreeboard.class,
                            Unit.MM,
                            "from the water to the lower lip while one of several outlets is blocked; negative where it spills"),
                    number(
                            Facts.BlockedRain.class,
                            Unit.MM_PER_H,
                            "the greatest rain that goes over the front lip alone while all outlets are blocked"),
                    number(
                            Facts.GutterRatio.class,
                            Unit.RATIO,
                            "what comes to a gutter over what it carries as built"),
                    number(
                            Facts.ReachRatio.class,
                            Unit.RATIO,
                            "what comes to a reach of a half-round over what a nominal method lets it carry"),
                    number(
                            Facts.OutletRoof.class,
                            Unit.M2,
                            "all roof that drains to the downpipe below an outlet"),
                    number(
                            Facts.OutletDemand.class,
                            Unit.L_PER_S,
                            "what comes to an outlet from both its sides"),
                    number(
                            Facts.OutletRatio.class,
                            Unit.RATIO,
                            "what comes to an outlet over what it takes from a full gutter"),
                    number(
                            Facts.OverflowRain.class,
                            Unit.MM_PER_H,
                            "the rain that the overflow measures of a run are reckoned for"),
                    number(
                            Facts.RunRoof.class,
                            Unit.M2,
                            "all roof that drains to a run, as the rule set counts it"),
                    number(
                            Facts.RoofWidth.class,
                            Unit.M,
                            "the roof that drains to a run, as the rule set counts it, over the length of the run"),
                    number(
                            Facts.OverflowCapacity.class,
                            Unit.L_PER_S,
                            "what the overflow measures of a run let out, by the figures of the rule set"),
                    number(
                            Facts.OverflowEachMetre.class,
                            Unit.L_PER_S,
                            "what the overflow measures of a run let out for each metre of it"),
                    word(
                            Facts.SpillSide.class,
                            SpillSides.ALL,
                            "where water goes that the gutter cannot hold"),
                    number(
                            Facts.BranchFall.class,
                            Unit.MM_PER_M,
                            "the fall of a branch towards its downpipe; negative where it rises"),
                    number(
                            Facts.ClipSpacing.class,
                            Unit.MM,
                            "from one clip of a downpipe to the next"),
                    number(
                            Facts.BranchRatio.class,
                            Unit.RATIO,
                            "what comes to a branch over what it carries"),
                    number(
                            Facts.DownpipeRatio.class,
                            Unit.RATIO,
                            "what comes to a downpipe, from all roofs on it, over what it carries"),
                    number(
                            Facts.DrainRatio.class,
                            Unit.RATIO,
                            "what comes to a drain, from all roofs on it, over what it carries"),
                    number(
                            Facts.TankInletRatio.class,
                            Unit.RATIO,
                            "what comes to a tank, from all roofs on it, over what its inlet takes"),
                    number(
                            Facts.TankOverflowLoad.class,
                            Unit.RATIO,
                            "what comes to a tank over what its overflow lets out of it when it is full"),
                    number(
                            Facts.TankOverflowRatio.class,
                            Unit.RATIO,
                            "the inlet of a tank over its overflow"),
                    number(
                            Facts.LowestOpening.class,
                            Unit.MM,
                            "how far the lowest opening above a drain lies below the lowest outlet of the run"),
                    number(
                            Facts.DownpipeSize.class,
                            Unit.MM,
                            "the inside diameter of a round downpipe"),
                    number(
                            Facts.DownpipeWidth.class,
                            Unit.MM,
                            "the longer inside edge of a rectangular downpipe"),
                    number(
                            Facts.DownpipeDepth.class,
                            Unit.MM,
                            "the shorter inside edge of a rectangular downpipe"),
                    number(
                            Facts.DownpipeRoof.class,
                            Unit.M2,
                            "all roof that drains to a downpipe, as the rule set counts it"),
                    number(
                            Facts.DownpipeGutter.class,
                            Unit.MM,
                            "the length of all gutter that drains to a downpipe"),
                    number(Facts.DrainSize.class, Unit.MM, "the inside diameter of a drain"),
                    number(
                            Facts.DrainRoof.class,
                            Unit.M2,
                            "all roof that drains to a drain, as the rule set counts it"),
                    number(
                            Facts.DrainFall.class,
                            Unit.MM_PER_M,
                            "the fall of a drain in the direction of the water"),
                    word(
                            Facts.DischargeKind.class,
                            Words.DISCHARGE_KINDS,
                            "where the water finally goes"),
                    word(
                            Facts.DischargeApproved.class,
                            YES_NO,
                            "whether the place of discharge is approved"),
                    word(
                            Facts.ApprovalReference.class,
                            YES_NO,
                            "whether it is recorded who approved the discharge and under which reference"),
                    word(Facts.OutfallTraced.class, Words.TRACINGS, "how the outfall was traced"));

    private KindsOfWater() {}
}
