package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Gutter;
import eavesproof.job.Instrument;
import eavesproof.job.Job;
import eavesproof.job.Job.Stood;
import eavesproof.job.Run.End;
import eavesproof.job.Run.Reading;
import eavesproof.quantity.Uncertain;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Standing water; every depth here is worked out by hand from the readings. */
class PondsTest {
    private static final String HOSE = "hose at the high end";
    private static final String POURED = "water poured in";

    private final AJob job = new AJob();

    /** A 6 m straight with its outlet at the right end, read every 1.2 m from below the datum. */
    private AJob sixMetres(double... belowMm) {
        job.a1.lengthMm = 6000.0;
        job.outlet("o1", "a1", 5960.0);
        for (int i = 0; i < belowMm.length; i++) {
            job.a1.reading(i == 5 ? 5900 : 1200 * i, belowMm[i]);
        }
        return job;
    }

    private double depth() {
        return job.survey().fact(Facts.PondDepth.class).depthMm();
    }

    private String workings() {
        Seen seen = job.survey();
        return seen.known(seen.fact(Facts.PondDepth.class)).workings().toString();
    }

    private List<String> gaps() {
        return job.survey().gaps(Facts.PondDepth.class);
    }

    @Test
    void aReachThatFallsAllTheWayHoldsNoWater() {
        sixMetres(100, 101.2, 102.4, 103.6, 104.8, 106);
        Seen seen = job.survey();
        assertEquals(new Facts.PondDepth("a", "o1", "left", 0), seen.fact(Facts.PondDepth.class));
        assertTrue(workings().contains("no reading lies lower than one nearer to the outlet"));
    }

    /** It does not make the deepest place, and could for all that anybody knows. */
    @Test
    void aReadingOfWhichNobodySaysHowSureItIsLeavesItOpenHowSureTheDepthIs() {
        sixMetres(100, 101.2, 107.6, 103.6, 104.8, 106);
        job.instruments.put(
                "by eye", new Instrument("by eye", null, null, null, null, null, null, null));
        Reading second = job.a1.readings.get(1);
        job.a1.readings.set(
                1, new Reading(second.stationMm(), "sole", second.belowMm(), "s1", "by eye", null));
        Seen seen = job.survey();
        assertFalse(seen.value(seen.fact(Facts.PondDepth.class)).isStated());
    }

    /** Ends as good as can be, 1 mm/m overall; in the middle the sole hangs 4 mm too low. */
    @Test
    void aSagBetweenTwoGoodEndsIsFound() {
        sixMetres(100, 101.2, 107.6, 103.6, 104.8, 106);
        // 107.6 lies 4.0 mm lower than 103.6, the highest of what is nearer to the outlet.
        assertEquals(4.0, depth(), 1e-9);
        assertEquals(1.0, job.survey().fact(Facts.ReachFall.class).fallMmPerM(), 0.02);
    }

    /** Each step of the rise is small; the water stands as deep as they come to together. */
    @Test
    void aLongSlowRiseCountsWholeAndNotStepByStep() {
        sixMetres(100, 106, 105, 104, 103, 102);
        assertEquals(4.0, depth(), 1e-9);
    }

    /** The low place at 1200 mm empties over the higher of the two humps towards the outlet. */
    @Test
    void theHighestSillOnTheWayDecides() {
        sixMetres(100, 106, 103, 105, 102, 108);
        assertEquals(4.0, depth(), 1e-9);
    }

    @Test
    void theDeepestOfTwoPondsCountsAndBothAreNamed() {
        sixMetres(100, 106, 104, 108, 105, 110);
        assertEquals(3.0, depth(), 1e-9);
        assertTrue(workings().contains("pond at 3600 mm on a1, value=3 mm deep"), workings());
        assertTrue(workings().contains("pond at 1200 mm on a1, value=2 mm deep"), workings());
    }

    /**
     * Sill at 3600 mm, lowest at 2400 mm and 4 mm deep, level again where the sole comes from 101.2
     * to 107.6 between 1200 and 2400 mm: 4 / 6.4 x 1200 = 750 mm above, at 1650 mm. 1950 mm long.
     */
    @Test
    void aPondReachesToWhereTheSoleIsAsHighAgain() {
        sixMetres(100, 101.2, 107.6, 103.6, 104.8, 106);
        assertTrue(workings().contains("from 3600 mm on a1 to 1650 mm on a1, 1950 mm long"));
    }

