package eavesproof.app;

import static eavesproof.findings.Outcome.COMPLIES;
import static eavesproof.findings.Outcome.DOES_NOT_COMPLY;
import static eavesproof.findings.Outcome.NOT_SHOWN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.findings.Outcome;
import eavesproof.judge.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Jobs that comply, with something left out or made worse: none of them may comply still. */
class NoWrongPassTest {
    private static final ShippedRules RULES = ShippedRules.named("trade-practice");

    /** Brackets at most 290 mm apart. */
    private static final String CLOSE = "hut-in-the-snow";

    /** Brackets at most 490 mm apart. */
    private static final String FAR = "verandah-pvc";

    private static Findings check(EditedRecord record) {
        return RULES.check(record.bytes());
    }

    private static Outcome outcome(EditedRecord record) {
        return check(record).outcome();
    }

    @ParameterizedTest
    @ValueSource(strings = {CLOSE, FAR})
    void unchangedTheyComply(String sample) {
        assertEquals(COMPLIES, outcome(EditedRecord.ofSample(sample)));
    }

    @Test
    void anEmptyListOfBracketsDoesNotComply() {
        EditedRecord none = EditedRecord.ofSample(FAR).with("/runs/0/straights/0/brackets", "[]");
        assertEquals(DOES_NOT_COMPLY, outcome(none));
    }

    @Test
    void bracketsOfWhichNothingIsSaidAreNotShown() {
        EditedRecord absent = EditedRecord.ofSample(FAR).without("/runs/0/straights/0/brackets");
        EditedRecord nothing =
                EditedRecord.ofSample(FAR).with("/runs/0/straights/0/brackets", "null");
        assertEquals(NOT_SHOWN, outcome(absent));
        assertEquals(NOT_SHOWN, outcome(nothing));
    }

    @Test
    void whereNobodySaidWhetherSnowLiesWideSpacingsAreNotShown() {
        Findings findings = check(EditedRecord.ofSample(FAR).without("/circumstances/snow_lies"));
        assertEquals(NOT_SHOWN, findings.outcome());
        List<Finding> open = findings.of(Verdict.NOT_RECORDED);
        assertTrue(open.stream().allMatch(f -> f.rule().equals("bracket centres where snow lies")));
        assertTrue(!open.isEmpty());
    }

    @Test
    void whereNobodySaidWhetherSnowLiesCloseSpacingsComplyWhetherOrNot() {
        Findings findings = check(EditedRecord.ofSample(CLOSE).without("/circumstances/snow_lies"));
        assertEquals(COMPLIES, findings.outcome());
        assertTrue(
                findings.findings().stream()
                        .filter(f -> f.rule().equals("bracket centres where snow lies"))
                        .allMatch(f -> f.because().get(0).startsWith("complies whether or not")));
    }

    @Test
    void anUnknownCircumstanceIsNoNo() {
        EditedRecord unknown =
                EditedRecord.ofSample(FAR)
                        .with(
                                "/circumstances/heavy_rain",
                                "{\"is\": \"unknown\", \"how\": \"told\"}");
        assertEquals(NOT_SHOWN, outcome(unknown));
    }

    @ParameterizedTest
    @CsvSource({
        "/gutters/g/kind, box",
        "/gutters/g/material, fibre cement",
        "/gutters/g/material, other",
        "/gutters/g/jointing, soldered"
    })
    void aGutterThatNoRuleSpeaksOfIsNotShown(String pointer, String word) {
        EditedRecord other = EditedRecord.ofSample(CLOSE).with(pointer, '"' + word + '"');
        // A cemented joint in a soldered gutter would be a contradiction.
        assertEquals(NOT_SHOWN, outcome(other.with("/runs/0/straights/0/joints", "[]")));
    }

    @Test
    void aCopperBoxGutterIsNotShown() {
        Findings findings =
                check(
                        EditedRecord.ofSample(CLOSE)
                                .with("/gutters/g/kind", "\"box\"")
                                .with("/gutters/g/material", "\"copper\""));
        assertEquals(NOT_SHOWN, findings.outcome());
        assertTrue(findings.of(Verdict.COMPLIES).isEmpty());
        assertTrue(findings.uncovered().size() > 1);
    }

    /**
     * Each is asked for by some rule, or tells which rules apply; without it the job is not shown.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/gutters/g/kind",
                "/gutters/g/material",
                "/gutters/g/jointing",
                "/instruments/tape/class",
                "/measured_with",
                "/set_ups/s1/instrument",
                "/runs/0/gutter",
                "/runs/0/straights/0/length_mm",
                "/runs/0/straights/0/left_end",
                "/runs/0/straights/0/right_end",
                "/runs/0/straights/0/readings",
                "/runs/0/straights/0/fittings",
                "/runs/0/straights/0/joints",
                "/runs/0/straights/0/keep_clear",
                "/runs/0/straights/0/fascia",
                "/runs/0/straights/0/brackets/1/station_mm",
                "/runs/0/straights/0/brackets/1/screws_fitted",
                "/runs/0/straights/0/brackets/1/holes_provided",
                "/runs/0/straights/0/brackets/1/screw_metal",
                "/runs/0/straights/0/joints/0/station_mm",
                "/way/0/on",
                "/way/0/to",
                "/way/0/station_mm",
                "/way/0/body_mm",
                "/way/0/cemented_to_gutter",
                "/way/0/set_for_temperature",
                "/way/0/screwed_to_fascia",
                "/way/1/to",
                "/way/2/place",
                "/way/2/approved",
                "/way/2/approved/by",
                "/way/2/approved/reference",
                "/way/2/traced"
            })
    void whatWasLeftOutIsNoPass(String pointer) {
        assertEquals(NOT_SHOWN, outcome(EditedRecord.ofSample(CLOSE).without(pointer)));
    }
}
