package eavesproof.survey;

import eavesproof.job.Run;
import eavesproof.job.Run.CrossTilt;
import eavesproof.job.Run.Straight;
import java.util.ArrayList;
import java.util.List;

/**
 * By how much the front bead of a run lies lower than its back edge: from the section through the
 * eaves, or as read at some stations of each straight.
 *
 * @param allMm all that is recorded; negative where the front lies higher
 */
record FrontLower(List<Double> allMm, String from) {

    static Found<FrontLower> of(Run run, List<Straight> straights) {
        List<Double> all = new ArrayList<>();
        Run.EavesSection eaves = run.eavesSection();
        Double back = eaves == null ? null : eaves.backEdgeBelowFasciaTopMm();
        Double front = eaves == null ? null : eaves.frontBeadBelowFasciaTopMm();
        boolean byEaves = back != null && front != null;
        if (back != null && front != null) {
            all.add(front - back);
        }
        for (Straight straight : straights) {
            int before = all.size();
            List<CrossTilt> tilts = straight.crossTilt();
            for (CrossTilt tilt : tilts == null ? List.<CrossTilt>of() : tilts) {
                Double mm = tilt.frontLowerMm();
                if (mm != null) {
                    all.add(mm);
                }
            }
            if (!byEaves && all.size() == before) {
                return Found.missing(
                        "how the front bead of straight "
                                + straight.id()
                                + " lies against its back edge is not recorded");
            }
        }
        return Found.of(
                new FrontLower(
                        List.copyOf(all),
                        all.size() == 1
                                ? "as recorded"
                                : "the worst of " + all.size() + " readings"));
    }

    /** The least of them. */
    double leastMm() {
        return allMm.stream().mapToDouble(it -> it).min().orElseThrow();
    }
}
