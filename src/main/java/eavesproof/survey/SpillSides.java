package eavesproof.survey;

import eavesproof.job.Run;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where water goes that the gutter cannot hold: over its front, or over its back. What goes over
 * the back runs down the face of the fascia if there is a gap behind and the back edge lies below
 * the top of the fascia, each by 10 mm (ABCB Housing Provisions 2022 7.4.6: a controlled gap at the
 * back); else towards the building.
 */
final class SpillSides {
    static final String AWAY = "away from the building";
    static final String DOWN = "down the face of the fascia";
    static final String TOWARDS = "towards the building";
    static final List<String> ALL = List.of(AWAY, DOWN, TOWARDS);

    private static final double CLEAR_MM = 10;

    private SpillSides() {}

    static void answer(Trough trough, Answers answers) {
        String run = trough.id();
        FrontLower.of(trough.run(), trough.straights())
                .either(
                        tilt -> {
                            boolean front = tilt.leastMm() > 0;
                            String named = front ? AWAY : overTheBack(trough.run().eavesSection());
                            answers.concluded(
                                    new Facts.SpillSide(run, named),
                                    named,
                                    new Working(
                                            "front bead below back edge",
                                            Decimals.with(tilt.leastMm(), Unit.MM),
                                            tilt.from()),
                                    new Working(
                                            "water spills",
                                            named,
                                            front
                                                    ? "the front bead lies lower all along"
                                                    : "the front bead does not lie lower all"
                                                            + " along"));
                        },
                        why -> answers.gap(Facts.SpillSide.class, why, run));
    }

    /** What is not recorded of the gap is no gap. */
    private static String overTheBack(Run.@Nullable EavesSection eaves) {
        Double gap = eaves == null ? null : eaves.gapBehindMm();
        Double below = eaves == null ? null : eaves.backEdgeBelowFasciaTopMm();
        boolean outside = gap != null && below != null && gap >= CLEAR_MM && below >= CLEAR_MM;
        return outside ? DOWN : TOWARDS;
    }
}
