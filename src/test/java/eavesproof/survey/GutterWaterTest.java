package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.hydraulics.Channel;
import eavesproof.hydraulics.GutterRun;
import eavesproof.hydraulics.GutterRun.OutletAt;
import eavesproof.hydraulics.Profile;
import eavesproof.hydraulics.RoundOutlet;
import eavesproof.hydraulics.RunFlow;
import eavesproof.hydraulics.Trough.Sole;
import eavesproof.job.Job;
import eavesproof.job.Run.End;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class GutterWaterTest {
    private final WetJob wet = new WetJob();

    /** 60 m² × 90 mm/h = 5400 L/h = 1.5 L/s. */
    @Test
    void theDemandIsTheRainOnTheRoof() {
        Seen seen = wet.survey();
        assertEquals(1.5, seen.fact(Facts.RunDemand.class).flowLs(), 1e-12);
        assertEquals(1.5, seen.fact(Facts.OutletDemand.class).flowLs(), 1e-9);
        assertEquals(90, seen.fact(Facts.DesignRain.class).intensityMmH());
    }

    /** The same run given to the hydraulics directly; a half-round 56 mm deep, turned by 5 mm. */
    @Test
    void theFreeboardIsThatOfTheRunAsBuilt() {
        GutterRun run =
                new GutterRun(
                        new Channel(Profile.halfRound(0.112).tilted(0.005).section(), 0.010),
                        List.of(
                                new Sole(0, 0.020),
                                new Sole(0.05, 0.020),
                                new Sole(5, 0.010),
                                new Sole(9.95, 0),
                                new Sole(10, 0)),
                        0.00015,
                        List.of(),
                        List.of(),
                        List.of(new OutletAt(9.9, new RoundOutlet(0.080, 0, false))));
        double expected = RunFlow.solve(run, 100).worst().freeboard() * 1000;
        assertEquals(expected, wet.survey().fact(Facts.GutterFreeboard.class).freeboardMm(), 1e-6);
        assertTrue(expected > 0 && expected < 56, "" + expected);
    }

    /** Weir: D h^1.5 / 7500 up to h = D/2, beyond it D² √h / 15000, in L/s and mm. */
    @Test
    void theOutletIsHeldAgainstWhatItTakesFromAFullGutter() {
        Seen seen = wet.survey();
        // A half-round 112 mm wide, turned about its own axis, is full where its lower lip is.
        double full = 56 - 2.5;
        double takes = 80 * 80 * Math.sqrt(full) / 15000;
        assertEquals(1.5 / takes, seen.fact(Facts.OutletRatio.class).ratio(), 0.001);
    }

    @Test
    void aStrainerHalvesTheOutlet() {
        double open = wet.survey().fact(Facts.OutletRatio.class).ratio();
        WetJob other = new WetJob();
        other.strainer = "yes";
        assertEquals(2 * open, other.survey().fact(Facts.OutletRatio.class).ratio(), 1e-9);
    }

    /**
     * EN 12056-3: 0.9 × 2.78e-5 × A^1.25. The reach of 9900 mm is 185 times as long as it is deep
     * to its lower lip, 53.5 mm: the next printed row is 200 with 0.80.
     */
    @Test
    void aReachOfAHalfRoundIsHeldAgainstTheNominalMethod() {
        Seen seen = wet.survey();
        Facts.ReachRatio left =
                seen.facts(Facts.ReachRatio.class).stream()
                        .filter(it -> it.side().equals("left"))
                        .findFirst()
                        .orElseThrow();
        Profile hung = Profile.halfRound(0.112).tilted(0.005);
        double areaMm2 = hung.section().area(hung.section().lip()) * 1e6;
        double carries = 0.9 * 2.78e-5 * Math.pow(areaMm2, 1.25) * 0.80;
        assertEquals(1.5 * 9.9 / 10 / carries, left.ratio(), 0.001);
    }

    @Test
    void wherePartOfTheFlowCountsTheGutterCarriesThatPart() {
        double whole =
                new WetJob()
                        .number("gutter_share", 1)
                        .survey()
                        .fact(Facts.GutterRatio.class)
                        .ratio();
        double part = wet.survey().fact(Facts.GutterRatio.class).ratio();
        assertEquals(whole / 0.75, part, 1e-4);
    }

    @Test
    void aWallSendsItsShare() {
        wet.walls = List.of(new Job.Wall(20.0, "west"));
        assertEquals(70 * 90 / 3600.0, wet.survey().fact(Facts.RunDemand.class).flowLs(), 1e-9);
    }

    /**
     * A plumbing code commentary (NPC 2005), published: a roof of 3 × 4 m with a wall of 3 × 4 m
     * above it, of which half counts, is 18 m².
     */
    @Test
    void halfOfAWallCountsAsRoof() {
        wet.planM2 = 12.0;
        wet.walls = List.of(new Job.Wall(12.0, "west"));
        wet.rainfall.clear();
        wet.rainfall.add(new Job.Rainfall(100.0, 10.0, 10.0, "a map"));
        // 100 mm/h on 1 m² is 100/3600 L/s.
        double squareMetres = wet.survey().fact(Facts.RunDemand.class).flowLs() * 36;
        assertEquals(18, squareMetres, 1e-9);
    }

    /** (1 + tan 20° / 2) of the plan. */
    @Test
    void whereTheRuleSetSaysSoHalfTheRiseCounts() {
        wet.word("roof_rain", "plan and half the rise");
        assertEquals(
                1.5 * (1 + Math.tan(Math.toRadians(20)) / 2),
                wet.survey().fact(Facts.RunDemand.class).flowLs(),
                1e-9);
    }

    @Test
    void aStrongerRainServesWhereTheAskedOneIsMissing() {
        wet.rainfall.clear();
        wet.rainfall.add(new Job.Rainfall(120.0, 5.0, 10.0, "a map"));
        wet.rainfall.add(new Job.Rainfall(150.0, 5.0, 2.0, "a map"));
        wet.rainfall.add(new Job.Rainfall(60.0, 10.0, 50.0, "a map"));
        assertEquals(120, wet.survey().fact(Facts.DesignRain.class).intensityMmH());
    }

    @Test
    void aWeakerRainBesideTheOneAskedForChangesNothing() {
        List<Job.Rainfall> weaker =
                List.of(
                        new Job.Rainfall(60.0, 10.0, 1.0, "rarer"),
                        new Job.Rainfall(60.0, 5.0, 10.0, "shorter"),
                        new Job.Rainfall(60.0, 10.0, 10.0, "the same again"));
        for (Job.Rainfall other : weaker) {
            wet.rainfall.clear();
            wet.rainfall.add(new Job.Rainfall(200.0, 10.0, 10.0, "a map"));
            wet.rainfall.add(other);
            assertEquals(200, wet.survey().fact(Facts.DesignRain.class).intensityMmH());
        }
        wet.rainfall.clear();
        wet.rainfall.add(new Job.Rainfall(10.0, 10.0, 10.0, "a map"));
        wet.rainfall.add(new Job.Rainfall(150.0, 20.0, 10.0, "a longer one"));
        assertEquals(150, wet.survey().fact(Facts.DesignRain.class).intensityMmH());
    }

    @Test
    void aWeakerRainDoesNotServe() {
        wet.rainfall.clear();
        wet.rainfall.add(new Job.Rainfall(60.0, 20.0, 10.0, "a map"));
        String why = wet.survey().gaps(Facts.GutterFreeboard.class).get(0);
        assertTrue(why.contains("a rainfall of 10 minutes and a yearly chance of 10 %"), why);
    }

    /** In a level gutter what comes from farther away needs more depth. */
    @Test
    void aValleyArrivesWhereItIsRecorded() {
        assertTrue(freeboardWithAValleyAt(300) < freeboardWithAValleyAt(9000) - 1);
    }

    private static double freeboardWithAValleyAt(double stationMm) {
        WetJob wet = new WetJob();
        wet.job.a1.readings.clear();
        wet.job.a1.reading(50, 400).reading(9950, 400);
        Job.Inflow valley = new Job.Inflow("valley", "a1", stationMm);
        wet.job.catchments =
                List.of(
                        new Job.Catchment(
                                "c1", "a", 20.0, 20.0, null, List.of(), null, null, null, null,
                                null, null),
                        new Job.Catchment(
                                "c2", "a", 20.0, 20.0, null, List.of(), valley, null, null, null,
                                null, null));
        Seen seen = wet.survey();
        assertEquals(1, seen.fact(Facts.OutletDemand.class).flowLs(), 1e-9);
        return seen.fact(Facts.GutterFreeboard.class).freeboardMm();
    }

    @Test
    void withTwoOutletsEitherMayBeBlocked() {
        wet.job.way.add(wet.outlet("o1", 9900.0));
        wet.job.way.add(wet.outlet("o2", 200.0));
        Seen seen = wet.survey();
        assertEquals(2, seen.facts(Facts.BlockedFreeboard.class).size());
        double both = seen.fact(Facts.GutterFreeboard.class).freeboardMm();
        for (Facts.BlockedFreeboard one : seen.facts(Facts.BlockedFreeboard.class)) {
            assertTrue(one.freeboardMm() < both, one::toString);
        }
        double sum =
                seen.facts(Facts.OutletDemand.class).stream()
                        .mapToDouble(Facts.OutletDemand::flowLs)
                        .sum();
        assertEquals(1.5, sum, 1e-6);
    }

    @Test
    void aSingleOutletHasNoOtherToBeBlockedFor() {
        assertEquals(
                List.of("a o1: run a has no outlet besides o1"),
                wet.survey().none(Facts.BlockedFreeboard.class));
    }

    @Test
    void thatThereIsNoOtherOutletIsKnownHoweverTheGutterLies() {
        wet.job.a1.readings.clear();
        assertEquals(
                List.of("a o1: run a has no outlet besides o1"),
                wet.survey().none(Facts.BlockedFreeboard.class));
    }

    /** A sag as deep as the gutter: it spills without any rain. */
    @Test
    void aGutterThatAPondFillsIsOverloadedAtOnce() {
        wet.job.a1.readings.clear();
        wet.job.a1.reading(50, 400).reading(5000, 500).reading(9950, 420);
        Seen seen = wet.survey();
        assertTrue(seen.fact(Facts.GutterFreeboard.class).freeboardMm() < 0);
        assertEquals(1000, seen.fact(Facts.GutterRatio.class).ratio());
    }

    @Test
    void aMetreOfRainAnHourIsFarTooMuch() {
        wet.rainfall.clear();
        wet.rainfall.add(new Job.Rainfall(1000.0, 10.0, 10.0, "a jest"));
        Seen seen = wet.survey();
        assertTrue(seen.fact(Facts.GutterFreeboard.class).freeboardMm() < -100);
        assertTrue(seen.fact(Facts.GutterRatio.class).ratio() > 5);
        assertTrue(seen.fact(Facts.DownpipeRatio.class).ratio() > 5);
    }

    private static Arguments lacks(String why, Consumer<WetJob> change) {
        return Arguments.of(why, change);
    }

    static Stream<Arguments> lacking() {
        return Stream.of(
                lacks("no catchment of run a", job -> job.job.catchments = List.of()),
                lacks("the plan area of catchment c1", job -> job.planM2 = null),
                lacks("whether walls stand above catchment c1", job -> job.walls = null),
                lacks(
                        "a rainfall of 10 minutes and a yearly chance of 10 %",
                        job -> job.rainfall.clear()),
                lacks("the width of gutter g", job -> job.widthMm = null),
                lacks("the front bead of straight a1", job -> job.job.a1.tilts = null),
                lacks("the front bead of straight a1", job -> job.job.a1.tilts = List.of()),
                lacks("the levels of run a", job -> job.job.a1.readings.clear()),
                lacks("reach to 300 mm from both ends", job -> job.job.a1.readings.remove(2)),
                lacks("the left end of a1", job -> job.job.a1.left = null),
                lacks("is recorded as open", job -> job.job.a1.right = new End("open", null)),
                lacks("the size of outlet o1", job -> job.outletMm = null),
                lacks("whether outlet o1 has a strainer", job -> job.strainer = null),
                lacks("whether outlet o1 has a strainer", job -> job.strainer = "unknown"),
                lacks("is wider than its gutter", job -> job.outletMm = 150.0),
                lacks("the length of straight a1", job -> job.job.a1.lengthMm = null),
                lacks(
                        "how rough a gutter of a material is",
                        job -> job.basis.remove("manning_n PVC-U")),
                lacks(
                        "how long the design rain lasts",
                        job -> job.basis.remove("rain_duration_min")),
                lacks("what part of the rain runs off", job -> job.basis.remove("run_off")),
                lacks("how much an outlet takes", job -> job.basis.remove("outlet_method")),
                lacks("steeper than 1 in 10", job -> job.job.a1.reading(5100, 900)));
    }

    @ParameterizedTest
    @MethodSource("lacking")
    void whatIsLackingIsAGapAndSaysWhat(String why, Consumer<WetJob> change) {
        change.accept(wet);
        Seen seen = wet.survey();
        for (var kind :
                List.of(
                        Facts.GutterFreeboard.class,
                        Facts.GutterRatio.class,
                        Facts.ReachRatio.class,
                        Facts.OutletRatio.class)) {
            assertEquals(List.of(), seen.facts(kind));
            assertFalse(seen.gaps(kind).isEmpty(), kind::getSimpleName);
            assertTrue(seen.gaps(kind).get(0).contains(why), () -> seen.gaps(kind).toString());
        }
    }

    /** How the water stands in the gutter does not change what comes to its only outlet. */
    @Test
    void theOnlyOutletTakesAllHoweverTheGutterLies() {
        wet.job.a1.readings.clear();
        Seen seen = wet.survey();
        assertEquals(1.5, seen.fact(Facts.OutletDemand.class).flowLs(), 1e-9);
        assertEquals(1, seen.facts(Facts.DownpipeRatio.class).size());
    }

    @Test
    void ofSeveralOutletsNobodyKnowsWhichTakesWhatUnlessTheLevelsAreRead() {
        wet.job.way.add(wet.outlet("o1", 9900.0));
        wet.job.way.add(wet.outlet("o2", 200.0));
        wet.job.a1.readings.clear();
        Seen seen = wet.survey();
        assertEquals(List.of(), seen.facts(Facts.OutletDemand.class));
        assertEquals(List.of(), seen.facts(Facts.DownpipeRatio.class));
    }

    @Test
    void withoutAnOutletNothingIsCarried() {
        AJob dry = wet.job;
        wet.survey();
        dry.way.removeIf(eavesproof.job.WayPart.Outlet.class::isInstance);
        assertEquals(
                List.of("a: run a has no outlet"), dry.survey().gaps(Facts.GutterFreeboard.class));
    }
}
