package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Run.Overflow;
import eavesproof.job.Said;
import java.util.List;
import org.junit.jupiter.api.Test;

/** 10 m of gutter under 60 m2; figures of ABCB Housing Provisions 2022, 7.4.6 and 7.4.7. */
class OverflowsTest {
    private final WetJob wet = new WetJob();

    OverflowsTest() {
        wet.number("overflow_rain_duration_min", 5).number("overflow_rain_aep_percent", 1);
        wet.number("overflow_l_s front slots", 0.5).number("overflow_open_mm2 front slots", 1200);
        wet.number("overflow_l_s back gap", 1.5).number("overflow_size_mm back gap", 10);
        wet.number("overflow_l_s end weir", 0.5).number("overflow_size_mm end weir", 100);
        wet.number("overflow_l_s inverted nozzle", 1.2);
        wet.number("overflow_high_point_mm inverted nozzle", 500);
        wet.number("overflow_height_mm inverted nozzle", 50);
        wet.number("overflow_below_mm end weir", 25);
    }

    private Seen with(Overflow... overflows) {
        return eaves(null, List.of(overflows));
    }

    private Seen eaves(List<String> provisions, List<Overflow> overflows) {
        wet.job.eaves =
                new Run.EavesSection(8.0, 12.0, 10.0, null, Said.nothing(), provisions, overflows);
        return wet.survey();
    }

    private static Overflow slots(Double lengthMm, Double open) {
        return new Overflow("w1", "front slots", lengthMm, null, null, open, null, null);
    }

    private static Overflow weir(Double sizeMm, Double below) {
        return new Overflow("w2", "end weir", null, sizeMm, null, null, below, null);
    }

    private static Overflow nozzle(Double height, Double highPointMm) {
        return new Overflow("w3", "inverted nozzle", null, null, height, null, null, highPointMm);
    }

    private static double all(Seen seen) {
        return seen.fact(Facts.OverflowCapacity.class).flowLs();
    }

    /** The worked example of 7.4.3: 0.5 + 10 x 0.5 = 5.5 L/s. */
    @Test
    void slotsAndAWeirAddUp() {
        Seen seen = with(slots(10_000.0, 1200.0), weir(100.0, 25.0));
        assertEquals(5.5, all(seen), 1e-12);
        assertEquals(0.55, seen.fact(Facts.OverflowEachMetre.class).flowLs(), 1e-12);
    }

    /** 5.5 L/s from 60 m2 are 5.5 x 3600 / 60 = 330 mm/h. */
    @Test
    void theGreatestRainWithAllOutletsBlockedStandsInTheWorkings() {
        Seen seen = with(slots(10_000.0, 1200.0), weir(100.0, 25.0));
        assertTrue(
                seen.known(seen.fact(Facts.OverflowCapacity.class)).workings().stream()
                        .anyMatch(
                                step ->
                                        step.name().contains("all outlets are blocked")
                                                && step.value().equals("330 mm/h")));
    }

    @Test
    void oneThatIsSmallerThanItsFigureAsksForCountsForNothing() {
        assertEquals(0.5, all(with(weir(100.0, 25.0))), 1e-12);
        assertEquals(0, all(new OverflowsTest().with(weir(99.0, 25.0))));
        assertEquals(0, all(new OverflowsTest().with(weir(100.0, 24.0))));
        assertEquals(0, all(new OverflowsTest().with(slots(10_000.0, 1100.0))));
        assertEquals(0, all(new OverflowsTest().with(nozzle(49.0, 500.0))));
        assertEquals(0, all(new OverflowsTest().with(nozzle(50.0, 501.0))));
        assertEquals(1.2, all(new OverflowsTest().with(nozzle(50.0, 500.0))), 1e-12);
    }

    @Test
    void aSizeThatNobodyRecordedIsAGap() {
        assertEquals(
                List.of("a: the size of overflow measure w2 is not recorded"),
                with(weir(null, 25.0)).gaps(Facts.OverflowCapacity.class));
        assertEquals(
                List.of(
                        "a: how far overflow measure w2 lies below the top of the fascia is not"
                                + " recorded"),
                new OverflowsTest().with(weir(100.0, null)).gaps(Facts.OverflowCapacity.class));
        assertEquals(
                1,
                new OverflowsTest()
                        .with(slots(null, 1200.0))
                        .gaps(Facts.OverflowCapacity.class)
                        .size());
        assertEquals(
                1,
                new OverflowsTest()
                        .with(nozzle(50.0, null))
                        .gaps(Facts.OverflowCapacity.class)
                        .size());
    }

    @Test
    void aKindThatTheRuleSetDoesNotSpeakOfIsAGap() {
        Overflow rainhead = new Overflow("w4", "rainhead", null, 75.0, null, null, 100.0, null);
        assertEquals(1, with(rainhead).gaps(Facts.OverflowCapacity.class).size());
    }

    @Test
    void noneAtAllLetNothingOut() {
        assertEquals(0, all(eaves(List.of(), null)));
        assertEquals(0, all(new OverflowsTest().with()));
    }

    @Test
    void onesThatAreOnlyNamedAreAGap() {
        String gap = eaves(List.of("front slots"), null).gaps(Facts.OverflowCapacity.class).get(0);
        assertTrue(gap.contains("how large the overflow measures of run a are"), gap);
    }

    /** Water that stands at the slots does not reach a gap that lies higher. */
    @Test
    void ofSeveralKindsAlongTheGutterTheGreaterCounts() {
        Overflow gap = new Overflow("w5", "back gap", 10_000.0, 10.0, null, null, null, null);
        assertEquals(15, all(with(slots(10_000.0, 1200.0), gap)), 1e-12);
    }

    @Test
    void slotsLongerThanTheGutterAreNotBelieved() {
        Overflow more = new Overflow("w6", "front slots", 1.0, null, null, 1200.0, null, null);
        assertEquals(
                1, with(slots(10_000.0, 1200.0), more).gaps(Facts.OverflowCapacity.class).size());
    }

    @Test
    void theRainOfOverflowsIsOneOfItsOwn() {
        wet.rainfall.add(new Job.Rainfall(140.0, 5.0, 1.0, "a map"));
        Seen seen = with();
        assertEquals(new Facts.OverflowRain("a", 140), seen.fact(Facts.OverflowRain.class));
        assertEquals(new Facts.DesignRain("a", 90), seen.fact(Facts.DesignRain.class));
        assertEquals(1, new OverflowsTest().with().gaps(Facts.OverflowRain.class).size());
    }

    /** With a map of its own for each, neither rain stands in for the other. */
    @Test
    void aRarerRainIsNotTakenForThatOfThePlace() {
        wet.basis.put("rain_at Here", new Basis.Amount(60, "map"));
        wet.basis.put("overflow_rain_at Here", new Basis.Amount(120, "map"));
        wet.rainfall.clear();
        wet.rainfall.add(new Job.Rainfall(140.0, 5.0, 1.0, "a gauge"));
        wet.job.site = new Job.Site(null, null, null, null, null, "Here");
        Seen seen = with();
        assertEquals(new Facts.OverflowRain("a", 140), seen.fact(Facts.OverflowRain.class));
        assertEquals(new Facts.DesignRain("a", 60), seen.fact(Facts.DesignRain.class));
    }

    @Test
    void theRoofOfARunIsSharedByItsLength() {
        Seen seen = with();
        assertEquals(new Facts.RunRoof("a", 60), seen.fact(Facts.RunRoof.class));
        assertEquals(6, seen.fact(Facts.RoofWidth.class).widthM(), 1e-12);
    }
}
