package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.WayPart;
import eavesproof.quantity.Uncertain;
import java.util.List;
import org.junit.jupiter.api.Test;

class FallsTest {
    private final AJob job = new AJob();

    private Uncertain fall(AJob of) {
        Seen seen = of.survey();
        return seen.value(seen.fact(Facts.ReachFall.class));
    }

    /** An 8 m straight that drains to an outlet at its right end. */
    private AJob eightMetres() {
        job.a1.lengthMm = 8000.0;
        return job.outlet("o1", "a1", 7950.0);
    }

    /**
     * Directive 2014/32/EU annex MI-008, class II: 0.3 + 0.2 x 1 m, and 0.2 from the hook, is a
     * greatest error of 0.7 mm of each reading; 0.7 / sqrt 3 x sqrt 2 = 0.57 mm of their difference
     * (JCGM 100 4.3.7, 5.1.2). Arithmetic.
     */
    @Test
    void twoTapeReadingsFromAnExactDatumLeaveTheDropUnsureByPointFiveSeven() {
        eightMetres().tape("II", "yes");
        job.a1.reading(0, 200).reading(8000, 208);
        Uncertain fall = fall(job);
        assertEquals(1.0, fall.value(), 1e-12);
        assertEquals(0.57, fall.standardUncertainty() * 8, 0.005);
    }

    @Test
    void theFallIsTheDropOverTheDistanceBetweenTheReadings() {
        eightMetres();
        job.a1.reading(100, 150).reading(7900, 157.8);
        assertEquals(new Facts.ReachFall("a", "o1", "left", 1.0), rounded(job.survey()));
    }

    private static Facts.ReachFall rounded(Seen seen) {
        Facts.ReachFall fall = seen.fact(Facts.ReachFall.class);
        double mmPerM = Math.round(fall.fallMmPerM() * 1e9) / 1e9;
        return new Facts.ReachFall(fall.run(), fall.outlet(), fall.side(), mmPerM);
    }

    @Test
    void aReachThatRisesTowardsItsOutletHasAFallBelowZero() {
        eightMetres();
        job.a1.reading(0, 158).reading(8000, 150);
        assertEquals(-1.0, fall(job).value(), 1e-12);
    }

    @Test
    void aReachToTheRightFallsToTheLeft() {
        job.outlet("o1", "a1", 50.0);
        job.a1.reading(100, 160).reading(10_000, 150.1);
        Seen seen = job.survey();
        assertEquals(new Facts.ReachFall("a", "o1", "right", 1.0), rounded(seen));
        assertEquals(
                List.of("a o1 left: the fitting of outlet o1 reaches the left end of a1"),
                seen.none(Facts.ReachFall.class));
    }

    /** 0.3 mm/m over 8 m is 2.4 mm; / sqrt 3 = 1.386 mm (JCGM 100 4.3.7). Arithmetic. */
    @Test
    void fromOneEndTheLevelLineIsOffByTheWholeDistance() {
        assertEquals(1.386, dropFromLaserAt(0.0), 0.0005);
    }

    /** 1.2 mm to the left and 1.2 mm to the right, / sqrt 3 x sqrt 2 = 0.980 mm. Arithmetic. */
    @Test
    void fromTheMiddleTheTwoSidesOfTheLevelLineAreErrorsOfTheirOwn() {
        assertEquals(0.980, dropFromLaserAt(4000.0), 0.0005);
    }

    @Test
    void whereTheInstrumentStoodIsNotRecordedTheWorstIsTaken() {
        assertEquals(dropFromLaserAt(0.0), dropFromLaserAt(null), 1e-12);
        String workings = job.survey().survey().known().toString();
        assertTrue(workings.contains("where the instrument stood is not recorded"), workings);
    }

    /** What the laser alone makes of the drop over 8 m, mm. */
    private double dropFromLaserAt(Double stationMm) {
        job.way.clear();
        job.a1.readings.clear();
        eightMetres().laser(0.3).setUp("s1", "laser", "a1", stationMm);
        job.a1.reading(0, 200).reading(8000, 208);
        double squares = 0;
        for (var source : fall(job).sources().entrySet()) {
            if (source.getKey().startsWith("level line")) {
                squares += source.getValue() * source.getValue();
            }
        }
        return Math.sqrt(squares) * 8;
    }

