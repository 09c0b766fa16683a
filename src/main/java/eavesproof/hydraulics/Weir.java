package eavesproof.hydraulics;

/**
 * A sharp edge over which water falls: Q = C b h^1.5.
 *
 * @param coefficient C, m^0.5/s
 */
public record Weir(double coefficient) {
    private static final double METRES_PER_FOOT = 0.3048;

    /** 9.81 m/s² in √(2 g). */
    private static final double ROOT_2G = StrictMath.sqrt(2 * Channel.G);

    public Weir {
        Refused.within(0.5, 3, coefficient, "the coefficient of a weir", "weirs");
    }

    /** C = 0.67 Cd √(2g), as the ABCB Housing Provisions 2022 7.4.1 print it. */
    public static Weir withDischargeCoefficient(double cd) {
        return new Weir(0.67 * cd * ROOT_2G);
    }

    /** From the coefficient in US units, ft^0.5/s. */
    public static Weir inFeet(double coefficient) {
        return new Weir(coefficient * StrictMath.sqrt(METRES_PER_FOOT));
    }

    /** What goes over, m³/s. */
    public double flow(double length, double head) {
        if (!(length >= 0) || !(head >= 0)) {
            throw Refused.saying("length and head are 0 or more, not {} and {}", length, head);
        }
        return coefficient * length * head * StrictMath.sqrt(head);
    }
}
