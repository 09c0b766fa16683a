package eavesproof.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.hydraulics.GutterRun.OutletAt;
import eavesproof.hydraulics.RunSurface.Taken;
import eavesproof.hydraulics.Trough.Inflow;
import eavesproof.hydraulics.Trough.Sole;
import eavesproof.hydraulics.WaterSurface.At;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Runs with one outlet and with several: where the water parts, and where it would spill. */
class RunFlowTest {
    private static final int STEPS = 100;
    private static final Channel HALF_ROUND =
            new Channel(Profile.halfRound(0.112).section(), 0.010);

    private static OutletAt hole(double x, double diameter) {
        return new OutletAt(x, new RoundOutlet(diameter, 0, false));
    }

    /** Soles of x, height, x, height, … */
    private static List<Sole> soles(double... xh) {
        List<Sole> soles = new ArrayList<>();
        for (int i = 0; i < xh.length; i += 2) {
            soles.add(new Sole(xh[i], xh[i + 1]));
        }
        return soles;
    }

    private static GutterRun run(List<Sole> soles, double litresPerMetre, OutletAt... outlets) {
        return new GutterRun(
                HALF_ROUND, soles, litresPerMetre / 1000, List.of(), List.of(), List.of(outlets));
    }

    /** A roof with a high point in the middle and an outlet near each end. */
    private static final List<Sole> TWO_WAYS = soles(0, 0.004, 2, 0, 6, 0.008, 10, 0, 12, 0.004);

    @Test
    void oneOutletTakesAllFromBothSides() {
        Taken taken =
                RunFlow.solve(run(soles(0, 0.01, 6, 0, 9, 0.005), 0.1, hole(6, 0.08)), STEPS)
                        .outlets()
                        .get(0);
        assertEquals(0.0009, taken.flow(), 1e-12);
        assertEquals(0.0006, taken.fromLeft(), 1e-12);
        assertEquals(0.0003, taken.fromRight(), 1e-12);
    }

    /** With two equal outlets the water parts in the middle, where it stands level with itself. */
    @Test
    void betweenEqualOutletsTheWaterPartsInTheMiddle() {
        RunSurface flow = RunFlow.solve(run(TWO_WAYS, 0.1, hole(2, 0.08), hole(10, 0.08)), STEPS);
        assertEquals(0.0006, flow.outlets().get(0).flow(), 1e-8);
        assertEquals(0.0006, flow.outlets().get(1).flow(), 1e-8);
    }

    /** A high point that drowns does not part the water: the wider outlet draws from beyond it. */
    @Test
    void aDrownedHighPointDoesNotPartTheWater() {
        GutterRun run = run(TWO_WAYS, 0.2, hole(2, 0.03), hole(10, 0.08));
        RunSurface flow = RunFlow.solve(run, STEPS);
        Taken small = flow.outlets().get(0);
        Taken wide = flow.outlets().get(1);
        assertTrue(wide.fromLeft() > 0.2 * 4 / 1000, wide::toString);
        assertTrue(small.flow() < 0.2 * 6 / 1000, small::toString);
        double parts = 2 + small.fromRight() / 0.0002;
        List<At> there = flow.surface().points().stream().filter(at -> at.flow() == 0).toList();
        assertTrue(there.stream().anyMatch(at -> Math.abs(at.x() - parts) < 1e-6), there::toString);
        double level = flow.surface().depthAt(parts) + 0.008 * (parts - 2) / 4;
        assertTrue(level > 0.008, "the high point stays dry");
    }

    @Test
    void aDryHighPointPartsTheWaterWhateverTheOutlets() {
        List<Sole> high = soles(0, 0, 5, 0.06, 10, 0);
        RunSurface flow = RunFlow.solve(run(high, 0.02, hole(0, 0.04), hole(10, 0.08)), STEPS);
        assertEquals(0.0001, flow.outlets().get(0).flow(), 1e-6);
        assertEquals(0.0001, flow.outlets().get(1).flow(), 1e-6);
    }

