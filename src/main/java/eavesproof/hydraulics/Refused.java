package eavesproof.hydraulics;

import eavesproof.quantity.Decimals;

/** What a method will not compute, because it does not hold for it; why, in words for people. */
public final class Refused extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;
    private static final int DECIMALS = 6;

    private final String why;

    public Refused(String why) {
        super(why);
        this.why = why;
    }

    public String why() {
        return why;
    }

    /**
     * @param pattern with {} for each of the numbers
     */
    static Refused saying(String pattern, double... numbers) {
        StringBuilder why = new StringBuilder();
        int from = 0;
        for (double number : numbers) {
            int at = pattern.indexOf("{}", from);
            why.append(pattern, from, at).append(text(number));
            from = at + 2;
        }
        return new Refused(why.append(pattern.substring(from)).toString());
    }

    private static String text(double number) {
        return Double.isFinite(number) ? Decimals.plain(number, DECIMALS) : "no number";
    }

    /** A number that lies within the limits between which a method holds. */
    static double within(double least, double most, double value, String what, String source) {
        if (!(value >= least && value <= most)) {
            throw saying(what + " of {} is outside {} to {} of " + source, value, least, most);
        }
        return value;
    }
}
