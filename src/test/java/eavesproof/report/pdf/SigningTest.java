package eavesproof.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.report.LayoutTrouble;
import eavesproof.report.Manuscript;
import eavesproof.report.Markup;
import eavesproof.report.Paper;
import eavesproof.report.SignedBy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SigningTest {
    private static final Instant WHEN = Instant.parse("2026-11-25T08:30:15Z");

    private static SigningKey key;
    private static Manuscript manuscript;
    private static byte[] written;
    private static byte[] signed;

    @TempDir private Path folder;

    @BeforeAll
    static void signOnce() throws Exception {
        key = SigningKey.read(TestKeys.ec("Mere Tāmati 猫"), TestKeys.PASSPHRASE.toCharArray());
        manuscript = toSign(key.signedBy());
        PdfWriter writer = new PdfWriter();
        written = writer.write(manuscript);
        signed = writer.sign(written, key, WHEN);
    }

    private static Manuscript toSign(SignedBy by) {
        Manuscript whole = Documents.whole(Paper.A4);
        return new Manuscript(
                whole.xhtml()
                        .replace(
                                "id=\"sign\"",
                                "id=\"" + Markup.SIGNATURE_PLACE + "\" style=\"height:16mm\""),
                whole.drawings(),
                Map.of(),
                whole.attachments(),
                whole.about(),
                whole.paper(),
                Optional.of(by));
    }

    @Test
    void aSignedReportConformsAndTheSignatureHolds() throws Exception {
        Conformance.assertArchivalAndAccessible(signed);
        FoundSignature found = only(signed);
        assertEquals(List.of(), found.problems());
        assertEquals(Optional.of(key.signedBy()), found.by());
        assertEquals(WHEN, found.when());
    }

    @Test
    void anRsaKeySignsAsWell() throws Exception {
        SigningKey rsa =
                SigningKey.read(TestKeys.rsa("J. Ngata", 2048), TestKeys.PASSPHRASE.toCharArray());
        PdfWriter writer = new PdfWriter();
        byte[] pdf = writer.sign(writer.write(toSign(rsa.signedBy())), rsa, WHEN);
        Conformance.assertArchivalAndAccessible(pdf);
        assertEquals(List.of(), only(pdf).problems());
    }

    @Test
    void whatWasWrittenStaysAndIsTheSameEachTime() throws Exception {
        assertArrayEquals(written, Arrays.copyOf(signed, written.length));
        assertArrayEquals(written, new PdfWriter().write(manuscript));
        assertEquals(List.of(), ReportFile.open(signed).differences(manuscript));
    }

    @Test
    void theSignatureIsSeenOnThePaperWhereItsPlaceIs() throws Exception {
        try (PDDocument document = Loader.loadPDF(signed)) {
            PDAnnotation widget = document.getPage(2).getAnnotations().get(0);
            assertTrue(widget.getRectangle().getWidth() > 100);
            assertTrue(widget.getRectangle().getHeight() > 30);
            String shown = new PDFTextStripper().getText(document);
            assertFalse(shown.contains("猫"), "the face lacks it");
            String appearance =
                    new String(
                            widget.getAppearance()
                                    .getNormalAppearance()
                                    .getAppearanceStream()
                                    .getContentStream()
                                    .toByteArray(),
                            StandardCharsets.ISO_8859_1);
            assertTrue(appearance.contains("Tj"), appearance);
        }
    }

    @Test
    void aTemplateWithoutAPlaceForTheSignatureIsToldSo() {
        Manuscript whole = Documents.whole(Paper.A4);
        Manuscript placeless =
                new Manuscript(
                        whole.xhtml(),
                        whole.drawings(),
                        Map.of(),
                        whole.attachments(),
                        whole.about(),
                        whole.paper(),
                        Optional.of(key.signedBy()));
        LayoutTrouble trouble =
                assertThrows(LayoutTrouble.class, () -> new PdfWriter().write(placeless));
        assertTrue(
                trouble.getMessage().contains("expected an element with the id signature-place"));
    }

    @Test
    void oneFlippedBitAnywhereIsToldOfTheSignature() throws Exception {
        // In the pages, in what the update says, and in the value itself.
        int value = find(signed, "/Contents <", written.length) + 60;
        for (int at : List.of(2000, written.length / 2, signed.length - 200, value)) {
            byte[] changed = signed.clone();
            changed[at] ^= (byte) 1;
            List<FoundSignature> found;
            try {
                found = ReportFile.open(changed).signatures();
            } catch (NotAReport broken) {
                continue;
            }
            assertTrue(found.isEmpty() || !found.get(0).problems().isEmpty(), "changed at " + at);
        }
    }

    @Test
    void aPageThatWasChangedIsNotWhatWasSigned() throws Exception {
        byte[] changed = signed.clone();
        changed[written.length / 2] ^= 1;
        assertEquals(List.of("the file has changed since it was signed"), only(changed).problems());
    }

    @Test
    void somethingAddedAfterTheSignatureIsTold() throws Exception {
        byte[] longer = Arrays.copyOf(signed, signed.length + 9);
        System.arraycopy(
                "% later \n".getBytes(StandardCharsets.US_ASCII), 0, longer, signed.length, 9);
        FoundSignature found = only(longer);
        assertTrue(found.problems().get(0).startsWith("it does not cover the whole file: 9 bytes"));
        assertEquals(
                List.of("More than the signature was added after the end of the report."),
                ReportFile.open(longer).differences(manuscript));
    }

    @Test
    void somethingHiddenBehindTheValueIsTold() throws Exception {
        byte[] changed = signed.clone();
        int end = find(signed, ">", find(signed, "/Contents <", written.length));
        changed[end - 1] = '7';
        assertEquals(
                List.of("the room for its value holds something else as well"),
                only(changed).problems());
    }

    @Test
    void anotherSignerShowsAsAnotherSigner() throws Exception {
        SigningKey other =
                SigningKey.read(TestKeys.ec("Mere Tāmati 猫"), TestKeys.PASSPHRASE.toCharArray());
        byte[] again = new PdfWriter().sign(written, other, WHEN);
        FoundSignature found = only(again);
        assertEquals(List.of(), found.problems());
        assertNotEquals(Optional.of(key.signedBy()), found.by());
    }

    @Test
    void otherReadersCallTheSignatureValid() throws Exception {
        Path file = folder.resolve("signed.pdf");
        Files.write(file, signed);
        String said = said("pdfsig", "-nocert", file.toString());
        assertTrue(said.contains("Signature is Valid"), said);
        assertTrue(said.contains("Total document signed"), said);
        assertTrue(said.contains("ETSI.CAdES.detached"), said);
    }

    private String said(String... command) throws Exception {
        Process process;
        try {
            process = new ProcessBuilder(command).redirectErrorStream(true).start();
        } catch (java.io.IOException e) {
            Assumptions.abort(command[0] + " is not installed");
            throw e;
        }
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    private static FoundSignature only(byte[] pdf) throws NotAReport {
        List<FoundSignature> found = ReportFile.open(pdf).signatures();
        assertEquals(1, found.size());
        return found.get(0);
    }

    private static int find(byte[] in, String what, int from) {
        return new String(in, StandardCharsets.ISO_8859_1).indexOf(what, from);
    }
}
