package eavesproof.drawing;

/** How heavy the lettering of a drawing is. */
public enum Weight {
    REGULAR(Face.REGULAR),
    STRONG(Face.STRONG);

    private final Face face;

    Weight(Face face) {
        this.face = face;
    }

    Face face() {
        return face;
    }
}
