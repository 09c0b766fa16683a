package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.ExampleFile;
import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.findings.Outcome;
import eavesproof.findings.OutcomeSentence;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the outcome of a whole job is in and out of the scope of Part 7.4, and its misprints. */
class AustraliaTest {
    private static final ShippedRules RULES = ShippedRules.named("au");

    private static Findings check(String example) throws Exception {
        Path file = Path.of("rules", "au", "examples", example + ".json");
        return RULES.check(ExampleFile.read(Files.readAllBytes(file)).job());
    }

    private static List<String> uncovered(String example) throws Exception {
        return check(example).uncovered().stream().map(one -> one.kind().id()).toList();
    }

    @Test
    void aJobInPerthThatKeepsAllComplies() throws Exception {
        assertEquals(Outcome.COMPLIES, check("perth").outcome());
    }

    /** VIC H2D6. */
    @Test
    void noJobInVictoriaIsShownToComply() throws Exception {
        assertEquals(Outcome.NOT_SHOWN, check("melbourne").outcome());
        assertTrue(uncovered("melbourne").contains("gutter-section"));
    }

    @Test
    void noJobWithoutAPlaceIsShownToComply() throws Exception {
        assertEquals(Outcome.NOT_SHOWN, check("no-place").outcome());
        assertEquals(List.of("gutter-section", "downpipe-gutter"), uncovered("no-place"));
    }

    @Test
    void noBoxGutterIsShownToComply() throws Exception {
        assertEquals(Outcome.NOT_SHOWN, check("box-gutter").outcome());
        assertTrue(uncovered("box-gutter").contains("gutter-section"));
    }

    /** ABCB Housing Provisions 2022, table 7.4.3d; 115 would fit its neighbours. */
    @Test
    void yorketownStandsAsPrinted() {
        assertEquals("155", RULES.book().basis().get("rain_at Yorketown SA").text());
    }

    @Test
    void theMisprintIsSaidWhereItDecides() throws Exception {
        Finding finding =
                check("wollongong").findings().stream()
                        .filter(one -> one.rule().equals("section of a rectangular gutter"))
                        .findFirst()
                        .orElseThrow();
        assertTrue(
                finding.workings().stream().anyMatch(one -> one.from().contains("prints A and B")));
    }

    private static double limit(String example, String rule) throws Exception {
        return check(example).findings().stream()
                .filter(one -> one.rule().equals(rule))
                .flatMap(one -> one.limit().stream())
                .map(Finding.NumberLimit.class::cast)
                .findFirst()
                .orElseThrow()
                .value();
    }

    /** ABCB Housing Provisions 2022, worked example of 7.4.3, published: 5.4 L/s. */
    @Test
    void theWorkedExampleAsksForWhatItsDocumentPrints() throws Exception {
        String rule = "overflow capacity at narrow eaves";
        assertEquals(5.4, limit("overflow-slots-and-end-weir", rule));
    }

    /** ABCB Housing Provisions 2022, table 7.4.4b, row printed 365, a misprint kept: 6.3 L/s. */
    @Test
    void theRowPrinted365StandsAsPrinted() throws Exception {
        assertEquals(6.3, limit("overflow-misprint", "overflow capacity at narrow eaves"));
    }

    /** The depths below the fascia are from memory, and the rule itself is not. */
    @Test
    void aFigureFromMemoryThatTheRuleIsReckonedWithIsNamedWithTheOutcome() throws Exception {
        String said = OutcomeSentence.of(check("overflow-slots-and-end-weir"));
        assertTrue(said.contains("overflow measures lie below the fascia (from memory)"), said);
    }

    @Test
    void theRainOfThePlaceIsPrintedWithItsTable() throws Exception {
        assertTrue(
                check("perth").findings().stream()
                        .flatMap(one -> one.workings().stream())
                        .anyMatch(
                                one ->
                                        one.from().contains("Perth WA")
                                                && one.from().contains("table 7.4.3d")));
    }
}
