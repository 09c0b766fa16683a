package eavesproof.report.photo;

/**
 * Bytes that are no picture for the paper; the message ends a sentence that begins with the file.
 */
final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;

    Unreadable(String why) {
        super(why);
    }
}
