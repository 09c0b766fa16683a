package eavesproof.rules;

import eavesproof.quantity.Decimals;

/**
 * How a measured value decides (JCGM 106:2012 8.2, 8.3; ILAC-G8:09/2019).
 *
 * @param guard how much of the expanded uncertainty (k = 2) is kept inside the limit; 0 is simple
 *     acceptance
 */
public record Decision(double guard) {
    public static final Decision SIMPLE = new Decision(0);

    /** More is a slip of the pen: nothing would ever comply. */
    public static final double MOST_GUARD = 10;

    public Decision {
        if (!(guard >= 0 && guard <= MOST_GUARD)) {
            throw new IllegalArgumentException("a guard factor is between 0 and 10, not " + guard);
        }
    }

    /** As results write it: simple, or guarded r=1. */
    public String text() {
        return guard == 0 ? "simple" : "guarded r=" + Decimals.plain(guard, 3);
    }
}
