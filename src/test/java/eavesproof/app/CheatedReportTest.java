package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.report.Manuscript;
import eavesproof.report.pdf.PdfWriter;
import eavesproof.report.pdf.SigningKey;
import eavesproof.report.pdf.TestKeys;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;

/** Reports as somebody made them over who wants them to say otherwise. */
class CheatedReportTest extends ReportsMade {
    @Test
    void anotherPictureOfASignatureThanTheOneThatWasPrintedIsTold() throws Exception {
        byte[] with =
                report(TEMPLATES.resolve("installer-record")).pdf(checked, record, withSignature());
        Proof proof =
                prove(
                        withFile(
                                with,
                                "made.json",
                                text ->
                                        text.replaceAll(
                                                "\"print_sha256\": *\"[0-9a-f]{64}\"",
                                                "\"print_sha256\": \"" + "0".repeat(64) + "\"")));
        assertEquals(1, proof.exitCode(), said(proof));
        assertTrue(said(proof).contains("The picture of a signature is not in the file"));
    }

    @Test
    void aSignatureByAnotherKeyIsTold() throws Exception {
        SigningKey other =
                SigningKey.read(TestKeys.ec("Mere Tāmati"), TestKeys.PASSPHRASE.toCharArray());
        byte[] base = new PdfWriter().write(manuscript(Optional.of(signer(key))));
        Proof proof = prove(new PdfWriter().sign(base, other, WHEN));
        assertEquals(1, proof.exitCode());
        assertTrue(said(proof).contains("and the paper names " + key.signedBy().fingerprint()));
    }

    @Test
    void aSignatureThatWasTakenAwayIsTold() throws Exception {
        byte[] base = new PdfWriter().write(manuscript(Optional.of(signer(key))));
        assertTrue(Arrays.equals(base, Arrays.copyOf(signed, base.length)));
        Proof proof = prove(base);
        assertEquals(1, proof.exitCode());
        assertTrue(
                said(proof).contains("names the digital signature of Mere Tāmati, and there is"));
    }

    @Test
    void otherWordsOnThePaperAreTold() throws Exception {
        cheat("Does not comply", "Complies", "and the data give \"");
    }

    @Test
    void anotherDateOnThePaperIsTold() throws Exception {
        cheat("2026-11-25", "2020-01-31", "2020-01-31");
    }

    private static void cheat(String word, String by, String told) throws Exception {
        Manuscript made = manuscript(Optional.empty());
        Manuscript cheated =
                new Manuscript(
                        made.xhtml().replace(word, by),
                        made.drawings(),
                        made.photographs(),
                        made.attachments(),
                        made.about(),
                        made.paper(),
                        made.signedBy());
        assertFalse(made.xhtml().equals(cheated.xhtml()), "the word was there");
        Proof proof = prove(new PdfWriter().write(cheated));
        assertEquals(1, proof.exitCode(), said(proof));
        assertTrue(said(proof).contains(told), said(proof));
    }

    @Test
    void anotherVerdictInTheFindingsIsTold() throws Exception {
        byte[] cheated =
                withFile(
                        plain,
                        "findings.json",
                        text ->
                                text.replaceFirst(
                                        "\"verdict\": \"does-not-comply\"",
                                        "\"verdict\": \"complies\""));
        Proof proof = prove(cheated);
        assertEquals(1, proof.exitCode());
        assertTrue(
                said(proof)
                        .contains(": the paper says complies, and the data give does-not-comply."),
                said(proof));
    }

    @Test
    void anotherMeasurementInTheRecordIsTold() throws Exception {
        byte[] cheated =
                withFile(
                        plain,
                        "job.json",
                        text -> text.replaceFirst("\"title\": \"", "\"title\": \"Another "));
        Proof proof = prove(cheated);
        assertEquals(1, proof.exitCode());
        assertTrue(said(proof).contains("differ in something else"), said(proof));
        assertTrue(said(proof).contains("the recorder Another "), said(proof));
    }

    @Test
    void aRecordThatIsNoneAnyMoreIsTold() throws Exception {
        Proof proof = prove(withFile(plain, "job.json", text -> "{}"));
        assertEquals(1, proof.exitCode());
        assertTrue(said(proof).contains("The record inside cannot be taken"), said(proof));
    }

