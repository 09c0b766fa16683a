package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Instrument;
import eavesproof.job.Run;
import eavesproof.job.Run.CrossTilt;
import eavesproof.job.Said;
import java.util.List;
import org.junit.jupiter.api.Test;

class SpillSidesTest {
    private final WetJob wet = new WetJob();

    @Test
    void theFrontThatLiesLowerSpillsAwayFromTheBuilding() {
        assertEquals("away from the building", wet.survey().fact(Facts.SpillSide.class).named());
    }

    @Test
    void aFrontThatIsHigherSomewhereSpillsTowardsTheBuilding() {
        wet.job.a1.tilts.add(new CrossTilt(8000.0, -1.0, null));
        assertEquals("towards the building", wet.survey().fact(Facts.SpillSide.class).named());
    }

    /** Class II to 1 m is off by 0.5 mm at most: u 0.289, and twice that is 0.577. */
    @Test
    void withinWhatTheReadingsMayBeOffNoSideIsTold() {
        for (double tilt : new double[] {0.5, 0.1, 0.0, -0.1, -0.5}) {
            SpillSidesTest again = new SpillSidesTest();
            again.wet.job.a1.tilts.add(new CrossTilt(8000.0, tilt, null));
            List<String> gaps = again.wet.survey().gaps(Facts.SpillSide.class);
            assertEquals(1, gaps.size(), () -> "at " + tilt);
            assertTrue(gaps.get(0).contains("too close to tell over which lip"), gaps.get(0));
        }
    }

    @Test
    void aTiltIsAsSureAsWhatItWasReadWith() {
        wet.job.instruments.put(
                "rule", new Instrument("rule", "rule", null, null, 0.05, null, 1e-9, null));
        wet.job.a1.tilts.add(new CrossTilt(8000.0, 0.5, "rule"));
        assertEquals("away from the building", wet.survey().fact(Facts.SpillSide.class).named());
    }

    @Test
    void aTiltOfWhichNobodySaidWhatItWasReadWithTellsNoSide() {
        wet.job.measuredWith = null;
        assertEquals(
                List.of("a: what the cross tilt of straight a1 was measured with is not recorded"),
                wet.survey().gaps(Facts.SpillSide.class));
    }

    /**
     * 5 mm over 10 m of lip: 0.67 × 0.6 × √(2 × 9.81) × 10 × 0.005^1.5 = 6.296 L/s, from 60 m2
     * 377.7 mm/h.
     */
    @Test
    void withAllOutletsBlockedTheFrontLipIsAWeir() {
        wet.number("lip_coefficient", 0.6);
        Seen seen = wet.survey();
        double litres = 1000 * 0.67 * 0.6 * Math.sqrt(2 * 9.81) * 10 * 0.005 * Math.sqrt(0.005);
        Facts.BlockedRain rain = seen.fact(Facts.BlockedRain.class);
        assertEquals(litres * 60, rain.intensityMmH(), 1e-9);
        // The tilt of 5 mm has u 0.5 / sqrt 3, and the flow goes with its power of 1.5.
        assertEquals(
                1.5 * 0.5 / Math.sqrt(3) / 5,
                seen.value(rain).standardUncertainty() / rain.intensityMmH(),
                1e-9);
    }

    @Test
    void whereTheFrontIsHigherNoRainGoesOverItAlone() {
        wet.number("lip_coefficient", 0.6).job.a1.tilts.add(new CrossTilt(8000.0, -1.0, null));
        assertEquals(1, wet.survey().none(Facts.BlockedRain.class).size());
    }

    @Test
    void whereNoLipIsToldOrTheRuleSetSaysNothingItIsAGap() {
        assertEquals(1, wet.survey().gaps(Facts.BlockedRain.class).size());
        SpillSidesTest level = new SpillSidesTest();
        level.wet.number("lip_coefficient", 0.6);
        level.wet.job.a1.tilts.add(new CrossTilt(8000.0, 0.1, null));
        assertTrue(level.wet.survey().gaps(Facts.BlockedRain.class).get(0).contains("too close"));
    }

    @Test
    void whereEitherLipSpillsOutsideItNeedNotBeToldWhich() {
        wet.job.a1.tilts = null;
        wet.job.eaves = new Run.EavesSection(12.0, 12.0, 10.0, null, Said.nothing(), null, null);
        assertEquals(
                "down the face of the fascia", wet.survey().fact(Facts.SpillSide.class).named());
    }

    @Test
    void overTheBackWithAGapBelowTheTopOfTheFasciaItRunsDownTheFascia() {
        wet.job.a1.tilts = null;
        wet.job.eaves = new Run.EavesSection(12.0, 8.0, 10.0, null, Said.nothing(), null, null);
        assertEquals(
                "down the face of the fascia", wet.survey().fact(Facts.SpillSide.class).named());
    }

    @Test
    void howItHangsIsNeverTakenFromTheProfileAlone() {
        wet.job.a1.tilts = null;
        assertEquals(List.of(), wet.survey().facts(Facts.SpillSide.class));
    }
}
