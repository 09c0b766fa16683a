package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ZonesTest {
    private final AJob job = new AJob();

    private double joints() {
        return job.survey().fact(Facts.JointsInZone.class).count();
    }

    private List<String> gaps() {
        return job.survey().gaps(Facts.JointsInZone.class);
    }

    @Test
    void jointsAboveADoorAreCounted() {
        job.a1.zone("door", 1000.0, 2000.0);
        assertEquals(0, joints());
        job.a1.joint("j1", "cemented", 500.0, "no").joint("j2", "cemented", 1500.0, "no");
        job.a1.joint("j3", "cemented", 1600.0, "no").joint("j4", "cemented", 5000.0, "no");
        assertEquals(2, joints());
    }

    /**
     * Joint and edge each 0.3 + 0.2 x 1 m = 0.5 mm: U = 2 x 0.5 / sqrt 3 x sqrt 2 = 0.82 mm.
     * Arithmetic.
     */
    @Test
    void aJointThatMayLieInsideCountsAsInside() {
        job.a1.zone("door", 1000.0, 2000.0).joint("j1", "cemented", 999.2, "no");
        assertEquals(1, joints());
        job.a1.joints.clear();
        job.a1.joint("j1", "cemented", 999.1, "no");
        assertEquals(0, joints());
    }

    /**
     * At 2 m and beyond: 0.7 and 0.9 mm: U = 2 / sqrt 3 x sqrt(0.49 + 0.81) = 1.317. Arithmetic.
     */
    @Test
    void theSameHoldsAtTheFarEdge() {
        job.a1.zone("door", 1000.0, 2000.0).joint("j1", "cemented", 2001.3, "no");
        assertEquals(1, joints());
        job.a1.joints.clear();
        job.a1.joint("j1", "cemented", 2001.4, "no");
        assertEquals(0, joints());
    }

    @Test
    void withNoInstrumentNamedNobodyKnowsHowNearAJointIs() {
        job.a1.zone("door", 1000.0, 2000.0).joint("j1", "cemented", 5000.0, "no");
        job.measuredWith = null;
        assertEquals(
                List.of(
                        "a door: what straight a1 was measured with is not recorded, so how near"
                                + " joints are is not known"),
                gaps());
    }

    @Test
    void zonesAreMissingOrNone() {
        assertEquals(
                List.of("a: straight a1 has no length to be kept clear"),
                job.survey().none(Facts.JointsInZone.class));
        job.a1.zones = null;
        assertEquals(
                List.of("a: the lengths to be kept clear on straight a1 are not recorded"), gaps());
    }

    @Test
    void jointsThatAreMissingOrNowhereAreAGap() {
        job.a1.zone("door", 1000.0, 2000.0).joint("j1", "cemented", null, "no");
        assertEquals(List.of("a door: the station of joint j1 is not recorded"), gaps());
        job.a1.joints = null;
        assertEquals(List.of("a door: the joints of straight a1 are not recorded"), gaps());
    }

    @Test
    void aZoneWithoutAnEdgeIsAGap() {
        job.a1.zone("door", 1000.0, null);
        assertEquals(
                List.of("a door: the station of the right edge of zone door is not recorded"),
                gaps());
    }
}
