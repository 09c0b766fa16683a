package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BasisTest {
    @ParameterizedTest
    @CsvSource({
        "rain, 5, a key of the basis",
        "run_off, 1.2, a number from 0 to 1",
        "run_off, NaN, a number from 0 to 1",
        "run_off roofs, 1, run_off alone",
        "manning_n, 0.01, manning_n and of what",
        "manning_n cheese, 0.01, one of the materials of gutters",
        "length_factor long, 0.9, length_factor and a whole number",
        "roof_rain, 1, 'one of plan, plan and half the rise'"
    })
    void whatItDoesNotKnowIsSaid(String key, double value, String expected) {
        Basis.Stated stated = new Basis.Amount(value, "x");
        assertEquals(Optional.of(expected), Basis.problem(key, stated));
        String message =
                assertThrows(IllegalArgumentException.class, () -> new Basis(Map.of(key, stated)))
                        .getMessage();
        assertTrue(message.contains(expected), message);
    }

    @Test
    void aWordThatIsNoMethodIsSaid() {
        assertEquals(
                Optional.of("one of Wyly-Eaton, 7/24 full"),
                Basis.problem("downpipe_method", new Basis.Choice("by eye", "x")));
        assertEquals(
                Optional.of("a number from 0 to 1"),
                Basis.problem("run_off", new Basis.Choice("much", "x")));
    }

    @Test
    void whatIsStatedIsTaken() {
        assertEquals(
                Optional.empty(),
                Basis.problem(
                        "manning_n zinc-aluminium coated steel", new Basis.Amount(0.012, "x")));
        assertEquals(
                Optional.empty(), Basis.problem("length_factor 200", new Basis.Amount(0.8, "x")));
    }
}
