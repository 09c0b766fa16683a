package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.report.LayoutTrouble;
import eavesproof.report.Paper;
import eavesproof.report.Photo;
import eavesproof.report.TemplateIdentity;
import eavesproof.report.pdf.Conformance;
import eavesproof.report.pdf.NotAReport;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** Reports as they were made. */
class ProveReportTest extends ReportsMade {
    @Test
    void aReportAsItWasMadeIsWellSignedOrNot() throws Exception {
        assertEquals(0, prove(plain).exitCode(), said(prove(plain)));
        assertTrue(said(prove(plain)).contains("is not signed digitally"));
        Proof proof = prove(signed);
        assertEquals(0, proof.exitCode(), said(proof));
        assertTrue(said(proof).contains("Certificate of Mere Tāmati, self-made"), said(proof));
        assertTrue(said(proof).contains(key.signedBy().fingerprint()), said(proof));
    }

    @Test
    void bothConformWithPhotographs() throws Exception {
        Conformance.assertArchivalAndAccessible(plain);
        Conformance.assertArchivalAndAccessible(signed);
    }

    @Test
    void aReportSaysWhichOneItReplacesAndIsProvedWithThat() throws Exception {
        byte[] second =
                new ReportJob(TEMPLATES.resolve("installer-record"), Paper.A4, ISSUED, "first/1")
                        .pdf(checked, record, photographs);
        assertEquals(0, prove(second).exitCode(), said(prove(second)));
        try (PDDocument document = Loader.loadPDF(second)) {
            assertTrue(
                    new PDFTextStripper()
                            .getText(document)
                            .replaceAll("\\s+", " ")
                            .contains("It replaces report number first/1"));
        }
    }

    @Test
    void theCareSheetIsProvedLikeAnyReport() throws Exception {
        byte[] sheet =
                report(TEMPLATES.resolve("care-sheet"))
                        .signed(checked, record, photographs, key, WHEN);
        Conformance.assertArchivalAndAccessible(sheet);
        assertEquals(0, prove(sheet).exitCode(), said(prove(sheet)));
        try (PDDocument document = Loader.loadPDF(sheet)) {
            String text = new PDFTextStripper().getText(document);
            String title = document.getDocumentInformation().getTitle();
            assertTrue(title.startsWith("Care of the gutter, "), title);
            assertTrue(text.contains(checked.findings().jobSha256()), "the same as on the record");
        }
    }

    @Test
    void aPictureOfASignatureIsPrintedAndProvedWithASignatureAndWithout() throws Exception {
        Photographs both = withSignature();
        for (String template : List.of("installer-record", "care-sheet")) {
            ReportJob report = report(TEMPLATES.resolve(template));
            for (byte[] pdf :
                    List.of(
                            report.pdf(checked, record, both),
                            report.signed(checked, record, both, key, WHEN))) {
                Conformance.assertArchivalAndAccessible(pdf);
                Proof proof = prove(pdf);
                assertEquals(0, proof.exitCode(), template + said(proof));
                assertTrue(said(proof).contains("byte for byte"), said(proof));
                try (PDDocument document = Loader.loadPDF(pdf)) {
                    String text = new PDFTextStripper().getText(document).replaceAll("\\s+", "");
                    assertTrue(text.contains("itprovesnothingaboutwhoputitthere"), template);
                    assertTrue(text.contains(both.signatures().get("").fileSha256()));
                }
            }
        }
    }

    @Test
    void aTemplateWithoutAPlaceForThePictureOfASignatureIsRefused() throws Exception {
        Path own = Files.createDirectory(folder.resolve("unsigned"));
        Files.writeString(
                own.resolve("report.ftlh"), "<html><head><title>x</title></head><body/></html>");
        LayoutTrouble trouble =
                assertThrows(
                        LayoutTrouble.class,
                        () -> report(own).pdf(checked, record, withSignature()));
        assertTrue(
                String.valueOf(trouble.getMessage()).contains("no place for the picture"),
                trouble::getMessage);
    }

