package eavesproof.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
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
        Section section = Profile.rectangle(5, 4).section();
        double area = section.area(depth);
        double manning =
                area
                        * Math.pow(area / section.at(depth).perimeter(), 2.0 / 3)
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
        Section section = SectionTest.profile(-z, 1, 0, 0, 1, 0, 1 + z, 1).section();
        double area = section.area(depth);
        double conveyance = area * Math.pow(area / section.at(depth).perimeter(), 2.0 / 3);
        assertEquals(k / 1.486, conveyance, k / 1.486 * tolerance);
    }

    /** Textbook, published: 50 m²/s a metre gives a critical depth of 6.34 m. */
    @Test
    void findsTheCriticalDepthOfAWideRectangle() {
        Channel channel = new Channel(Profile.rectangle(1, 10).section(), 0);
        assertEquals(6.34, channel.criticalDepth(50), 0.005);
    }

    /**
     * Textbook, published: b 10 ft, 600 cfs, n 0.025: critical depth 4.82 ft, critical slope
     * 0.0132.
     */
    @Test
    void findsTheCriticalDepthAndSlope() {
        Channel channel =
                new Channel(
                        Profile.rectangle(10 * FOOT, 10 * FOOT).section(), 0.025 * 1.486 / 1.49);
        double flow = 600 * FOOT * FOOT * FOOT;
        double critical = channel.criticalDepth(flow);
        assertEquals(4.82, critical / FOOT, 0.005);
        assertEquals(0.0132, channel.frictionSlope(critical, flow), 0.00005);
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
        Channel channel = new Channel(Profile.rectangle(0.1, 0.2).section(), 0);
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
        Section section =
                SectionTest.profile(-15 * FOOT, 30 * FOOT, 0, 0, 10 * FOOT, 0, 25 * FOOT, 30 * FOOT)
                        .section();
        Trough trough =
                new Trough(
                        new Channel(section, 0),
                        bed(100 * FOOT, 1 * FOOT),
                        20 * FOOT * FOOT,
                        List.of());
        WaterSurface surface = SteadyFlow.solve(trough, 16.34 * FOOT, 100);
        assertEquals(depthFeet, surface.depthAt(xFeet * FOOT) / FOOT, 0.02);
    }
}
