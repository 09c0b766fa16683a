package eavesproof.report;

/** The sheets that a report is printed on, upright. */
public enum Paper {
    /** ISO 216. */
    A4(210, 297),
    /** ANSI/ASME Y14.1, size A. */
    LETTER(215.9, 279.4);

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }
}