    /** What an outlet cannot take goes past it to the next. */
    @Test
    void whatAnOutletCannotTakePassesIt() {
        GutterRun run = run(soles(0, 0.02, 10, 0), 0.1, hole(5, 0.02), hole(10, 0.08));
        RunSurface flow = RunFlow.solve(run, STEPS);
        Taken first = flow.outlets().get(0);
        assertTrue(first.fromRight() < 0, first::toString);
        assertEquals(first.flow(), first.fromLeft() + first.fromRight(), 1e-12);
        RoundOutlet small = new RoundOutlet(0.02, 0, false);
        assertEquals(first.flow(), small.flowAt(first.depth()), 1e-9);
    }

    @Test
    void withAnOutletBlockedTheOtherTakesAll() {
        GutterRun run = run(TWO_WAYS, 0.05, hole(2, 0.08), hole(10, 0.08));
        RunSurface flow = RunFlow.solve(run.without(0), STEPS);
        assertEquals(1, flow.outlets().size());
        assertEquals(0.0006, flow.outlets().get(0).flow(), 1e-12);
        assertTrue(flow.worst().freeboard() < RunFlow.solve(run, STEPS).worst().freeboard());
    }

    @Test
    void theFallInTheFlowDeepensTheWaterAboveACorner() {
        GutterRun straight = run(soles(0, 0.005, 10, 0), 0.1, hole(10, 0.08));
        GutterRun bent =
                new GutterRun(
                        HALF_ROUND,
                        straight.soles(),
                        straight.perMetre(),
                        List.of(),
                        List.of(6.0),
                        straight.outlets());
        double without = RunFlow.solve(straight, STEPS).surface().depthAt(3);
        assertTrue(RunFlow.solve(bent, STEPS).surface().depthAt(3) > without + 0.0005);
    }

