package eavesproof.judge;

import static eavesproof.check.Case.SNOW_RULE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.check.Case;
import eavesproof.quantity.Uncertain;
import eavesproof.rules.Decision;
import eavesproof.survey.Facts;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Spacings against a limit of 300 mm that applies where snow lies. */
class JudgeTest {
    private static final Decision GUARDED = new Decision(1);

    private static Ruling onKnown(Uncertain spacing, Decision decision) {
        return ruling(
                new Case().spacing(spacing).snow("yes").engineMatches(SNOW_RULE.name()), decision);
    }

    private static Ruling ruling(Case situation, Decision decision) {
        return new Judge(decision).judge(situation.requirement(SNOW_RULE));
    }

    @Test
    void aMarginLargerThanItsUncertaintyComplies() {
        Ruling ruling = onKnown(Uncertain.of(297, "tape", 1), GUARDED);
        assertEquals(Verdict.COMPLIES, ruling.verdict());
        assertEquals(3, ruling.margin().orElseThrow().value(), 1e-9);
    }

    @Test
    void aMarginSmallerThanItsUncertaintyIsTooCloseOnBothSides() {
        assertEquals(Verdict.TOO_CLOSE, onKnown(Uncertain.of(299, "t", 1), GUARDED).verdict());
        assertEquals(Verdict.TOO_CLOSE, onKnown(Uncertain.of(301, "t", 1), GUARDED).verdict());
    }

    @Test
    void anExcessLargerThanItsUncertaintyDoesNotComply() {
        assertEquals(
                Verdict.DOES_NOT_COMPLY, onKnown(Uncertain.of(302.1, "t", 1), GUARDED).verdict());
    }

    @Test
    void simpleAcceptanceDecidesByTheReadingAlone() {
        assertEquals(
                Verdict.COMPLIES, onKnown(Uncertain.of(300, "t", 1), Decision.SIMPLE).verdict());
        assertEquals(
                Verdict.DOES_NOT_COMPLY,
                onKnown(Uncertain.of(300.01, "t", 1), Decision.SIMPLE).verdict());
    }

    /** Identity: a value at the limit conforms with probability one half. */
    @Test
    void aReadingAtTheLimitIsAsLikelyOnEitherSide() {
        assertEquals(0.5, onKnown(Uncertain.of(300, "t", 1), GUARDED).probability().orElseThrow());
    }

    @Test
    void anUnstatedUncertaintyIsNotRecordedAndNeverZero() {
        Ruling ruling = onKnown(Uncertain.unstated(200, "no instrument is recorded"), GUARDED);
        assertEquals(Verdict.NOT_RECORDED, ruling.verdict());
        assertTrue(ruling.because().contains("no instrument is recorded"));
    }

    @Test
    void aCircumstanceNeverSaidMattersOnlyWhereTheLimitIsMissed() {
        String why = "nobody said whether snow lies";
        Ruling met =
                ruling(
                        new Case()
                                .spacing(Uncertain.of(250, "t", 1))
                                .gap(Facts.SnowArea.class, why),
                        GUARDED);
        Ruling missed =
                ruling(
                        new Case()
                                .spacing(Uncertain.of(450, "t", 1))
                                .gap(Facts.SnowArea.class, why),
                        GUARDED);
        assertEquals(Verdict.COMPLIES, met.verdict());
        assertEquals(Verdict.NOT_RECORDED, missed.verdict());
        assertTrue(missed.because().contains(why));
    }

    @Test
    void aMissingSubjectIsNotRecorded() {
        Ruling ruling =
                ruling(
                        new Case().gap(Facts.BracketSpacing.class, "no stations").snow("yes"),
                        GUARDED);
        assertEquals(Verdict.NOT_RECORDED, ruling.verdict());
    }

    @Property
    void aWiderSpacingIsNeverJudgedBetter(
            @ForAll @DoubleRange(min = 100, max = 500) double spacing,
            @ForAll @DoubleRange(min = 0, max = 100) double more,
            @ForAll @DoubleRange(min = 0.01, max = 5) double u) {
        int narrow = rank(onKnown(Uncertain.of(spacing, "t", u), GUARDED).verdict());
        int wide = rank(onKnown(Uncertain.of(spacing + more, "t", u), GUARDED).verdict());
        assertTrue(wide <= narrow);
    }

    @Property
    void aLessSureReadingNeverTurnsIntoAPass(
            @ForAll @DoubleRange(min = 100, max = 500) double spacing,
            @ForAll @DoubleRange(min = 0.01, max = 5) double u,
            @ForAll @DoubleRange(min = 1, max = 10) double factor) {
        Verdict sure = onKnown(Uncertain.of(spacing, "t", u), GUARDED).verdict();
        Verdict unsure = onKnown(Uncertain.of(spacing, "t", u * factor), GUARDED).verdict();
        assertTrue(sure == Verdict.COMPLIES || unsure != Verdict.COMPLIES);
    }

    private static int rank(Verdict verdict) {
        return switch (verdict) {
            case COMPLIES -> 2;
            case TOO_CLOSE -> 1;
            case DOES_NOT_COMPLY -> 0;
            case NOT_RECORDED, NOT_APPLICABLE -> throw new AssertionError(verdict);
        };
    }
}
