package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
    void aFrontThatIsLevelOrHigherSomewhereSpillsTowardsTheBuilding() {
        wet.job.a1.tilts.add(new CrossTilt(8000.0, 0.0));
        assertEquals("towards the building", wet.survey().fact(Facts.SpillSide.class).named());
    }

    @Test
    void overTheBackWithAGapBelowTheTopOfTheFasciaItRunsDownTheFascia() {
        wet.job.a1.tilts = null;
        wet.job.eaves = new Run.EavesSection(12.0, 8.0, 10.0, null, Said.nothing(), null);
        assertEquals(
                "down the face of the fascia", wet.survey().fact(Facts.SpillSide.class).named());
    }

    @Test
    void howItHangsIsNeverTakenFromTheProfileAlone() {
        wet.job.a1.tilts = null;
        assertEquals(List.of(), wet.survey().facts(Facts.SpillSide.class));
    }
}