    @Test
    void anotherSignerThanTheOneAskedForIsTold() throws Exception {
        String other = "0".repeat(64);
        assertEquals(0, prove(signed, Optional.of(key.signedBy().fingerprint())).exitCode());
        Proof proof = prove(signed, Optional.of(other));
        assertEquals(1, proof.exitCode());
        assertTrue(said(proof).contains("not the certificate that was asked for, " + other));
        assertEquals(1, prove(plain, Optional.of(other)).exitCode(), "nobody signed it");
    }

    @Test
    void rulesPackedAndUnpackedAreTheSameFiles() throws Exception {
        Path unpacked = Files.createDirectory(folder.resolve("unpacked"));
        RulesArchive.unpack(RulesArchive.pack(checked.rulesFiles()).orElseThrow(), unpacked);
        assertEquals(
                checked.findings().rules().sha256(),
                RuleSets.book("trade-practice", unpacked).sha256());
    }

    @Test
    void anotherVersionComparesDataAndVerdictsOnlyAndSaysSo() throws Exception {
        byte[] other =
                withFile(
                        withFile(
                                plain,
                                "made.json",
                                text -> text.replace(Program.nameAndVersion(), "eavesproof 0.0.1")),
                        "findings.json",
                        text -> text.replace(Program.nameAndVersion(), "eavesproof 0.0.1"));
        Proof proof = prove(other);
        assertEquals(2, proof.exitCode(), said(proof));
        assertTrue(said(proof).contains("Data and verdicts only were compared."), said(proof));
        assertTrue(said(proof).contains("The verdicts are what the data give"), said(proof));
    }

    @Test
    void templatesThatAreNotHereAreNamedByTheirHash() throws Exception {
        Path own = folder.resolve("own");
        copy(TEMPLATES.resolve("installer-record"), own);
        Files.writeString(
                own.resolve("report.css"), "/* ours */", java.nio.file.StandardOpenOption.APPEND);
        byte[] pdf = report(own).pdf(checked, record, photographs);
        Proof proof = prove(pdf);
        assertEquals(2, proof.exitCode(), said(proof));
        assertTrue(said(proof).contains(TemplateIdentity.sha256(own)), said(proof));
        Proof named =
                new ProveReport(
                                Optional.empty(),
                                false,
                                RULES,
                                Optional.of(own),
                                TEMPLATES,
                                Optional.empty())
                        .prove(pdf);
        assertEquals(2, named.exitCode(), said(named));
        assertTrue(said(named).contains("byte for byte"), said(named));
        assertTrue(said(named).contains("did not come with this program"), said(named));
    }

    @Test
    void whatIsNoReportOfThisProgramIsRefused() throws Exception {
        assertThrows(NotAReport.class, () -> prove(new byte[0]));
        assertThrows(NotAReport.class, () -> prove(Arrays.copyOf(plain, 500)));
        try (PDDocument empty = new PDDocument()) {
            empty.addPage(new PDPage());
            byte[] pdf = saved(empty);
            assertEquals(
                    "carries no job.json",
                    assertThrows(NotAReport.class, () -> prove(pdf)).getMessage());
        }
        byte[] nonsense = withFile(plain, "made.json", text -> "[]");
        assertThrows(NotAReport.class, () -> prove(nonsense));
    }

    @Test
    void aPhotographOutsideTheFolderIsSaidOnThePaperAndBesideIt() throws Exception {
        assertEquals(
                java.util.List.of(
                        "photograph ph2 is not shown: gone.jpg leads out of the folder of the job"
                                + " record"),
                photographs.troubles(checked.job()));
        assertTrue(
                manuscript(Optional.empty())
                        .xhtml()
                        .contains("Not shown: the file gone.jpg leads out of the folder"));
        Photo.Print print = (Photo.Print) photographs.byId().get("ph1");
        assertTrue(manuscript(Optional.empty()).xhtml().contains(print.fileSha256()));
        String html =
                new String(
                        report(TEMPLATES.resolve("installer-record"))
                                .html(checked, record, photographs),
                        StandardCharsets.UTF_8);
        assertTrue(html.contains("src=\"data:image/jpeg;base64,"));
    }
}
