package eavesproof.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Even and critical flow, and side channels, against answers printed elsewhere. */
class OpenChannelTest {
    private static final double FOOT = 0.3048;

    /** A straight bed of this length that falls by this much. */
    private static List<Trough.Sole> bed(double length, double drop) {
        return List.of(new Trough.Sole(0, drop), new Trough.Sole(length, 0));
    }

    /** Textbook Manning examples, published: b 5 m, n 0.015; 9.548 m³/s ± 0.001 and 26.23 m³/s. */
    @ParameterizedTest
    @CsvSource({"0.8, 0.0025, 9.548, 0.001", "1.5, 0.003, 26.23, 0.005"})
    void carriesWhatTheTextbooksSay(double depth, double slope, double flow, double tolerance) {
        Section section = Section.rectangle(5, 4);
        double area = section.area(depth);
        double manning =
                area
                        * Math.pow(area / section.perimeter(depth), 2.0 / 3)
                        * Math.sqrt(slope)
                        / 0.015;
        assertEquals(flow, manning, tolerance);
        Channel channel = new Channel(section, 0.015);
        assertEquals(slope, channel.frictionSlope(depth, manning), 1e-12);
        assertEquals(depth, channel.normalDepth(manning, slope), 1e-9);
    }

    /**
     * FHWA HEC-14 table B.1, published: K = Q n / (b^(8/3) √S) in US units, divided by 1.486 in
     * metric; rectangle ± 0.3 %, trapezoid (z to both sides) ± 0.6 %.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0.05, 0.00947, 0.003",
        "0, 0.10, 0.0283, 0.003",
        "1, 0.10, 0.0318, 0.006",
        "3, 0.10, 0.0358, 0.006"
    })
    void agreesWithTheTabulatedConveyance(double z, double depth, double k, double tolerance) {
        Section section =
                Section.through(
                        List.of(
                                new Section.Point(-z, 1),
                                new Section.Point(0, 0),
                                new Section.Point(1, 0),
                                new Section.Point(1 + z, 1)));
        double area = section.area(depth);
        double conveyance = area * Math.pow(area / section.perimeter(depth), 2.0 / 3);
        assertEquals(k / 1.486, conveyance, k / 1.486 * tolerance);
    }

    /** Textbook, published: 50 m²/s a metre gives a critical depth of 6.34 m. */
    @Test
    void findsTheCriticalDepthOfAWideRectangle() {
        Channel channel = new Channel(Section.rectangle(1, 10), 0);
        assertEquals(6.34, channel.criticalDepth(50), 0.005);
    }

    /**
     * Textbook, published: b 10 ft, 600 cfs, n 0.025: critical depth 4.82 ft, critical slope
     * 0.0132.
     */
    @Test
    void findsTheCriticalDepthAndSlope() {
        Channel channel =
                new Channel(Section.rectangle(10 * FOOT, 10 * FOOT), 0.025 * 1.486 / 1.49);
        double flow = 600 * FOOT * FOOT * FOOT;
        double critical = channel.criticalDepth(flow);
        assertEquals(4.82, critical / FOOT, 0.005);
        assertEquals(0.0132, channel.frictionSlope(critical, flow), 0.00005);
    }

    /**
     * Geometric elements of a circle (Chow), published; a half-circle is as far as a gutter goes.
     */
    @Test
    void aHalfRoundIsHalfACircle() {
        Section section = Section.halfRound(0.1);
        assertEquals(Math.PI * 0.1 * 0.1 / 8, section.area(0.05), 0.0001 * section.area(0.05));
        assertEquals(Math.PI * 0.05, section.perimeter(0.05), 1e-5);
        assertEquals(0.1, section.surfaceWidth(0.05), 1e-9);
        assertEquals(0.05, section.lip(), 1e-12);
    }

    @Test
    void aProfileThatCrossesItselfIsRefused() {
        List<Section.Point> bow =
                List.of(
                        new Section.Point(0, 1),
                        new Section.Point(1, 0),
                        new Section.Point(0, 0),
                        new Section.Point(1, 1));
        assertThrows(IllegalArgumentException.class, () -> Section.through(bow));
    }

    @Property
    void areaIsTheIntegralOfTheSurfaceWidth(
            @ForAll @DoubleRange(min = 0.05, max = 0.2) double sole,
            @ForAll @DoubleRange(min = 0, max = 0.1) double flare,
            @ForAll @DoubleRange(min = 0.01, max = 0.14) double depth) {
        Section section = Section.trapezoid(sole, sole + flare, 0.1);
        double h = 1e-6;
        double width = (section.area(depth + h) - section.area(depth - h)) / (2 * h);
        assertEquals(width, section.surfaceWidth(depth), 1e-6);
        double area = (section.moment(depth + h) - section.moment(depth - h)) / (2 * h);
        assertEquals(area, section.area(depth), 1e-7);
    }

