package eavesproof.hydraulics;

import static eavesproof.quantity.Unit.FT2;
import static eavesproof.quantity.Unit.L_PER_S;
import static eavesproof.quantity.Unit.L_PER_S_HA;
import static eavesproof.quantity.Unit.M2;
import static eavesproof.quantity.Unit.MM_PER_H;
import static eavesproof.quantity.Unit.US_GPM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Formulas of documents, against answers printed in those or in others. */
class NominalMethodsTest {
    /**
     * BS EN 12056-3:2000 method in a UK plumbing textbook, published: a slope 6 m on plan that
     * rises 3 m, 10 m long, wind at 26°: (6 + 3/2) × 10 = 75 m².
     */
    @Test
    void windDrivesRainOntoHalfTheRiseOfARoof() {
        double pitch = Math.toDegrees(Math.atan2(3, 6));
        assertEquals(75, 6 * 10 * RationalFlow.windFactor(pitch), 1e-9);
    }

    /** Approved Document H (2015) table 1, from memory: 1.29 at 30°, 1.50 at 45°. */
    @ParameterizedTest
    @CsvSource({"30, 1.29", "45, 1.50"})
    void theApprovedDocumentHasTheSameFactors(double pitch, double factor) {
        assertEquals(factor, RationalFlow.windFactor(pitch), 0.005);
    }

    /**
     * UK trade association note GD 03 (2018), published: 150 mm/h is 0.042 L/s on a square metre.
     */
    @Test
    void rainOnASquareMetre() {
        assertEquals(0.042, RationalFlow.litresPerSecond(1, 150, 1), 0.0005);
    }

    /**
     * UK building services handbook, example 8.2, published: 15 × 8 m at 0.021 L/s/m² is 2.52 L/s,
     * 1.26 to each side.
     */
    @Test
    void rainStatedAsFlowOnASquareMetre() {
        double flow = RationalFlow.litresPerSecond(1, 0.021 * 3600, 15 * 8);
        assertEquals(2.52, flow, 1e-9);
        assertEquals(1.26, flow / 2, 1e-9);
    }

    /**
     * DIN EN 12056-3 practice, published: 300 L/s/ha on 108 m² is 3.24 L/s, 1.62 to each of two
     * pipes. DIN 1986-100 worked example, published: 285 L/s/ha on 50 and 60 m² is 1.43 and 1.71
     * L/s ± 0.006.
     */
    @ParameterizedTest
    @CsvSource({
        "300, 108, 3.24, 0.000001",
        "300, 54, 1.62, 0.000001",
        "285, 50, 1.43, 0.006",
        "285, 60, 1.71, 0.006"
    })
    void rainStatedForAHectare(double perHectare, double area, double flow, double tolerance) {
        double rain = L_PER_S_HA.convert(perHectare, MM_PER_H);
        assertEquals(flow, RationalFlow.litresPerSecond(1, rain, area), tolerance);
    }

    /** NZ E1/VM1 2.0.1, arithmetic: 0.9 × 97 × 0.02 / 360 = 0.00485 m³/s for 200 m² of steel. */
    @Test
    void aRunOffCoefficientCounts() {
        assertEquals(4.85, RationalFlow.litresPerSecond(0.9, 97, 200), 0.001);
    }

    /**
     * UK building services handbook, example 8.2, published: Q = 1.40 × 0.9 × 2.67e-5 × A^1.25 =
     * 1.26 L/s; printed 4563 mm², which exact arithmetic makes 4558.2.
     */
    @Test
    void theAreaOfAGutterByItsPowerLaw() {
        assertEquals(4558.2, new NominalGutter(1.40 * 2.67e-5).areaMm2(1.26), 0.1);
    }

    /**
     * Approved Document H (2015) table 2: level half-round of 100 mm 0.78 L/s (published), of 150
     * mm 2.16 L/s ± 1 % (from memory).
     */
    @ParameterizedTest
    @CsvSource({"100, 0.78, 0.005", "150, 2.16, 0.022"})
    void aLevelHalfRoundCarriesWhatTheApprovedDocumentSays(
            double diameter, double flow, double tolerance) {
        double area = Math.PI * diameter * diameter / 8;
        assertEquals(flow, NominalGutter.HALF_ROUND.litresPerSecond(area, 1, 1), tolerance);
    }

