package eavesproof.survey;

import eavesproof.job.Run;
import eavesproof.job.Said;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The eaves that a gutter hangs on, and the measures by which it overflows when it is full. */
final class Eaves {
    private Eaves() {}

    static void answer(Run run, Instruments instruments, Answers answers) {
        Run.EavesSection eaves = run.eavesSection();
        String id = run.id();
        Double wide = eaves == null ? null : eaves.eavesWidthMm();
        if (wide == null) {
            answers.gap(Facts.EavesWidth.class, "the width of the eaves is not recorded", id);
        } else {
            Uncertain width = instruments.read(wide, "width of the eaves", null, "run " + id);
            answers.known(
                    new Facts.EavesWidth(id, wide),
                    width,
                    Answers.working("width of the eaves", width, Unit.MM, instruments.named(null)));
        }
        answers.said(
                Facts.EavesLined.class,
                eaves == null ? Said.nothing() : eaves.lined(),
                word -> new Facts.EavesLined(id, word),
                "whether the eaves of run " + id + " are lined",
                id);
        List<String> measures = eaves == null ? null : measures(eaves);
        if (measures == null) {
            answers.gap(
                    Facts.OverflowMeasures.class,
                    "whether there are overflow measures on run " + id + " is not recorded",
                    id);
        } else {
            String named = measures.isEmpty() ? "none is recorded" : String.join("; ", measures);
            Uncertain count = Uncertain.exact(measures.size());
            answers.known(
                    new Facts.OverflowMeasures(id, measures.size()),
                    count,
                    Answers.working("overflow measures", count, Unit.COUNT, named));
        }
    }

    /** As they are named, or else as they are measured. */
    static @Nullable List<String> measures(Run.EavesSection eaves) {
        List<String> named = eaves.overflowProvisions();
        List<Run.Overflow> measured = eaves.overflows();
        if (named != null || measured == null) {
            return named;
        }
        return measured.stream().map(one -> one.kind() == null ? one.id() : one.kind()).toList();
    }
}
