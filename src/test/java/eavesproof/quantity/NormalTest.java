package eavesproof.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The standard normal distribution against printed tables. */
class NormalTest {
    /** Normal distribution, to the printed digits: 2u, 1.645u and 3u inside a limit. */
    @ParameterizedTest
    @CsvSource({"2, 0.9772499", "1.645, 0.9500151", "3, 0.9986501"})
    void agreesWithTheTables(double z, double probability) {
        assertEquals(probability, Normal.below(z), 0.5e-7);
    }

    /** JCGM 106:2012 7.4, example: value 13.6, u 1.8, limits 12.5 and 16.3; printed 0.66. */
    @Test
    void givesTheConformityProbabilityOfTheGuidesExample() {
        double probability = Normal.below((16.3 - 13.6) / 1.8) - Normal.below((12.5 - 13.6) / 1.8);
        assertEquals(0.66, probability, 0.005);
    }

    /**
     * ILAC-G8:09/2019, arithmetic: the chance that a value at the acceptance limit, which lies r
     * times U = 2u inside, is really outside.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0.5, 1e-12",
        "0.83, 0.04846, 0.5e-5",
        "1, 0.02275, 0.5e-5",
        "1.5, 0.00135, 0.5e-5"
    })
    void givesTheRiskOfFalseAcceptanceOfEachGuard(double r, double risk, double tolerance) {
        assertEquals(risk, Normal.below(-2 * r), tolerance);
    }

    @Property
    void isOneAltogether(@ForAll @DoubleRange(min = -40, max = 40) double z) {
        assertEquals(1, Normal.below(z) + Normal.below(-z), 1e-14);
    }
}
