package eavesproof.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The list of everything that is wrong, as it grows. */
final class Problems {
    /** Nobody reads more, and a hostile file could make millions. */
    private static final int MOST = 1000;

    private static final Comparator<RecordProblem> IN_FILE_ORDER =
            Comparator.comparingInt(RecordProblem::line)
                    .thenComparingInt(RecordProblem::column)
                    .thenComparing(RecordProblem::pointer);

    private final List<RecordProblem> list = new ArrayList<>();

    void add(RecordProblem problem) {
        if (!full()) {
            list.add(problem);
        }
    }

    /** What is wrong with a value that in itself is well formed. */
    void add(Found at, String found, String expected) {
        add(new RecordProblem(at.pointer(), at.line(), at.column(), found, expected));
    }

    /** Whether so much is wrong that nothing more is listed. */
    boolean full() {
        return list.size() >= MOST;
    }

    boolean none() {
        return list.isEmpty();
    }

    List<RecordProblem> inFileOrder() {
        return list.stream().sorted(IN_FILE_ORDER).toList();
    }
}
