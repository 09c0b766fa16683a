package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.job.Run.End;
import java.util.List;
import org.junit.jupiter.api.Test;

class MovementTest {
    private final AJob job = new AJob();

    private List<Facts.FreeLength> lengths() {
        return job.survey().facts(Facts.FreeLength.class);
    }

    private List<String> gaps() {
        return job.survey().gaps(Facts.FreeLength.class);
    }

    private static Facts.FreeLength free(String from, String to, double mm) {
        return new Facts.FreeLength("a", from, to, mm);
    }

    @Test
    void anUnrecordedWayMayHoldBreaks() {
        job.way = null;
        assertEquals(
                List.of("a a1: the way of the water is not recorded"),
                job.survey().gaps(Facts.ExpansionBreaks.class));
    }

    @Test
    void anOutletOnNoStraightMayBeABreakUnlessItIsFixed() {
        job.part(AJob.outlet("o1", null, null, 3000.0, 100.0, "fixed", null));
        assertEquals(0, job.survey().fact(Facts.ExpansionBreaks.class).count());
        job.outlet("o2", null, 6000.0);
        assertEquals(
                List.of("a a1: which straight outlet o2 is on is not recorded"),
                job.survey().gaps(Facts.ExpansionBreaks.class));
    }

    @Test
    void aRunWithoutBreaksMovesAsOne() {
        assertEquals(List.of(free("a1.left", "a1.right", 10_000)), lengths());
        assertEquals(
                new Facts.ExpansionBreaks("a", "a1", 0),
                job.survey().fact(Facts.ExpansionBreaks.class));
    }

    @Test
    void expansionJointsAndSlidingOutletsAreBreaks() {
        job.a1.joint("j1", "expansion", 4000.0, "no").joint("j2", "cemented", 6000.0, "no");
        job.outlet("o1", "a1", 9000.0);
        assertEquals(
                List.of(
                        free("a1.left", "j1", 4000),
                        free("j1", "o1", 5000),
                        free("o1", "a1.right", 1000)),
                lengths());
        assertEquals(
                new Facts.ExpansionBreaks("a", "a1", 2),
                job.survey().fact(Facts.ExpansionBreaks.class));
    }

    @Test
    void aFixedOrCementedOutletIsNoBreak() {
        job.part(AJob.outlet("o1", null, "a1", 3000.0, 100.0, "fixed", null));
        job.part(AJob.outlet("o2", null, "a1", 6000.0, 100.0, "sliding", "yes"));
        assertEquals(List.of(free("a1.left", "a1.right", 10_000)), lengths());
    }

    /** What is not known to end may go on, and what goes on may be longer than it looks. */
    @Test
    void anEndThatNobodySaysIsOneIsNoBreak() {
        job.a1.left = new End(null, null);
        assertEquals(
                List.of("a a1.left a1.right: the kind of end a1.left is not recorded"), gaps());
        job.a1.left = new End("corner", null);
        assertEquals(
                List.of(
                        "a a1.left a1.right: what goes on round the corner a1.left is not recorded"),
                gaps());
        assertEquals(List.of(), lengths());
    }

    @Test
    void anOutletThatMayBeABreakLeavesOnlyItsOwnPieceOpen() {
        job.a1.joint("j1", "expansion", 4000.0, "no");
        job.part(AJob.outlet("o1", null, "a1", 6000.0, 100.0, null, "no"));
        String why = "whether outlet o1 is sliding or fixed is not recorded";
        assertEquals(List.of(free("a1.left", "j1", 4000)), lengths());
        assertEquals(List.of("a j1 a1.right: " + why), gaps());
        assertEquals(List.of("a a1: " + why), job.survey().gaps(Facts.ExpansionBreaks.class));
    }

    @Test
    void aSlidingOutletThatMayBeCementedIsAGap() {
        job.part(AJob.outlet("o1", null, "a1", 6000.0, 100.0, "sliding", null));
        assertEquals(
                List.of(
                        "a a1.left a1.right: whether outlet o1 is cemented to the gutter is not"
                                + " recorded"),
                gaps());
    }

    @Test
    void aJointOfNoKnownKindMayBeABreak() {
        job.a1.joint("j1", null, 4000.0, "no");
        assertEquals(List.of("a a1.left a1.right: the kind of joint j1 is not recorded"), gaps());
    }

    @Test
    void anExpansionJointWithoutAStationCountsButMayBeAnywhere() {
        job.a1.joint("j1", "expansion", null, "no");
        assertEquals(
                new Facts.ExpansionBreaks("a", "a1", 1),
                job.survey().fact(Facts.ExpansionBreaks.class));
        assertEquals(
                List.of("a a1.left a1.right: the station of joint j1 is not recorded"), gaps());
    }

    @Test
    void absentJointsOrAnAbsentWayMayHoldBreaks() {
        job.a1.joints = null;
        assertEquals(
                List.of("a a1.left a1.right: the joints of straight a1 are not recorded"), gaps());
        job.a1.joints = List.of();
        job.way = null;
        assertEquals(List.of("a a1.left a1.right: the way of the water is not recorded"), gaps());
    }

    @Test
    void aFreeLengthGoesRoundACorner() {
        job.a1.right = new End("corner", null);
        AStraight a2 = job.straight("a2");
        a2.left = new End("corner", null);
        a2.lengthMm = 4000.0;
        a2.joint("j1", "expansion", 1000.0, "no");
        assertEquals(
                List.of(free("a1.left", "j1", 11_000), free("j1", "a2.right", 3000)), lengths());
    }

    @Test
    void withoutALengthThePieceIsAGap() {
        job.straight("a2").joint("j1", "expansion", 1000.0, "no");
        job.a1.lengthMm = null;
        assertEquals(List.of(free("j1", "a2.right", 9000)), lengths());
        assertEquals(List.of("a a1.left j1: the length of straight a1 is not recorded"), gaps());
    }

    @Test
    void anEndOfNoKnownKindMayNotBeFree() {
        job.a1.left = new End(null, null);
        job.a1.joint("j1", "expansion", 4000.0, "no");
        assertEquals(List.of(free("j1", "a1.right", 6000)), lengths());
        assertEquals(List.of("a a1.left j1: the kind of end a1.left is not recorded"), gaps());
    }
}
