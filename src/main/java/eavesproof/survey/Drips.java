package eavesproof.survey;

import eavesproof.job.Job;
import eavesproof.job.Job.WaterTest;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether joints held water when somebody tried. Nobody has to: but who plugged an outlet looked
 * for drips, and what was seen of them counts.
 */
final class Drips {
    private static final String PLUGGED = "outlet plugged";

    private Drips() {}

    static void answer(Job job, Trough trough, Answers answers) {
        List<WaterTest> tests = job.tests();
        List<WaterTest> looked = new ArrayList<>();
        for (WaterTest test : tests == null ? List.<WaterTest>of() : tests) {
            boolean ofRun = test.run() == null || test.run().equals(trough.id());
            if (ofRun && (PLUGGED.equals(test.kind()) || test.drips() != null)) {
                looked.add(test);
            }
        }
        if (looked.isEmpty()) {
            String why = "no test of run " + trough.id() + " says whether it drips";
            answers.none(Facts.TestDrips.class, why, trough.id());
        }
        for (WaterTest test : looked) {
            answers.word(
                    Facts.TestDrips.class,
                    test.drips(),
                    word -> new Facts.TestDrips(trough.id(), test.id(), word),
                    "whether the gutter dripped in test " + test.id(),
                    trough.id(),
                    test.id());
        }
    }
}