    /**
     * A triangle 4 mm deep and 1950 mm long in a gutter 100 mm wide: 4 x 1950 / 2 x 100 = 0.39 L.
     */
    @Test
    void aRectangularGutterHoldsTheTriangleTimesItsWidth() {
        var shape = new Gutter.Profile("rectangular", 100.0, 60.0, null, null, null, null);
        Gutter plain = job.gutter;
        job.gutter =
                new Gutter(
                        "g",
                        "eaves",
                        "PVC-U",
                        "cemented",
                        shape,
                        plain.areaMm2(),
                        plain.bracketCapacityN(),
                        null,
                        null,
                        null,
                        null);
        sixMetres(100, 101.2, 107.6, 103.6, 104.8, 106);
        assertTrue(workings().contains("about 0.39 L"), workings());
    }

    @Test
    void waterThatStandsAtTheHighEndReachesToIt() {
        sixMetres(104, 103, 102, 103.6, 104.8, 106);
        assertEquals(2.0, depth(), 1e-9);
        assertTrue(workings().contains("from 2400 mm on a1 to 0 mm on a1"), workings());
    }

    /** Two readings with 0.5 / sqrt 3 mm each (class II below 1 m): their difference has 0.408. */
    @Test
    void howSureADepthIsComesFromItsTwoReadings() {
        sixMetres(100, 101.2, 107.6, 103.6, 104.8, 106);
        Seen seen = job.survey();
        Uncertain depth = seen.value(seen.fact(Facts.PondDepth.class));
        assertEquals(0.408, depth.standardUncertainty(), 0.0005);
    }

    /**
     * 4 mm by two readings of 0.289 mm each, 4 +- 0.82; the level at 1200 mm is read with a rule of
     * 3 mm, so that the 2.4 mm there may be 2.4 + 2 sqrt(1.732^2 + 0.289^2) = 5.9 mm. At least 3.18
     * and at most 5.91: 4.55 +- 1.36.
     */
    @Test
    void aShallowerPondThatIsLessSureMayBeTheDeepest() {
        sixMetres(100, 101.2, 107.6, 103.6, 104.8, 106);
        job.instruments.put(
                "rough", new Instrument("rough", "rule", null, null, 3.0, null, 1e-9, null));
        job.a1.readings.set(1, new Reading(1200.0, "sole", 106.0, "s1", "rough", null));
        Seen seen = job.survey();
        Uncertain depth = seen.value(seen.fact(Facts.PondDepth.class));
        assertEquals(3.18, depth.value() - depth.expandedUncertainty(), 0.01);
        assertEquals(5.91, depth.value() + depth.expandedUncertainty(), 0.01);
    }

    @Test
    void aReadingThatDoesNotSayWhereItWasTakenMayHaveBeenOfAHollow() {
        sixMetres(100, 101.2, 102.4, 103.6, 104.8, 106);
        job.a1.reading(null, "sole", 120.0, "s1", null);
        assertEquals(
                List.of("a o1 left: the station of reading 7 of straight a1 is not recorded"),
                gaps());
    }

    @Test
    void aReadingOfTheFrontBeadSaysNothingOfHollowsWithOrWithoutItsStation() {
        sixMetres(100, 101.2, 102.4, 103.6, 104.8, 106);
        job.a1.reading(null, "front bead", 120.0, "s1", null);
        assertEquals(0, depth());
    }

    @Test
    void aHollowReadFromASetUpThatNoTieJoinsIsNotPassedOver() {
        sixMetres(100, 101.2, 102.4, 103.6, 104.8, 106).setUp("s2", "still water", null, null);
        job.a1.reading(3000.0, "sole", 80.0, "s2", null);
        assertEquals(
                List.of(
                        "a o1 left: the sole at 3000 mm on a1 was read by a set-up that no tie joins"
                                + " to the others"),
                gaps());
    }

    @Test
    void setUpsThatContradictEachOtherAtOnePlaceDoNotShowIt() {
        sixMetres(100, 101.2, 102.4, 103.6, 104.8, 106).setUp("s2", "still water", null, null);
        job.a1
                .reading(3600.0, "sole", 103.6, "s1", "peg")
                .reading(3600.0, "sole", 53.6, "s2", "peg")
                .reading(2400.0, "sole", 62.4, "s2", null);
        assertTrue(
                gaps().get(0).contains("the set-ups contradict each other at 2400 mm on a1"),
                () -> gaps().toString());
    }

