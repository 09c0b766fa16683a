package eavesproof.survey;

import eavesproof.job.Run;
import eavesproof.job.Run.CrossTilt;
import eavesproof.job.Run.Straight;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * By how much the front bead of a run lies lower than its back edge: from the section through the
 * eaves, or as read at some stations of each straight.
 *
 * @param all that is recorded, in mm; negative where the front lies higher
 */
record FrontLower(List<Uncertain> all, String from) {

    static Found<FrontLower> of(Trough trough) {
        List<Uncertain> all = new ArrayList<>();
        Run run = trough.run();
        Run.EavesSection eaves = run.eavesSection();
        Double back = eaves == null ? null : eaves.backEdgeBelowFasciaTopMm();
        Double front = eaves == null ? null : eaves.frontBeadBelowFasciaTopMm();
        boolean byEaves = back != null && front != null;
        if (back != null && front != null) {
            Instruments instruments = trough.instruments();
            String thing = "run " + run.id();
            all.add(
                    instruments
                            .read(front, "front bead below the fascia", null, thing)
                            .minus(
                                    instruments.read(
                                            back, "back edge below the fascia", null, thing)));
        }
        for (Straight straight : trough.straights()) {
            int before = all.size();
            List<CrossTilt> tilts = straight.crossTilt();
            for (CrossTilt tilt : tilts == null ? List.<CrossTilt>of() : tilts) {
                Double mm = tilt.frontLowerMm();
                if (mm != null) {
                    all.add(read(trough, straight, tilt, mm, all.size()));
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

    private static Uncertain read(
            Trough trough, Straight straight, CrossTilt tilt, double mm, int index) {
        String with = tilt.measuredWith() == null ? straight.measuredWith() : tilt.measuredWith();
        String thing = "the cross tilt of straight " + straight.id();
        return trough.instruments().read(mm, "cross tilt " + index, with, thing);
    }

    List<Double> allMm() {
        return all.stream().map(Uncertain::value).toList();
    }

    /** The least of them. */
    Uncertain least() {
        return all.stream().min(Comparator.comparingDouble(Uncertain::value)).orElseThrow();
    }

    /**
     * Whether the front bead lies lower all along. A reading that is no further from level than it
     * is uncertain (k = 2) says neither.
     */
    Found<Boolean> lowerAllAlong() {
        if (all.stream().anyMatch(FrontLower::isHigher)) {
            return Found.of(false);
        }
        for (Uncertain tilt : all) {
            if (!tilt.isStated()) {
                return Found.missing(tilt.unstated().first());
            }
            if (tilt.value() <= tilt.expandedUncertainty()) {
                return Found.missing(
                        "it is too close to tell over which lip water spills: the front bead lies "
                                + Decimals.with(tilt.value(), Unit.MM)
                                + " below the back edge, ± "
                                + Decimals.with(tilt.expandedUncertainty(), Unit.MM));
            }
        }
        return Found.of(true);
    }

    private static boolean isHigher(Uncertain tilt) {
        return tilt.isStated() && tilt.value() < -tilt.expandedUncertainty();
    }
}
