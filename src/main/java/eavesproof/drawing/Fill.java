package eavesproof.drawing;

/** What an area is filled with: a tone of grey or ruled lines, never a colour. */
public enum Fill {
    NONE(-1, 0, 0),
    WHITE(255, 0, 0),
    TINT(232, 0, 0),
    SHADE(200, 0, 0),
    INK(0, 0, 0),
    HATCHED(-1, 45, 1.8),
    COUNTER_HATCHED(-1, -45, 1.8),
    LEVEL_RULED(-1, 0, 1.6);

    private final int grey;
    private final double hatchDeg;
    private final double hatchGapMm;

    Fill(int grey, double hatchDeg, double hatchGapMm) {
        this.grey = grey;
        this.hatchDeg = hatchDeg;
        this.hatchGapMm = hatchGapMm;
    }

    boolean isTone() {
        return grey >= 0;
    }

    /** 0 is ink, 255 is paper; only a tone has one. */
    int grey() {
        return grey;
    }

    boolean isRuled() {
        return hatchGapMm > 0;
    }

    /** Rising to the right is positive. */
    double hatchDeg() {
        return hatchDeg;
    }

    double hatchGapMm() {
        return hatchGapMm;
    }
}
