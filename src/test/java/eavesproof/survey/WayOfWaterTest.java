package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Said;
import eavesproof.job.WayPart;
import java.util.List;
import org.junit.jupiter.api.Test;

class WayOfWaterTest {
    private final AJob job = new AJob();

    private AJob outletTo(String to) {
        return job.part(AJob.outlet("o1", to, "a1", 500.0, 100.0, "sliding", "no"));
    }

    private static WayPart branch(String to, Double lengthMm, Double dropMm) {
        return new WayPart.Branch("r1", to, null, lengthMm, dropMm, null, null, null);
    }

    private static WayPart downpipe(String to, List<WayPart.Clip> clips) {
        return new WayPart.Downpipe(
                "d1", to, null, null, null, null, null, null, null, clips, null, null, null, null,
                null);
    }

    private static WayPart.Clip clip(String id, Double belowTopMm) {
        return new WayPart.Clip(id, belowTopMm, null);
    }

    private static WayPart discharge(Said<String> approved) {
        return new WayPart.Discharge("g1", null, AJob.said("soakaway"), approved, AJob.said("dye"));
    }

    private static final Said<String> APPROVED =
            new Said<>("yes", "told", "the council", "letter of 3 May");

    @Test
    void aBranchFallsByItsDropOverItsLength() {
        outletTo("r1").part(branch("g1", 500.0, 10.0)).part(discharge(APPROVED));
        Facts.BranchFall fall = job.survey().fact(Facts.BranchFall.class);
        assertEquals(new Facts.BranchFall("a", "r1", 20), fall);
        // Class II to 1 m, 0.5 / sqrt 3 each: of the drop 20 x u / 10, of the length 20 x u / 500.
        assertEquals(
                0.5 / Math.sqrt(3) * Math.hypot(2, 0.04),
                job.survey().value(fall).standardUncertainty(),
                1e-9);
    }

    @Test
    void aBranchThatNothingReachesIsNotPassedOver() {
        outletTo("g1").part(branch("g1", 500.0, -10.0)).part(discharge(APPROVED));
        assertEquals(
                List.of("a r1: no outlet is recorded to lead to r1"),
                job.survey().gaps(Facts.BranchFall.class));
    }

    @Test
    void aDischargeThatNothingReachesIsNotPassedOver() {
        outletTo("g1").part(discharge(APPROVED));
        job.part(
                new WayPart.Discharge(
                        "g2", null, AJob.said("foul gully"), APPROVED, AJob.said("dye")));
        for (var type :
                List.of(
                        Facts.DischargeKind.class,
                        Facts.DischargeApproved.class,
                        Facts.ApprovalReference.class,
                        Facts.OutfallTraced.class)) {
            assertEquals(
                    List.of("a g2: no outlet is recorded to lead to g2"), job.survey().gaps(type));
        }
    }

    @Test
    void aBranchThatRisesHasAFallBelowZero() {
        outletTo("r1").part(branch("g1", 500.0, -10.0)).part(discharge(APPROVED));
        assertEquals(-20, job.survey().fact(Facts.BranchFall.class).fallMmPerM());
    }

    @Test
    void aBranchWithoutDropOrLengthIsAGap() {
        outletTo("r1").part(branch("d1", 0.0, 10.0)).part(downpipe("g1", List.of()));
        job.part(discharge(APPROVED));
        assertEquals(
                List.of("a r1: branch r1 is recorded without any length"),
                job.survey().gaps(Facts.BranchFall.class));
        job.way.set(1, branch("d1", 500.0, null));
        assertEquals(
                List.of("a r1: the drop of branch r1 is not recorded"),
                job.survey().gaps(Facts.BranchFall.class));
    }

    @Test
    void clipsAreSortedDownThePipe() {
        outletTo("d1")
                .part(downpipe("g1", List.of(clip("c2", 1900.0), clip("c1", 100.0))))
                .part(discharge(APPROVED));
        assertEquals(
                new Facts.ClipSpacing("a", "d1", "c1", "c2", 1800),
                job.survey().fact(Facts.ClipSpacing.class));
    }

    @Test
    void clipsAreMissingNoneOrNowhere() {
        outletTo("d1").part(downpipe("g1", null)).part(discharge(APPROVED));
        assertEquals(
                List.of("a d1: the clips of downpipe d1 are not recorded"),
                job.survey().gaps(Facts.ClipSpacing.class));
        job.way.set(1, downpipe("g1", List.of()));
        assertEquals(
                List.of("a d1: downpipe d1 has no clip"),
                job.survey().none(Facts.ClipSpacing.class));
        job.way.set(1, downpipe("g1", List.of(clip("c1", 100.0), clip("c2", null))));
        assertEquals(
                List.of("a d1: where clip c2 of downpipe d1 is, is not recorded"),
                job.survey().gaps(Facts.ClipSpacing.class));
    }

