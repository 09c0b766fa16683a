package eavesproof.survey;

import eavesproof.job.Instrument.SetUp;
import eavesproof.job.Instrument.StringLine;
import eavesproof.quantity.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * How far a string hangs below the straight line between its ends: in its middle as stated, or m g
 * l² / 8 T by its mass a metre m, its span l and the force T that it is pulled with; and elsewhere
 * 4 x (l - x) / l² of that (statics of a taut string, a parabola).
 */
final class StringSag {
    private static final double GRAVITY_M_S2 = 9.81;
    private static final double MM_IN_A_M = 1000;
    private static final double G_IN_A_KG = 1000;
    private static final double SQRT_3 = StrictMath.sqrt(3);

    /** Our choice: a force by the hand, or a sag by the eye, is known to a fifth. */
    private static final double KNOWN_TO = 0.2;

    private StringSag() {}

    /**
     * @param alongMm from where the string begins
     */
    static Uncertain at(SetUp setUp, double alongMm) {
        StringLine string = setUp.string();
        Double span = string == null ? null : string.spanMm();
        Double middle = string == null || span == null ? null : middleMm(string, span);
        if (span == null || middle == null) {
            return Uncertain.unstated(
                    0, "how far the string of set-up " + setUp.id() + " hangs is not recorded");
        }
        if (alongMm < 0 || alongMm > span) {
            return Uncertain.unstated(
                    0, "a reading lies beyond the ends of the string of set-up " + setUp.id());
        }
        double sag = middle * 4 * alongMm * (span - alongMm) / (span * span);
        String source = "sag of the string of set-up " + setUp.id();
        return Uncertain.of(sag, source, sag * KNOWN_TO / SQRT_3);
    }

    private static @Nullable Double middleMm(StringLine string, double spanMm) {
        Double stated = string.sagMm();
        Double mass = string.massGPerM();
        Double tension = string.tensionN();
        if (stated != null || mass == null || tension == null) {
            return stated;
        }
        double spanM = spanMm / MM_IN_A_M;
        return mass / G_IN_A_KG * GRAVITY_M_S2 * spanM * spanM / (8 * tension) * MM_IN_A_M;
    }
}