    @Test
    void anotherPhotographIsTold() throws Exception {
        byte[] cheated;
        try (PDDocument document = Loader.loadPDF(plain)) {
            int replaced = 0;
            for (COSObject object : document.getDocument().getObjectsByType(COSName.XOBJECT)) {
                if (object.getObject() instanceof COSStream stream
                        && COSName.DCT_DECODE.equals(stream.getFilters())) {
                    try (var out = stream.createRawOutputStream()) {
                        out.write(picture(0x202020));
                    }
                    replaced++;
                }
            }
            assertEquals(1, replaced);
            cheated = saved(document);
        }
        Proof proof = prove(cheated);
        assertEquals(1, proof.exitCode());
        assertTrue(
                said(proof).contains("Photograph ph1 is not in the file as it was printed."),
                said(proof));
    }

    @Test
    void anUpdateAfterTheSignatureIsTold() throws Exception {
        byte[] longer;
        try (PDDocument document = Loader.loadPDF(signed)) {
            PDPage page = document.getPage(0);
            page.setRotation(180);
            page.getCOSObject().setNeedToBeUpdated(true);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.saveIncremental(out);
            longer = out.toByteArray();
        }
        Proof proof = prove(longer);
        assertEquals(1, proof.exitCode());
        assertTrue(said(proof).contains("it does not cover the whole file"), said(proof));
        assertTrue(said(proof).contains("More than the signature was added"), said(proof));
    }

    @Test
    void anUpdateSlippedInBeforeAnotherSignatureIsTold() throws Exception {
        byte[] turned;
        byte[] base = new PdfWriter().write(manuscript(Optional.of(signer(key))));
        try (PDDocument document = Loader.loadPDF(base)) {
            document.getPage(0).setRotation(180);
            document.getPage(0).getCOSObject().setNeedToBeUpdated(true);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.saveIncremental(out);
            turned = new PdfWriter().sign(out.toByteArray(), key, WHEN);
        }
        Proof proof = prove(turned);
        assertEquals(1, proof.exitCode());
        assertTrue(said(proof).contains("The signature holds"), said(proof));
        assertTrue(said(proof).contains("More than the signature was added"), said(proof));
    }

    @Test
    void loosenedRulesAreToldByTheirHashUntilTheirFolderIsNamed() throws Exception {
        Path loose = folder.resolve("loose/trade-practice");
        copy(RULES.resolve("trade-practice"), loose);
        Path support = loose.resolve("support.drl");
        String strict = Files.readString(support);
        Files.writeString(
                support,
                strict.replace("atMost($spacing, 500, \"mm\")", "atMost($spacing, 900, \"mm\")"));
        CheckedJob gentle = CheckJob.check(record, Optional.of(loose.toString()), RULES);
        assertFalse(
                gentle.findings().rules().sha256().equals(checked.findings().rules().sha256()),
                "the limit was changed");
        byte[] pdf = report(TEMPLATES.resolve("installer-record")).pdf(gentle, record, photographs);
        Proof proof = prove(pdf);
        assertEquals(2, proof.exitCode(), said(proof));
        assertTrue(said(proof).contains(gentle.findings().rules().sha256()), said(proof));
        assertTrue(
                said(proof)
                        .contains("note: With the rules at hand: bracket centres, bracket-spacing"),
                said(proof));
        Proof inside =
                new ProveReport(
                                Optional.empty(),
                                true,
                                RULES,
                                Optional.empty(),
                                TEMPLATES,
                                Optional.empty())
                        .prove(pdf);
        assertEquals(0, inside.exitCode(), said(inside));
        assertTrue(
                said(inside)
                        .contains(
                                "note: Changed: bracket centres: at most 900 mm, was at most 500"
                                        + " mm"),
                said(inside));
        Proof named =
                new ProveReport(
                                Optional.of(loose.toString()),
                                false,
                                RULES,
                                Optional.empty(),
                                TEMPLATES,
                                Optional.empty())
                        .prove(pdf);
        assertEquals(0, named.exitCode(), said(named));
    }

    @Test
    void otherRulesInsideThanThePaperNamesAreTold() throws Exception {
        byte[] cheated = withFile(plain, "rules.zip", bytes -> bytes.replace("500", "900"));
        Proof proof = prove(cheated);
        assertEquals(1, proof.exitCode());
        assertTrue(said(proof).contains("The rules inside are none, and"), said(proof));
    }
}
