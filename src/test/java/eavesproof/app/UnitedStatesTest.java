package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.ExampleFile;
import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.findings.Outcome;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The tables of one edition at a time against printed answers, in the units of the code. */
class UnitedStatesTest {
    private static final Map<String, ShippedRules> LOADED = new HashMap<>();
    private static final String GUTTER = "half-round gutter of the editions of 2009 and 2012";

    private static Findings check(String rules, String example) throws Exception {
        Path file = Path.of("rules", rules, "examples", example + ".json");
        return LOADED.computeIfAbsent(rules, ShippedRules::named)
                .check(ExampleFile.read(Files.readAllBytes(file)).job());
    }

    private static Finding finding(Findings findings, String rule) {
        return findings.findings().stream()
                .filter(one -> one.rule().equals(rule) && one.limit().isPresent())
                .findFirst()
                .orElseThrow();
    }

    private static String limit(String rules, String example, String rule) throws Exception {
        return ((Finding.NumberLimit) finding(check(rules, example), rule).limit().orElseThrow())
                .asWritten();
    }

    /** IPC 2012 table 1106.6 at 4 in/h: 4 in at 1/16 in/ft, 6 in at 1/4, published. */
    @Test
    void aSemicircularGutterTakesWhatItsTableHas() throws Exception {
        assertEquals("360 ft2", limit("us-2012", "4-in-at-1-16", GUTTER).replace(".0 ", " "));
        assertEquals("1920 ft2", limit("us-2012", "6-in-at-1-4", GUTTER).replace(".0 ", " "));
    }

    /** IPC 2012 table 1106.3, 4 in drain at 1/8 in/ft, 3 in/h: 2506 ft2, published. */
    @Test
    void aStormDrainTakesWhatItsTableHas() throws Exception {
        String drain = "storm drain of the editions of 2009 and 2012";
        assertEquals("2506 ft2", limit("us-2012", "drain-4-in", drain).replace(".0 ", " "));
    }

    @Test
    void limitsStandInTheUnitsOfTheCode() throws Exception {
        assertEquals("36 in", limit("us", "practice-kept", "hangers"));
        assertEquals("0.0625 in/ft", limit("us", "practice-kept", "slope of a gutter"));
    }

    /** A plumbing code commentary (NPC 2005), published: half the wall counts. */
    @Test
    void halfOfAWallDrainsToTheRoof() throws Exception {
        Findings findings = check("us-2018", "half-a-wall");
        Finding.MeasuredNumber roof =
                (Finding.MeasuredNumber)
                        finding(findings, "leader of the edition of 2018").measured().orElseThrow();
        assertEquals(18, roof.value(), 1e-9);
    }

    @Test
    void aFigureFromMemoryIsNamedWithTheOutcome() throws Exception {
        assertTrue(
                check("us-2012", "4-in-at-1-16").unconfirmedSources().stream()
                        .anyMatch(one -> one.document().contains("as remembered")));
    }

    /** The hourly rain of the code says nothing of what a gutter carries by other methods. */
    @Test
    void aGutterThatNoTableOfTheEditionSizesIsNotShownToComply() throws Exception {
        Findings findings = check("us-2018", "huntsville");
        assertEquals(Outcome.NOT_SHOWN, findings.outcome());
        assertTrue(
                findings.uncovered().stream()
                        .anyMatch(one -> one.kind().id().equals("gutter-ratio")));
    }
}