    @Test
    void whatLiesInAGutterHidesItsSole() {
        sixMetres(100, 101.2, 102.4, 103.6, 104.8, 106).foundClean("s1", "no");
        assertEquals(List.of("a o1 left: the gutter was not clean and empty at set-up s1"), gaps());
    }

    @Test
    void oneThatIsNotThereIsNoSurerThanTheReadingsThatSaySo() {
        sixMetres(100, 101.2, 102.4, 103.6, 104.8, 106);
        Seen seen = job.survey();
        Uncertain depth = seen.value(seen.fact(Facts.PondDepth.class));
        assertEquals(0.408, depth.standardUncertainty(), 0.0005);
    }

    @Test
    void readingsFurtherApartThanTheirChosenSpacingLeaveRoomForAPond() {
        sixMetres(100, 101.2).a1.reading(2701, 102.7).reading(4200, 104).reading(5700, 106);
        assertEquals(
                List.of(
                        "a o1 left: the sole was not read between 1200 mm on a1 and 2701 mm on a1,"
                                + " 1501 mm"),
                gaps());
        job.a1.readings.remove(2);
        job.a1.reading(2700, 102.7);
        assertEquals(0, depth());
    }

    @Test
    void aSparselyReadReachSaysWhatWasFoundAllTheSame() {
        sixMetres(100).a1.reading(3000, 112).reading(5900, 106);
        assertEquals(
                List.of(
                        "a o1 left: the sole was not read between 0 mm on a1 and 3000 mm on a1,"
                                + " 3000 mm; at 3000 mm on a1 it lies 6 mm lower than at 5900 mm on"
                                + " a1, nearer to the outlet"),
                gaps());
    }

    @Test
    void readingsThatDoNotReachTheHighEndSayNothingOfIt() {
        sixMetres().a1.reading(400, 100).reading(1700, 102).reading(3000, 104);
        job.a1.reading(4400, 105).reading(5800, 106);
        assertEquals(
                List.of(
                        "a o1 left: the reach to the left of outlet o1 has no reading within 300 mm"
                                + " of the left end of a1"),
                gaps());
    }

    @Test
    void absentReadingsAreAGap() {
        sixMetres();
        job.a1.readings = null;
        assertEquals(List.of("a o1 left: the readings of straight a1 are not recorded"), gaps());
    }

    @Test
    void aFrontBeadDoesNotStandForTheSole() {
        sixMetres();
        for (int i = 0; i <= 6; i++) {
            job.a1.reading(i * 1000.0, "front bead", 100.0 + i, "s1", null);
        }
        assertEquals(
                List.of("a o1 left: the sole of the reach to the left of outlet o1 was not read"),
                gaps());
    }

    @Test
    void bracketSeatsShowAReachOfWhichTheSoleWasNotReadClosely() {
        sixMetres(100).a1.reading(5900, 106);
        for (int i = 0; i <= 6; i++) {
            job.a1.reading(i * 1000.0, "bracket seat", i == 3 ? 109.0 : 103.0 + i, "s1", null);
        }
        // The seat at 3000 mm lies at 109, that at 4000 mm at 107.
        assertEquals(2.0, depth(), 1e-9);
    }

    @Test
    void setUpsThatAreNotTiedDoNotShowAWholeReach() {
        sixMetres(100, 101.2, 102.4).setUp("s2", "still water", null, null);
        for (double at : new double[] {3600, 4800, 5900}) {
            job.a1.reading(at, "sole", 50 + at / 1000, "s2", null);
        }
        assertEquals(
                List.of(
                        "a o1 left: the reach to the left of outlet o1 was not read from end to end"
                                + " by one set-up, or by set-ups joined by ties"),
                gaps());
    }

    /** 103.6 from s1 is 53.6 from s2; so 55.6 from s2 at 2400 mm is 2 mm lower than that. */
    @Test
    void tiedSetUpsMakeOneProfile() {
        sixMetres(100, 101.2).setUp("s2", "still water", null, null);
        job.a1
                .reading(3600.0, "sole", 103.6, "s1", "peg")
                .reading(3600.0, "sole", 53.6, "s2", "peg")
                .reading(2400.0, "sole", 55.6, "s2", null)
                .reading(4800.0, "sole", 54.8, "s2", null)
                .reading(5900.0, "sole", 56.0, "s2", null);
        assertEquals(2.0, depth(), 1e-9);
    }

