package eavesproof.check;

import static eavesproof.check.Case.SNOW_RULE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.check.Requirement.State;
import eavesproof.quantity.Uncertain;
import eavesproof.rules.Rule;
import eavesproof.survey.Facts;
import java.util.List;
import org.junit.jupiter.api.Test;

class CoverageTest {
    private static final Uncertain SPACING = Uncertain.of(290, "tape", 0.5);
    private static final Rule WIDE_RULE =
            Case.rule(
                    "centres of a wide gutter",
                    new Rule.Pattern(
                            "GutterWidth",
                            "$width",
                            List.of(
                                    Case.join(),
                                    new Rule.Compare(
                                            "widthMm",
                                            Rule.Operator.AT_LEAST,
                                            new Rule.Num(180, "180")))));

    @Test
    void aRuleWhoseConditionsHoldIsOn() {
        Requirement found =
                new Case()
                        .spacing(SPACING)
                        .snow("yes")
                        .engineMatches(SNOW_RULE.name())
                        .requirement(SNOW_RULE);
        assertEquals(State.ON, found.state());
    }

    @Test
    void aRuleWhoseConditionFailsIsOffAndSaysWhy() {
        Requirement found = new Case().spacing(SPACING).snow("no").requirement(SNOW_RULE);
        assertEquals(State.OFF, found.state());
        assertEquals(List.of("snow area is no"), found.because());
    }

    @Test
    void aCircumstanceThatWasNeverSaidLeavesTheRuleInTheDark() {
        Requirement found =
                new Case()
                        .spacing(SPACING)
                        .gap(Facts.SnowArea.class, "nobody said whether snow lies")
                        .requirement(SNOW_RULE);
        assertEquals(State.IN_THE_DARK, found.state());
        assertEquals(List.of("nobody said whether snow lies"), found.because());
    }

    @Test
    void aSubjectThatWasNotRecordedIsNoPass() {
        Requirement found =
                new Case()
                        .gap(Facts.BracketSpacing.class, "the brackets of a1 are not recorded")
                        .snow("yes")
                        .requirement(SNOW_RULE);
        assertEquals(State.NO_SUBJECT, found.state());
    }

    @Test
    void aSubjectThatWasNotRecordedDoesNotMatterWhereTheRuleIsKnownNotToApply() {
        Requirement found =
                new Case()
                        .gap(Facts.BracketSpacing.class, "the brackets of a1 are not recorded")
                        .snow("no")
                        .requirement(SNOW_RULE);
        assertEquals(State.OFF, found.state());
    }

    @Test
    void aWidthWithinItsUncertaintyOfTheConditionIsBorderlineOnBothSides() {
        Requirement above =
                new Case()
                        .spacing(SPACING)
                        .width(Uncertain.of(180.5, "rule", 0.5))
                        .engineMatches(WIDE_RULE.name())
                        .requirement(WIDE_RULE);
        Requirement below =
                new Case()
                        .spacing(SPACING)
                        .width(Uncertain.of(179.5, "rule", 0.5))
                        .requirement(WIDE_RULE);
        assertEquals(State.BORDERLINE, above.state());
        assertEquals(State.BORDERLINE, below.state());
    }

    @Test
    void aWidthOfUnstatedUncertaintyDoesNotSwitchARuleOff() {
        Requirement found =
                new Case()
                        .spacing(SPACING)
                        .width(Uncertain.unstated(100, "no instrument"))
                        .requirement(WIDE_RULE);
        assertEquals(State.IN_THE_DARK, found.state());
    }

    @Test
    void anEngineThatSeesLessThanTheConditionsGiveIsAFault() {
        Case silent = new Case().spacing(SPACING).snow("yes");
        assertThrows(Engine.EngineFault.class, () -> silent.coverage(SNOW_RULE));
    }

    @Test
    void anEngineThatSeesMoreThanTheConditionsGiveIsAFault() {
        Case eager = new Case().spacing(SPACING).snow("no").engineMatches(SNOW_RULE.name());
        assertThrows(Engine.EngineFault.class, () -> eager.coverage(SNOW_RULE));
    }

    @Test
    void anEngineThatReportsARuleNobodyHasIsAFault() {
        Case stranger =
                new Case()
                        .spacing(SPACING)
                        .snow("yes")
                        .engineMatches(SNOW_RULE.name())
                        .engineMatches("a rule of another set");
        assertThrows(Engine.EngineFault.class, () -> stranger.coverage(SNOW_RULE));
    }

    @Test
    void whatNoRuleSpeaksOfIsSaid() {
        Coverage coverage = new Case().spacing(SPACING).snow("no").coverage(SNOW_RULE);
        assertEquals(1, coverage.uncovered().size());
        assertEquals(List.of("snow area is no"), coverage.uncovered().get(0).why());
    }

    @Test
    void whereOneRuleIsOnItDoesNotMatterThatAnotherIsInTheDark() {
        Rule plain = Case.rule("centres");
        Coverage coverage =
                new Case()
                        .spacing(SPACING)
                        .gap(Facts.SnowArea.class, "nobody said whether snow lies")
                        .engineMatches(plain.name())
                        .coverage(SNOW_RULE, plain);
        assertTrue(coverage.uncovered().isEmpty());
    }

    /** Were it known that no snow lies, no rule would speak of the spacing. */
    @Test
    void whatEveryRuleIsInTheDarkAboutIsNotKnownToBeSpokenOf() {
        Coverage coverage =
                new Case()
                        .spacing(SPACING)
                        .gap(Facts.SnowArea.class, "nobody said whether snow lies")
                        .coverage(SNOW_RULE);
        assertEquals(1, coverage.uncovered().size());
        assertEquals(List.of("nobody said whether snow lies"), coverage.uncovered().get(0).why());
    }

    @Test
    void withNoRulesAtAllEveryFactIsUncovered() {
        assertEquals(1, new Case().spacing(SPACING).coverage().uncovered().size());
    }
}