    @Property(tries = 60)
    void whatFlowsInFlowsOutAtEveryStation(
            @ForAll @Scale(6) @DoubleRange(min = -0.01, max = 0.02) double left,
            @ForAll @Scale(6) @DoubleRange(min = -0.01, max = 0.03) double middle,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.3) double litresPerMetre,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double valley,
            @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 0.1) double diameter) {
        GutterRun run =
                new GutterRun(
                        HALF_ROUND,
                        soles(0, left, 5, middle, 9, 0, 12, 0.005),
                        litresPerMetre / 1000,
                        List.of(new Inflow(4, valley / 1000)),
                        List.of(7.0),
                        List.of(hole(1, diameter), hole(9, 0.08)));
        RunSurface flow = RunFlow.solve(run, STEPS);
        double out = flow.outlets().stream().mapToDouble(Taken::flow).sum();
        assertEquals(run.inflow(), out, 1e-9);
        Taken first = flow.outlets().get(0);
        for (At at : flow.surface().points()) {
            assertTrue(at.depth() >= 0, at::toString);
            if (at.x() > 4 && at.x() < 9) {
                double gathered = at.x() * litresPerMetre / 1000 + valley / 1000;
                assertEquals(gathered - first.flow(), at.flow(), 1e-9, at::toString);
            }
        }
    }

    /** Where the flow is subcritical all along, a steeper fall carries more. */
    @Property(tries = 40)
    void aSteeperFallNeverCarriesLess(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 2) double mmPerM,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1) double steeper) {
        double carries = factor(8 * mmPerM / 1000);
        assertTrue(factor(8 * (mmPerM + steeper) / 1000) >= carries - 1e-4);
    }

    private static double factor(double drop) {
        return GreatestRain.factor(run(soles(0, drop, 8, 0), 0.1, hole(8, 0.1)), 0, STEPS);
    }

    @Property(tries = 40)
    void aGutterTwiceAsWideCarriesMore(
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.2) double width,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.03) double drop) {
        assertTrue(factor(2 * width, drop) > 1.5 * factor(width, drop));
    }

    private static double factor(double width, double drop) {
        Channel channel = new Channel(Profile.rectangle(width, 0.06).section(), 0.010);
        return GreatestRain.factor(
                new GutterRun(
                        channel,
                        soles(0, drop, 8, 0),
                        0.0001,
                        List.of(),
                        List.of(),
                        List.of(new OutletAt(8, new FreeOutfall()))),
                0,
                STEPS);
    }

    /** At the greatest rain the water is up to the lip, and not above it. */
    @Test
    void theGreatestRainFillsTheGutter() {
        GutterRun run = run(TWO_WAYS, 0.1, hole(2, 0.06), hole(10, 0.08));
        double factor = GreatestRain.factor(run, 0, STEPS);
        assertEquals(0, RunFlow.solve(run.under(factor), STEPS).worst().freeboard(), 1e-5);
        double kept = GreatestRain.factor(run, 0.010, STEPS);
        assertEquals(0.010, RunFlow.solve(run.under(kept), STEPS).worst().freeboard(), 1e-5);
        assertTrue(kept < factor);
    }

    /** A level frictionless rectangle spills when √3 times critical depth is its height. */
    @Test
    void theGreatestRainOfALevelRectangleIsThatOfTheMomentumBalance() {
        Channel channel = new Channel(Profile.rectangle(0.1, 0.06).section(), 0);
        GutterRun run =
                new GutterRun(
                        channel,
                        soles(0, 0, 5, 0),
                        0.0001,
                        List.of(),
                        List.of(),
                        List.of(new OutletAt(5, new FreeOutfall())));
        double full = 0.1 * Math.sqrt(9.81 * Math.pow(0.06 / Math.sqrt(3), 3));
        assertEquals(full, GreatestRain.factor(run, 0, STEPS) * 0.0005, 1e-3 * full);
    }

    @Test
    void whereAPondAloneComesUpToTheLipNoRainIsCarried() {
        GutterRun run = run(soles(0, 0, 5, -0.07, 10, 0), 0.1, hole(10, 0.08));
        assertEquals(0, GreatestRain.factor(run, 0, STEPS), 0);
    }

    @Test
    void withoutAnyRoofThereIsNoGreatestRain() {
        GutterRun dry = run(soles(0, 0.01, 8, 0), 0, hole(8, 0.08));
        assertEquals(0.056, RunFlow.solve(dry, STEPS).worst().freeboard(), 1e-9);
        assertEquals(0, RunFlow.solve(dry, STEPS).outlets().get(0).flow(), 0);
        assertThrows(Refused.class, () -> GreatestRain.factor(dry, 0, STEPS));
    }

    /** A metre of rain an hour on 200 m²: far over the lip, and said so. */
    @Test
    void aMetreOfRainAnHourHasAnAnswer() {
        assertTimeoutPreemptively(
                Duration.ofSeconds(20),
                () -> {
                    GutterRun flood = run(TWO_WAYS, 56.0 / 12, hole(2, 0.05), hole(10, 0.05));
                    RunSurface flow = RunFlow.solve(flood, STEPS);
                    assertTrue(flow.worst().freeboard() < -1, () -> flow.worst().toString());
                    assertTrue(GreatestRain.factor(flood, 0, STEPS) < 0.1);
                });
    }

    @Test
    void fiveOutletsShareTheWater() {
        List<OutletAt> five = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            five.add(hole(1 + 2 * i, 0.02 + 0.01 * i));
        }
        RunSurface flow =
                RunFlow.solve(
                        run(soles(0, 0.02, 10, 0), 0.3, five.toArray(OutletAt[]::new)), STEPS);
        assertEquals(0.003, flow.outlets().stream().mapToDouble(Taken::flow).sum(), 1e-8);
        for (Taken taken : flow.outlets()) {
            assertEquals(
                    taken.flow(),
                    ((RoundOutlet) taken.outlet().outlet()).flowAt(taken.depth()),
                    1e-8);
        }
    }

    @Test
    void whatIsNoRunIsRefused() {
        List<Sole> bed = soles(0, 0.01, 8, 0);
        assertThrows(Refused.class, () -> run(bed, 0.1));
        assertThrows(Refused.class, () -> run(bed, 0.1, hole(9, 0.08)));
        assertThrows(Refused.class, () -> run(bed, 0.1, hole(4, 0.08), hole(4, 0.06)));
        String wide = assertThrows(Refused.class, () -> run(bed, 0.1, hole(4, 0.15))).getMessage();
        assertTrue(wide.contains("wider than its gutter"), wide);
        assertThrows(Refused.class, () -> run(soles(0, 0.9, 8, 0), 0.1, hole(4, 0.08)));
        assertThrows(Refused.class, () -> run(bed, Double.NaN, hole(4, 0.08)));
    }
}
