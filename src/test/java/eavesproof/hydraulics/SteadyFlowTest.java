package eavesproof.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.hydraulics.Trough.Inflow;
import eavesproof.hydraulics.Trough.Sole;
import eavesproof.hydraulics.WaterSurface.At;
import eavesproof.hydraulics.WaterSurface.Regime;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Flow along one trough: its regimes, and the laws that it keeps. */
class SteadyFlowTest {
    private static final double LITRE = 0.001;
    private static final double MICRON = 1e-6;

    private static List<Sole> bed(double length, double drop) {
        return List.of(new Sole(0, drop), new Sole(length, 0));
    }

    private static Channel rectangle(double width, double n) {
        return new Channel(Profile.rectangle(width, 0.1).section(), n);
    }

    private static At outlet(WaterSurface surface) {
        return surface.points().get(surface.points().size() - 1);
    }

    /** Water that all comes in at the top runs evenly in the end, by Manning: a mild slope. */
    @Test
    void farAboveAnOutfallAMildGutterRunsAtNormalDepth() {
        Channel channel = rectangle(0.1, 0.012);
        Trough trough = new Trough(channel, bed(60, 0.12), 0, List.of(new Inflow(0, LITRE)));
        double normal = channel.normalDepth(LITRE, 0.002);
        assertTrue(normal > channel.criticalDepth(LITRE));
        assertEquals(normal, SteadyFlow.solve(trough, 0, 600).depthAt(20), 1e-5);
    }

    /** The same on a steep slope, from the top down. */
    @Test
    void farBelowItsTopASteepGutterRunsAtNormalDepth() {
        Channel channel = rectangle(0.1, 0.009);
        Trough trough = new Trough(channel, bed(20, 1), 0, List.of(new Inflow(0, LITRE)));
        WaterSurface surface = SteadyFlow.solve(trough, 0, 600);
        assertEquals(channel.normalDepth(LITRE, 0.05), outlet(surface).depth(), 1e-6);
        assertEquals(Regime.SUPERCRITICAL, outlet(surface).regime());
    }

    /** The depths on both sides of a jump: y2/y1 = (√(1 + 8 F²) - 1)/2 (Bélanger; Chow 3-6). */
    @Test
    void aDrownedOutletPushesAJumpBackUpASteepGutter() {
        Channel channel = rectangle(0.1, 0.009);
        Trough trough = new Trough(channel, bed(20, 0.4), 0, List.of(new Inflow(0, LITRE)));
        WaterSurface surface = SteadyFlow.solve(trough, 0.06, 4000);
        assertEquals(0.06, outlet(surface).depth(), 1e-12);
        At above = surface.points().get(0);
        for (At below : surface.points()) {
            if (above.regime() == Regime.SUPERCRITICAL && below.regime() == Regime.SUBCRITICAL) {
                double froude2 = LITRE * LITRE / (9.81 * 0.01 * Math.pow(above.depth(), 3));
                double conjugate = above.depth() * (Math.sqrt(1 + 8 * froude2) - 1) / 2;
                assertEquals(conjugate, below.depth(), 2e-4);
                return;
            }
            above = below;
        }
        throw new AssertionError("no jump in " + surface);
    }

    /** Flat, then steep: the flow is critical at the brink and drowns nothing above it. */
    @Test
    void atABrinkTheFlowIsCritical() {
        Channel channel = rectangle(0.1, 0.010);
        List<Sole> brink = List.of(new Sole(0, 0.5), new Sole(5, 0.5), new Sole(10, 0.2));
        Trough trough = new Trough(channel, brink, 0, List.of(new Inflow(0, LITRE)));
        WaterSurface surface = SteadyFlow.solve(trough, 0.05, 400);
        assertEquals(channel.criticalDepth(LITRE), surface.depthAt(5), 1e-9);
        WaterSurface alone =
                SteadyFlow.solve(
                        new Trough(channel, bed(5, 0), 0, List.of(new Inflow(0, LITRE))), 0, 200);
        assertEquals(alone.points().get(0).depth(), surface.points().get(0).depth(), 1e-5);
    }

    /** Behind a crest the water stands as deep as it must to flow over it. */
    @Test
    void aSagIsAPoolBehindItsCrest() {
        Channel channel = rectangle(0.1, 0.010);
        List<Sole> sag =
                List.of(new Sole(0, 0.02), new Sole(3, 0), new Sole(6, 0.012), new Sole(9, -0.2));
        Trough trough = new Trough(channel, sag, LITRE / 10000, List.of());
        WaterSurface surface = SteadyFlow.solve(trough, 0, 600);
        double atCrest = channel.criticalDepth(6 * LITRE / 10000);
        assertEquals(0.012 + atCrest, surface.depthAt(3), 1.5 * atCrest);
        assertTrue(surface.depthAt(3) >= 0.012 + atCrest);
        assertEquals(0, surface.points().get(0).depth(), MICRON);
    }

    /** All that arrives at one place loses its momentum to the water that is there. */
    @Test
    void aValleyRaisesTheWaterAboveIt() {
        Channel channel = rectangle(0.1, 0);
        Trough trough =
                new Trough(
                        channel,
                        bed(10, 0),
                        0,
                        List.of(new Inflow(0, LITRE), new Inflow(6, LITRE)));
        List<At> points = SteadyFlow.solve(trough, 0, 100).points();
        At above = points.stream().filter(at -> at.x() == 6).findFirst().orElseThrow();
        At below = points.get(points.indexOf(above) + 1);
        assertEquals(6, below.x(), 0);
        assertEquals(LITRE, above.flow(), 1e-15);
        assertEquals(2 * LITRE, below.flow(), 1e-15);
        // Without friction on a level bed momentum is the same from end to end.
        double momentum = channel.momentum(channel.criticalDepth(2 * LITRE), 2 * LITRE);
        points.forEach(
                at -> assertEquals(momentum, channel.momentum(at.depth(), at.flow()), 1e-12));
        assertTrue(above.depth() > below.depth());
    }

