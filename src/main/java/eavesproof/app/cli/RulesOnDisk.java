package eavesproof.app.cli;

import eavesproof.app.LoadedRules;
import eavesproof.app.RuleSets;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.RuleProblem;
import java.io.IOException;

/** The rule set that somebody named. */
final class RulesOnDisk {
    static final String CALLED = "NAME|FOLDER";

    private RulesOnDisk() {}

    /** What is done with a rule set, which may turn out not to be one. */
    interface Deed<T> {
        T run() throws RefusedRules, IOException;
    }

    static LoadedRules load(String nameOrFolder, Surroundings here) throws BadInput, IOException {
        return of(() -> RuleSets.load(nameOrFolder, here.shippedRules()));
    }

    static <T> T of(Deed<T> deed) throws BadInput, IOException {
        try {
            return deed.run();
        } catch (RefusedRules e) {
            throw new BadInput("the rules", e.problems().stream().map(RuleProblem::text).toList());
        }
    }
}
