package eavesproof.drawing;

import eavesproof.judge.Verdict;

/**
 * A finding that needs action, where it lies on one straight.
 *
 * @param block the number of its entry in the list of findings
 * @param row which place of that entry it is, from 1; 0 where the entry has only one place
 * @param fromMm to {@code toMm} the stretch, the same for a point
 */
public record Numbered(int block, int row, Verdict verdict, double fromMm, double toMm) {
    public Numbered {
        if (block < 1 || row < 0 || !(fromMm <= toMm)) {
            throw new IllegalArgumentException(
                    "not a numbered place: "
                            + block
                            + "."
                            + row
                            + " from "
                            + fromMm
                            + " to "
                            + toMm);
        }
    }

    /** As printed beside the drawing and in the list: 3, or 3.2. */
    public String label() {
        return row == 0 ? String.valueOf(block) : block + "." + row;
    }

    double middleMm() {
        return (fromMm + toMm) / 2;
    }
}
