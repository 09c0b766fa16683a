package eavesproof.app;

import static eavesproof.app.Situation.at;
import static eavesproof.app.Situation.dropOver10M;
import static eavesproof.app.Situation.spacing;
import static eavesproof.judge.Verdict.COMPLIES;
import static eavesproof.judge.Verdict.DOES_NOT_COMPLY;
import static eavesproof.judge.Verdict.NOT_APPLICABLE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.survey.Facts;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The facts of the trade, each held against the shipped rules at its limit and next to it. Beside
 * each stands where the fact comes from; "common practice" is a fact of the trade without a source.
 */
class TradeFactsTest {
    private static final ShippedRules RULES = ShippedRules.named("trade-practice");

    private static Situation cemented() {
        return new Situation(RULES, "eaves", "PVC-U", "cemented");
    }

    private static Situation gasketed() {
        return new Situation(RULES, "eaves", "PVC-U", "gasket");
    }

    private static Situation metal(String material, double widthMm) {
        return new Situation(RULES, "eaves", material, "sealed and riveted")
                .with(new Facts.GutterWidth("a", widthMm));
    }

    /** Common practice: fall at least 5 mm in every 10 m. */
    @Test
    void fiveMillimetresInTenMetresAreFallEnoughForCementedPvc() {
        assertEquals(COMPLIES, at(cemented(), dropOver10M(5), "fall"));
        assertEquals(DOES_NOT_COMPLY, at(cemented(), dropOver10M(4), "fall"));
        assertEquals(DOES_NOT_COMPLY, at(cemented(), dropOver10M(-5), "fall"));
    }

    /** Common practice that it falls; that 2 mm are let pass as unevenness is our own choice. */
    @Test
    void cementedPvcFallsAllTheWay() {
        Facts.Fact uneven = new Facts.PondDepth("a", "o1", "left", 2);
        Facts.Fact sags = new Facts.PondDepth("a", "o1", "left", 2.1);
        assertEquals(COMPLIES, at(cemented(), uneven, "fall all the way"));
        assertEquals(DOES_NOT_COMPLY, at(cemented(), sags, "fall all the way"));
    }

    /** Common practice: brackets at most 500 mm centre to centre. */
    @Test
    void cementedPvcHasItsBracketsAtMost500MmApart() {
        assertEquals(COMPLIES, at(cemented(), spacing(500.0), "bracket centres"));
        assertEquals(DOES_NOT_COMPLY, at(cemented(), spacing(501), "bracket centres"));
    }

    /** Common practice: 300 mm where snow lies. */
    @Test
    void whereSnowLiesTheyAreAtMost300MmApart() {
        String rule = "bracket centres where snow lies";
        Facts.Fact snow = new Facts.SnowArea("a", "yes");
        assertEquals(COMPLIES, at(cemented().with(snow), spacing(300), rule));
        assertEquals(DOES_NOT_COMPLY, at(cemented().with(snow), spacing(301), rule));
        Facts.Fact none = new Facts.SnowArea("a", "no");
        assertEquals(NOT_APPLICABLE, at(cemented().with(none), spacing(301), rule));
    }

    /** Common practice: 300 mm where rain is heavy. */
    @Test
    void whereRainIsHeavyTheyAreAtMost300MmApart() {
        String rule = "bracket centres where rain is heavy";
        Facts.Fact rain = new Facts.HeavyRain("a", "yes");
        assertEquals(COMPLIES, at(cemented().with(rain), spacing(300), rule));
        assertEquals(DOES_NOT_COMPLY, at(cemented().with(rain), spacing(301), rule));
        Facts.Fact none = new Facts.HeavyRain("a", "no");
        assertEquals(NOT_APPLICABLE, at(cemented().with(none), spacing(301), rule));
    }

    /** Common practice: about 50 mm from the end of the timber; how near is our own choice. */
    @Test
    void theFirstBracketStandsAbout50MmFromTheEndOfTheTimber() {
        String near = "first bracket not too near the timber end";
        String far = "first bracket not too far from the timber end";
        for (double mm : List.of(25.0, 50.0, 75.0)) {
            Facts.Fact first = new Facts.TimberEndBracket("a", "a1.left", mm);
            assertEquals(COMPLIES, at(cemented(), first, near));
            assertEquals(COMPLIES, at(cemented(), first, far));
        }
        Facts.Fact tooNear = new Facts.TimberEndBracket("a", "a1.left", 24);
        Facts.Fact tooFar = new Facts.TimberEndBracket("a", "a1.left", 76);
        assertEquals(DOES_NOT_COMPLY, at(cemented(), tooNear, near));
        assertEquals(DOES_NOT_COMPLY, at(cemented(), tooFar, far));
    }

