package eavesproof.exchange;

import java.util.List;
import java.util.stream.Collectors;

/** A record that could not be taken, with everything that is wrong with it in the file's order. */
public final class BadRecord extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<RecordProblem> problems;

    BadRecord(List<RecordProblem> problems) {
        super(problems.stream().map(RecordProblem::text).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public List<RecordProblem> problems() {
        return problems;
    }
}
