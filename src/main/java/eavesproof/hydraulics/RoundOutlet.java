package eavesproof.hydraulics;

/**
 * A round hole in the sole. It takes the water over its rim like a weir, Q = D h^1.5 / 7500, until
 * it is drowned and takes it like an orifice, Q = D² h^0.5 / 15000, in L/s and mm; both are equal
 * at h = D/2. A strainer or leaf guard halves what it takes. (EN 12056-3:2000 5.3 and table 7, from
 * memory.)
 *
 * <p>Stated there for outlets that discharge freely from the flat sole of a gutter.
 *
 * @param diameter inside, m
 * @param sump how far its rim lies below the sole of the gutter, m
 */
public record RoundOutlet(double diameter, double sump, boolean strained) implements Outlet {
    private static final double WEIR = 7500;
    private static final double ORIFICE = 15000;
    private static final double STRAINED = 0.5;

    public RoundOutlet {
        if (!(diameter > 0) || !(diameter < 10)) {
            throw Refused.saying(
                    "the diameter of an outlet is above 0 and below 10 m, not {}", diameter);
        }
        if (!(sump >= 0) || !(sump < 10)) {
            throw Refused.saying("the depth of a sump is 0 or more and below 10 m, not {}", sump);
        }
    }

    /** What leaves while the water stands this deep above the rim. */
    public double flowAt(double head) {
        double d = diameter * 1000;
        double h = head * 1000;
        double litres =
                h <= d / 2
                        ? d * h * StrictMath.sqrt(h) / WEIR
                        : d * d * StrictMath.sqrt(h) / ORIFICE;
        return litres / 1000 * (strained ? STRAINED : 1);
    }

    /** How deep the water stands above the rim for this much to leave. */
    public double headFor(double flow) {
        double litres = flow * 1000 / (strained ? STRAINED : 1);
        double d = diameter * 1000;
        double weir = StrictMath.cbrt(litres * WEIR / d);
        double h = weir * weir;
        if (h > d / 2) {
            double root = litres * ORIFICE / (d * d);
            h = root * root;
        }
        return h / 1000;
    }

    @Override
    public double depthFor(double flow) {
        return Math.max(0, headFor(flow) - sump);
    }
}
