package eavesproof.quantity;

/** The standard normal distribution. */
public final class Normal {
    /** Beyond this the tail is smaller than a double can tell from 0 beside 1. */
    private static final double FAR = 8.3;

    private Normal() {}

    /**
     * The probability of a value below z, by the series of G. Marsaglia, Evaluating the Normal
     * Distribution, Journal of Statistical Software 11(4), 2004.
     */
    public static double below(double z) {
        if (Double.isNaN(z)) {
            throw new IllegalArgumentException("not a number");
        }
        if (z > FAR) {
            return 1;
        }
        if (z < -FAR) {
            return 0;
        }
        double term = z;
        double sum = z;
        double before = 0;
        for (int i = 3; sum != before; i += 2) {
            before = sum;
            term *= z * z / i;
            sum += term;
        }
        double density = StrictMath.exp(-0.5 * z * z) / StrictMath.sqrt(2 * Math.PI);
        return Math.min(1, Math.max(0, 0.5 + sum * density));
    }
}