    /** EN 12056-3:2000 table 7, from memory: weir and orifice meet at h = D/2 (identity). */
    @ParameterizedTest
    @CsvSource({"63", "89", "110"})
    void weirAndOrificeMeetAtHalfTheDiameter(double mm) {
        RoundOutlet outlet = new RoundOutlet(mm / 1000, 0, false);
        double weir = mm * Math.pow(mm / 2, 1.5) / 7500;
        double orifice = mm * mm * Math.sqrt(mm / 2) / 15000;
        assertEquals(weir, orifice, 1e-12);
        assertEquals(weir, outlet.flowAt(mm / 2000) * 1000, 1e-9);
        assertEquals(weir, outlet.flowAt(mm / 2000 + 1e-9) * 1000, 1e-6);
    }

    @Property
    void theHeadOfAnOutletIsThatAtWhichTheFlowLeaves(
            @ForAll @Scale(6) @DoubleRange(min = 0.03, max = 0.2) double diameter,
            @ForAll @Scale(6) @DoubleRange(min = 0.0001, max = 0.3) double head,
            @ForAll boolean strained) {
        RoundOutlet outlet = new RoundOutlet(diameter, 0, strained);
        assertEquals(head, outlet.headFor(outlet.flowAt(head)), 1e-9);
    }

    @Test
    void aStrainerHalvesAnOutletAndASumpLowersIt() {
        RoundOutlet open = new RoundOutlet(0.063, 0, false);
        assertEquals(open.flowAt(0.02) / 2, new RoundOutlet(0.063, 0, true).flowAt(0.02), 1e-15);
        double head = open.headFor(0.001);
        assertEquals(head - 0.005, new RoundOutlet(0.063, 0.005, false).depthFor(0.001), 1e-12);
        assertEquals(0, new RoundOutlet(0.063, 1, false).depthFor(0.001), 0);
    }

    /** DIN EN 12056-3 table, published: kb 0.25 mm, filling degree 0.20; ± 1.5 %. */
    @ParameterizedTest
    @CsvSource({"60, 1.2", "70, 1.8", "80, 2.6", "100, 4.7"})
    void aDownpipeCarriesWhatTheTableSays(double diameter, double flow) {
        assertEquals(flow, WylyEaton.litresPerSecond(diameter, 0.25, 0.20), 0.015 * flow);
    }

    /**
     * EN 12056-3 table 8, from memory: filling degree 0.33; within half of the last digit, since
     * 2.7 cannot be told from 2.74.
     */
    @ParameterizedTest
    @CsvSource({"60, 2.7", "100, 10.7"})
    void aFullerDownpipeCarriesMore(double diameter, double flow) {
        assertEquals(flow, WylyEaton.litresPerSecond(diameter, 0.25, 0.33), 0.05);
    }

    /** National Standard Plumbing Code 2006 table 13.6.1, published. */
    @ParameterizedTest
    @CsvSource({"2, 23", "3, 67", "4, 144", "5, 261", "6, 424", "8, 913", "10, 1655", "12, 2692"})
    void aLeaderSevenTwentyFourthsFullCarriesWhatTheCodeSays(double inches, double gallons) {
        assertEquals(gallons, PlumbingCodeLeader.gallonsPerMinute(inches), 0.5);
    }

    /** Geometric elements of a circle (Chow), published. */
    @ParameterizedTest
    @CsvSource({"0.60, 0.492028, 0.277644", "0.70, 0.587230, 0.296235"})
    void aPartFullCircleHasItsElements(double filled, double area, double radius) {
        RoundPipe.Wet wet = new RoundPipe(1).at(filled);
        assertEquals(area, wet.area(), 5e-7);
        assertEquals(radius, wet.radius(), 5e-7);
    }

    /** DIN 1986-100 worked example, published choice: 1 cm/m for 3.71 L/s at 0.7 full is DN 100. */
    @Test
    void aDrainAtOneInAHundredForTheWorkedExampleIsDn100() {
        double needed = 3.71 / 1000;
        assertTrue(new RoundPipe(0.100).colebrook(0.7, 0.01, 0.001) >= needed);
        assertTrue(new RoundPipe(0.080).colebrook(0.7, 0.01, 0.001) < needed);
    }

