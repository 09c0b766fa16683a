package eavesproof.survey;

import eavesproof.job.WayPart.Outlet;
import eavesproof.quantity.Uncertain;
import eavesproof.survey.Trough.Spot;

/**
 * The part of a run that drains to an outlet from one side.
 *
 * @param at where the outlet is
 * @param left whether it lies to the left of the outlet
 * @param high its high end: an end of the run, or the high point towards the next outlet
 * @param length to the outlet's centre
 * @param halfBodyMm half of the outlet's fitting; 0 where its length is not recorded
 */
record Reach(Outlet outlet, Spot at, boolean left, Spot high, Uncertain length, double halfBodyMm) {

    String side() {
        return side(left);
    }

    static String side(boolean left) {
        return left ? "left" : "right";
    }

    /** As people read it: "the reach to the left of outlet o1". */
    String text() {
        return "the reach to the " + side() + " of outlet " + outlet.id();
    }

    /** Shown at its stretch, where it lies on one straight. */
    Answers shownOn(Trough trough, Answers answers) {
        if (at.straight() != high.straight()) {
            return answers;
        }
        return answers.on(
                trough.straight(at.straight()).id(),
                Math.min(at.stationMm(), high.stationMm()),
                Math.max(at.stationMm(), high.stationMm()));
    }
}
