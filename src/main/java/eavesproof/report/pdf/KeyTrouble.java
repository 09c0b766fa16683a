package eavesproof.report.pdf;

/** A key file that nothing can be signed with; the message says why. */
public final class KeyTrouble extends Exception {
    private static final long serialVersionUID = 1L;

    KeyTrouble(String why) {
        super(why);
    }
}
