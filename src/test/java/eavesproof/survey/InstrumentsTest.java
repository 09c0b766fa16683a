package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import eavesproof.job.Instrument;
import eavesproof.quantity.Uncertain;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InstrumentsTest {
    private final AJob job = new AJob();

    private Uncertain read(double mm) {
        return new Instruments(job.build()).read(mm, "length", null, "straight a1");
    }

    private void only(Double accuracyMm, Double resolutionMm) {
        job.instruments.put(
                "tape",
                new Instrument("tape", "rule", null, null, accuracyMm, null, resolutionMm, null));
    }

    /** 2014/32/EU MI-008 class II: 0.3 + 0.2 x 10 = 2.3 mm; / sqrt 3 = 1.328 mm. Arithmetic. */
    @Test
    void aTapeOfClassTwoIsUnsureByOnePointThreeAtTenMetres() {
        assertEquals(1.328, read(10_000).standardUncertainty(), 0.0005);
    }

    /** JCGM 100 4.4.5: a rectangle from 96 to 104 has u 2.3 [2.3094]. Published. */
    @Test
    void aStatedAccuracyIsTheHalfWidthOfARectangle() {
        only(4.0, 1e-9);
        assertEquals(2.3, read(100).standardUncertainty(), 0.05);
    }

    /**
     * 2014/32/EU MI-008: a + b L, L in metres rounded up to the next whole metre; read from the
     * hook 0.1, 0.2 and 0.3 more. Arithmetic.
     */
    @ParameterizedTest
    @CsvSource({
        "I,   no,  10000, 1.1",
        "I,   yes, 10000, 1.2",
        "II,  yes, 10000, 2.5",
        "III, no,  10000, 4.6",
        "III, yes, 10000, 4.9",
        "II,  no,  4001,  1.3",
        "II,  no,  4000,  1.1",
    })
    void theGreatestErrorFollowsFromClassAndLength(
            String tapeClass, String hook, double mm, double halfWidth) {
        job.tape(tapeClass, hook);
        assertEquals(halfWidth / Math.sqrt(3), read(mm).standardUncertainty(), 1e-12);
    }

    @Test
    void whereTheHookIsNotSpokenOfItIsTakenToBeUsed() {
        double hook =
                new Instruments(job.tape("II", "yes").build())
                        .read(1000, "length", null, "straight a1")
                        .standardUncertainty();
        job.tape("II", null);
        assertEquals(hook, read(1000).standardUncertainty());
    }

    /** JCGM 100 F.2.2.1: a smallest step of 1 mm is u = 1 / sqrt 12 = 0.29 mm. Published. */
    @Test
    void theSmallestStepIsASourceOfItsOwn() {
        only(1.0, 1.0);
        Uncertain read = read(100);
        assertEquals(Set.of("length", "length, smallest step"), read.sources().keySet());
        assertEquals(0.29, read.sources().get("length, smallest step"), 0.005);
    }

    /** Whatever were taken in its stead would be kinder than some step that could be recorded. */
    @Test
    void aSmallestStepThatIsNotRecordedIsNoUsualOne() {
        only(1.0, null);
        assertEquals(
                "[the smallest step of tape is not recorded]", read(100).unstated().toString());
        assertEquals("measured with tape", new Instruments(job.build()).named(null));
    }

    @Test
    void anInstrumentOfNobodyKnowsWhatKindShowsNothing() {
        job.instruments.put("tape", new Instrument("tape", null, "II", null, 1.0, null, 1.0, null));
        assertEquals(
                "[what kind of instrument tape is is not recorded]",
                read(100).unstated().toString());
    }

    @Test
    void withNothingStatedTheUncertaintyIsNotZeroButUnstated() {
        only(null, 1.0);
        assertFalse(read(100).isStated());
        assertEquals("[the accuracy of tape is not recorded]", read(100).unstated().toString());
        job.instruments.clear();
        assertEquals("[instrument tape is not recorded]", read(100).unstated().toString());
        job.measuredWith = null;
        assertEquals(
                "[what straight a1 was measured with is not recorded]",
                read(100).unstated().toString());
    }

    @Test
    void aStraightMayNameAnInstrumentOfItsOwn() {
        job.instruments.put(
                "rule", new Instrument("rule", "rule", null, null, 0.1, null, 1e-9, null));
        job.a1.measuredWith = "rule";
        Uncertain length = job.survey().value(new Facts.StraightLength("a", "a1", 10_000));
        assertEquals(0.1 / Math.sqrt(3), length.standardUncertainty(), 1e-12);
    }

    /** Water in a tube lies level: 2 mm of it at each end, / sqrt 3, and 2 x that for two ends. */
    @Test
    void aWaterLevelMayStateOneAccuracyForEveryDistance() {
        job.instruments.put(
                "tube", new Instrument("tube", "water level", null, null, 2.0, null, null, null));
        job.setUp("s2", "tube", "a1", 0.0);
        Instruments of = new Instruments(job.build());
        Uncertain far = of.levelLine("s2", 9000);
        assertEquals(2 / Math.sqrt(3), far.standardUncertainty(), 1e-12);
        assertEquals(
                2 * Math.sqrt(2.0 / 3),
                far.minus(of.levelLine("s2", 3000)).standardUncertainty(),
                1e-12);
        assertEquals(0, far.minus(of.levelLine("s2", 9000)).standardUncertainty(), 1e-12);
    }

    @Test
    void anyOtherLevelNeedsItsAccuracyForEachMetre() {
        job.instruments.put(
                "string", new Instrument("string", "string", null, null, 2.0, null, null, null));
        job.setUp("s2", "string", "a1", 0.0);
        assertFalse(new Instruments(job.build()).levelLine("s2", 9000).isStated());
    }
}
