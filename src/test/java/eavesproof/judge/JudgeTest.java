package eavesproof.judge;

import static eavesproof.check.Case.SNOW_RULE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.check.Case;
import eavesproof.check.Requirement;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.rules.Decision;
import eavesproof.survey.Answer;
import eavesproof.survey.Facts;
import eavesproof.survey.Measure;
import eavesproof.survey.Place;
import eavesproof.survey.Provenance;
import eavesproof.survey.Vocabulary;
import java.util.List;
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
    void whatIsTakenAsItIsReadNeedsNoUncertaintyAndStillHasToMeetItsLimit() {
        Uncertain met = Uncertain.unstated(300, "no instrument is recorded");
        Uncertain missed = Uncertain.unstated(300.01, "no instrument is recorded");
        assertEquals(Verdict.COMPLIES, onKnown(met, Decision.SIMPLE).verdict());
        assertEquals(Verdict.DOES_NOT_COMPLY, onKnown(missed, Decision.SIMPLE).verdict());
    }

    /** Identity: what is known exactly conforms for sure or not at all. */
    @Test
    void anExactReadingIsOnOneSideOrTheOther() {
        assertEquals(1, onKnown(Uncertain.exact(300), GUARDED).probability().orElseThrow());
        assertEquals(0, onKnown(Uncertain.exact(300.01), GUARDED).probability().orElseThrow());
    }

    /** Normal distribution, two standard uncertainties inside the limit: 0.9772499. */
    @Test
    void theProbabilityIsThatOfTheMarginOverItsUncertainty() {
        Ruling ruling = onKnown(Uncertain.of(292, "t", 4), GUARDED);
        assertEquals(0.9772499, ruling.probability().orElseThrow(), 5e-8);
    }

    @Test
    void itMissesOnlyWhereTheExcessIsMoreThanWhatIsUnsure() {
        assertFalse(onKnown(Uncertain.of(299, "t", 1), GUARDED).misses());
        assertFalse(onKnown(Uncertain.of(301, "t", 1), GUARDED).misses());
        assertTrue(onKnown(Uncertain.of(302.1, "t", 1), GUARDED).misses());
    }

    /** 302 misses by 2 mm, just as much as 2 x 1 mm is not sure of it. */
    @Test
    void anExcessThatIsJustUnsureIsTooCloseAndNoMiss() {
        Ruling ruling = onKnown(Uncertain.of(302, "t", 1), GUARDED);
        assertEquals(Verdict.TOO_CLOSE, ruling.verdict());
        assertFalse(ruling.misses());
    }

    @Test
    void whatIsTooCloseSaysOnWhichSideTheReadingLies() {
        String by = " the limit, by less than its uncertainty";
        for (double meets : new double[] {299, 300}) {
            assertEquals(
                    List.of("the reading itself meets" + by),
                    onKnown(Uncertain.of(meets, "t", 1), GUARDED).because());
        }
        assertEquals(
                List.of("the reading itself misses" + by),
                onKnown(Uncertain.of(301, "t", 1), GUARDED).because());
        assertEquals(List.of(), onKnown(Uncertain.of(200, "t", 1), GUARDED).because());
    }

    @Test
    void whatNobodyKnowsHowSureItIsSaysOnWhichSideTheReadingLies() {
        String but = " the limit, but how sure it is was not recorded";
        Ruling meets = onKnown(Uncertain.unstated(300, "no tape"), GUARDED);
        Ruling misses = onKnown(Uncertain.unstated(301, "no tape"), GUARDED);
        assertEquals(List.of("the reading itself meets" + but, "no tape"), meets.because());
        assertEquals(List.of("the reading itself misses" + but, "no tape"), misses.because());
        assertFalse(misses.misses());
    }

    @Test
    void aRulingKnowsItsRuleAndWhatItDemands() {
        Case good =
                new Case()
                        .spacing(Uncertain.exact(250))
                        .snow("yes")
                        .engineMatches(SNOW_RULE.name());
        List<Ruling> all = new Judge(GUARDED).judge(List.of(good.requirement(SNOW_RULE)));
        assertEquals(1, all.size());
        assertEquals(SNOW_RULE.name(), all.get(0).rule());
        assertEquals(new Demanded.AtMost(300, Unit.MM), all.get(0).demanded());
        assertEquals(new Demanded.OneOf(List.of("yes")), onWord("no", "yes").demanded());
    }

    @Test
    void everyVerdictHasItsOwnName() {
        assertEquals("does-not-comply", Verdict.DOES_NOT_COMPLY.id());
        assertEquals("too close to call", Verdict.TOO_CLOSE.words());
    }

    private static Ruling onWord(String said, String... allowed) {
        Requirement onSpacing = new Case().spacing(Uncertain.exact(1)).requirement(SNOW_RULE);
        Answer.Known sound =
                new Answer.Known(
                        Vocabulary.kind(Facts.TimberSound.class),
                        Place.of("run", "a", "bracket", "b1"),
                        new Facts.TimberSound("a", "b1", said),
                        new Measure.Word(said),
                        Provenance.MEASURED,
                        List.of());
        return new Judge(GUARDED)
                .judge(
                        new Requirement(
                                onSpacing.rule(),
                                sound,
                                Requirement.State.ON,
                                new Requirement.WordLimit(List.of(allowed)),
                                List.of(),
                                List.of()));
    }

    @Test
    void aWordCompliesOnlyIfItIsOneOfThoseAllowed() {
        assertEquals(Verdict.COMPLIES, onWord("yes", "maybe", "yes").verdict());
        assertEquals(Verdict.DOES_NOT_COMPLY, onWord("no", "maybe", "yes").verdict());
        assertEquals(Verdict.DOES_NOT_COMPLY, onWord("yes").verdict());
        assertTrue(onWord("no", "yes").misses());
        assertFalse(onWord("yes", "yes").misses());
    }

    @Test
    void onlyWhatCompliesOrDoesNotApplyNeedsNoAction() {
        for (Verdict verdict : Verdict.values()) {
            boolean good = verdict == Verdict.COMPLIES || verdict == Verdict.NOT_APPLICABLE;
            assertEquals(!good, verdict.needsAction(), verdict.words());
        }
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
        assertEquals("complies whether or not the rule applies", met.because().get(0));
        assertEquals(Verdict.NOT_RECORDED, missed.verdict());
        assertEquals(List.of(why), missed.because());
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
