package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Job;
import eavesproof.job.Job.EavesPart;
import eavesproof.quantity.Uncertain;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The roofs of 10 m of gutter. */
class RoofWidthsTest {
    private final WetJob wet = new WetJob();

    private Seen roof(double planM2, EavesPart part, Double meanWidthMm) {
        wet.job.catchments =
                List.of(
                        new Job.Catchment(
                                "c1",
                                "a",
                                planM2,
                                20.0,
                                null,
                                List.of(),
                                null,
                                part,
                                meanWidthMm,
                                null,
                                null,
                                null));
        return wet.survey();
    }

    private static void assertNotBelieved(Seen seen, String why) {
        for (var type :
                List.of(
                        Facts.RunDemand.class,
                        Facts.GutterRatio.class,
                        Facts.GutterFreeboard.class,
                        Facts.DownpipeRatio.class,
                        Facts.ReachRoof.class,
                        Facts.DownpipeRoof.class)) {
            assertEquals(List.of(), seen.facts(type));
            assertTrue(seen.gaps(type).get(0).contains(why), seen.gaps(type)::toString);
        }
    }

    /** 31 m2 with its point one place too far to the left. */
    @Test
    void aRoofThatIsNarrowerThanAnyRoofIsNotBelieved() {
        assertNotBelieved(roof(3.1, null, null), "would be 310 mm wide in the mean");
    }

    @Test
    void aRoofOfAnyOrdinaryWidthIs() {
        assertEquals(0.125, roof(5, null, null).fact(Facts.RunDemand.class).flowLs(), 1e-9);
    }

    @Test
    void aRoofWiderThanAnyBuildingIsNotBelieved() {
        assertNotBelieved(roof(2010, null, null), "which no roof is");
    }

    @Test
    void aNarrowRoofIsBelievedOnceItsWidthWasMeasuredToo() {
        assertEquals(0.0775, roof(3.1, null, 300.0).fact(Facts.RunDemand.class).flowLs(), 1e-9);
    }

    @Test
    void anAreaThatItsOwnWidthBeliesIsNotBelieved() {
        assertNotBelieved(roof(3.1, null, 3100.0), "and is recorded as 3100 mm");
    }

    @Test
    void twoRoofsAlongOneGutterAreTakenTogether() {
        wet.job.catchments =
                List.of(
                        new Job.Catchment(
                                "c1", "a", 4.0, 20.0, null, List.of(), null, null, null, null, null,
                                null),
                        new Job.Catchment(
                                "c2", "a", 20.0, 20.0, null, List.of(), null, null, null, null,
                                null, null));
        assertEquals(0.6, wet.survey().fact(Facts.RunDemand.class).flowLs(), 1e-9);
    }

    @Test
    void aRoofAlongAPartOfTheGutterIsHeldAgainstThatPart() {
        Seen seen = roof(3.1, new EavesPart("a1", 0.0, 2000.0), null);
        assertEquals(0.0775, seen.fact(Facts.RunDemand.class).flowLs(), 1e-9);
        assertEquals(0.0775, seen.fact(Facts.OutletDemand.class).flowLs(), 1e-9);
    }

    @Test
    void evenAPartHasNoRoofThatIsNone() {
        assertNotBelieved(
                roof(0.9, new EavesPart("a1", 0.0, 2000.0), null), "would be 450 mm wide");
    }

    @Test
    void aPartOfWhichNobodySaidWhereItEndsIsAGap() {
        assertNotBelieved(
                roof(60, new EavesPart("a1", 0.0, null), null),
                "to which part of the gutter catchment c1 drains is not recorded");
    }

    /**
     * 6 m by 10 m with a tape of class II: u 1.5 / sqrt 3 of the width, 2.3 / sqrt 3 of the length.
     * What comes is in proportion, and so are the ratios of upright pipes and of the gutter.
     */
    @Test
    void whatComesIsAsSureAsTheRoofWasMeasured() {
        double relative = Math.hypot(1.5 / 6000, 2.3 / 10_000) / Math.sqrt(3);
        Seen seen = roof(60, null, 6000.0);
        for (Facts.Fact fact :
                List.of(
                        seen.fact(Facts.RunDemand.class),
                        seen.fact(Facts.OutletDemand.class),
                        seen.fact(Facts.OutletRatio.class),
                        seen.fact(Facts.DownpipeRatio.class))) {
            Uncertain sure = seen.value(fact);
            assertEquals(relative, sure.standardUncertainty() / sure.value(), 1e-6, fact::toString);
        }
        assertTrue(seen.value(seen.fact(Facts.DownpipeRatio.class)).unstated().size() == 1);
    }

    /**
     * A reading that lies higher by its own uncertainty moves the greatest rain by as much as is
     * said: worked out again with that reading moved.
     */
    @Test
    void theGutterIsAsSureAsItsReadings() {
        Seen seen = roof(60, null, null);
        Facts.GutterRatio fact = seen.fact(Facts.GutterRatio.class);
        Uncertain sure = seen.value(fact);
        assertTrue(sure.standardUncertainty() > 0);
        RoofWidthsTest moved = new RoofWidthsTest();
        moved.wet.job.a1.readings.clear();
        moved.wet.job.a1.reading(50, 400).reading(5000, 411).reading(9950, 420);
        double by = moved.roof(60, null, null).fact(Facts.GutterRatio.class).ratio() - fact.ratio();
        double of = 0.5 / Math.sqrt(3);
        assertTrue(
                sure.sources().values().stream()
                        .anyMatch(
                                it ->
                                        Math.abs(Math.abs(it) - Math.abs(by) * of)
                                                < 0.1 * Math.abs(by) * of),
                () -> by * of + " in " + sure.sources());
    }

    /** The outlet is near the right end: what comes to the left end has the longer way. */
    @Test
    void theWaterOfAPartEntersThere() {
        Seen whole = roof(40, null, null);
        RoofWidthsTest left = new RoofWidthsTest();
        Seen far = left.roof(40, new EavesPart("a1", 0.0, 3000.0), null);
        assertTrue(
                far.fact(Facts.GutterRatio.class).ratio()
                        > whole.fact(Facts.GutterRatio.class).ratio() * 1.01);
    }

    /** Spread over all of it, a part is the whole. */
    @Test
    void aPartThatIsAllOfTheGutterIsTheWhole() {
        Seen whole = roof(40, null, null);
        RoofWidthsTest all = new RoofWidthsTest();
        Seen part = all.roof(40, new EavesPart("a1", 0.0, 10_000.0), null);
        assertEquals(
                whole.fact(Facts.GutterFreeboard.class).freeboardMm(),
                part.fact(Facts.GutterFreeboard.class).freeboardMm(),
                0.3);
    }
}
