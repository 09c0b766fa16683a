package eavesproof.report.pdf;

/** A file that this program did not make; the message says by what that is seen. */
public final class NotAReport extends Exception {
    private static final long serialVersionUID = 1L;

    public NotAReport(String why) {
        super(why);
    }
}
