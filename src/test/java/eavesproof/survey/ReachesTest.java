package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.job.Run.End;
import eavesproof.quantity.Uncertain;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReachesTest {
    private final AJob job = new AJob();

    private List<Facts.ReachLength> lengths() {
        return job.survey().facts(Facts.ReachLength.class);
    }

    private static Facts.ReachLength reach(String outlet, String side, double mm) {
        return new Facts.ReachLength("a", outlet, side, mm);
    }

    @Test
    void aReachGoesFromTheEndOfTheRunToTheCentreOfTheOutlet() {
        job.outlet("o1", "a1", 3000.0);
        assertEquals(List.of(reach("o1", "left", 3000), reach("o1", "right", 7000)), lengths());
    }

    @Test
    void anOutletWhoseFittingReachesTheEndHasNoReachOnThatSide() {
        job.outlet("o1", "a1", 9950.0);
        assertEquals(List.of(reach("o1", "left", 9950)), lengths());
        assertEquals(
                List.of("a o1 right: the fitting of outlet o1 reaches the right end of a1"),
                job.survey().none(Facts.ReachLength.class));
    }

    @Test
    void withoutTheLengthOfTheFittingItMayReachTheEndOrNot() {
        job.part(AJob.outlet("o1", null, "a1", 9900.0, null, "sliding", "no"));
        assertEquals(List.of(reach("o1", "left", 9900)), lengths());
        assertEquals(
                List.of("a o1 right: the length of the fitting of outlet o1 is not recorded"),
                job.survey().gaps(Facts.ReachLength.class));
    }

    @Test
    void aReachGoesRoundCorners() {
        job.a1.right = new End("corner", null);
        job.straight("a2").lengthMm = 4000.0;
        job.outlet("o1", "a2", 1000.0);
        assertEquals(List.of(reach("o1", "left", 11_000), reach("o1", "right", 3000)), lengths());
    }

    @Test
    void withoutTheLengthOfAStraightInBetweenAReachIsAGap() {
        job.straight("a2");
        job.a1.lengthMm = null;
        job.outlet("o1", "a2", 1000.0);
        assertEquals(List.of(reach("o1", "right", 9000)), lengths());
        assertEquals(
                List.of("a o1 left: the length of straight a1 is not recorded"),
                job.survey().gaps(Facts.ReachLength.class));
    }

    @Test
    void betweenTwoOutletsTheWaterPartsAtTheHighestReading() {
        job.outlet("o2", "a1", 9950.0).outlet("o1", "a1", 50.0);
        job.a1.reading(100, 20).reading(4000, 5).reading(6000, 8).reading(9900, 22);
        assertEquals(List.of(reach("o1", "right", 3950), reach("o2", "left", 5950)), lengths());
        List<Facts.ReachFall> falls = job.survey().facts(Facts.ReachFall.class);
        assertEquals(15.0 / 3.9, falls.get(0).fallMmPerM(), 1e-9);
        assertEquals(17.0 / 5.9, falls.get(1).fallMmPerM(), 1e-9);
    }

    /** From 100 to 6000 about 4000: a half-width of 3900, / sqrt 3 = 2251.7. Arithmetic. */
    @Test
    void theHighPointMayLieAnywhereBetweenTheReadingsBesideIt() {
        job.outlet("o1", "a1", 50.0).outlet("o2", "a1", 9950.0);
        job.a1.reading(100, 20).reading(4000, 5).reading(6000, 8).reading(9900, 22);
        Uncertain length = job.survey().value(reach("o1", "right", 3950));
        assertEquals(2251.7, length.standardUncertainty(), 0.1);
    }

    @Test
    void theHighPointIsFoundAcrossTiedSetUps() {
        job.outlet("o1", "a1", 50.0).outlet("o2", "a1", 9950.0);
        job.setUp("s2", "still water", null, null);
        // Set-up s2 reads 100 mm more: what it reads at 6000 is 3 below the datum of s1.
        job.a1
                .reading(100, 20)
                .reading(4000, 5)
                .reading(5000.0, "sole", 4.0, "s1", "peg")
                .reading(5000.0, "sole", 104.0, "s2", "peg")
                .reading(6000.0, "sole", 103.0, "s2", null)
                .reading(9900.0, "sole", 122.0, "s2", null);
        assertEquals(List.of(reach("o1", "right", 5950), reach("o2", "left", 3950)), lengths());
    }

    @Test
    void withoutReadingsBetweenTwoOutletsTheHighPointIsAGap() {
        job.outlet("o1", "a1", 50.0).outlet("o2", "a1", 9950.0);
        String why = "no reading between outlet o1 and outlet o2 says where the high point is";
        assertEquals(
                List.of("a o1 right: " + why, "a o2 left: " + why),
                job.survey().gaps(Facts.ReachLength.class));
        assertEquals(2, job.survey().gaps(Facts.ReachFall.class).size());
    }

    @Test
    void anOutletWithoutAStationLeavesEveryReachOpen() {
        job.outlet("o1", "a1", 50.0).outlet("o2", "a1", null);
        String why = "the station of outlet o2 is not recorded";
        assertEquals(
                List.of(
                        "a o1 left: " + why,
                        "a o1 right: " + why,
                        "a o2 left: " + why,
                        "a o2 right: " + why),
                job.survey().gaps(Facts.ReachLength.class));
    }

    @Test
    void anOutletThatMayBeOnTheRunLeavesEveryReachOpen() {
        job.outlet("o1", "a1", 50.0).outlet("o2", "elsewhere", 50.0);
        assertEquals(List.of(), lengths());
        assertEquals(
                "a: which straight outlet o2 is on is not recorded",
                job.survey().gaps(Facts.ReachLength.class).get(0));
    }

    @Test
    void aRunWithoutAnOutletHasNoReach() {
        assertEquals(List.of("a: run a has no outlet"), job.survey().none(Facts.ReachFall.class));
    }
}