    /** Common practice: at least 50 mm from an outlet that must slide. */
    @Test
    void bracketsKeep50MmClearOfASlidingOutletAndOfNoOther() {
        String rule = "brackets clear of a sliding outlet";
        Facts.Fact sliding = new Facts.OutletHold("a", "o1", "sliding");
        Facts.Fact fixed = new Facts.OutletHold("a", "o1", "fixed");
        Facts.Fact enough = new Facts.OutletClearance("a", "o1", "b1", 50);
        Facts.Fact less = new Facts.OutletClearance("a", "o1", "b1", 49);
        assertEquals(COMPLIES, at(cemented().with(sliding), enough, rule));
        assertEquals(DOES_NOT_COMPLY, at(cemented().with(sliding), less, rule));
        assertEquals(NOT_APPLICABLE, at(cemented().with(fixed), less, rule));
    }

    /** Common practice: four screws in a bracket made for four. */
    @Test
    void noHoleOfABracketIsLeftEmpty() {
        String rule = "no empty screw holes";
        assertEquals(COMPLIES, at(cemented(), new Facts.EmptyHoles("a", "b1", 0), rule));
        assertEquals(DOES_NOT_COMPLY, at(cemented(), new Facts.EmptyHoles("a", "b1", 1), rule));
    }

    /** Common practice: stainless. */
    @Test
    void screwsAreStainless() {
        Facts.Fact stainless = new Facts.ScrewMetal("a", "b1", "stainless steel");
        Facts.Fact zinc = new Facts.ScrewMetal("a", "b1", "zinc-plated steel");
        assertEquals(COMPLIES, at(cemented(), stainless, "stainless screws"));
        assertEquals(DOES_NOT_COMPLY, at(cemented(), zinc, "stainless screws"));
    }

    /** Common practice: an expansion joint when a straight is longer than 10 m. */
    @Test
    void aStraightLongerThanTenMetresNeedsABreak() {
        String rule = "expansion break in a long straight";
        Facts.Fact ten = new Facts.StraightLength("a", "a1", 10_000);
        Facts.Fact more = new Facts.StraightLength("a", "a1", 10_001);
        Facts.Fact none = new Facts.ExpansionBreaks("a", "a1", 0);
        Facts.Fact one = new Facts.ExpansionBreaks("a", "a1", 1);
        assertEquals(NOT_APPLICABLE, at(cemented().with(ten), none, rule));
        assertEquals(DOES_NOT_COMPLY, at(cemented().with(more), none, rule));
        assertEquals(COMPLIES, at(cemented().with(more), one, rule));
    }

    /** Our own reading of the same: another break for the next 10 m. */
    @Test
    void aStraightLongerThanTwentyMetresNeedsTwo() {
        String rule = "two expansion breaks in a very long straight";
        Facts.Fact twenty = new Facts.StraightLength("a", "a1", 20_000);
        Facts.Fact more = new Facts.StraightLength("a", "a1", 20_001);
        Facts.Fact one = new Facts.ExpansionBreaks("a", "a1", 1);
        Facts.Fact two = new Facts.ExpansionBreaks("a", "a1", 2);
        assertEquals(NOT_APPLICABLE, at(cemented().with(twenty), one, rule));
        assertEquals(DOES_NOT_COMPLY, at(cemented().with(more), one, rule));
        assertEquals(COMPLIES, at(cemented().with(more), two, rule));
    }

    /** Common practice: the expansion outlet set for the day, and not cemented to the gutter. */
    @Test
    void aSlidingOutletIsSetForTheDayAndNotCemented() {
        Facts.Fact sliding = new Facts.OutletHold("a", "o1", "sliding");
        String set = "sliding outlet set for the day";
        String free = "sliding outlet not cemented";
        Situation good = cemented().with(sliding).with(new Facts.OutletSet("a", "o1", "yes"));
        Situation bad = cemented().with(sliding).with(new Facts.OutletSet("a", "o1", "no"));
        assertEquals(COMPLIES, good.verdict(set));
        assertEquals(DOES_NOT_COMPLY, bad.verdict(set));
        good.with(new Facts.OutletCemented("a", "o1", "no"));
        bad.with(new Facts.OutletCemented("a", "o1", "yes"));
        assertEquals(COMPLIES, good.verdict(free));
        assertEquals(DOES_NOT_COMPLY, bad.verdict(free));
    }

