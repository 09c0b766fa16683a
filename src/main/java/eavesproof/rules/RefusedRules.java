package eavesproof.rules;

import java.util.List;
import java.util.stream.Collectors;

/** A rule set that is not taken, with everything that is wrong with it. */
public final class RefusedRules extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<RuleProblem> problems;

    public RefusedRules(List<RuleProblem> problems) {
        super(problems.stream().map(RuleProblem::text).collect(Collectors.joining("\n")));
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("refused without a reason");
        }
        this.problems = List.copyOf(problems);
    }

    public List<RuleProblem> problems() {
        return problems;
    }
}