    @Test
    void aWholeWayWithoutBranchOrDownpipeHasNone() {
        outletTo("g1").part(discharge(APPROVED));
        Seen seen = job.survey();
        assertEquals(
                List.of("a: the water of run a passes no branch"),
                seen.none(Facts.BranchFall.class));
        assertEquals(
                List.of("a: the water of run a passes no downpipe"),
                seen.none(Facts.ClipSpacing.class));
    }

    @Test
    void howWaterGetsFromAnOutletToADischargeIsNeverTakenForGranted() {
        for (String spout : new String[] {null, "no", "unknown"}) {
            job.way.clear();
            job.part(outlet("g1", spout)).part(discharge(APPROVED));
            Seen seen = job.survey();
            for (var type :
                    List.of(
                            Facts.BranchFall.class,
                            Facts.ClipSpacing.class,
                            Facts.DownpipeRatio.class,
                            Facts.DownpipeSize.class,
                            Facts.OutletRoof.class)) {
                String gap = String.join("; ", seen.gaps(type));
                assertTrue(
                        gap.endsWith("how the water gets from o1 down to g1 is not recorded"), gap);
                assertEquals(List.of(), seen.none(type));
            }
            assertEquals("soakaway", seen.fact(Facts.DischargeKind.class).named());
        }
    }

    @Test
    void norIntoADrainOrATank() {
        job.part(outlet("t1", null)).part(discharge(APPROVED));
        job.part(new WayPart.Tank("t1", "g1", null, null, null, null, null, null));
        assertEquals(
                List.of("a: how the water gets from o1 down to t1 is not recorded"),
                job.survey().gaps(Facts.DownpipeRatio.class));
        job.way.set(
                2, new WayPart.Drain("t1", "g1", null, 100.0, 9.0, 1.0, null, "new", null, null));
        assertEquals(
                List.of("a: how the water gets from o1 down to t1 is not recorded"),
                job.survey().gaps(Facts.DownpipeRatio.class));
    }

    @Test
    void aBranchAloneLeadsToNoDischarge() {
        outletTo("r1").part(branch("g1", 500.0, 10.0)).part(discharge(APPROVED));
        assertEquals(
                List.of("a: how the water gets from r1 down to g1 is not recorded"),
                job.survey().gaps(Facts.DownpipeRatio.class));
        job.way.set(1, branch("t1", 500.0, 10.0));
        job.part(new WayPart.Tank("t1", "g1", null, null, null, null, null, null));
        assertEquals(List.of(), job.survey().gaps(Facts.DownpipeRatio.class));
    }

    @Test
    void fromAFreeSpoutItFalls() {
        job.part(outlet("g1", "yes")).part(discharge(APPROVED));
        assertEquals(List.of(), job.survey().gaps(Facts.DownpipeRatio.class));
        assertEquals(1, job.survey().none(Facts.DownpipeRatio.class).size());
    }

    private static WayPart outlet(String to, String spout) {
        return new WayPart.Outlet(
                "o1",
                to,
                null,
                "a1",
                500.0,
                100.0,
                "fixed",
                Said.nothing(),
                Said.nothing(),
                null,
                null,
                "no",
                null,
                80.0,
                null,
                null,
                "no",
                spout);
    }

    @Test
    void whatLiesBeyondABreakInTheWayIsAGap() {
        outletTo("d1").part(downpipe(null, List.of(clip("c1", 100.0), clip("c2", 900.0))));
        Seen seen = job.survey();
        String gap = "a: where the water goes from d1 is not recorded";
        assertEquals(1, seen.facts(Facts.ClipSpacing.class).size());
        for (var type :
                List.of(
                        Facts.BranchFall.class,
                        Facts.ClipSpacing.class,
                        Facts.DischargeKind.class,
                        Facts.DischargeApproved.class,
                        Facts.ApprovalReference.class,
                        Facts.OutfallTraced.class)) {
            assertEquals(List.of(gap), seen.gaps(type));
            assertEquals(List.of(), seen.none(type));
        }
    }

    @Test
    void aWayThatLeadsNowhereOrBackIsBroken() {
        outletTo("d1");
        assertEquals(
                List.of("a: o1 leads to d1, which is not recorded"),
                job.survey().gaps(Facts.DischargeKind.class));
        job.part(downpipe("o1", List.of()));
        assertEquals(
                List.of("a: the way of the water comes back to o1"),
                job.survey().gaps(Facts.DischargeKind.class));
    }

