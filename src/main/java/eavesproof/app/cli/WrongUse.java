package eavesproof.app.cli;

/** Something was typed that the program does not know, or not enough was. */
final class WrongUse extends Exception {
    private static final long serialVersionUID = 1L;

    WrongUse(String message) {
        super(message);
    }
}
