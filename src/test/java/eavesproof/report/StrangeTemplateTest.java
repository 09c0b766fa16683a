package eavesproof.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.report.pdf.Conformance;
import eavesproof.report.pdf.PdfWriter;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whoever writes a template writes words; what the program says of it stands beyond their reach.
 */
class StrangeTemplateTest {
    private static final String FOUND = "What the program found: does not comply.";
    private static final String STRANGE = "Set by a template that did not come with the program";

    /** Everything that a style sheet knows to lie over something else. */
    private static final String CHEAT =
            "<html><head><title>APPROVED</title><style>@page { margin: 0; @top-left-corner {"
                    + " content: 'APPROVED'; background: #000; } @top-left { content: 'APPROVED';"
                    + " background: #000; } } div { position: fixed; top: 0; left: 0; width: 210mm;"
                    + " height: 297mm; background: #000; z-index: 99999; } h1 { position: absolute;"
                    + " top: 0; z-index: 999999; }</style></head><body><h1>APPROVED BY THE"
                    + " COUNCIL</h1><div>all is well</div><p>complies</p></body></html>";

    @TempDir private Path folder;

    private static Issue issue() {
        return Verandah.issue(Verandah.job("Verandah", 10, List.of()), Paper.A4);
    }

    private static void copyOfShipped(Path to) throws Exception {
        try (Stream<Path> files = Files.list(Path.of("report-templates/installer-record"))) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(file.getFileName().toString()));
            }
        }
    }

    private void written(String page) throws Exception {
        Files.writeString(folder.resolve("report.ftlh"), page);
    }

    private Manuscript manuscript() throws Exception {
        return new Typesetting(folder, Allowance.USUAL).forPaper(issue());
    }

    private static int[] band(byte[] pdf, int page) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page, 72);
            // Within the 31 points of the band; its lowest line may share its pixels.
            return image.getRGB(0, 0, image.getWidth(), 29, null, 0, image.getWidth());
        }
    }

    @Test
    void whatCameWithTheProgramIsNotNamedWhereverItLies() throws Exception {
        copyOfShipped(folder);
        assertTrue(ShippedTemplates.are(folder));
        assertEquals(List.of(), manuscript().band());
        assertFalse(new Typesetting(folder, Allowance.USUAL).forScreen(issue()).contains(STRANGE));
    }

    @Test
    void aCopyThatDiffersByOneLetterIsNamedOnEachPageWithTheOutcome() throws Exception {
        copyOfShipped(folder);
        Path style = folder.resolve("report.css");
        Files.writeString(style, Files.readString(style) + " ");
        byte[] pdf = new PdfWriter().write(manuscript());
        Conformance.assertArchivalAndAccessible(pdf);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertTrue(document.getNumberOfPages() > 1);
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(document);
                assertTrue(text.contains(FOUND), text);
                assertTrue(text.contains(STRANGE), text);
            }
            String title = document.getDocumentInformation().getTitle();
            assertTrue(title.startsWith(FOUND + " " + STRANGE), title);
        }
    }

    @Test
    void aFileMoreOrAFolderOfTheSameNameDoesNotMakeATemplateTheProgramsOwn() throws Exception {
        Path named = Files.createDirectory(folder.resolve("installer-record"));
        copyOfShipped(named);
        Files.writeString(named.resolve("more.ftlh"), "x");
        assertFalse(ShippedTemplates.are(named));
        assertFalse(ShippedTemplates.are(Files.createDirectory(folder.resolve("care-sheet"))));
    }

    @Test
    void nothingThatATemplateDoesLiesOverTheBand() throws Exception {
        written("<html><head><title>x</title></head><body><p>x</p></body></html>");
        int[] plain = band(new PdfWriter().write(manuscript()), 0);
        int[] dark = Arrays.stream(plain).filter(it -> (it & 0xFF) < 128).toArray();
        assertTrue(dark.length > 100, "words are painted");
        written(CHEAT);
        Manuscript cheat = manuscript();
        assertTrue(cheat.about().title().startsWith(FOUND), cheat.about().title());
        byte[] pdf = new PdfWriter().write(cheat);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("APPROVED"), "the template was set");
            assertTrue(text.contains(FOUND), text);
        }
        // The hash of the other template is another: only the line of the outcome must be alike.
        int width = 595;
        int[] line = Arrays.copyOf(plain, 19 * width);
        assertArrayEquals(line, Arrays.copyOf(band(pdf, 0), 19 * width));
    }

    @Test
    void aPageWithoutRoomForTheBandIsRefused() throws Exception {
        written(
                "<html><head><title>x</title><style>@page { size: 60mm 60mm; margin: 0; }"
                        + "</style></head><body><p>x</p></body></html>");
        Manuscript small = manuscript();
        LayoutTrouble trouble =
                assertThrows(LayoutTrouble.class, () -> new PdfWriter().write(small));
        assertTrue(String.valueOf(trouble.getMessage()).contains("no room"), trouble::getMessage);
    }

    @Test
    void onTheScreenItStandsFirstInTheBody() throws Exception {
        written(
                "<html><head><title>x</title></head><body class=\">\"><p>complies</p>"
                        + "</body></html>");
        String page = new Typesetting(folder, Allowance.USUAL).forScreen(issue());
        int head = page.indexOf(FOUND);
        assertTrue(head > page.indexOf("<body class"), page);
        assertTrue(head < page.indexOf("<p>complies"), page);
        assertTrue(page.contains("all:initial!important"), page);
    }

    @Test
    void whatWouldRunOnTheScreenIsRefused() throws Exception {
        for (String bad :
                List.of(
                        "<script>x</script>",
                        "<!-- x -->",
                        "<p onclick=\"x\">x</p>",
                        "<a href=\" java\nscript:x\">x</a>")) {
            written("<html><head><title>x</title></head><body>" + bad + "</body></html>");
            assertThrows(
                    LayoutTrouble.class,
                    () -> new Typesetting(folder, Allowance.USUAL).forScreen(issue()),
                    bad);
        }
    }
}