    @Test
    void aTankIsNoDischarge() {
        outletTo("t1").part(new WayPart.Tank("t1", null, null, null, null, null, null, null));
        assertEquals(
                List.of("a: where the water goes from t1 is not recorded"),
                job.survey().gaps(Facts.DischargeKind.class));
        job.way.set(1, new WayPart.Tank("t1", "g1", null, null, null, null, null, null));
        job.part(discharge(APPROVED));
        assertEquals(
                new Facts.DischargeKind("a", "g1", "soakaway"),
                job.survey().fact(Facts.DischargeKind.class));
    }

    @Test
    void twoOutletsToOneDischargeMeetItOnce() {
        outletTo("g1").part(discharge(APPROVED));
        job.part(AJob.outlet("o2", "g1", "a1", 9000.0, 100.0, "sliding", "no"));
        assertEquals(1, job.survey().facts(Facts.DischargeKind.class).size());
    }

    @Test
    void anApprovalIsReferredToByNameAndReference() {
        outletTo("g1").part(discharge(APPROVED));
        Seen seen = job.survey();
        assertEquals(
                new Facts.DischargeApproved("a", "g1", "yes"),
                seen.fact(Facts.DischargeApproved.class));
        Facts.ApprovalReference reference = seen.fact(Facts.ApprovalReference.class);
        assertEquals(new Facts.ApprovalReference("a", "g1", "yes"), reference);
        assertEquals(
                "told by the council, letter of 3 May",
                seen.known(reference).workings().get(0).from());
    }

    @Test
    void anApprovalWithNobodyOrNothingNamedIsAGap() {
        outletTo("g1").part(discharge(new Said<>("yes", null, null, "letter of 3 May")));
        Seen seen = job.survey();
        assertEquals(
                List.of("a g1: who approved discharge g1 is not recorded"),
                seen.gaps(Facts.ApprovalReference.class));
        Answer.Known approved = seen.known(seen.fact(Facts.DischargeApproved.class));
        assertEquals(
                "how it is known is not said, nobody is named, letter of 3 May",
                approved.workings().get(0).from());
        job.way.set(1, discharge(new Said<>("yes", "told", "the council", " ")));
        assertEquals(
                List.of("a g1: the reference of the approval of discharge g1 is not recorded"),
                job.survey().gaps(Facts.ApprovalReference.class));
    }

    @Test
    void anApprovalThatWasRefusedNeedsNoReference() {
        outletTo("g1").part(discharge(AJob.said("no")));
        Seen seen = job.survey();
        assertEquals("no", seen.fact(Facts.DischargeApproved.class).said());
        assertEquals(1, seen.none(Facts.ApprovalReference.class).size());
    }

    @Test
    void anAssumedApprovalIsKnownToBeAssumed() {
        outletTo("g1").part(discharge(new Said<>("yes", "assumed", "A. Fitter", null)));
        Seen seen = job.survey();
        assertTrue(seen.known(seen.fact(Facts.DischargeApproved.class)).provenance().isAssumed());
    }

    @Test
    void whatIsNotSaidOfADischargeIsAGap() {
        outletTo("g1");
        job.part(
                new WayPart.Discharge(
                        "g1", null, AJob.said("a hole"), AJob.said("unknown"), Said.nothing()));
        Seen seen = job.survey();
        assertEquals(
                List.of(
                        "a g1: the kind of discharge g1 is recorded as a hole, which is no word for"
                                + " it"),
                seen.gaps(Facts.DischargeKind.class));
        assertEquals(
                List.of("a g1: whether discharge g1 is approved is recorded as unknown"),
                seen.gaps(Facts.DischargeApproved.class));
        assertEquals(
                List.of("a g1: whether discharge g1 is approved is recorded as unknown"),
                seen.gaps(Facts.ApprovalReference.class));
        assertEquals(
                List.of("a g1: how the outfall of discharge g1 was traced is not recorded"),
                seen.gaps(Facts.OutfallTraced.class));
    }

    @Test
    void anOutletThatMayBeOnTheRunLeavesItsWayOpen() {
        outletTo("g1").part(discharge(APPROVED)).outlet("o2", null, null);
        Seen seen = job.survey();
        assertEquals(1, seen.facts(Facts.DischargeKind.class).size());
        assertEquals(
                List.of("a: which straight outlet o2 is on is not recorded"),
                seen.gaps(Facts.DischargeKind.class));
    }

    @Test
    void aRunWithoutOutletsComesToNoDischarge() {
        assertEquals(
                List.of("a: the water of run a comes to no discharge"),
                job.survey().none(Facts.DischargeKind.class));
    }
}
