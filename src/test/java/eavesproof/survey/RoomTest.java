package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Run.End;
import eavesproof.job.Run.Fitted;
import eavesproof.job.Run.Fitting;
import eavesproof.job.WayPart;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RoomTest {
    private final AJob job = new AJob();

    /** 10 m between stop ends 40 mm from walls, an expansion joint at 6 m. */
    RoomTest() {
        job.a1.left = new End("stop end", 40.0);
        job.a1.right = new End("stop end", 40.0);
        job.a1.expansion("j1", 6000.0, 12.0, 30.0);
        // 10 degrees below the warmest, and 0.1 mm for each metre and degree: 1 mm for each metre.
        job.fitted = new Fitted(20.0, "shade", null);
        state("PVC-U", 0.1, -10, 30);
    }

    private void state(String material, double mmPerMC, double coldest, double warmest) {
        state(material, mmPerMC, coldest, warmest, "no");
    }

    private void state(
            String material, double mmPerMC, double coldest, double warmest, String cornerHolds) {
        job.basis =
                new Basis(
                        Map.of(
                                "corner_holds",
                                new Basis.Choice(cornerHolds, "practice"),
                                "expansion_mm_m_c " + material,
                                new Basis.Amount(mmPerMC, "a table"),
                                "coldest_c " + material,
                                new Basis.Amount(coldest, "a table"),
                                "warmest_c " + material,
                                new Basis.Amount(warmest, "a table")));
    }

    private double movesAtJoint() {
        double left = job.survey().fact(Facts.JointGapLeft.class).leftMm();
        return Math.round((12 - left) * 1e9) / 1e6;
    }

    private List<Double> movesAtEnds() {
        return job.survey().facts(Facts.EndGapLeft.class).stream()
                .map(it -> Math.round((40 - it.leftMm()) * 1e9) / 1e6)
                .toList();
    }

    /** A joint in the middle of a length of a material: what is left of 50 mm each way. */
    private List<Double> ofFifty(String material, double lengthMm, double fittedAt) {
        job.gutter = AJob.gutter("eaves", material, "soldered", 125.0);
        job.a1.lengthMm = lengthMm;
        job.a1.joints.clear();
        job.a1.expansion("j1", lengthMm / 2, 50.0, 50.0);
        job.fitted = new Fitted(fittedAt, "shade", null);
        Seen seen = job.survey();
        return List.of(
                50 - seen.fact(Facts.JointGapLeft.class).leftMm(),
                50 - seen.fact(Facts.JointInsertionLeft.class).leftMm());
    }

    /** NZ E1/AS1 Amendment 11, table 7: 5 m over 50 degrees. Published. */
    @Test
    void aGutterFittedWarmerOrColderThanItGetsIsAGap() {
        for (double celsius : new double[] {31, -11, 120}) {
            job.fitted = new Fitted(celsius, "shade", null);
            String why = job.survey().gaps(Facts.JointGapLeft.class).get(0);
            assertTrue(
                    why.endsWith("lies outside what is reckoned with, -10 degC to 30 degC"), why);
            assertEquals(2, job.survey().gaps(Facts.EndGapLeft.class).size());
        }
    }

    @Test
    void fiveMetresOfPvcChangeBySeventeenAndAHalfOverFiftyDegrees() {
        state("PVC-U", 0.07, 0, 50);
        assertEquals(17.5, ofFifty("PVC-U", 5000, 0).get(0), 0.05);
    }

    /** The same table. Published. */
    @Test
    void fiveMetresOfCopperChangeByFourAndAHalf() {
        state("copper", 0.018, 0, 50);
        assertEquals(4.5, ofFifty("copper", 5000, 50).get(1), 0.05);
    }

    /** A zinc trade guide: 8 m fitted at 15 degrees, from -20 to 80 degrees. Published. */
    @Test
    void eightMetresOfZincGrowByElevenFortyFourAndShrinkBySixSixteen() {
        state("zinc", 0.022, -20, 80);
        List<Double> change = ofFifty("zinc", 8000, 15);
        assertEquals(11.44, change.get(0), 0.005);
        assertEquals(6.16, change.get(1), 0.005);
    }

    /** A metal supplier's guide: 10 m over 50 K. Published. */
    @Test
    void tenMetresOfSteelChangeBySixMillimetresOverFiftyDegrees() {
        state("steel", 0.012, 0, 50);
        assertEquals(6.00, ofFifty("steel", 10_000, 0).get(0), 0.005);
    }

    @Test
    void whereNothingHoldsTheGutterAllOfItMayMoveEitherWay() {
        assertEquals(10_000, movesAtJoint());
        assertEquals(List.of(6000.0, 4000.0), movesAtEnds());
    }

    @Test
    void itMovesFromWhatHoldsItStill() {
        job.a1.joint("j2", "cemented", 2000.0, "yes");
        assertEquals(4000 + 4000, movesAtJoint());
        assertEquals(List.of(2000.0, 4000.0), movesAtEnds());
    }

    @Test
    void ofTwoThatHoldItStillTheNearerOneCounts() {
        job.a1.joint("j2", "cemented", 2000.0, "yes").joint("j3", "cemented", 7000.0, "yes");
        job.a1.joint("j4", "cemented", 5000.0, "yes").joint("j5", "cemented", 9000.0, "yes");
        assertEquals(1000 + 1000, movesAtJoint());
        assertEquals(List.of(2000.0, 1000.0), movesAtEnds());
    }

    @Test
    void aFittingInWhichItSlidesDoesNotHoldIt() {
        job.a1.fittings.add(new Fitting("f1", null, 2000.0, "yes", "yes", "yes", null));
        assertEquals(10_000, movesAtJoint());
        job.a1.fittings.add(new Fitting("f2", null, 3000.0, "yes", "no", "yes", null));
        assertEquals(3000 + 4000, movesAtJoint());
    }

    private void outletAt2000(String hold, String screwed) {
        job.part(
                new WayPart.Outlet(
                        "o1",
                        null,
                        null,
                        "a1",
                        2000.0,
                        100.0,
                        hold,
                        AJob.said("yes"),
                        AJob.said("yes"),
                        null,
                        null,
                        screwed,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null));
    }

    /** Cemented, so that it is no break; only a fixed one that is screwed on holds the gutter. */
    @Test
    void aFixedOutletThatIsScrewedOnHoldsIt() {
        outletAt2000("fixed", "yes");
        assertEquals(4000 + 4000, movesAtJoint());
        job.way.clear();
        outletAt2000("fixed", "no");
        assertEquals(10_000, movesAtJoint());
        job.way.clear();
        outletAt2000("sliding", "yes");
        assertEquals(10_000, movesAtJoint());
    }

    @Test
    void anOutletThatIsPerhapsFixedLeavesOpenHowMuchMoves() {
        outletAt2000(null, "yes");
        assertEquals(
                List.of("a j1: whether outlet o1 holds still is not recorded"),
                job.survey().gaps(Facts.JointGapLeft.class));
    }

    @Test
    void fittingsThatNobodyRecordedLeaveOpenHowMuchMoves() {
        job.a1.fittings = null;
        assertEquals(
                List.of("a j1: the fittings of straight a1 are not recorded"),
                job.survey().gaps(Facts.JointGapLeft.class));
    }

    @Test
    void whatPerhapsHoldsItLeavesOpenHowMuchMoves() {
        job.a1.fittings.add(new Fitting("f1", null, 2000.0, "yes", null, "yes", null));
        assertEquals(
                List.of("a j1: whether fitting f1 holds still is not recorded"),
                job.survey().gaps(Facts.JointGapLeft.class));
        assertEquals(List.of(4000.0), movesAtEnds());
    }

    @Test
    void whatPerhapsHoldsItBeyondTheNearestChangesNothing() {
        job.a1.joint("j2", "cemented", 5000.0, "yes");
        job.a1.fittings.add(new Fitting("f1", null, 2000.0, null, "no", "yes", null));
        assertEquals(1000 + 4000, movesAtJoint());
    }

    @Test
    void itMovesRoundACorner() {
        job.a1.right = new End("corner", null);
        AStraight a2 = job.straight("a2");
        a2.left = job.a1.right;
        a2.lengthMm = 3000.0;
        assertEquals(6000 + 4000 + 3000, movesAtJoint());
        a2.joint("j2", "cemented", 1000.0, "yes");
        assertEquals(6000 + 4000 + 1000, movesAtJoint());
    }

    private void threeMetresRoundACorner() {
        job.a1.right = new End("corner", null);
        AStraight a2 = job.straight("a2");
        a2.left = job.a1.right;
        a2.right = new End("stop end", 40.0);
        a2.lengthMm = 3000.0;
    }

    @Test
    void whereTheRuleSetSaysSoACornerHoldsIt() {
        threeMetresRoundACorner();
        state("PVC-U", 0.1, -10, 30, "yes");
        assertEquals(6000 + 4000, movesAtJoint());
        assertEquals(List.of(6000.0, 3000.0), movesAtEnds());
    }

    @Test
    void whereTheRuleSetDoesNotSayWhetherACornerHoldsItThatIsAGap() {
        threeMetresRoundACorner();
        Map<String, Basis.Stated> others = new LinkedHashMap<>();
        for (String key : List.of("expansion_mm_m_c", "coldest_c", "warmest_c")) {
            others.put(
                    key + " PVC-U", new Basis.Amount(key.startsWith("exp") ? 0.1 : 20, "a table"));
        }
        job.basis = new Basis(others);
        assertEquals(
                List.of(
                        "a j1: the rule set does not state whether a gutter is held still at its"
                                + " corners"),
                job.survey().gaps(Facts.JointGapLeft.class));
    }

    /** 10 m shrink by 0.1 x 10 x 30 = 30 mm, just as much as the gutter sits in the joint. */
    @Test
    void theColdTakesFromTheInsertion() {
        assertEquals(0, job.survey().fact(Facts.JointInsertionLeft.class).leftMm(), 1e-9);
    }

    private void outletAt4000(String hold, String cemented, Double gapMm) {
        job.a1.joints.clear();
        job.part(
                new WayPart.Outlet(
                        "o1",
                        null,
                        null,
                        "a1",
                        4000.0,
                        100.0,
                        hold,
                        AJob.said(cemented),
                        AJob.said("yes"),
                        gapMm,
                        null,
                        "no",
                        null,
                        null,
                        null,
                        null,
                        null,
                        null));
    }

    /** 10 m that nothing holds push into it, 1 mm for each metre. */
    @Test
    void anOutletInWhichItSlidesNeedsRoomAsAJointDoes() {
        outletAt4000("sliding", "no", 12.0);
        assertEquals(2, job.survey().fact(Facts.OutletGapLeft.class).leftMm(), 1e-9);
        job.a1.joint("j2", "cemented", 3000.0, "yes");
        assertEquals(12 - 1 - 6, job.survey().fact(Facts.OutletGapLeft.class).leftMm(), 1e-9);
    }

    private void sitsInTheOutlet(Double mm) {
        WayPart.Outlet was = (WayPart.Outlet) job.way.get(0);
        job.way.set(
                0,
                new WayPart.Outlet(
                        was.id(),
                        was.to(),
                        was.belowDatumMm(),
                        was.on(),
                        was.stationMm(),
                        was.bodyMm(),
                        was.hold(),
                        was.cementedToGutter(),
                        was.setForTemperature(),
                        was.gapMm(),
                        mm,
                        was.screwedToFascia(),
                        was.fixing(),
                        was.sizeMm(),
                        was.edge(),
                        was.sumpDepthMm(),
                        was.strainer(),
                        was.spout()));
    }

    /** 10 m that nothing holds shrink by 0.1 x 10 x 30 = 30 mm. */
    @Test
    void theColdDrawsTheGutterOutOfAnOutletInWhichItSlides() {
        outletAt4000("sliding", "no", 12.0);
        sitsInTheOutlet(28.0);
        assertEquals(-2, job.survey().fact(Facts.OutletInsertionLeft.class).leftMm(), 1e-9);
        sitsInTheOutlet(45.0);
        assertEquals(15, job.survey().fact(Facts.OutletInsertionLeft.class).leftMm(), 1e-9);
        sitsInTheOutlet(null);
        assertEquals(
                List.of("a o1: the insertion of outlet o1 is not recorded"),
                job.survey().gaps(Facts.OutletInsertionLeft.class));
    }

    @Test
    void outOfAnOutletThatDoesNotSlideNothingIsDrawn() {
        outletAt4000("fixed", null, null);
        assertEquals(
                List.of("a o1: outlet o1 is fixed"),
                job.survey().none(Facts.OutletInsertionLeft.class));
    }

    @Test
    void anOutletThatDoesNotSlideHasNoGap() {
        outletAt4000("sliding", "yes", 12.0);
        assertEquals(
                List.of("a o1: outlet o1 is cemented"),
                job.survey().none(Facts.OutletGapLeft.class));
        job.way.clear();
        outletAt4000("fixed", null, null);
        assertEquals(
                List.of("a o1: outlet o1 is fixed"), job.survey().none(Facts.OutletGapLeft.class));
    }

    @Test
    void whatNobodyRecordedOfAnOutletIsAGap() {
        outletAt4000("sliding", null, 12.0);
        outletAt4000(null, "no", 12.0);
        assertEquals(
                List.of(
                        "a o1: whether outlet o1 is cemented is not recorded",
                        "a o1: whether outlet o1 is sliding or fixed is not recorded"),
                job.survey().gaps(Facts.OutletGapLeft.class));
    }

    @Test
    void aGapInAnOutletThatNobodyMeasuredIsAGap() {
        outletAt4000("sliding", "no", null);
        assertEquals(
                List.of("a o1: the gap left in outlet o1 is not recorded"),
                job.survey().gaps(Facts.OutletGapLeft.class));
    }

    @Test
    void aGutterFittedInTheHeatNeedsNoGap() {
        job.fitted = new Fitted(30.0, "sun", null);
        assertEquals(12, job.survey().fact(Facts.JointGapLeft.class).leftMm(), 1e-9);
    }

    @Test
    void whatTheRuleSetDoesNotStateIsAGap() {
        job.basis = Basis.NOTHING;
        assertEquals(
                List.of("a j1: the rule set does not state by how much a material grows for PVC-U"),
                job.survey().gaps(Facts.JointGapLeft.class));
    }

    @Test
    void roomThatNobodyMeasuredIsAGap() {
        job.a1.joints.clear();
        job.a1.expansion("j1", 6000.0, null, null);
        job.a1.left = new End("stop end", null);
        Seen seen = job.survey();
        assertEquals(
                List.of("a j1: the gap left in joint j1 is not recorded"),
                seen.gaps(Facts.JointGapLeft.class));
        assertEquals(
                List.of("a j1: the insertion of joint j1 is not recorded"),
                seen.gaps(Facts.JointInsertionLeft.class));
        assertEquals(
                List.of("a a1.left: the gap between a1.left and the wall is not recorded"),
                seen.gaps(Facts.EndGapLeft.class));
    }

    @Test
    void aJointOfAnotherKindNeedsNoRoom() {
        job.a1.joints.clear();
        job.a1.joint("j2", "cemented", 2000.0, "no");
        assertEquals(
                List.of("a j2: joint j2 is no expansion joint"),
                job.survey().none(Facts.JointGapLeft.class));
    }

    @Test
    void aJointOfWhichNobodySaysTheKindIsAGap() {
        job.a1.joints.clear();
        job.a1.joint("j2", null, 2000.0, "no");
        assertEquals(
                List.of("a j2: the kind of joint j2 is not recorded"),
                job.survey().gaps(Facts.JointGapLeft.class));
        assertEquals(List.of(), movesAtEnds());
    }

    @Test
    void whatGoesOnRoundACornerAtTheEndOfTheRecordIsNotKnown() {
        job.a1.left = new End("corner", null);
        assertEquals(
                List.of("a a1.left: what goes on round the corner a1.left is not recorded"),
                job.survey().gaps(Facts.EndGapLeft.class));
    }

    /**
     * 2 and 5 degrees as greatest errors, / sqrt 3 (JCGM 100 4.3.7), on 6 m: 0.6 mm a degree. The
     * gap was read with a class II tape, 0.5 / sqrt 3.
     */
    @Test
    void aTemperatureIsSurerInTheShadeThanInTheSun() {
        assertEquals(Math.hypot(0.6 * 2, 0.5) / Math.sqrt(3), unsure(), 0.005);
        job.fitted = new Fitted(20.0, null, null);
        assertEquals(Math.hypot(0.6 * 5, 0.5) / Math.sqrt(3), unsure(), 0.005);
    }

    private double unsure() {
        Seen seen = job.survey();
        return seen.value(seen.facts(Facts.EndGapLeft.class).get(0)).standardUncertainty();
    }

    @Test
    void aTemperatureThatNobodyRecordedIsAGap() {
        job.fitted = null;
        assertEquals(
                List.of(
                        "a j1: the temperature of the gutter of run a when it was fitted is not"
                                + " recorded"),
                job.survey().gaps(Facts.JointGapLeft.class));
    }
}
