package eavesproof.app;

import static eavesproof.findings.Outcome.COMPLIES;
import static eavesproof.findings.Outcome.DOES_NOT_COMPLY;
import static eavesproof.findings.Outcome.NOT_SHOWN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.judge.Verdict;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A job that bears its rain, with something of that left out or made worse. */
class NoWrongPassInRainTest {
    private static final ShippedRules RULES = ShippedRules.named("trade-practice");

    private static EditedRecord verandah() {
        return EditedRecord.ofSample("verandah-pvc");
    }

    /** A height of the downpipe would contradict another drop of the branch above it. */
    private static EditedRecord withoutHeight() {
        return verandah().without("/way/2/below_datum_mm");
    }

    private static Findings check(EditedRecord record) {
        return RULES.check(record.bytes());
    }

    private static List<String> rules(Findings findings, Verdict verdict) {
        return findings.of(verdict).stream().map(Finding::rule).distinct().toList();
    }

    @Test
    void unchangedItComplies() {
        assertEquals(COMPLIES, check(verandah()).outcome());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/catchments",
                "/catchments/0/run",
                "/catchments/0/plan_area_m2",
                "/catchments/0/walls",
                "/circumstances/rainfall",
                "/circumstances/rainfall/0/duration_min",
                "/circumstances/rainfall/0/aep_percent",
                "/gutters/g/profile/width_mm",
                "/gutters/g/profile/shape",
                "/gutters/g/material",
                "/runs/0/straights/0/left_end",
                "/runs/0/straights/0/readings",
                "/way/0/size_mm",
                "/way/0/strainer",
                "/way/1/drop_mm",
                "/way/1/size_mm",
                "/way/2/size_mm",
                "/way/2/offsets",
                "/way/2/also_carries",
                "/way/2/also_carries/0/plan_area_m2"
            })
    void whatIsLeftOutIsNotShown(String pointer) {
        assertEquals(NOT_SHOWN, check(verandah().without(pointer)).outcome());
    }

    @Test
    void anEmptyListOfCatchmentsIsNoRoofOfNothing() {
        Findings findings = check(verandah().with("/catchments", "[]"));
        assertEquals(NOT_SHOWN, findings.outcome());
        assertTrue(rules(findings, Verdict.NOT_RECORDED).contains("gutter holds the rain"));
    }

    @Test
    void howItHangsMustBeReadSomehow() {
        EditedRecord hung =
                verandah()
                        .without("/runs/0/straights/0/cross_tilt")
                        .without("/runs/0/eaves_section");
        assertEquals(
                List.of("spilled water falls outside"),
                rules(check(hung), Verdict.NOT_RECORDED).stream()
                        .filter(rule -> rule.startsWith("spilled"))
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/circumstances/rainfall/0/intensity_mm_h | 1000 | gutter holds the rain",
                "/circumstances/rainfall/0/intensity_mm_h | 1000 | gutter carries its roof",
                "/catchments/0/plan_area_m2 | 120 | half-round carries its roof",
                "/way/2/also_carries/0/plan_area_m2/is | 90 | downpipe carries its roofs",
                "/way/2/size_mm | 50 | downpipe carries its roofs",
                "/way/1/drop_mm | 0.01 | branch carries its water",
                "/way/0/size_mm | 20 | outlet takes its water",
                "/runs/0/eaves_section/front_bead_below_fascia_top_mm | 10 | spilled water falls outside"
            })
    void whatIsMadeWorseDoesNotComply(String pointer, String json, String rule) {
        Findings findings = check(withoutHeight().with(pointer, json));
        assertEquals(DOES_NOT_COMPLY, findings.outcome());
        assertTrue(
                rules(findings, Verdict.DOES_NOT_COMPLY).contains(rule),
                () -> rules(findings, Verdict.DOES_NOT_COMPLY).toString());
    }

    /** A clear message in place of a number, wherever the record makes no sense. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/way/0/size_mm | 300 | is wider than its gutter",
                "/gutters/g/profile/depth_mm | 20 | not half as deep as wide",
                "/runs/0/straights/0/readings/2/below_mm | 290 | steeper than 1 in 10",
                "/catchments/0/inflow | {\"kind\": \"valley\", \"on\": \"a1\"} | arrives is not recorded",
                "/way/2/size_mm | 20 | outside 50 to 300",
                "/way/1/drop_mm | -5 | which needs a fall"
            })
    void whatMakesNoSenseIsSaid(String pointer, String json, String why) {
        Findings findings = check(withoutHeight().with(pointer, json));
        assertTrue(findings.outcome() != COMPLIES);
        String reasons =
                findings.of(Verdict.NOT_RECORDED).stream()
                        .flatMap(finding -> finding.because().stream())
                        .collect(Collectors.joining("\n"));
        assertTrue(reasons.contains(why), reasons);
    }

    @Test
    void aProfileThatCrossesItselfIsSaid() {
        String bow =
                "{\"shape\": \"points\", \"points\": [{\"x_mm\": 0, \"y_mm\": 60},"
                        + " {\"x_mm\": 100, \"y_mm\": 0}, {\"x_mm\": 0, \"y_mm\": 0},"
                        + " {\"x_mm\": 100, \"y_mm\": 60}]}";
        Findings findings = check(verandah().with("/gutters/g/profile", bow));
        assertEquals(NOT_SHOWN, findings.outcome());
        String reasons =
                findings.of(Verdict.NOT_RECORDED).stream()
                        .flatMap(finding -> finding.because().stream())
                        .collect(Collectors.joining("\n"));
        assertTrue(reasons.contains("crosses itself"), reasons);
    }
}
