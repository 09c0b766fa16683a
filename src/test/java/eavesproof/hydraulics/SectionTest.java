package eavesproof.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.hydraulics.Profile.Point;
import eavesproof.hydraulics.Section.Lip;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Profiles as drawn by points, and what is wet of them. */
class SectionTest {
    /** Points of x, y, x, y, … */
    static Profile profile(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return new Profile(points);
    }

    /** A half-circle: area π D²/8, perimeter π D/2, centroid 2 D/(3 π) below its diameter. */
    @Test
    void aHalfRoundIsHalfACircle() {
        Section.Wet full = Profile.halfRound(0.1).section().at(0.05);
        double area = Math.PI * 0.01 / 8;
        assertEquals(area, full.area(), 0.0001 * area);
        assertEquals(Math.PI * 0.05, full.perimeter(), 1e-5);
        assertEquals(0.1, full.width(), 1e-9);
        assertEquals(area * 0.2 / (3 * Math.PI), full.moment(), 0.0001 * full.moment());
    }

    /** A segment of a circle of radius r, h high: r² arccos(1 - h/r) - (r - h) √(2 r h - h²). */
    @Test
    void aHalfRoundMayEndBelowItsDiameterOrGoOnAboveIt() {
        Section cut = Profile.halfRound(0.1, 0.06, 0.04).section();
        double segment = 0.0025 * Math.acos(0.2) - 0.01 * Math.sqrt(0.1 * 0.04 - 0.0016);
        assertEquals(segment, cut.area(0.04), 0.0002 * segment);
        assertEquals(0.04, cut.lip(), 1e-12);
        assertEquals(Lip.FRONT, cut.lowerLip());
        Section high = Profile.halfRound(0.1, 0.07, 0.06).section();
        assertEquals(Math.PI * 0.01 / 8 + 0.1 * 0.01, high.area(0.06), 1e-6);
    }

    /** Chow's geometric elements of a circle, published: y/D 0.25 has A/D² 0.1535, R/D 0.1466. */
    @Test
    void aHalfRoundThatIsHalfFullAgreesWithTheTableOfACircle() {
        Section.Wet wet = Profile.halfRound(1).section().at(0.25);
        assertEquals(0.1535, wet.area(), 0.0001);
        assertEquals(0.1466, wet.area() / wet.perimeter(), 0.0001);
    }

    @Test
    void aLedgeIsAsWideAsItIsDrawn() {
        Section step =
                profile(0, 0.08, 0, 0, 0.04, 0, 0.04, 0.05, 0.10, 0.05, 0.10, 0.08).section();
        assertEquals(0.04 * 0.05, step.area(0.05), 1e-12);
        assertEquals(0.04 * 0.05 + 0.10 * 0.02, step.area(0.07), 1e-12);
        assertEquals(0.05 + 0.04 + 0.05 + 0.06 + 2 * 0.02, step.at(0.07).perimeter(), 1e-12);
    }

    @Test
    void aSoleWithARidgeIsTwoTroughsUntilTheRidgeDrowns() {
        Section ridge = profile(0, 0.06, 0, 0, 0.05, 0.02, 0.10, 0, 0.10, 0.06).section();
        assertEquals(0.5 * 2 * 0.025 * 0.01, ridge.area(0.01), 1e-12);
        assertEquals(0.05 * 0.02 + 0.10 * 0.03, ridge.area(0.05), 1e-12);
    }

    @Test
    void anEdgeRolledInwardsTakesRoom() {
        Profile plain = profile(0, 0.06, 0, 0, 0.10, 0, 0.10, 0.06);
        Profile rolled = profile(0, 0.06, 0, 0, 0.10, 0, 0.10, 0.06, 0.09, 0.06, 0.09, 0.05);
        assertEquals(plain.section().area(0.05), rolled.section().area(0.05), 1e-12);
        assertEquals(plain.section().area(0.06) - 0.01 * 0.01, rolled.section().area(0.06), 1e-12);
        assertEquals(0.06, rolled.section().lip(), 1e-12);
    }

    @Test
    void waterGoesOverTheLowerLip() {
        assertEquals(Lip.FRONT, Profile.trapezoid(0.1, 0.1, 0.08, 0.06).section().lowerLip());
        assertEquals(Lip.BACK, Profile.trapezoid(0.1, 0.1, 0.05, 0.06).section().lowerLip());
        assertEquals(Lip.BOTH, Profile.halfRound(0.1).section().lowerLip());
    }

