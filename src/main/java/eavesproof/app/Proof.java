package eavesproof.app;

import java.util.ArrayList;
import java.util.List;

/** What was found about a report, in the order in which it was looked at. */
public final class Proof {
    private static final int WELL = 0;
    private static final int NOT_WELL = 1;
    private static final int NOT_SHOWN = 2;

    private final List<Line> lines = new ArrayList<>();

    /** How one thing stands. */
    public enum Stands {
        WELL("well"),
        NOT_WELL("NOT WELL"),
        NOT_CHECKED("not checked"),
        /** Said for whoever reads it, and neither good nor bad. */
        NOTE("note");

        private final String word;

        Stands(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public record Line(Stands stands, String says) {}

    void add(Stands stands, String says) {
        lines.add(new Line(stands, says));
    }

    public List<Line> lines() {
        return List.copyOf(lines);
    }

    /** All is well only where everything was looked at. */
    public int exitCode() {
        if (lines.stream().anyMatch(line -> line.stands() == Stands.NOT_WELL)) {
            return NOT_WELL;
        }
        return lines.stream().anyMatch(line -> line.stands() == Stands.NOT_CHECKED)
                ? NOT_SHOWN
                : WELL;
    }

    /** In a sentence. */
    public String outcome() {
        return switch (exitCode()) {
            case WELL -> "The paper says what its data give.";
            case NOT_SHOWN -> "What could be checked is well; not everything could be.";
            default -> "Something is not well with this report.";
        };
    }
}
