package eavesproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Job;
import eavesproof.survey.Basis;
import eavesproof.survey.Surveyor;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class TypesettingTest {
    private static final Path SHIPPED = Path.of("report-templates/installer-record");

    @TempDir private Path folder;

    @Test
    void theSamePaperComesOutTwice() throws LayoutTrouble {
        Issue issue = Verandah.issue(Verandah.job("Verandah", 10, List.of()), Paper.A4);
        assertEquals(paper(issue).xhtml(), paper(issue).xhtml());
        assertEquals(screen(issue), screen(issue));
    }

    @Test
    void theScreenPageIsWellFormedStandsAloneAndHasItsDrawingsInIt() throws Exception {
        String html =
                screen(
                        Verandah.issue(
                                Verandah.job("Verandah <north> & \"south\"", 10, List.of()),
                                Paper.A4));
        assertTrue(html.startsWith("<!DOCTYPE html>\n<html"));
        Document page = parse(html.substring("<!DOCTYPE html>\n".length()));
        // The key, the run from above and from outside, and its water.
        assertEquals(4, page.getElementsByTagName("svg").getLength());
        assertEquals(0, page.getElementsByTagName("object").getLength());
        NodeList all = page.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            String name = all.item(i).getNodeName();
            assertFalse(List.of("img", "link", "script", "iframe").contains(name), name);
            assertFalse(all.item(i).getAttributes().getNamedItem("src") != null, name);
            assertFalse(all.item(i).getAttributes().getNamedItem("href") != null, name);
        }
        assertFalse(html.contains("url("));
        assertFalse(html.contains("@import"));
    }

    @Test
    void whereNoRuleJudgesTheWaterThePaperSaysSo() throws Exception {
        Issue issue = Verandah.issue(Verandah.job("Verandah", 10, List.of()), Paper.A4);
        assertTrue(paper(issue).xhtml().contains("what is drawn is shown, and decides nothing"));
    }

    @Test
    void screenAndPaperSayTheSame() throws Exception {
        Issue issue = Verandah.issue(Verandah.job("Verandah", 10, List.of()), Paper.A4);
        String onPaper =
                parse(paper(issue).xhtml()).getElementsByTagName("body").item(0).getTextContent();
        Document page = parse(screen(issue).substring("<!DOCTYPE html>\n".length()));
        NodeList drawings = page.getElementsByTagName("svg");
        while (drawings.getLength() > 0) {
            drawings.item(0).getParentNode().removeChild(drawings.item(0));
        }
        String onScreen = page.getElementsByTagName("body").item(0).getTextContent();
        assertTrue(words(onPaper).endsWith(words(onScreen)));
    }

    @Test
    void theTitleOfAnotherPersonsMakingCannotLeaveItsPlace() throws Exception {
        Issue issue =
                Verandah.issue(Verandah.job("</title><script>x</script>", 3, List.of()), Paper.A4);
        assertEquals(0, parse(paper(issue).xhtml()).getElementsByTagName("script").getLength());
    }

    @Test
    void lettersThatTheFontsLackAreNamedOnThePaper() throws LayoutTrouble {
        Issue issue = Verandah.issue(Verandah.job("Verandah \u732b", 3, List.of()), Paper.A4);
        assertTrue(paper(issue).xhtml().contains("U+732B"));
        assertFalse(
                paper(Verandah.issue(Verandah.job("Verandah", 3, List.of()), Paper.A4))
                        .xhtml()
                        .contains("characters that the fonts"));
    }

    @Test
    void anEmptyJobSaysThatNothingIsRecorded() throws LayoutTrouble {
        Job empty =
                new Job(
                        "J-0", null, null, null, null, null, null, null, null, null, null, null,
                        null, null, null, null, null, null, null);
        Issue issue =
                new Issue(
                        empty,
                        Surveyor.survey(empty, Basis.NOTHING),
                        Verandah.nothing(empty),
                        List.of(),
                        java.time.LocalDate.of(2026, 11, 25),
                        Paper.A4,
                        "eavesproof test");
        String xhtml = paper(issue).xhtml();
        assertTrue(xhtml.contains("No run of gutter is recorded."));
        assertTrue(xhtml.contains("There is nothing to draw"));
        assertTrue(xhtml.contains("Not shown to comply"));
        assertFalse(xhtml.contains("null"));
    }

    @Test
    void hundredsOfRemarksAndVeryLongNamesAreAllThere() throws LayoutTrouble {
        List<String> remarks =
                IntStream.range(0, 400).mapToObj(i -> "remark number " + i + " of many").toList();
        Issue issue = Verandah.issue(Verandah.job("n".repeat(3000), 120, remarks), Paper.LETTER);
        String xhtml = paper(issue).xhtml();
        remarks.forEach(remark -> assertTrue(xhtml.contains(remark), remark));
    }

    @Test
    void aMistakeInATemplateIsNamedWithItsLineAndWhatWasExpected() throws IOException {
        Files.writeString(folder.resolve("report.ftlh"), "<html>\n<p>${report.verdict}</p></html>");
        Issue issue = Verandah.issue(Verandah.job("Verandah", 3, List.of()), Paper.A4);
        LayoutTrouble trouble =
                assertThrows(
                        LayoutTrouble.class,
                        () -> new Typesetting(folder, Allowance.USUAL).forPaper(issue));
        assertEquals("report.ftlh", trouble.template());
        assertEquals(2, trouble.line());
        assertTrue(
                trouble.getMessage()
                        .contains("Report has no \"verdict\", expected one of number, "),
                trouble::getMessage);
    }

    private static Manuscript paper(Issue issue) throws LayoutTrouble {
        return new Typesetting(SHIPPED, Allowance.USUAL).forPaper(issue);
    }

    private static String screen(Issue issue) throws LayoutTrouble {
        return new Typesetting(SHIPPED, Allowance.USUAL).forScreen(issue);
    }

    private static String words(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    private static Document parse(String xhtml) throws Exception {
        return DocumentBuilderFactory.newDefaultInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(xhtml)));
    }
}
