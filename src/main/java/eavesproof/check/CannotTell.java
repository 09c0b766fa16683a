package eavesproof.check;

/** Why there is no limit, in words for people. */
final class CannotTell extends Exception {
    private static final long serialVersionUID = 1L;

    private final String why;

    CannotTell(String why) {
        super(why);
        this.why = why;
    }

    String why() {
        return why;
    }
}