    @Test
    void aLevelLineOfWhichNobodySaysHowGoodItIsLeavesTheFallUnstated() {
        eightMetres().laser(null).setUp("s1", "laser", "a1", 0.0);
        job.a1.reading(0, 200).reading(8000, 208);
        assertEquals(
                "[how far the level line of laser may be out for each metre is not recorded]",
                fall(job).unstated().toString());
    }

    @Test
    void repeatsAreAveragedAndTheirOwnErrorsBecomeSmaller() {
        eightMetres();
        job.a1.reading(0, 200).reading(8000, 208);
        double once = fall(job).standardUncertainty();
        job.a1.reading(0, 200).reading(8000, 208);
        Uncertain twice = fall(job);
        assertEquals(1.0, twice.value(), 1e-12);
        // Only the readings become surer, not their stations: hence a little more than 1 / sqrt 2.
        assertEquals(once / Math.sqrt(2), twice.standardUncertainty(), once * 0.01);
    }

    /**
     * Two pairs 0.4 mm apart: each adds 0.08 to the squares, so s = sqrt(0.16 / 2) = 0.283 with two
     * degrees of freedom, and 4.53 / 2 times that (JCGM 100 table G.2) is more than the 0.289 mm of
     * a single reading: nothing was gained by reading twice.
     */
    @Test
    void repeatsThatScatterAreNoSurerThanOneReading() {
        eightMetres();
        job.a1.reading(0, 200).reading(8000, 208);
        double once = fall(job).standardUncertainty();
        job.a1.reading(0, 200.4).reading(8000, 208.4);
        assertEquals(once, fall(job).standardUncertainty(), once * 1e-6);
    }

    /** Each within 0.5 mm of the truth, two readings lie no more than 1 mm apart. */
    @Test
    void repeatsThatContradictEachOtherAreAGapAndNoMean() {
        eightMetres();
        job.a1.reading(0, 200).reading(8000, 208).reading(8000, 218);
        assertEquals(
                List.of(
                        "a o1 left: the readings of sole at 8000 on a1 from s1 contradict each other:"
                                + " 10 mm apart, and what they were read with explains 1.2 mm"),
                job.survey().gaps(Facts.ReachFall.class));
    }

    @Test
    void aReadingNextToTheOutletWithoutItsSetUpMayBeTheLowestOne() {
        eightMetres();
        job.a1.reading(0, 200).reading(7800, 208).reading(7890.0, "sole", 190.0, null, null);
        assertEquals(
                List.of("a o1 left: the set-up of reading 3 of straight a1 is not recorded"),
                job.survey().gaps(Facts.ReachFall.class));
    }

    @Test
    void aReadingInTheMiddleWithoutItsLevelSaysNothingOfTheEnds() {
        eightMetres();
        job.a1.reading(0, 200).reading(8000, 208).reading(4000.0, "sole", null, "s1", null);
        assertEquals(1.0, fall(job).value(), 1e-12);
    }

    @Test
    void aSoleThatWasNotCleanWasNotRead() {
        eightMetres().foundClean("s1", "no");
        job.a1.reading(0, 200).reading(8000, 208);
        assertEquals(
                List.of("a o1 left: the gutter was not clean and empty at set-up s1"),
                job.survey().gaps(Facts.ReachFall.class));
        job.foundClean("s1", null);
        assertEquals(
                List.of(
                        "a o1 left: whether the gutter was clean and empty at set-up s1 is not"
                                + " recorded"),
                job.survey().gaps(Facts.ReachFall.class));
    }

    @Test
    void tiesThatContradictEachOtherJoinNothing() {
        eightMetres().setUp("s2", "still water", null, null);
        job.a1
                .reading(0, 200)
                .reading(4000.0, "sole", 204.0, "s1", "peg")
                .reading(4000.0, "sole", 254.0, "s2", "peg")
                .reading(6000.0, "sole", 206.0, "s1", "nail")
                .reading(6000.0, "sole", 266.0, "s2", "nail")
                .reading(8000.0, "sole", 258.0, "s2", null);
        assertEquals(1, job.survey().gaps(Facts.ReachFall.class).size());
    }

