package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.job.Said;
import eavesproof.job.WayPart;
import java.util.List;
import org.junit.jupiter.api.Test;

class OutletsTest {
    private final AJob job = new AJob();

    private Seen withOutlet(String hold, Said<String> cemented, Said<String> set) {
        job.part(
                new WayPart.Outlet(
                        "o1", null, null, "a1", 500.0, 100.0, hold, cemented, set, null, null, "no",
                        null, null, null, null, null, null));
        return job.survey();
    }

    @Test
    void theOutletsOfARunAreCounted() {
        assertEquals(new Facts.OutletCount("a", 0), job.survey().fact(Facts.OutletCount.class));
        job.outlet("o1", "a1", 500.0).outlet("o2", "a1", null);
        assertEquals(new Facts.OutletCount("a", 2), job.survey().fact(Facts.OutletCount.class));
    }

    @Test
    void outletsAreNotCountedWhileOneOrAllAreNowhere() {
        job.outlet("o1", "a1", 500.0).outlet("o2", null, 500.0);
        assertEquals(
                List.of("a: which straight outlet o2 is on is not recorded"),
                job.survey().gaps(Facts.OutletCount.class));
        job.way = null;
        assertEquals(
                List.of("a: the way of the water is not recorded"),
                job.survey().gaps(Facts.OutletCount.class));
    }

    @Test
    void aClearanceIsFromTheEdgeOfTheFittingToTheNearestBracketOnEachSide() {
        job.outlet("o1", "a1", 500.0);
        job.a1.bracket("b0", 100.0).bracket("b1", 390.0).bracket("b2", 620.0).bracket("b3", 900.0);
        assertEquals(
                List.of(
                        new Facts.OutletClearance("a", "o1", "b1", 60),
                        new Facts.OutletClearance("a", "o1", "b2", 70)),
                job.survey().facts(Facts.OutletClearance.class));
    }

    @Test
    void aBracketUnderTheFittingLeavesLessThanNothing() {
        job.outlet("o1", "a1", 500.0);
        job.a1.bracket("b1", 500.0);
        assertEquals(
                new Facts.OutletClearance("a", "o1", "b1", -50),
                job.survey().fact(Facts.OutletClearance.class));
    }

    @Test
    void aScrewedFittingInWhichTheGutterLiesStandsInTheWayLikeABracket() {
        job.outlet("o1", "a1", 500.0);
        job.a1.fitting("f1", 510.0, "yes");
        assertEquals(
                List.of(new Facts.OutletClearance("a", "o1", "f1", 10 - 50)),
                job.survey().facts(Facts.OutletClearance.class));
    }

    @Test
    void aFittingThatIsNotScrewedOnIsNoBracket() {
        job.outlet("o1", "a1", 500.0);
        job.a1.fitting("f1", 510.0, "no");
        assertEquals(
                List.of("a o1: straight a1 has no bracket"),
                job.survey().none(Facts.OutletClearance.class));
    }

    @Test
    void withoutTheLengthOfTheFittingTheClearanceIsAGap() {
        job.part(AJob.outlet("o1", null, "a1", 500.0, null, "sliding", "no"));
        job.a1.bracket("b1", 390.0);
        assertEquals(
                List.of("a o1: the length of the fitting of outlet o1 is not recorded"),
                job.survey().gaps(Facts.OutletClearance.class));
    }

    @Test
    void aBracketWithoutAStationMayBeInTheWay() {
        job.outlet("o1", "a1", 500.0);
        job.a1.bracket("b1", 390.0).bracket("b2", null);
        assertEquals(
                List.of("a o1: the station of bracket b2 is not recorded"),
                job.survey().gaps(Facts.OutletClearance.class));
    }

    @Test
    void howAnOutletHoldsIsSaid() {
        Seen seen = withOutlet("sliding", AJob.said("no"), AJob.said("yes"));
        assertEquals(new Facts.OutletHold("a", "o1", "sliding"), seen.fact(Facts.OutletHold.class));
        assertEquals(
                new Facts.OutletCemented("a", "o1", "no"), seen.fact(Facts.OutletCemented.class));
        Facts.OutletSet set = seen.fact(Facts.OutletSet.class);
        assertEquals(new Facts.OutletSet("a", "o1", "yes"), set);
        assertEquals("seen by A. Fitter", seen.known(set).workings().get(0).from());
    }

    @Test
    void whatIsNotSaidOfAnOutletIsAGap() {
        Seen seen = withOutlet(null, Said.nothing(), AJob.said("unknown"));
        assertEquals(
                List.of("a o1: whether outlet o1 is sliding or fixed is not recorded"),
                seen.gaps(Facts.OutletHold.class));
        assertEquals(
                List.of("a o1: whether outlet o1 is cemented to the gutter is not recorded"),
                seen.gaps(Facts.OutletCemented.class));
        assertEquals(
                List.of(
                        "a o1: whether outlet o1 was set for the temperature on the day is recorded"
                                + " as unknown"),
                seen.gaps(Facts.OutletSet.class));
    }

    @Test
    void aFixedOutletIsNotSetForATemperature() {
        assertEquals(
                List.of("a o1: outlet o1 is fixed"),
                withOutlet("fixed", AJob.said("no"), Said.nothing()).none(Facts.OutletSet.class));
    }

    @Test
    void aRunWithoutOutletsHasNoneOfTheirFacts() {
        for (var type : List.of(Facts.OutletHold.class, Facts.OutletClearance.class)) {
            assertEquals(List.of("a: run a has no outlet"), job.survey().none(type));
        }
    }
}