    /**
     * IPC 2012 table 1106.3, published: 2506 ft² at 3 in/h; 78.11 gpm, the printed 78.2 being
     * rounded from 0.0104 gpm for each square foot and inch.
     */
    @Test
    void rainOnARoofInUsUnits() {
        double litres = RationalFlow.litresPerSecond(1, 3 * 25.4, FT2.convert(2506, M2));
        assertEquals(78.11, L_PER_S.convert(litres, US_GPM), 0.01);
    }

    @Property
    void aDrainIsFilledByWhatItCarriesAtThatDepth(
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.9) double filled,
            @ForAll @Scale(6) @DoubleRange(min = 0.002, max = 0.1) double slope) {
        RoundPipe pipe = new RoundPipe(0.1);
        assertEquals(filled, pipe.filledBy(pipe.manning(filled, slope, 0.01), slope, 0.01), 1e-9);
    }

    /**
     * ABCB Housing Provisions 2022 7.4.1, published formula with an assumed head: Cd 0.63, 0.1 m
     * wide, 20 mm deep: 0.53 L/s (deemed to be 0.5).
     */
    @Test
    void anOverflowWeirByTheHousingProvisions() {
        Weir weir = Weir.withDischargeCoefficient(0.63);
        assertEquals(0.53, weir.flow(0.1, 0.020) * 1000, 0.005);
    }

    /** Textbook, published: C 3.09 in US units, 20 ft long, head 0.8 ft: 44.22 cfs. */
    @Test
    void aWeirInFeet() {
        double foot = 0.3048;
        double flow = Weir.inFeet(3.09).flow(20 * foot, 0.8 * foot);
        assertEquals(44.22, flow / (foot * foot * foot), 0.005);
    }

    /** Strip by strip: each lets out sqrt(2 g y) of its area at a depth y (Torricelli). */
    @Test
    void aHoleInAWallLetsOutTheSumOfItsStrips() {
        double d = 0.1;
        double sum = 0;
        int strips = 100_000;
        for (int i = 0; i < strips; i++) {
            double y = d * (i + 0.5) / strips;
            sum += 2 * Math.sqrt(y * (d - y)) * Math.sqrt(2 * 9.81 * y) * d / strips;
        }
        assertEquals(0.6 * sum, new WallHole(d, 0.6).flow(), 1e-5 * sum);
        assertThrows(Refused.class, () -> new WallHole(0, 0.6));
        assertThrows(Refused.class, () -> new WallHole(Double.NaN, 0.6));
        assertThrows(Refused.class, () -> new WallHole(0.1, 1.1));
    }

    @Test
    void whatIsOutsideAMethodIsRefused() {
        assertThrows(Refused.class, () -> WylyEaton.litresPerSecond(40, 0.25, 0.2));
        assertThrows(Refused.class, () -> WylyEaton.litresPerSecond(100, 0.25, 0.5));
        assertThrows(Refused.class, () -> WylyEaton.litresPerSecond(Double.NaN, 0.25, 0.2));
        assertThrows(Refused.class, () -> PlumbingCodeLeader.gallonsPerMinute(1));
        assertThrows(Refused.class, () -> RationalFlow.litresPerSecond(1.2, 100, 10));
        assertThrows(Refused.class, () -> RationalFlow.litresPerSecond(1, Double.NaN, 10));
        assertThrows(Refused.class, () -> RationalFlow.windFactor(80));
        assertThrows(
                Refused.class, () -> NominalGutter.HALF_ROUND.litresPerSecond(3927, Double.NaN, 1));
        assertThrows(Refused.class, () -> NominalGutter.rectangular(0.9, Double.NaN));
        assertThrows(Refused.class, () -> new RoundPipe(0.1).colebrook(0.7, 0, 0.001));
        assertThrows(Refused.class, () -> new RoundPipe(0.1).filledBy(1, 0.01, 0.01));
        assertThrows(Refused.class, () -> new RoundOutlet(0, 0, false));
    }
}