    @Test
    void tiltingForwardsLowersTheFrontLip() {
        Section tilted = Profile.rectangle(0.1, 0.06).tilted(0.01).section();
        assertEquals(Lip.FRONT, tilted.lowerLip());
        double turned = Math.asin(0.1);
        // The lowest point is the front corner of the sole.
        assertEquals(0.06 * Math.cos(turned), tilted.lip(), 1e-12);
        assertTrue(tilted.area(tilted.lip()) < 0.1 * 0.06);
        assertEquals(Lip.BACK, Profile.rectangle(0.1, 0.06).tilted(-0.01).section().lowerLip());
    }

    @Test
    void aTiltPutsTheLipsWhereItWasReadWhateverTheProfile() {
        Profile unequal = Profile.trapezoid(0.1, 0.12, 0.08, 0.06).tilted(0.007);
        assertEquals(0.007, unequal.points().get(0).y() - unequal.points().get(3).y(), 1e-12);
    }

    /** A rectangle has yc = (Q²/(g b²))^(1/3); a triangle of sides z:1 has (2 Q²/(g z²))^(1/5). */
    @Property
    void criticalDepthIsThatOfTheFormulas(
            @ForAll @Scale(6) @DoubleRange(min = 0.0001, max = 0.02) double flow) {
        double rectangle = Profile.rectangle(0.1, 0.1).section().criticalDepth(flow);
        assertEquals(Math.cbrt(flow * flow / (9.81 * 0.01)), rectangle, 1e-9);
        double triangle = profile(0, 0.5, 0.5, 0, 1, 0.5).section().criticalDepth(flow);
        assertEquals(Math.pow(2 * flow * flow / 9.81, 0.2), triangle, 1e-9);
    }

    @Test
    void whereALedgeAllowsOfSeveralTheHighestDepthIsCritical() {
        Section step = profile(0, 0.2, 0, 0, 0.04, 0, 0.04, 0.05, 0.3, 0.05, 0.3, 0.2).section();
        double brimful = step.area(0.05) * Math.sqrt(9.81 * 0.05);
        double critical = step.criticalDepth(0.99 * brimful);
        assertTrue(critical > 0.05, "" + critical);
        double area = step.area(critical);
        assertEquals(0.99 * brimful, area * Math.sqrt(9.81 * area / 0.3), 1e-9);
    }

    @Property
    void areaIsTheIntegralOfTheSurfaceWidth(
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.2) double sole,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.1) double flare,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.14) double depth) {
        Section section = Profile.trapezoid(sole, sole + flare, 0.1, 0.1).section();
        double h = 1e-6;
        double width = (section.area(depth + h) - section.area(depth - h)) / (2 * h);
        assertEquals(width, section.at(depth).width(), 1e-6);
        double area = (section.at(depth + h).moment() - section.at(depth - h).moment()) / (2 * h);
        assertEquals(area, section.area(depth), 1e-7);
    }

    @Test
    void aProfileThatCrossesItselfIsRefused() {
        refused("crosses itself", () -> profile(0, 1, 1, 0, 0, 0, 1, 1));
        refused("crosses itself", () -> profile(0, 1, 0, 0, 1, 0, 0, 0.5));
        refused("folds back", () -> profile(0, 1, 0, 0, 0, 0.5));
        refused("are the same", () -> profile(0, 1, 0, 0, 0, 0, 1, 1));
    }

    @Test
    void aProfileThatHoldsNoWaterIsRefused() {
        refused("holds no water", () -> profile(0, 0, 0.1, 0.1, 0.2, 0).section());
        refused("holds no water", () -> profile(0, 0, 0.1, 0, 0.2, 0).section());
        refused("holds no water", () -> profile(0.2, 1, 0.1, 0, 0, 1).section());
        refused("from 3 to", () -> profile(0, 1, 1, 0));
        refused("holds no water", () -> Profile.rectangle(0.1, 0.05).tilted(0.09));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, Double.NaN, Double.POSITIVE_INFINITY})
    void aHalfRoundNeedsADiameter(double diameter) {
        assertThrows(Refused.class, () -> Profile.halfRound(diameter));
    }

    private static void refused(String why, Runnable drawing) {
        String message = assertThrows(Refused.class, drawing::run).getMessage();
        assertTrue(message.contains(why), message);
    }
}
