package eavesproof.check.drools;

import eavesproof.rules.RefusedRules;
import eavesproof.rules.RuleProblem;
import java.util.ArrayList;
import java.util.List;

/** What is wrong with one rule file, gathered so that its author sees it all at once. */
final class Problems {
    /** Enough to work on; a file that is no rule file at all need not be quoted in full. */
    private static final int MOST = 50;

    private final String file;
    private final List<RuleProblem> found = new ArrayList<>();

    Problems(String file) {
        this.file = file;
    }

    void add(int line, String what, String expected) {
        if (found.size() < MOST) {
            found.add(RuleProblem.at(file, line, what, expected));
        }
    }

    boolean any() {
        return !found.isEmpty();
    }

    void refuseIfAny() throws RefusedRules {
        if (any()) {
            throw new RefusedRules(found);
        }
    }
}
