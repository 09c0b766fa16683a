package eavesproof.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.report.LayoutTrouble;
import eavesproof.report.Manuscript;
import eavesproof.report.Paper;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

class PdfWriterTest {
    private static byte[] a4;
    private static byte[] letter;

    @BeforeAll
    static void writeOnce() throws Exception {
        PdfWriter writer = new PdfWriter();
        a4 = writer.write(Documents.whole(Paper.A4));
        letter = writer.write(Documents.whole(Paper.LETTER));
    }

    @Test
    void aLayoutThatTakesTooLongIsLeftBehind() {
        LayoutTrouble trouble =
                assertThrows(
                        LayoutTrouble.class,
                        () -> new PdfWriter(Duration.ofMillis(1)).write(Documents.whole(Paper.A4)));
        assertTrue(trouble.getMessage().contains("was not laid out within 1 ms"));
    }

    @ParameterizedTest
    @CsvSource({"A4,PDFA_3_A", "A4,PDFUA_1", "LETTER,PDFA_3_A", "LETTER,PDFUA_1"})
    void aWholeReportConforms(Paper paper, PDFAFlavour flavour) throws Exception {
        Conformance.assertConforms(paper == Paper.A4 ? a4 : letter, flavour);
    }

    @Test
    void theSameManuscriptGivesTheSameBytesWhereverItIsPrinted() throws Exception {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
            assertArrayEquals(a4, new PdfWriter().write(Documents.whole(Paper.A4)));
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void anotherAttachmentGivesAnotherFileIdentifier() throws Exception {
        Manuscript whole = Documents.whole(Paper.A4);
        Manuscript less =
                new Manuscript(
                        whole.xhtml(),
                        whole.drawings(),
                        whole.attachments().subList(0, 1),
                        whole.about(),
                        whole.paper());
        assertNotEquals(identifier(a4), identifier(new PdfWriter().write(less)));
    }

    @Test
    void thePaperIsTheOneAskedFor() throws Exception {
        try (PDDocument a = Loader.loadPDF(a4);
                PDDocument b = Loader.loadPDF(letter)) {
            assertEquals(297 / 25.4 * 72, a.getPage(1).getMediaBox().getHeight(), 0.5);
            assertEquals(612, b.getPage(1).getMediaBox().getWidth(), 0.5);
            assertEquals(792, b.getPage(1).getMediaBox().getHeight(), 0.5);
        }
    }

    @Test
    void wordsAreCopiedOutOfTheFileWholeFromTextAndDrawings() throws Exception {
        try (PDDocument document = Loader.loadPDF(a4)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            String text = stripper.getText(document);
            int pages = document.getNumberOfPages();
            assertTrue(pages >= 3, "several pages: " + pages);
            for (String words :
                    List.of(
                            "left fittings",
                            "difficult",
                            "Ōtaki, ≤ 500 mm, ± 2, ✓ → ⌀",
                            "fall to the left ½ ✓",
                            "offset",
                            "Record 17",
                            "Page 1 of " + pages)) {
                assertTrue(text.contains(words), words + " is not in: " + text);
            }
            assertEquals(
                    3, text.split("Station, mm", -1).length - 1, "the table's head is repeated");
        }
    }

    @Test
    void textIsNotLostWhateverFontItsStyleAsksFor() throws Exception {
        String page =
                Documents.page(
                        "<p style='font-family: \"No Such Face\"'>nowhere to be found</p>"
                                + "<p style='font-family: fantasy; font-weight: 900'>heavy → arrow</p>"
                                + "<p>a cat \u732B.</p>");
        try (PDDocument document = Loader.loadPDF(new PdfWriter().write(Documents.of(page)))) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("nowhere to be found"), text);
            assertTrue(text.contains("heavy → arrow"), text);
            assertTrue(text.contains("a cat \uFFFD."), text);
        }
    }

    @Test
    void theDocumentSaysWhatItIs() throws Exception {
        try (PDDocument document = Loader.loadPDF(a4)) {
            PDDocumentInformation information = document.getDocumentInformation();
            assertEquals("Eaves gutter: a <record> & {title}", information.getTitle());
            assertEquals("North verandah {program}", information.getSubject());
            assertEquals(1795593600000L, information.getCreationDate().getTimeInMillis());
            assertEquals("en-NZ", document.getDocumentCatalog().getLanguage());
            assertTrue(document.getDocumentCatalog().getViewerPreferences().displayDocTitle());
        }
    }

    @Test
    void theDataTravelsInsideAndComesOutUnchanged() throws Exception {
        try (PDDocument document = Loader.loadPDF(a4)) {
            var files = document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
            PDComplexFileSpecification file = files.get("record.json");
            assertArrayEquals(Documents.RECORD, file.getEmbeddedFile().toByteArray());
            assertEquals("application/json", file.getEmbeddedFile().getSubtype());
            assertEquals("Data", file.getCOSObject().getNameAsString("AFRelationship"));
            COSArray associated =
                    (COSArray)
                            document.getDocumentCatalog().getCOSObject().getDictionaryObject("AF");
            assertEquals(2, associated.size());
        }
    }

    @Test
    void aLastTouchFindsItsPlaceOnThePage() throws Exception {
        List<String> found = new ArrayList<>();
        new PdfWriter()
                .write(
                        Documents.whole(Paper.A4),
                        (document, places) ->
                                places.apply("sign")
                                        .forEach(
                                                place ->
                                                        found.add(
                                                                place.getPageNo()
                                                                        + 1
                                                                        + " of "
                                                                        + document
                                                                                .getNumberOfPages())));
        assertEquals(List.of("3 of 3"), found);
    }

    private static String identifier(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getDocument().getDocumentID().toString();
        }
    }
}
