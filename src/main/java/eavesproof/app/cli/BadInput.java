package eavesproof.app.cli;

import java.util.List;

/** A record or a rule set that was not taken, with everything that is wrong with it. */
final class BadInput extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<String> problems;

    /**
     * @param what was not taken, as people call it
     */
    BadInput(String what, List<String> problems) {
        super(what);
        this.problems = List.copyOf(problems);
    }

    List<String> problems() {
        return problems;
    }
}
