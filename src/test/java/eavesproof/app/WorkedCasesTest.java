package eavesproof.app;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.findings.Finding;
import eavesproof.judge.Verdict;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Two jobs from the trade, from the bytes of their records to what is found. */
class WorkedCasesTest {
    private static final Path SHIPPED = Path.of("rules");

    private static Finding finding(String record, String rule) throws Exception {
        return CheckJob.check(record.getBytes(UTF_8), Optional.empty(), SHIPPED)
                .findings()
                .findings()
                .stream()
                .filter(it -> it.rule().equals(rule))
                .filter(it -> it.place().key("side").equals(Optional.of("left")))
                .findFirst()
                .orElseThrow();
    }

    /** 8 m of cemented PVC-U to an outlet at the right end; each level read once. */
    private static String eightMetres(String datum, int stoodAt, String readings) {
        return """
               {"id": "eight-metres", "rule_set": "trade-practice",
                "instruments": {
                  "tape": {"kind": "tape", "class": "II", "from_hook": "yes", "resolution_mm": 0.1},
                  "fine": {"kind": "rule", "accuracy_mm": 0.1, "resolution_mm": 0.1},
                  "datum": %s},
                "measured_with": "tape",
                "set_ups": {"s1": {"instrument": "datum", "on": "a1", "station_mm": %d, "clean": "yes"}},
                "gutters": {"g": {"kind": "eaves", "material": "PVC-U", "jointing": "cemented"}},
                "runs": [{"id": "a", "gutter": "g", "straights": [
                  {"id": "a1", "length_mm": 8000, "left_end": {"kind": "stop end"},
                   "right_end": {"kind": "stop end"}, "readings": [%s]}]}],
                "way": [{"kind": "outlet", "id": "o1", "on": "a1", "station_mm": 7950, "body_mm": 100}]}
               """
                .formatted(datum, stoodAt, readings);
    }

    private static String read(int stationMm, double belowMm, String with) {
        return """
               {"station_mm": %d, "surface": "sole", "below_mm": %s, "set_up": "s1",
                "measured_with": "%s"}
               """
                .formatted(stationMm, belowMm, with);
    }

    /** The best there is: over 8 m it adds nothing that shows in three figures. */
    private static final String EXACT =
            "{\"kind\": \"optical level\", \"accuracy_mm_per_m\": 0.003}";

    private static final String LASER = "{\"kind\": \"laser\", \"accuracy_mm_per_m\": 0.3}";

    /** It drops 5 mm where 0.5 mm a metre ask for 4. */
    private static String dropsFive(String datum, int stoodAt) {
        return eightMetres(datum, stoodAt, read(0, 200, "tape") + "," + read(8000, 205, "tape"));
    }

    /**
     * 2014/32/EU MI-008 class II at 0.2 m: 0.3 + 0.2 x 1, and 0.2 from the hook; 0.7 / sqrt 3 x
     * sqrt 2 = 0.57 mm of the drop, and 1 mm to spare is 1.75 of these: normal distribution 0.96.
     */
    @Test
    void fiveMillimetresOverEightMetresAreTooCloseToCallWithATapeOfClassTwo() throws Exception {
        Finding fall = finding(dropsFive(EXACT, 0), "fall");
        assertEquals(Verdict.TOO_CLOSE, fall.verdict());
        assertEquals(0.96, fall.probability().orElseThrow(), 0.001);
        assertEquals(0.57, expanded(fall) / 2 * 8, 0.005);
    }

    private static double expanded(Finding finding) {
        return ((Finding.MeasuredNumber) finding.measured().orElseThrow())
                .expandedUncertainty()
                .orElseThrow();
    }

    /** With a tape of class I, 0.3 / sqrt 3 x sqrt 2 = 0.24 mm, twice of which is below 1 mm. */
    @Test
    void aTapeOfClassOneWouldSettleIt() throws Exception {
        String remedy = finding(dropsFive(EXACT, 0), "fall").remedy().orElseThrow();
        assertTrue(remedy.contains("would settle it with a tape of class I"), remedy);
    }

    /**
     * 0.3 mm a metre over 8 m is 2.4 / sqrt 3 = 1.39 mm, with the tape 1.50 in all: 1 / 1.50 of the
     * normal distribution is 0.748.
     */
    @Test
    void withALineLaserAtOneEndItIsLessSure() throws Exception {
        Finding fall = finding(dropsFive(LASER, 0), "fall");
        assertEquals(Verdict.TOO_CLOSE, fall.verdict());
        assertEquals(0.748, fall.probability().orElseThrow(), 0.001);
        String remedy = fall.remedy().orElseThrow();
        assertTrue(remedy.contains("level line right of set-up s1"), remedy);
    }

    /** Two lines of 4 m, 1.2 / sqrt 3 = 0.69 mm each, with the tape 1.13: 0.811. */
    @Test
    void fromTheMiddleItIsSurerThanFromAnEnd() throws Exception {
        Finding fall = finding(dropsFive(LASER, 4000), "fall");
        assertEquals(Verdict.TOO_CLOSE, fall.verdict());
        assertEquals(0.811, fall.probability().orElseThrow(), 0.001);
    }

    /** One millimetre a metre from end to end, and the middle 4 mm below that line. */
    @Test
    void aSagOfFourMillimetresBetweenTwoGoodEndsIsCaught() throws Exception {
        StringBuilder readings = new StringBuilder(read(0, 200, "fine"));
        double[] below = {202.5, 204.8, 206.7, 208, 208.7, 208.8, 208.5};
        for (int i = 0; i < below.length; i++) {
            readings.append(',').append(read((i + 1) * 1000, below[i], "fine"));
        }
        readings.append(',').append(read(8000, 208, "fine"));
        String record = eightMetres(EXACT, 0, readings.toString());
        assertEquals(Verdict.COMPLIES, finding(record, "fall").verdict());
        assertEquals(Verdict.COMPLIES, finding(record, "fall all the way").verdict());
        Finding sag = finding(record, "no sag between the ends");
        assertEquals(Verdict.DOES_NOT_COMPLY, sag.verdict());
        String remedy = sag.remedy().orElseThrow();
        assertTrue(remedy.contains("raise it there by"), remedy);
    }
}
