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