    @Test
    void twoSetUpsMayBeJoinedByAThird() {
        eightMetres().setUp("s2", "still water", null, null);
        job.setUp("s3", "still water", null, null);
        job.a1
                .reading(0, 200)
                .reading(2000.0, "sole", 202.0, "s1", "peg")
                .reading(2000.0, "sole", 252.0, "s3", "peg")
                .reading(6000.0, "sole", 256.0, "s3", "nail")
                .reading(6000.0, "sole", 276.0, "s2", "nail")
                .reading(8000.0, "sole", 278.0, "s2", null);
        assertEquals(1.0, fall(job).value(), 1e-9);
    }

    /** s2 lies 50 below s1 and s3 80: the last tie must say 30 and says more. */
    private void roundByThreeSetUps(double misses) {
        eightMetres().setUp("s2", "still water", null, null);
        job.setUp("s3", "still water", null, null);
        job.a1
                .reading(0, 200)
                .reading(2000.0, "sole", 202.0, "s1", "peg")
                .reading(2000.0, "sole", 252.0, "s2", "peg")
                .reading(6000.0, "sole", 206.0, "s1", "nail")
                .reading(6000.0, "sole", 286.0, "s3", "nail")
                .reading(4000.0, "sole", 254.0, "s2", "knot")
                .reading(4000.0, "sole", 284.0 + misses, "s3", "knot")
                .reading(8000.0, "sole", 288.0, "s3", null);
    }

    @Test
    void tiesThatGoRoundAndDoNotCloseAreNotBelieved() {
        roundByThreeSetUps(7);
        String why = job.survey().gaps(Facts.ReachFall.class).get(0);
        assertTrue(
                why.startsWith("a o1 left: the ties do not close: 7 mm round by set-ups s2 and s3"),
                why);
        assertEquals(1, job.survey().gaps(Facts.PondDepth.class).size());
    }

    /** Six readings of 0.5 / sqrt 3 each, three times: 2.1 mm. */
    @Test
    void tiesThatGoRoundAndCloseSayHowWell() {
        roundByThreeSetUps(2);
        Seen seen = job.survey();
        Facts.ReachFall fall = seen.fact(Facts.ReachFall.class);
        assertEquals(1.0, fall.fallMmPerM(), 1e-9);
        String workings = seen.known(fall).workings().toString();
        assertTrue(workings.contains("name=ties close to, value=2 mm"), workings);
        assertTrue(workings.contains("of 2.1 mm that what"), workings);
    }

    @Test
    void tiesThatGoRoundNothingHaveNothingToClose() {
        eightMetres().setUp("s2", "still water", null, null);
        job.a1
                .reading(0, 200)
                .reading(4000.0, "sole", 204.0, "s1", "peg")
                .reading(4000.0, "sole", 254.0, "s2", "peg")
                .reading(8000.0, "sole", 258.0, "s2", null);
        Seen seen = job.survey();
        String workings = seen.known(seen.fact(Facts.ReachFall.class)).workings().toString();
        assertFalse(workings.contains("ties close"), workings);
    }

    @Test
    void tiesOfTwoPointsThatContradictEachOtherLeaveNoReadingToBelieve() {
        eightMetres().setUp("s2", "still water", null, null);
        job.a1
                .reading(0, 200)
                .reading(4000.0, "sole", 204.0, "s1", "peg")
                .reading(4000.0, "sole", 254.0, "s2", "peg")
                .reading(6000.0, "sole", 206.0, "s1", "nail")
                .reading(6000.0, "sole", 266.0, "s2", "nail")
                .reading(8000.0, "sole", 208.0, "s1", null);
        String why = job.survey().gaps(Facts.ReachFall.class).get(0);
        assertTrue(why.contains("the ties between set-ups s1 and s2 contradict each other"), why);
    }

    @Test
    void readingsOfTwoSetUpsWithoutATieAreNotCompared() {
        eightMetres().setUp("s2", "still water", null, null);
        job.a1.reading(0, 200).reading(8000.0, "sole", 258.0, "s2", null);
        assertEquals(
                List.of(
                        "a o1 left: the reach to the left of outlet o1 has no two readings of one"
                                + " surface and one set-up, or of set-ups joined by ties, at its two"
                                + " ends"),
                job.survey().gaps(Facts.ReachFall.class));
    }

