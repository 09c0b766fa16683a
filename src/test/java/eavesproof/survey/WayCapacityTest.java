package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Run;
import eavesproof.job.Said;
import eavesproof.job.WayPart;
import eavesproof.quantity.Uncertain;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WayCapacityTest {
    private final WetJob wet = new WetJob();

    /** 2.5e-4 × 0.25^-0.167 × 80^2.667 × 0.20^1.667 L/s, of the formula in EN 12056-3. */
    private static final double PIPE_80 =
            2.5e-4 * Math.pow(0.25, -0.167) * Math.pow(80, 2.667) * Math.pow(0.20, 1.667);

    /** Manning, 100 mm at 1:100, n 0.011, y/D 0.7: A/D² 0.587230, R/D 0.296235 (Chow). */
    private static final double DRAIN_100 =
            1000 * (0.587230 * 0.01) * Math.pow(0.296235 * 0.1, 2.0 / 3) * Math.sqrt(0.01) / 0.011;

    @Test
    void pipesAreHeldAgainstAllThatComesToThem() {
        Seen seen = wet.survey();
        assertEquals(1.5 / PIPE_80, seen.fact(Facts.DownpipeRatio.class).ratio(), 1e-6);
        assertEquals(1.5 / DRAIN_100, seen.fact(Facts.DrainRatio.class).ratio(), 1e-5);
    }

    @Test
    void otherRoofsOnAPipeCount() {
        wet.downpipe =
                WetJob.downpipe(80.0, "existing", List.of(WetJob.roof("r", 40.0)), List.of());
        Seen seen = wet.survey();
        assertEquals(2.5 / PIPE_80, seen.fact(Facts.DownpipeRatio.class).ratio(), 1e-6);
        assertEquals(2.5 / DRAIN_100, seen.fact(Facts.DrainRatio.class).ratio(), 1e-5);
    }

    @Test
    void whatRestsOnAnAssumedRoofSaysSoAllTheWayDown() {
        WayPart.OtherRoof guess =
                new WayPart.OtherRoof("r", null, new Said<>(40.0, "assumed", "A. Fitter", null));
        wet.downpipe = WetJob.downpipe(80.0, "existing", List.of(guess), List.of());
        Seen seen = wet.survey();
        for (Facts.Fact fact :
                List.of(seen.fact(Facts.DownpipeRatio.class), seen.fact(Facts.DrainRatio.class))) {
            Provenance known = seen.known(fact).provenance();
            assertTrue(known.isAssumed(), fact::toString);
            assertEquals(Optional.of("A. Fitter"), known.by());
        }
    }

    @Test
    void aRoofThatSomebodyToldIsNoAssumption() {
        wet.downpipe =
                WetJob.downpipe(80.0, "existing", List.of(WetJob.roof("r", 40.0)), List.of());
        Seen seen = wet.survey();
        Facts.Fact ratio = seen.fact(Facts.DownpipeRatio.class);
        assertEquals(Provenance.MEASURED, seen.known(ratio).provenance());
    }

    @Test
    void anExistingDownpipeIsNeverTakenToBeFree() {
        wet.downpipe = WetJob.downpipe(80.0, "existing", null, List.of());
        Seen seen = wet.survey();
        String why = "what other roofs drain into d1 is not recorded";
        assertEquals(List.of("a d1: " + why), seen.gaps(Facts.DownpipeRatio.class));
        assertEquals(List.of("a g1: " + why), seen.gaps(Facts.DrainRatio.class));
    }

    @Test
    void norIsOneOfWhichNobodySaidWhetherItIsNew() {
        wet.drain = WetJob.drain(100.0, null, null, 100.0);
        Seen seen = wet.survey();
        assertEquals(1, seen.facts(Facts.DownpipeRatio.class).size());
        assertEquals(
                List.of("a g1: what other roofs drain into g1 is not recorded"),
                seen.gaps(Facts.DrainRatio.class));
    }

    @Test
    void aRoofWithoutAnAreaIsAGap() {
        wet.downpipe =
                WetJob.downpipe(80.0, "existing", List.of(WetJob.roof("r", null)), List.of());
        assertEquals(
                List.of("a d1: the plan area of roof r on d1 is not recorded"),
                wet.survey().gaps(Facts.DownpipeRatio.class));
    }

    @Test
    void anotherPipeThatJoinsTheDrainCounts() {
        wet.job.way.add(
                new WayPart.Downpipe(
                        "d2",
                        "g1",
                        null,
                        80.0,
                        null,
                        null,
                        null,
                        "existing",
                        List.of(WetJob.roof("r", 20.0)),
                        null,
                        List.of(),
                        null,
                        null,
                        null,
                        null));
        Seen seen = wet.survey();
        assertEquals(1.5 / PIPE_80, seen.fact(Facts.DownpipeRatio.class).ratio(), 1e-6);
        assertEquals(2.0 / DRAIN_100, seen.fact(Facts.DrainRatio.class).ratio(), 1e-5);
    }

    @Test
    void anOutletWhoseWayIsNotRecordedMayJoinAnyPipe() {
        wet.job.way.add(wet.outlet("o1", 9900.0));
        wet.job.way.add(AJob.outlet("o2", null, "a1", 200.0, 100.0, "fixed", "yes"));
        String gap = wet.survey().gaps(Facts.DownpipeRatio.class).toString();
        assertTrue(gap.contains("where the water goes from o2 is not recorded"), gap);
    }

    @Test
    void aSteepOffsetDoesNotMatter() {
        wet.downpipe = WetJob.downpipe(80.0, "new", null, List.of(new WayPart.Offset(500.0, 45.0)));
        assertEquals(1.5 / PIPE_80, wet.survey().fact(Facts.DownpipeRatio.class).ratio(), 1e-6);
    }

    @Test
    void anOffsetThatIsFlatCarriesWhatADrainDoes() {
        double angle = Math.toDegrees(Math.atan(0.005));
        wet.downpipe =
                WetJob.downpipe(100.0, "new", null, List.of(new WayPart.Offset(500.0, angle)));
        double carries = DRAIN_100 / Math.sqrt(2);
        assertEquals(1.5 / carries, wet.survey().fact(Facts.DownpipeRatio.class).ratio(), 1e-5);
    }

    @Test
    void offsetsThatAreNotRecordedAreAGap() {
        wet.downpipe = WetJob.downpipe(80.0, "new", null, null);
        assertEquals(
                List.of("a d1: the offsets of downpipe d1 is not recorded"),
                wet.survey().gaps(Facts.DownpipeRatio.class));
    }

    @Test
    void aDrainThatDoesNotFallIsAGap() {
        wet.drain = WetJob.drain(100.0, "new", null, -20.0);
        String gap = wet.survey().gaps(Facts.DrainRatio.class).toString();
        assertTrue(gap.contains("even flow, which needs a fall"), gap);
    }

    @Test
    void aPipeOutsideTheMethodIsAGap() {
        wet.downpipe = WetJob.downpipe(40.0, "new", null, List.of());
        String gap = wet.survey().gaps(Facts.DownpipeRatio.class).toString();
        assertTrue(gap.contains("outside 50 to 300 of EN 12056-3"), gap);
    }

    /** 27.8 × (7/24)^(5/3) × d^(8/3) gallons a minute. */
    @Test
    void theRuleSetMayNameAnotherMethod() {
        wet.word("downpipe_method", "7/24 full");
        double gallons = 27.8 * Math.pow(7.0 / 24, 5.0 / 3) * Math.pow(80 / 25.4, 8.0 / 3);
        double litres = gallons * 3.785411784 / 60;
        assertEquals(1.5 / litres, wet.survey().fact(Facts.DownpipeRatio.class).ratio(), 1e-6);
    }

    private static Uncertain sure(Seen seen, Facts.Fact fact) {
        return seen.value(fact);
    }

    /**
     * By Manning the flow goes with the root of the fall: a drop of 100 mm with u 0.289 mm (class
     * II to 1 m) puts 0.289 / 100 / 2 into the ratio, the length of 10 m with u 1.328 mm 0.0066 %.
     */
    @Test
    void theRatioOfADrainIsAsSureAsItsFall() {
        Seen seen = wet.survey();
        Facts.DrainRatio drain = seen.fact(Facts.DrainRatio.class);
        Uncertain ratio = sure(seen, drain);
        double relative = Math.hypot(0.5 / Math.sqrt(3) / 100, 2.3 / Math.sqrt(3) / 10_000) / 2;
        assertEquals(relative, ratio.standardUncertainty() / ratio.value(), 1e-3 * relative);
        assertFalse(ratio.isStated());
        assertTrue(
                seen.known(drain).workings().stream()
                        .anyMatch(
                                step ->
                                        step.name().equals("how sure")
                                                && step.from().contains("roughness")));
    }

    /** Of an upright pipe as marked, and a roof as drawn, nothing is measured. */
    @Test
    void aRatioOfWhichNothingWasMeasuredSaysNothingOfHowSureItIs() {
        Seen seen = wet.survey();
        Facts.DownpipeRatio pipe = seen.fact(Facts.DownpipeRatio.class);
        assertTrue(sure(seen, pipe).sources().isEmpty());
        assertFalse(sure(seen, pipe).isStated());
        assertTrue(
                seen.known(pipe).workings().stream()
                        .noneMatch(step -> step.name().equals("how sure")));
    }

    @Test
    void aDrainThatBacksUpSpillsAtItsOwnOutletWhereThereIsNoOther() {
        assertEquals(
                new Facts.LowestOpening("a", "g1", "o1", 0),
                wet.survey().fact(Facts.LowestOpening.class));
    }

    @Test
    void aTankThatLiesLowerSpillsFirst() {
        wet.job.way.add(new WayPart.Tank("t1", "g1", 1900.0, 80.0, "yes", null, 100.0, "no"));
        assertEquals(
                new Facts.LowestOpening("a", "g1", "t1", 1800),
                wet.survey().fact(Facts.LowestOpening.class));
    }

    @Test
    void anOpeningOverADoorIsSaidToBeOverIt() {
        wet.job.a1.zones = List.of(new Run.KeepClear("z1", "front door", 9500.0, 10_400.0));
        Seen seen = wet.survey();
        assertTrue(
                seen.known(seen.fact(Facts.LowestOpening.class)).workings().stream()
                        .anyMatch(
                                step ->
                                        step.name().equals("what o1 would spill on")
                                                && step.value().equals("front door")));
        WayCapacityTest beside = new WayCapacityTest();
        beside.wet.job.a1.zones = List.of(new Run.KeepClear("z1", "front door", 100.0, 1000.0));
        Seen elsewhere = beside.wet.survey();
        assertTrue(
                elsewhere.known(elsewhere.fact(Facts.LowestOpening.class)).workings().stream()
                        .noneMatch(step -> step.value().equals("front door")));
    }

    @Test
    void theOpeningsOfOtherRoofsAreNotKnown() {
        wet.drain = WetJob.drain(100.0, "existing", List.of(WetJob.roof("r", 20.0)), 100.0);
        assertEquals(
                List.of("a g1: how high the openings of the other roofs on g1 lie is not recorded"),
                wet.survey().gaps(Facts.LowestOpening.class));
    }

    @Test
    void aTankLetsOutWhatItTakesIn() {
        wet.downpipe =
                new WayPart.Downpipe(
                        "d1", "t1", 1800.0, 80.0, null, null, null, "new", null, null, List.of(),
                        null, null, null, null);
        wet.job.way.add(new WayPart.Tank("t1", "g1", 1900.0, 80.0, "yes", null, 50.0, "no"));
        assertEquals(1.6, wet.survey().fact(Facts.TankOverflowRatio.class).ratio(), 1e-12);
    }

    private Seen withTank(Double inletMm, String screened, Double overflowMm) {
        wet.downpipe =
                new WayPart.Downpipe(
                        "d1", "t1", 1800.0, 80.0, null, null, null, "new", null, null, List.of(),
                        null, null, null, null);
        wet.job.way.add(
                new WayPart.Tank("t1", "g1", 1900.0, inletMm, screened, null, overflowMm, "no"));
        return wet.survey();
    }

    @Test
    void theInletOfATankTakesWhatAPipeOfItsSizeCarries() {
        assertEquals(
                1.5 / PIPE_80,
                withTank(80.0, "no", 50.0).fact(Facts.TankInletRatio.class).ratio(),
                1e-6);
    }

    @Test
    void aScreenHalvesWhatTheInletTakes() {
        assertEquals(
                3.0 / PIPE_80,
                withTank(80.0, "yes", 50.0).fact(Facts.TankInletRatio.class).ratio(),
                1e-6);
    }

    @Test
    void anInletOfWhichNobodySaidWhetherItIsScreenedIsAGap() {
        assertEquals(
                List.of("a t1: whether the inlet of tank t1 is screened is not recorded"),
                withTank(80.0, null, 50.0).gaps(Facts.TankInletRatio.class));
    }

    @Test
    void anInletWithoutASizeIsAGap() {
        assertEquals(
                List.of("a t1: the size of the inlet of tank t1 is not recorded"),
                withTank(null, "no", 50.0).gaps(Facts.TankInletRatio.class));
    }

    /** A hole of 50 mm, full to its top: 0.6 × 8/15 × √(2 × 9.81) × 0.05^2.5 m³/s. */
    @Test
    void theOverflowOfATankIsHeldAgainstAllThatComesToIt() {
        double litres = 1000 * 0.6 * 8 / 15 * Math.sqrt(2 * 9.81) * 0.05 * 0.05 * Math.sqrt(0.05);
        assertEquals(
                1.5 / litres,
                withTank(80.0, "no", 50.0).fact(Facts.TankOverflowLoad.class).ratio(),
                1e-9);
    }

    @Test
    void anOverflowWithoutASizeIsAGap() {
        assertEquals(
                List.of("a t1: the size of the overflow of tank t1 is not recorded"),
                withTank(80.0, "no", null).gaps(Facts.TankOverflowLoad.class));
    }
}
