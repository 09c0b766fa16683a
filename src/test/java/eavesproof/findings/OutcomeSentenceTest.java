package eavesproof.findings;

import static eavesproof.findings.Examples.all;
import static eavesproof.findings.Examples.copper;
import static eavesproof.findings.Examples.discharge;
import static eavesproof.findings.Examples.open;
import static eavesproof.findings.Examples.rules;
import static eavesproof.findings.Examples.spacing;
import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.judge.Verdict;
import eavesproof.survey.Place;
import java.util.List;
import org.junit.jupiter.api.Test;

class OutcomeSentenceTest {
    private static final Place LEFT = Place.of("run", "a", "outlet", "o1", "side", "left");
    private static final Finding WIDE = spacing("b1", "b2", 50, 540);
    private static final Finding FITS = spacing("b2", "b3", 590, 420);
    private static final Finding FITS_TOO = spacing("b3", "b4", 1010, 480);
    private static final Finding CLOSE = spacing("b4", "b5", 1490, 500);

    @Test
    void aJobThatCompliesSaysHowMuchWasChecked() {
        assertEquals(
                "Complies: 2 checks of 1 requirement, and all are met.",
                OutcomeSentence.of(all(Outcome.COMPLIES, FITS, FITS_TOO)));
    }

    @Test
    void oneCheckIsNotCalledAll() {
        assertEquals(
                "Complies: 1 check of 1 requirement, and it is met.",
                OutcomeSentence.of(all(Outcome.COMPLIES, FITS)));
    }

    @Test
    void aJobThatDoesNotComplyAccountsForEveryCheck() {
        Finding missing = open(Verdict.NOT_RECORDED, "least fall", LEFT, "no readings");
        Finding apart = open(Verdict.NOT_APPLICABLE, "box fall", LEFT, "it is eaves");

        assertEquals(
                "Does not comply: 5 checks of 2 requirements, 2 met, 1 not met, "
                        + "1 too close to call and 1 not recorded.",
                OutcomeSentence.of(
                        all(Outcome.DOES_NOT_COMPLY, WIDE, FITS, FITS_TOO, CLOSE, missing, apart)));
    }

    @Test
    void whatNoRuleSpeaksOfIsPartOfTheOutcome() {
        assertEquals(
                "Not shown to comply: 1 check of 1 requirement, and it is met;"
                        + " no rule speaks of 3 places.",
                OutcomeSentence.of(
                        all(Outcome.NOT_SHOWN, rules(true), List.of(copper(3)), List.of(), FITS)));
    }

    @Test
    void aJobThatNothingAppliesToIsNotShown() {
        Finding apart = open(Verdict.NOT_APPLICABLE, "box fall", LEFT, "it is eaves");

        assertEquals(
                "Not shown to comply: no requirement applies to what is recorded.",
                OutcomeSentence.of(all(Outcome.NOT_SHOWN, apart)));
    }

    @Test
    void everythingThatTheOutcomeRestsOnIsSaid() {
        Finding kerb = discharge("kerb", "kerb");

        assertEquals(
                "Complies: 1 check of 1 requirement, and it is met."
                        + " 2 clauses are not checked."
                        + " Rests on 1 assumed circumstance."
                        + " Limits and figures not seen in the document itself: Eaves handbook (from memory)."
                        + " The rules are not as shipped.",
                OutcomeSentence.of(
                        all(
                                Outcome.COMPLIES,
                                rules(false, "4.2 leaf guards", "4.3 overflows"),
                                List.of(),
                                List.of("snow area: no (run a)"),
                                kerb)));
    }
}
