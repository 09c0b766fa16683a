package eavesproof.drawing;

import java.util.List;

/**
 * The lines of a drawing, told apart by weight and by rhythm so that they survive a photocopier. No
 * line is thinner than 0.8 pt (0.283 mm), below which an office printer starts to drop it.
 */
public enum Line {
    NONE(0),
    /** Measures, leaders, scales. */
    FINE(0.3),
    /** What is built. */
    PLAIN(0.42),
    /** What the eye should find first. */
    HEAVY(0.8),
    /** What is hidden, planned or allowed. */
    DASHED(0.42),
    /** What is assumed or not recorded. */
    DOTTED(0.5),
    /** Datum and centre lines. */
    CHAIN(0.3);

    private final double widthMm;

    Line(double widthMm) {
        this.widthMm = widthMm;
    }

    public double widthMm() {
        return widthMm;
    }

    /** Lengths of stroke and gap in turn; empty for an unbroken line. */
    public List<Double> dashesMm() {
        return switch (this) {
            case NONE, FINE, PLAIN, HEAVY -> List.of();
            case DASHED -> List.of(2.2, 1.3);
            case DOTTED -> List.of(0.5, 1.1);
            case CHAIN -> List.of(4.5, 1.0, 0.6, 1.0);
        };
    }
}