    @Test
    void readingsOfOnePointByBothTieTwoSetUps() {
        eightMetres().setUp("s2", "still water", null, null);
        job.a1
                .reading(0, 200)
                .reading(4000.0, "sole", 204.0, "s1", "peg")
                .reading(4000.0, "sole", 254.0, "s2", "peg")
                .reading(8000.0, "sole", 258.0, "s2", null);
        Uncertain fall = fall(job);
        assertEquals(1.0, fall.value(), 1e-9);
        // Four readings of 0.5 / sqrt 3 each (class II below 1 m), not two.
        assertEquals(0.5 / Math.sqrt(3) * 2, fall.standardUncertainty() * 8, 0.005);
    }

    @Test
    void bracketSeatsStandForASoleThatWasNotRead() {
        eightMetres();
        job.a1
                .reading(0.0, "bracket seat", 200.0, "s1", null)
                .reading(8000.0, "bracket seat", 216.0, "s1", null)
                .reading(0.0, "back edge", 100.0, "s1", null)
                .reading(8000.0, "back edge", 100.0, "s1", null);
        assertEquals(2.0, fall(job).value(), 1e-9);
        assertTrue(
                job.survey().survey().known().toString().contains("bracket seat below datum"),
                "the workings name the surface");
    }

    @Test
    void soleAndBracketSeatAreNeverMixed() {
        eightMetres();
        job.a1.reading(0, 200).reading(8000.0, "bracket seat", 210.0, "s1", null);
        assertEquals(1, job.survey().gaps(Facts.ReachFall.class).size());
    }

    @Test
    void readingsTooFarFromTheEndOfTheReachSayNothingOfIt() {
        eightMetres();
        job.a1.reading(301, 200).reading(7900, 208);
        assertEquals(
                List.of(
                        "a o1 left: the reach to the left of outlet o1 has no reading within 300 mm"
                                + " of the left end of a1"),
                job.survey().gaps(Facts.ReachFall.class));
        job.a1.reading(300, 200);
        assertEquals(1, job.survey().facts(Facts.ReachFall.class).size());
    }

    @Test
    void readingsTooFarFromTheOutletSayNothingOfIt() {
        eightMetres();
        job.a1.reading(0, 200).reading(7599, 208);
        assertEquals(
                List.of(
                        "a o1 left: the reach to the left of outlet o1 has no reading within 300 mm"
                                + " of outlet o1"),
                job.survey().gaps(Facts.ReachFall.class));
    }

    @Test
    void aSumpDoesNotMakeAFall() {
        job.a1.lengthMm = 8000.0;
        job.part(
                new WayPart.Outlet(
                        "o1",
                        null,
                        null,
                        "a1",
                        7950.0,
                        100.0,
                        "fixed",
                        AJob.said("no"),
                        AJob.said("no"),
                        null,
                        null,
                        "no",
                        null,
                        null,
                        null,
                        40.0,
                        null,
                        null));
        job.a1.reading(0, 200).reading(7950, 240);
        assertTrue(job.survey().facts(Facts.ReachFall.class).isEmpty());
        job.a1.reading(7900, 200);
        assertEquals(0, fall(job).value());
    }

    @Test
    void theReadingBesideTheFittingIsPreferredToOneWithinIt() {
        eightMetres();
        job.a1.reading(0, 200).reading(7900, 207.9).reading(7950, 230);
        assertEquals(1.0, fall(job).value(), 1e-9);
    }

    @Test
    void absentReadingsAreAGapThatNamesTheStraight() {
        eightMetres();
        job.a1.readings = null;
        assertEquals(
                List.of("a o1 left: the readings of straight a1 are not recorded"),
                job.survey().gaps(Facts.ReachFall.class));
    }

    @Test
    void readingsWithoutASetUpAreNotCompared() {
        eightMetres();
        job.a1.reading(0.0, "sole", 200.0, null, null).reading(8000.0, "sole", 208.0, null, null);
        assertFalse(job.survey().gaps(Facts.ReachFall.class).isEmpty());
        assertTrue(job.survey().facts(Facts.ReachFall.class).isEmpty());
    }

    @Test
    void aFallGoesRoundACorner() {
        job.a1.right = new eavesproof.job.Run.End("corner", null);
        AStraight a2 = job.straight("a2");
        a2.left = job.a1.right;
        a2.lengthMm = 5000.0;
        job.outlet("o1", "a2", 4950.0);
        job.a1.reading(0, 200);
        a2.reading(5000, 215);
        assertEquals(1.0, fall(job).value(), 1e-9);
    }
}