    @Test
    void repeatsAreAveragedBeforeAnythingStands() {
        sixMetres(100, 101.2, 104.6, 103.6, 104.8, 106).a1.reading(2400, 103.4);
        // (104.6 + 103.4) / 2 = 104.0, which lies 0.4 mm lower than 103.6.
        assertEquals(0.4, depth(), 1e-9);
    }

    @Test
    void aPondGoesRoundACorner() {
        job.a1.lengthMm = 2000.0;
        job.a1.right = new End("corner", null);
        AStraight a2 = job.straight("a2");
        a2.left = job.a1.right;
        a2.lengthMm = 2000.0;
        job.outlet("o1", "a2", 1960.0);
        job.a1.reading(0, 100).reading(1000, 101).reading(1900, 106);
        a2.reading(500, 103).reading(1900, 104);
        assertEquals(3.0, depth(), 1e-9);
    }

    @Test
    void aSumpIsNoPond() {
        sixMetres(100, 101.2, 102.4, 103.6, 104.8, 106).a1.reading(5960, 150);
        assertEquals(0, depth());
    }

    @Test
    void theReadingNextToTheOutletMayBeWithinItsFitting() {
        sixMetres(100, 101.2, 102.4, 103.6, 104.8).a1.reading(5960, 103.8);
        assertEquals(1.0, depth(), 1e-9);
    }

    @Test
    void waterSeenToStandCountsWhereItIsDeeperThanTheReadingsHaveIt() {
        sixMetres(100, 101.2, 102.4, 103.6, 104.8, 106);
        job.test("t1", POURED, new Stood("a1", 2000.0, 2500.0, 7.0));
        assertEquals(7.0, depth());
        assertTrue(workings().contains("these do not agree"), workings());
    }

    @Test
    void waterThatStoodWithOnlyOneStationOrNoneRecordedCountsToo() {
        sixMetres(100, 101.2, 102.4, 103.6, 104.8, 106);
        for (Stood stood :
                List.of(
                        new Stood("a1", 2000.0, null, 7.0),
                        new Stood("a1", null, 2500.0, 7.0),
                        new Stood("a1", 2500.0, 2000.0, 7.0),
                        new Stood("a1", null, null, 7.0))) {
            job.tests = null;
            job.test("t1", POURED, stood);
            assertEquals(7.0, depth(), stood.toString());
        }
    }

    /** Falling to an outlet in the middle: the water stood on its right. */
    @Test
    void waterThatStoodElsewhereDoesNotCount() {
        job.a1.lengthMm = 6000.0;
        job.outlet("o1", "a1", 3000.0);
        for (double at : new double[] {0, 1200, 2400, 2900, 3100, 3600, 4800, 6000}) {
            job.a1.reading(at, 100 + Math.min(at, 6000 - at) / 1000);
        }
        job.test("t1", POURED, new Stood("a1", 4000.0, null, 7.0));
        assertEquals(
                List.of(0.0, 7.0),
                job.survey().facts(Facts.PondDepth.class).stream()
                        .map(Facts.PondDepth::depthMm)
                        .toList());
        job.tests = null;
        job.test("t1", POURED, new Stood("b1", 4000.0, 4500.0, 7.0));
        assertEquals(0.0, job.survey().facts(Facts.PondDepth.class).get(1).depthMm());
    }

    @Test
    void aTestOfAnotherRunSaysNothing() {
        sixMetres(100, 101.2, 102.4, 103.6, 104.8, 106);
        List<Stood> stood = List.of(new Stood(null, null, null, 7.0));
        job.tests =
                new ArrayList<>(
                        List.of(
                                new Job.WaterTest(
                                        "t1", POURED, "b", 20.0, 5.0, null, "no", "o1", stood)));
        assertEquals(0, depth());
        job.tests.set(0, new Job.WaterTest("t1", POURED, null, 20.0, 5.0, null, "no", "o1", stood));
        assertEquals(7.0, depth());
    }

    @Test
    void readingsCountWhereTheyAreWorseThanATest() {
        sixMetres(100, 101.2, 107.6, 103.6, 104.8, 106).test("t1", HOSE);
        assertEquals(4.0, depth(), 1e-9);
        assertTrue(workings().contains("these do not agree"), workings());
    }