    /**
     * Level frictionless rectangle with even inflow and a free outfall: (x/L)² = (y/yc)(1.5 - 0.5
     * (y/yc)²) (spatially varied flow text, Novak), derived; within 0.1 %.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 1.7320508",
        "0.1, 1.72871",
        "0.25, 1.71083",
        "0.5, 1.64178",
        "0.75, 1.5",
        "0.9, 1.33743",
        "1, 1"
    })
    void aLevelGutterFollowsTheMomentumBalance(double x, double ratio) {
        Channel channel = new Channel(Section.rectangle(0.1, 0.2), 0);
        Trough trough = new Trough(channel, bed(10, 0), 0.0002, List.of());
        WaterSurface surface = SteadyFlow.solve(trough, 0, 200);
        double critical = channel.criticalDepth(0.002);
        assertEquals(ratio, surface.depthAt(10 * x) / critical, 0.001 * ratio);
    }

    /**
     * USBR, Design of Small Dams, table 9-3, published: 2000 cfs, 20 cfs a foot, bed 10 ft, sides
     * 1/2:1, fall 0.01, no friction, 16.34 ft held at 100 ft; within 0.02 ft. The level is measured
     * from each station's own bed.
     */
    @ParameterizedTest
    @CsvSource({"75, 16.71", "50, 16.88", "25, 16.87", "10, 16.79"})
    void aSideChannelOfASpillwayAgreesWithTheTable(double xFeet, double depthFeet) {
        double sides = 30;
        Section section =
                Section.through(
                        List.of(
                                new Section.Point(-sides / 2 * FOOT, sides * FOOT),
                                new Section.Point(0, 0),
                                new Section.Point(10 * FOOT, 0),
                                new Section.Point((10 + sides / 2) * FOOT, sides * FOOT)));
        Trough trough =
                new Trough(
                        new Channel(section, 0),
                        bed(100 * FOOT, 1 * FOOT),
                        20 * FOOT * FOOT,
                        List.of());
        WaterSurface surface = SteadyFlow.solve(trough, 16.34 * FOOT, 100);
        assertEquals(depthFeet, surface.depthAt(xFeet * FOOT) / FOOT, 0.02);
    }

    /** A fall that is steep for the flow: even flow below, where nothing holds it back. */
    @Test
    void aSteepGutterRunsSupercriticalBelowItsControl() {
        Channel channel = new Channel(Section.rectangle(0.1, 0.1), 0.009);
        Trough trough = new Trough(channel, bed(20, 1), 0.00002, List.of());
        WaterSurface surface = SteadyFlow.solve(trough, 0, 400);
        WaterSurface.At outlet = surface.points().get(surface.points().size() - 1);
        assertEquals(WaterSurface.Regime.SUPERCRITICAL, outlet.regime());
        assertTrue(outlet.depth() < channel.criticalDepth(outlet.flow()));
        assertTrue(surface.points().stream().skip(1).allMatch(at -> at.depth() > 0));
    }

    @Test
    void aDrownedOutletPushesAJumpBackUpASteepGutter() {
        Channel channel = new Channel(Section.rectangle(0.1, 0.1), 0.009);
        Trough trough = new Trough(channel, bed(20, 0.4), 0.00002, List.of());
        WaterSurface surface = SteadyFlow.solve(trough, 0.05, 400);
        assertEquals(0.05, surface.points().get(surface.points().size() - 1).depth(), 1e-12);
        List<WaterSurface.Regime> regimes =
                surface.points().stream().map(WaterSurface.At::regime).distinct().toList();
        assertTrue(regimes.contains(WaterSurface.Regime.SUPERCRITICAL), regimes.toString());
    }

    /** The step shrinks by half and the answer moves less than by a quarter of the step before. */
    @Test
    void convergesAsTheStepShrinks() {
        Channel channel = new Channel(Section.halfRound(0.1), 0.010);
        Trough trough = new Trough(channel, bed(8, 0.016), 0.0001, List.of());
        double coarse = SteadyFlow.solve(trough, 0, 25).points().get(0).depth();
        double middle = SteadyFlow.solve(trough, 0, 50).points().get(0).depth();
        double fine = SteadyFlow.solve(trough, 0, 100).points().get(0).depth();
        assertTrue(
                Math.abs(fine - middle) < Math.abs(middle - coarse),
                coarse + " " + middle + " " + fine);
        assertEquals(middle, fine, 1e-5);
    }

    @Property(tries = 200)
    void moreRainIsNeverLessDeep(
            @ForAll @DoubleRange(min = 0, max = 4) double mmPerM,
            @ForAll @DoubleRange(min = 0.01, max = 0.3) double litresPerMetre,
            @ForAll @DoubleRange(min = 1.01, max = 2) double more) {
        Channel channel = new Channel(Section.rectangle(0.12, 0.08), 0.010);
        Trough trough =
                new Trough(channel, bed(9, 9 * mmPerM / 1000), litresPerMetre / 1000, List.of());
        WaterSurface dry = SteadyFlow.solve(trough, 0, 60);
        WaterSurface wet = SteadyFlow.solve(trough.under(more), 0, 60);
        for (int i = 0; i < dry.points().size(); i++) {
            assertTrue(
                    wet.points().get(i).depth() >= dry.points().get(i).depth() - 1e-6,
                    i + ": " + dry.points().get(i) + " " + wet.points().get(i));
        }
    }
}
