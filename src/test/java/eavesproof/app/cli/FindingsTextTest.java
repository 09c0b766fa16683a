package eavesproof.app.cli;

import static eavesproof.findings.Examples.all;
import static eavesproof.findings.Examples.copper;
import static eavesproof.findings.Examples.discharge;
import static eavesproof.findings.Examples.open;
import static eavesproof.findings.Examples.rules;
import static eavesproof.findings.Examples.spacing;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.findings.Outcome;
import eavesproof.judge.Verdict;
import eavesproof.survey.Place;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FindingsTextTest {
    private static final Place LEFT = Place.of("run", "a", "outlet", "o1", "side", "left");
    private static final Finding WIDE = spacing("b1", "b2", 50, 540);
    private static final Finding FITS = spacing("b2", "b3", 590, 420);
    private static final Finding FITS_BARELY = spacing("b3", "b4", 1010, 490);
    private static final Finding MISSING =
            open(Verdict.NOT_RECORDED, "least fall", LEFT, "the readings are not recorded");
    private static final Finding APART =
            open(Verdict.NOT_APPLICABLE, "fall of box gutters", LEFT, "gutter kind is eaves");

    private static final Findings ALL =
            all(
                    Outcome.DOES_NOT_COMPLY,
                    rules(false, "4.2 leaf guards"),
                    List.of(copper(3)),
                    List.of("snow area: no (run a)"),
                    discharge("kerb", "kerb", "soakaway"),
                    MISSING,
                    APART,
                    WIDE,
                    FITS,
                    FITS_BARELY);

    private static final String EXPECTED =
            """
            Job lean-to

              Does not comply: 5 checks of 3 requirements, 3 met, 1 not met and 1 not
              recorded; no rule speaks of 3 places.
              1 clause is not checked. Rests on 1 assumed circumstance. Limits and figures
              not seen in the document itself: Eaves handbook (from memory). The rules are
              not as shipped.

            DOES NOT COMPLY
              Brackets stand no further apart than the gutter can bear.
              What a tidy job satisfies, 2026, 2.1, common practice
                run a, straight a1, from b1 to b2, 50 to 590 mm .............. over by 40 mm
                  540 ± 1.1 mm, at most 500 mm

            NOT RECORDED
              the readings are not recorded ............................ leaves 1 check open
                The gutter falls towards its outlet (least fall).
                  run a, outlet o1, left side
                  What a tidy job satisfies, 2026, 3, common practice

            NO RULE SPEAKS OF
              bracket spacing: run b, at 3 places
                because gutter material is copper

            COMPLIES
              discharge
                Roof water goes where the authority takes roof water.
                  run a, discharge g1 ................................................. kerb
              support
                Brackets stand no further apart than the gutter can bear.
                  2 places, tightest run a, straight a1, from b3 to b4,
                    1010 to 1500 mm ......................................... 10 mm to spare
                    490 ± 1.1 mm, at most 500 mm

            NOT APPLICABLE
              gutter kind is eaves: fall of box gutters

            ASSUMED
              snow area: no (run a)

            CLAUSES NOT CHECKED
              4.2 leaf guards

            HELD AGAINST
              Trade practice (trade-practice), anywhere
              rules not as shipped
                bracket centres: at most 450 mm, was 500 mm
              What a tidy job satisfies, 2026, common practice, figures checked 2026-05-01
              rules  0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef
              record 0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef
              eavesproof 1.0

              Does not comply: 5 checks of 3 requirements, 3 met, 1 not met and 1 not
              recorded; no rule speaks of 3 places.
              1 clause is not checked. Rests on 1 assumed circumstance. Limits and figures
              not seen in the document itself: Eaves handbook (from memory). The rules are
              not as shipped.

              Eavesproof records and computes; it approves nothing. Local codes and licensed
              practice decide.
            """;

    @Test
    void theWholePageReadsFromWhatNeedsActionDownToWhatItRestsOn() {
        assertEquals(EXPECTED, FindingsText.of(ALL, false));
    }

    @Test
    void partsWithNothingInThemAreLeftOut() {
        String text = FindingsText.of(all(Outcome.COMPLIES, FITS), false);

        for (String part :
                List.of(
                        "DOES NOT",
                        "TOO CLOSE",
                        "NOT RECORDED",
                        "NO RULE",
                        "NOT APPL",
                        "ASSUMED")) {
            assertFalse(text.contains(part), text);
        }
        assertTrue(text.contains("rules as shipped"), text);
    }

    @Test
    void colourChangesNoWord() {
        String coloured = FindingsText.of(ALL, true);

        assertTrue(coloured.contains("\u001b["), coloured);
        assertEquals(FindingsText.of(ALL, false), coloured.replaceAll("\u001b\\[[0-9;]*m", ""));
    }

    @Test
    void aCloseCallSaysHowLikelyItIsAndWhichWayTheReadingLies() {
        Finding onTheLimit = spacing("b1", "b2", 50, 500);
        Finding close = changed(onTheLimit, 0.5, onTheLimit.because());

        String text = FindingsText.of(all(Outcome.NOT_SHOWN, close), false);

        assertTrue(text.contains("meets the limit with a probability of 50 %"), text);
        assertTrue(text.contains("because the reading itself meets the limit"), text);
    }

    @Test
    void oneGapThatLeavesMuchOpenIsNamedOnce() {
        Finding[] open =
                Stream.of("least fall", "most fall", "back-fall", "ponds")
                        .map(rule -> open(Verdict.NOT_RECORDED, rule, LEFT, "no readings"))
                        .toArray(Finding[]::new);

        String text = FindingsText.of(all(Outcome.NOT_SHOWN, open), false);

        assertEquals(2, text.split("no readings", -1).length, text);
        assertTrue(text.contains("least fall, most fall, back-fall, ponds"), text);
        assertTrue(text.contains(" leaves 4 checks open\n"), text);
    }

    @Test
    void whatCompliesOnAConditionSaysSo() {
        Finding either =
                changed(
                        FITS,
                        1.0,
                        List.of("complies whether or not the rule applies", "snow is a gap"));

        String text = FindingsText.of(all(Outcome.COMPLIES, either, FITS_BARELY), false);

        assertTrue(
                text.contains(
                        "      at 1 place: complies whether or not the rule applies;"
                                + " snow is a gap\n"),
                text);
    }

    @Test
    void nothingIsEverCalledApprovedOrCertified() {
        for (Outcome outcome : Outcome.values()) {
            String text = FindingsText.of(all(outcome, WIDE, FITS, MISSING), false);
            assertFalse(text.toLowerCase(Locale.ROOT).contains("approved"), text);
            assertFalse(text.toLowerCase(Locale.ROOT).contains("certif"), text);
        }
    }

    private static Finding changed(Finding like, double probability, List<String> because) {
        return new Finding(
                like.rule(),
                like.topic(),
                like.says(),
                like.verdict(),
                like.kind(),
                like.measures(),
                like.place(),
                like.measured(),
                like.limit(),
                like.margin(),
                Optional.of(probability),
                like.decision(),
                because,
                like.source(),
                like.provenance(),
                like.assumed(),
                like.remedy(),
                like.workings());
    }
}