    @Test
    void waterThatStoodAtADepthNobodyRecordedIsAGap() {
        sixMetres(100, 101.2, 102.4, 103.6, 104.8, 106);
        job.test("t1", POURED, new Stood("a1", 2000.0, 2500.0, null));
        assertEquals(
                List.of(
                        "a o1 left: the depth of the water that stood on a1 after test t1 is not"
                                + " recorded"),
                gaps());
    }

    @Test
    void waterThatStoodNobodySaysWhereMayStandInAnyReach() {
        sixMetres(100, 101.2, 102.4, 103.6, 104.8, 106);
        job.test("t1", POURED, new Stood(null, null, null, 7.0));
        assertEquals(7.0, depth());
    }

    @Test
    void waterThatRanTheWholeReachShowsItWithoutReadings() {
        sixMetres(100).a1.reading(5900, 106);
        job.test("t1", HOSE);
        Seen seen = job.survey();
        Uncertain depth = seen.value(seen.fact(Facts.PondDepth.class));
        assertEquals(0, depth.value());
        // What stands less than 1 mm deep may have been passed over: 1 / sqrt 3.
        assertEquals(1 / Math.sqrt(3), depth.standardUncertainty(), 1e-9);
    }

    @Test
    void aHoseOfWhichNobodySaysHowMuchCameOrThatItCameOutShowsNothing() {
        sixMetres(100).a1.reading(5900, 106);
        job.tests = new ArrayList<>(List.of(hose(null, "o1")));
        assertEquals(1, gaps().size());
        job.tests = new ArrayList<>(List.of(hose(20.0, null)));
        assertEquals(1, gaps().size());
        // 2 L for each of 6 m.
        job.tests = new ArrayList<>(List.of(hose(11.9, "o1")));
        assertEquals(1, gaps().size());
        job.tests = new ArrayList<>(List.of(hose(12.0, "o1")));
        assertEquals(0, depth());
    }

    /** A hose lets out no more than 60 L a minute: 15 L take a quarter of one. */
    @Test
    void moreThanAHoseLetsOutShowsNothing() {
        sixMetres(100).a1.reading(5900, 106);
        job.tests = new ArrayList<>(List.of(hose(15.0, 0.1, "o1")));
        assertEquals(1, gaps().size());
        assertTrue(
                gaps().get(0)
                        .endsWith("; 15 L within 0.1 min in test t1 is more than a hose lets out"),
                gaps().get(0));
        job.tests = new ArrayList<>(List.of(hose(15.0, 0.25, "o1")));
        assertEquals(0, depth());
    }

    @Test
    void aHoseOfWhichNobodySaysHowLongItRanShowsNothing() {
        sixMetres(100).a1.reading(5900, 106);
        job.tests = new ArrayList<>(List.of(hose(15.0, null, "o1")));
        assertTrue(
                gaps().get(0).endsWith("; how long the water of test t1 ran is not recorded"),
                gaps().get(0));
    }

    private static Job.WaterTest hose(Double litres, String seenAt) {
        return hose(litres, 5.0, seenAt);
    }

    private static Job.WaterTest hose(Double litres, Double minutes, String seenAt) {
        return new Job.WaterTest("t1", HOSE, "a", litres, minutes, null, "no", seenAt, List.of());
    }

    @Test
    void waterPouredInSomewhereDoesNot() {
        sixMetres(100).a1.reading(5900, 106);
        job.test("t1", POURED);
        assertEquals(1, gaps().size());
    }

    @Test
    void waterFromOneHighEndDoesNotShowTheReachFromTheOther() {
        job.outlet("o1", "a1", 5000.0).test("t1", HOSE);
        assertEquals(2, gaps().size());
    }

    @Test
    void eachSideOfAnOutletHasItsOwn() {
        job.outlet("o1", "a1", 5000.0);
        for (int i = 0; i <= 10; i++) {
            job.a1.reading(i * 1000, i == 2 ? 106 : 110 - Math.abs(5 - i));
        }
        job.a1.reading(4940, 110).reading(5060, 110);
        // On the left 106 at 2000 mm is a hump: 106 at 1000 mm is not lower, so that none stands.
        assertEquals(
                List.of(
                        new Facts.PondDepth("a", "o1", "left", 0),
                        new Facts.PondDepth("a", "o1", "right", 0)),
                job.survey().facts(Facts.PondDepth.class));
        job.a1.reading(8500, 109);
        // 107 at 8000 mm is 2 mm higher.
        assertEquals(
                new Facts.PondDepth("a", "o1", "right", 2),
                job.survey().facts(Facts.PondDepth.class).get(1));
    }
}
