package eavesproof.survey;

import eavesproof.job.Run;
import eavesproof.job.WayPart;
import eavesproof.job.WayPart.Drain;
import eavesproof.job.WayPart.Outlet;
import eavesproof.job.WayPart.Tank;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a drain that backs up would spill: at the lowest opening above it, an outlet of a gutter or
 * the overflow of a tank, whosever water that is.
 */
final class Openings {
    private final Trough trough;
    private final Answers answers;

    Openings(Trough trough, Answers answers) {
        this.trough = trough;
        this.answers = answers;
    }

    private record Opening(WayPart part, double belowMm) {}

    void answer(Drain drain) {
        String run = trough.id();
        Found.by(() -> above(drain))
                .either(
                        openings -> lowest(drain, openings),
                        why -> answers.gap(Facts.LowestOpening.class, why, run, drain.id()));
    }

    /** All openings whose water comes to the drain. */
    private List<Opening> above(Drain drain) throws Lacking {
        List<Opening> openings = new ArrayList<>();
        for (WayPart part : trough.way().above(drain)) {
            if (part instanceof Outlet || part instanceof Tank) {
                String what = "how high " + part.id() + " lies";
                openings.add(new Opening(part, Found.need(part.belowDatumMm(), what)));
            } else if (!Loads.others(part).isEmpty()) {
                throw Found.lacking(
                        "how high the openings of the other roofs on "
                                + part.id()
                                + " lie is not recorded");
            }
        }
        return openings;
    }

    private void lowest(Drain drain, List<Opening> openings) {
        Opening lowest = openings.get(0);
        double own = Double.NEGATIVE_INFINITY;
        for (Opening opening : openings) {
            lowest = opening.belowMm() > lowest.belowMm() ? opening : lowest;
            if (opening.part() instanceof Outlet outlet && trough.outlets().contains(outlet)) {
                own = Math.max(own, opening.belowMm());
            }
        }
        double below = lowest.belowMm() - own;
        List<Working> workings = new ArrayList<>();
        if (lowest.part() instanceof Outlet outlet) {
            trough.way().below(outlet).map(zone -> overDoor(outlet, zone)).ifPresent(workings::add);
        }
        workings.addAll(heights(lowest, own, below, openings.size()));
        answers.known(
                new Facts.LowestOpening(trough.id(), drain.id(), lowest.part().id(), below),
                Uncertain.unstated(
                        below, "with what the heights of the way were measured is not recorded"),
                GutterWater.array(workings));
    }

    private static Working overDoor(Outlet outlet, Run.KeepClear zone) {
        String what = zone.what();
        return new Working(
                "what " + outlet.id() + " would spill on",
                what == null ? "what is to be kept clear" : what,
                "zone " + zone.id() + ", in which the outlet lies");
    }

    private List<Working> heights(Opening lowest, double own, double below, int openings) {
        return List.of(
                new Working(
                        "lowest opening, " + lowest.part().id(),
                        Decimals.with(lowest.belowMm(), Unit.MM),
                        "below the datum of the way, of " + openings + " openings"),
                new Working(
                        "lowest outlet of run " + trough.id(),
                        Decimals.with(own, Unit.MM),
                        "below the datum of the way"),
                new Working("lower by", Decimals.with(below, Unit.MM), "the difference"));
    }
}
