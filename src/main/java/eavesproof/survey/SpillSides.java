package eavesproof.survey;

import eavesproof.job.Run;
import eavesproof.quantity.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where water goes that the gutter cannot hold: over its front, or over its back. What goes over
 * the back runs down the face of the fascia if there is a gap behind and the back edge lies below
 * the top of the fascia, each by 10 mm (ABCB Housing Provisions 2022 7.4.6: a controlled gap at the
 * back); else towards the building. Which lip it is, is told only where the readings are sure of
 * it.
 */
final class SpillSides {
    static final String AWAY = "away from the building";
    static final String DOWN = "down the face of the fascia";
    static final String TOWARDS = "towards the building";
    static final List<String> ALL = List.of(AWAY, DOWN, TOWARDS);

    private static final double CLEAR_MM = 10;

    private SpillSides() {}

    static void answer(Trough trough, Answers answers) {
        FrontLower.of(trough)
                .either(
                        tilt -> answer(trough, tilt, answers),
                        why -> answers.gap(Facts.SpillSide.class, why, trough.id()));
    }

    private static void answer(Trough trough, FrontLower tilt, Answers answers) {
        String back = overTheBack(trough.run().eavesSection());
        tilt.lowerAllAlong()
                .either(
                        front ->
                                spills(
                                        trough,
                                        tilt,
                                        front ? AWAY : back,
                                        front
                                                ? "the front bead lies lower all along"
                                                : "the front bead does not lie lower all along",
                                        answers),
                        why -> {
                            if (back.equals(DOWN)) {
                                spills(trough, tilt, DOWN, "over one lip or the other", answers);
                            } else {
                                answers.gap(Facts.SpillSide.class, why, trough.id());
                            }
                        });
    }

    private static void spills(
            Trough trough, FrontLower tilt, String named, String from, Answers answers) {
        answers.concluded(
                new Facts.SpillSide(trough.id(), named),
                named,
                Answers.working("front bead below back edge", tilt.least(), Unit.MM, tilt.from()),
                new Working("water spills", named, from));
    }

    /**
     * What is not recorded of the gap is no gap. The 10 mm hold their own margin, so that the plain
     * figures decide.
     */
    private static String overTheBack(Run.@Nullable EavesSection eaves) {
        Double gap = eaves == null ? null : eaves.gapBehindMm();
        Double below = eaves == null ? null : eaves.backEdgeBelowFasciaTopMm();
        boolean outside = gap != null && below != null && gap >= CLEAR_MM && below >= CLEAR_MM;
        return outside ? DOWN : TOWARDS;
    }
}
