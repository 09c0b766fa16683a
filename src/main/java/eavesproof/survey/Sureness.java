package eavesproof.survey;

import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import java.util.Optional;

/**
 * How sure numbers are that were worked out from many others: as far as those were measured with an
 * instrument. The rest leaves them unstated, so that no guard can be kept.
 */
final class Sureness {
    private static final String REST =
            "how sure rain, run-off, roughness, sizes as marked and the method itself are was not"
                    + " recorded, nor areas that nobody measured";

    private Sureness() {}

    static Uncertain computed(Uncertain value) {
        return value.plus(Uncertain.unstated(0, REST));
    }

    /** As far as it is known, and what it does not contain. */
    static Optional<Working> working(Uncertain value, Unit unit) {
        return value.sources().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Working(
                                "how sure",
                                "± " + Decimals.with(value.expandedUncertainty(), unit),
                                "k = 2, from what was measured with an instrument alone; " + REST));
    }
}
