package eavesproof.findings;

import static eavesproof.findings.Examples.all;
import static eavesproof.findings.Examples.spacing;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.judge.Verdict;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ExpectationTest {
    private static final Finding FITS = spacing("b1", "b2", 50, 420);
    private static final Finding WIDE = spacing("b2", "b3", 470, 600);
    private static final Findings FINDINGS = all(Outcome.DOES_NOT_COMPLY, FITS, WIDE);

    private static Expectation expect(Verdict verdict, Map<String, String> subject) {
        return new Expectation(FITS.rule(), subject, verdict, "by hand");
    }

    @Test
    void theVerdictAtThePlaceThatIsMeantAgrees() {
        Map<String, String> first = Map.of("run", "a", "from", "b1", "to", "b2");
        assertTrue(expect(Verdict.COMPLIES, first).disagreement(FINDINGS).isEmpty());
    }

    @Test
    void anotherVerdictThereDisagreesAndBothAreNamed() {
        Map<String, String> second = Map.of("from", "b2", "to", "b3");
        String text = expect(Verdict.COMPLIES, second).disagreement(FINDINGS).orElseThrow();
        assertTrue(text.contains("should be \"complies\""), text);
        assertTrue(text.contains("does not comply"), text);
    }

    @Test
    void whereThePlaceFitsSeveralEveryOneMustAgree() {
        assertTrue(expect(Verdict.COMPLIES, Map.of("run", "a")).disagreement(FINDINGS).isPresent());
    }

    @Test
    void aPlaceThatIsNowhereDisagrees() {
        Map<String, String> nowhere = Map.of("run", "z");
        assertTrue(expect(Verdict.COMPLIES, nowhere).disagreement(FINDINGS).isPresent());
    }

    @Test
    void aRuleThatWasNotLaidAgainstAnythingDisagrees() {
        Expectation other = new Expectation("no such rule", Map.of(), Verdict.COMPLIES, "by hand");
        assertEquals(
                "\"no such rule\" at {} should be \"complies\", but the rule was laid against no such"
                        + " place",
                other.disagreement(FINDINGS).orElseThrow());
    }
}
