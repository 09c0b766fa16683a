package eavesproof.hydraulics;

/** What a method will not compute, because it does not hold for it; why, in words for people. */
public final class Refused extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String why;

    public Refused(String why) {
        super(why);
        this.why = why;
    }

    public String why() {
        return why;
    }

    /** A number that lies within the limits between which a method holds. */
    static double within(double least, double most, double value, String what, String source) {
        if (!(value >= least && value <= most)) {
            throw new Refused(
                    what
                            + " of "
                            + value
                            + " is outside "
                            + least
                            + " to "
                            + most
                            + " of "
                            + source);
        }
        return value;
    }
}