    @Property(tries = 200)
    void aFrictionlessLevelGutterKeepsItsMomentum(
            @ForAll @Scale(6) @DoubleRange(min = 0.04, max = 0.3) double sole,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.2) double flare,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 5) double litres,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.2) double held) {
        Section section = Profile.trapezoid(sole, sole + flare, 0.1, 0.1).section();
        Channel channel = new Channel(section, 0);
        Trough trough = new Trough(channel, bed(8, 0), litres / 8000, List.of());
        WaterSurface surface = SteadyFlow.solve(trough, held, 50);
        double kept = channel.momentum(outlet(surface).depth(), litres / 1000);
        for (At at : surface.points()) {
            assertEquals(kept, channel.momentum(at.depth(), at.flow()), 1e-9 * kept);
        }
    }

    /** Each time the step shrinks by half the answer moves by less than half of what it did. */
    @Test
    void convergesAsTheStepShrinks() {
        Channel channel = new Channel(Profile.halfRound(0.1).section(), 0.010);
        Trough trough = new Trough(channel, bed(8, 0.016), 0.0001, List.of());
        converges(2, 80, 640, steps -> SteadyFlow.solve(trough, 0, steps).depthAt(2));
    }

    /** In deep subcritical flow the method is of fourth order: 16 times, less what rounds. */
    @Test
    void convergesInTheFourthOrderWhereTheWaterIsDeep() {
        Section section = SectionTest.profile(-15, 30, 0, 0, 10, 0, 25, 30).section();
        Trough trough = new Trough(new Channel(section, 0), bed(100, 1), 6, List.of());
        converges(8, 4, 64, steps -> SteadyFlow.solve(trough, 16.34, steps).depthAt(50));
    }

    private static void converges(double by, int from, int to, IntToDoubleFunction depth) {
        double before = depth.applyAsDouble(from / 2);
        double moved = Double.POSITIVE_INFINITY;
        for (int steps = from; steps <= to; steps *= 2) {
            double now = depth.applyAsDouble(steps);
            double moves = Math.abs(now - before);
            assertTrue(moves < moved / by, steps + " steps: " + moves + " after " + moved);
            before = now;
            moved = moves;
        }
        assertTrue(moved < MICRON, "" + moved);
    }

    /** Within 0.2 mm: close to critical flow the depth is that sensitive to the momentum. */
    @Property(tries = 1000)
    void moreRainIsNeverLessDeep(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 8) double mmPerM,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.3) double litresPerMetre,
            @ForAll @Scale(6) @DoubleRange(min = 1.01, max = 2) double more) {
        Channel channel = new Channel(Profile.rectangle(0.12, 0.08).section(), 0.010);
        Trough trough =
                new Trough(channel, bed(9, 9 * mmPerM / 1000), litresPerMetre / 1000, List.of());
        WaterSurface dry = SteadyFlow.solve(trough, 0, 60);
        WaterSurface wet = SteadyFlow.solve(trough.under(more), 0, 60);
        for (int i = 0; i < dry.points().size(); i++) {
            assertTrue(
                    wet.points().get(i).depth() >= dry.points().get(i).depth() - 200 * MICRON,
                    i + ": " + dry.points().get(i) + " " + wet.points().get(i));
        }
    }

    /** Any bed, any inflow: depths are numbers, never below 0, and what flows in flows out. */
    @Property(tries = 300)
    void everyBedHasASurface(
            @ForAll @Scale(6) @DoubleRange(min = -0.08, max = 0.08) double left,
            @ForAll @Scale(6) @DoubleRange(min = -0.08, max = 0.08) double middle,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 3) double litresPerMetre,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 5) double valley,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.15) double held) {
        Channel channel = new Channel(Profile.halfRound(0.125).section(), 0.010);
        List<Sole> bed = List.of(new Sole(0, left), new Sole(3, middle), new Sole(6, 0));
        Trough trough =
                new Trough(
                        channel, bed, litresPerMetre / 1000, List.of(new Inflow(2, valley / 1000)));
        WaterSurface surface = SteadyFlow.solve(trough, held, 80);
        for (At at : surface.points()) {
            assertTrue(at.depth() >= 0 && at.depth() < 10, at::toString);
        }
        assertEquals(6 * litresPerMetre / 1000 + valley / 1000, outlet(surface).flow(), 1e-12);
    }

    @Test
    void whatIsNoTroughIsRefused() {
        Channel channel = rectangle(0.1, 0.01);
        assertThrows(Refused.class, () -> new Trough(channel, List.of(), 0, List.of()));
        assertThrows(Refused.class, () -> new Trough(channel, bed(1, 0.2), 0, List.of()));
        assertThrows(Refused.class, () -> new Trough(channel, bed(0, 0.2), 0, List.of()));
        assertThrows(Refused.class, () -> new Trough(channel, bed(5, 0), -1, List.of()));
        assertThrows(Refused.class, () -> new Trough(channel, bed(5, 0), Double.NaN, List.of()));
        assertThrows(Refused.class, () -> new Channel(channel.section(), Double.NaN));
        Trough trough = new Trough(channel, bed(5, 0), 0, List.of());
        assertThrows(Refused.class, () -> SteadyFlow.solve(trough, Double.NaN, 10));
    }
}
