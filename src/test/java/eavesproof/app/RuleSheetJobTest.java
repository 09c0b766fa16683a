package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.report.Paper;
import eavesproof.report.pdf.Conformance;
import eavesproof.rules.DemandInWords;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleChange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheet of a rule set: that it holds every requirement, and that it lasts. */
class RuleSheetJobTest {
    private static final Path SHIPPED = Path.of("rules");
    private static final Path TEMPLATE = Path.of("report-templates/rule-sheet");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    @TempDir Path folder;

    static List<String> ruleSets() throws IOException {
        return RuleSets.names(SHIPPED);
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void theSheetHoldsEveryRequirement(String name) throws Exception {
        LoadedRules rules = RuleSets.load(name, SHIPPED);
        byte[] pdf = new RuleSheetJob(rules).pdf(TEMPLATE, Paper.A4, DAY);
        String text = words(text(pdf));
        for (Rule rule : rules.book().rules()) {
            assertTrue(text.contains(words(rule.name())), rule.name());
            assertTrue(text.contains(words(rule.says())), rule.says());
            assertTrue(text.contains(words(DemandInWords.of(rule))), DemandInWords.of(rule));
        }
        for (String clause : rules.book().clausesNotChecked()) {
            assertTrue(text.contains(words(clause)), clause);
        }
        for (RuleChange change : rules.book().changes()) {
            assertTrue(text.contains(words(change.inWords())), change.inWords());
        }
        assertTrue(text.contains(rules.book().sha256()));
    }

    /** One without tables and layers, one with both. */
    @ParameterizedTest
    @ValueSource(strings = {"trade-practice", "nz"})
    void theSheetIsArchivalAndAccessible(String name) throws Exception {
        RuleSheetJob sheet = new RuleSheetJob(RuleSets.load(name, SHIPPED));
        Conformance.assertArchivalAndAccessible(sheet.pdf(TEMPLATE, Paper.A4, DAY));
    }

    @Test
    void theSameRulesAndDayAreTheSameBytes() throws Exception {
        RuleSheetJob sheet = new RuleSheetJob(RuleSets.load("trade-practice", SHIPPED));
        assertArrayEquals(
                sheet.pdf(TEMPLATE, Paper.LETTER, DAY), sheet.pdf(TEMPLATE, Paper.LETTER, DAY));
    }

    @Test
    void thePageForTheScreenStandsAlone() throws Exception {
        RuleSheetJob sheet = new RuleSheetJob(RuleSets.load("nz", SHIPPED));
        String page = new String(sheet.html(TEMPLATE, DAY), StandardCharsets.UTF_8);
        assertTrue(page.startsWith("<!DOCTYPE html>"));
        assertFalse(page.contains("http://www.w3.org/1999/xhtml\" src"), "nothing from outside");
        assertFalse(page.contains(" src="), "nothing from outside");
        assertTrue(page.contains("Table downpipe-round"), page);
    }

    @Test
    void whatARuleSetOfOnesOwnSaysCannotBreakThePage() throws Exception {
        Path own = Files.createDirectory(folder.resolve("own"));
        Files.writeString(
                own.resolve("rule-set.json"),
                """
                {"name": "own", "title": "<script>x</script> & \\u732b", "jurisdiction": "here",
                 "builds_on": "trade-practice", "clauses_not_checked": ["a < b"],
                 "must_judge": []}
                """);
        RuleSheetJob sheet = new RuleSheetJob(RuleSets.load(own.toString(), SHIPPED));
        byte[] pdf = sheet.pdf(TEMPLATE, Paper.A4, DAY);
        Conformance.assertArchivalAndAccessible(pdf);
        String text = words(text(pdf));
        assertTrue(text.contains(words("<script>x</script> &")), text);
        assertTrue(text.contains(words("fonts of this paper lack")), text);
        assertTrue(text.contains("U+732B"), text);
        assertEquals(
                -1,
                new String(sheet.html(TEMPLATE, DAY), StandardCharsets.UTF_8).indexOf("<script"));
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(false);
            return stripper.getText(document);
        }
    }

    /** Lines of a column break anywhere. */
    private static String words(String text) {
        return text.replaceAll("\\s+", "");
    }
}
