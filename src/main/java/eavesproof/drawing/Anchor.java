package eavesproof.drawing;

/** Which part of the words stands at the given point; the point lies on the base line. */
public enum Anchor {
    START(0),
    MIDDLE(0.5),
    END(1);

    private final double share;

    Anchor(double share) {
        this.share = share;
    }

    /** The share of the words' width that lies before the point. */
    double share() {
        return share;
    }
}