    /** Common practice: a branch to a downpipe falls towards it. */
    @Test
    void aBranchFallsTowardsItsDownpipe() {
        String rule = "branch falls towards the downpipe";
        assertEquals(COMPLIES, at(cemented(), new Facts.BranchFall("a", "br1", 1), rule));
        assertEquals(DOES_NOT_COMPLY, at(cemented(), new Facts.BranchFall("a", "br1", -1), rule));
    }

    /** Common practice: no joint right above a doorway. */
    @Test
    void noJointLiesAboveADoorway() {
        String rule = "no joint where kept clear";
        assertEquals(COMPLIES, at(cemented(), new Facts.JointsInZone("a", "k1", 0), rule));
        assertEquals(
                DOES_NOT_COMPLY,
                at(metal("zinc", 150), new Facts.JointsInZone("a", "k1", 1), rule));
    }

    /** Our own figures, where practice says only that an end must not hang loose. */
    @Test
    void anEndDoesNotHangOutFarPastItsLastSupport() {
        Facts.Fact loose = new Facts.EndSupport("a", "a1.left", 301);
        Facts.Fact held = new Facts.EndSupport("a", "a1.left", 300);
        assertEquals(COMPLIES, at(cemented(), held, "gutter past the last bracket"));
        assertEquals(DOES_NOT_COMPLY, at(cemented(), loose, "gutter past the last bracket"));
        Facts.Fact near = new Facts.EndSupport("a", "a1.left", 150);
        Facts.Fact notNear = new Facts.EndSupport("a", "a1.left", 151);
        assertEquals(COMPLIES, at(metal("copper", 150), near, "support near an end in metal"));
        assertEquals(
                DOES_NOT_COMPLY, at(metal("copper", 150), notNear, "support near an end in metal"));
    }

    /** Common practice: a straight on one bracket turns about it. */
    @Test
    void everyStraightHasTwoSupports() {
        Facts.Fact two = new Facts.SupportCount("a", "a1", 2);
        Facts.Fact one = new Facts.SupportCount("a", "a1", 1);
        assertEquals(COMPLIES, at(cemented(), two, "two supports to a straight"));
        assertEquals(DOES_NOT_COMPLY, at(gasketed(), one, "two supports to a straight"));
        String copper = "two supports to a straight in copper";
        assertEquals(DOES_NOT_COMPLY, at(metal("copper", 150), one, copper));
    }

    @Test
    void everyRunHasAnOutlet() {
        String rule = "an outlet to every run";
        assertEquals(COMPLIES, at(cemented(), new Facts.OutletCount("a", 1), rule));
        assertEquals(DOES_NOT_COMPLY, at(cemented(), new Facts.OutletCount("a", 0), rule));
    }

    @Test
    void theDischargeIsApprovedAndTraced() {
        Facts.Fact refused = new Facts.DischargeApproved("a", "x1", "no");
        assertEquals(DOES_NOT_COMPLY, at(cemented(), refused, "discharge approved"));
        Facts.Fact guessed = new Facts.OutfallTraced("a", "x1", "not traced");
        assertEquals(DOES_NOT_COMPLY, at(cemented(), guessed, "outfall traced"));
        Facts.Fact dye = new Facts.OutfallTraced("a", "x1", "dye");
        assertEquals(COMPLIES, at(cemented(), dye, "outfall traced"));
    }

    /** Where the water may not go, in the words of the record. */
    @Test
    void rainwaterNeverGoesToAFoulSewerOrJustAnywhere() {
        String rule = "rainwater goes where rainwater may go";
        for (String place : List.of("foul gully", "foul sewer", "onto ground", "other")) {
            Facts.Fact discharge = new Facts.DischargeKind("a", "x1", place);
            assertEquals(DOES_NOT_COMPLY, at(cemented(), discharge, rule), place);
        }
        Facts.Fact gully = new Facts.DischargeKind("a", "x1", "surface-water gully");
        assertEquals(COMPLIES, at(cemented(), gully, rule));
    }
}
