package eavesproof.setout;

import eavesproof.judge.Ruling;
import eavesproof.survey.Facts;
import java.util.List;

/** Which changes may mend what; the smallest first. */
final class Proposals {
    private Proposals() {}

    /**
     * @param group findings of one kind at one place, or along one straight
     */
    static List<Proposal> of(Case here, List<Ruling> group) {
        Class<?> kind = group.get(0).subject().kind().type();
        if (kind == Facts.BracketSpacing.class) {
            return SpanProposals.of(here, group);
        } else if (kind == Facts.EndSupport.class || kind == Facts.TimberEndBracket.class) {
            return EndProposals.of(here, group);
        } else if (kind == Facts.JointSupport.class) {
            return BracketProposals.nearJoint(here, group);
        } else if (kind == Facts.OutletClearance.class) {
            return BracketProposals.clearOfOutlet(here, group);
        } else if (kind == Facts.SupportCount.class) {
            return BracketProposals.more(here, group);
        } else if (kind == Facts.EmptyHoles.class) {
            return FixingProposals.screws(here, group);
        } else if (kind == Facts.ScrewMetal.class) {
            return FixingProposals.screwMetal(here, group);
        } else if (kind == Facts.ScrewBite.class) {
            return FixingProposals.bite(here, group);
        } else if (LoadProposals.isLoad(group.get(0))) {
            return LoadProposals.of(here, group);
        } else if (kind == Facts.JointGapLeft.class || kind == Facts.JointInsertionLeft.class) {
            return RoomProposals.joint(here, group);
        } else if (kind == Facts.OutletGapLeft.class || kind == Facts.OutletInsertionLeft.class) {
            return RoomProposals.outlet(here, group);
        } else if (kind == Facts.EndGapLeft.class) {
            return RoomProposals.end(here, group);
        } else if (kind == Facts.ReachFall.class) {
            return FallProposals.reach(here, group);
        } else if (kind == Facts.PondDepth.class) {
            return FallProposals.pond(here, group);
        } else if (kind == Facts.SoleSag.class) {
            return FallProposals.sag(here, group);
        } else if (kind == Facts.BranchFall.class) {
            return FallProposals.branch(here, group);
        } else if (kind == Facts.ExpansionBreaks.class) {
            return MovementProposals.breaks(here, group);
        } else if (kind == Facts.FreeLength.class) {
            return MovementProposals.freeLength(here, group);
        } else if (kind == Facts.OutletCemented.class) {
            return MovementProposals.cemented(here, group);
        } else if (kind == Facts.OutletSet.class) {
            return MovementProposals.set(here, group);
        } else if (kind == Facts.JointsInZone.class) {
            return MovementProposals.jointsInZone(here, group);
        }
        return List.of();
    }

    /** Whether one change mends all of a straight at once. */
    static boolean alongTheStraight(Ruling ruling) {
        Class<?> kind = ruling.subject().kind().type();
        return kind == Facts.BracketSpacing.class
                || kind == Facts.JointSupport.class
                || kind == Facts.EmptyHoles.class
                || kind == Facts.ScrewMetal.class
                || kind == Facts.ScrewBite.class
                || LoadProposals.isLoad(ruling);
    }
}
