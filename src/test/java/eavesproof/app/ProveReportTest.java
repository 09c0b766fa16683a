package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.Made;
import eavesproof.report.Allowance;
import eavesproof.report.LayoutTrouble;
import eavesproof.report.Manuscript;
import eavesproof.report.Paper;
import eavesproof.report.Photo;
import eavesproof.report.TemplateIdentity;
import eavesproof.report.Typesetting;
import eavesproof.report.pdf.Conformance;
import eavesproof.report.pdf.NotAReport;
import eavesproof.report.pdf.PdfWriter;
import eavesproof.report.pdf.SigningKey;
import eavesproof.report.pdf.TestKeys;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports as they were made, and as somebody made them over who wants them to say otherwise. */
class ProveReportTest {
    private static final Path RULES = Path.of("rules");
    private static final Path TEMPLATES = Path.of("report-templates");
    private static final LocalDate ISSUED = LocalDate.of(2026, 11, 25);
    private static final Instant WHEN = Instant.parse("2026-11-25T08:30:00Z");

    @TempDir static Path folder;

    private static byte[] record;
    private static CheckedJob checked;
    private static Photographs photographs;
    private static SigningKey key;
    private static byte[] plain;
    private static byte[] signed;

    @BeforeAll
    static void makeOnce() throws Exception {
        record =
                Files.readString(Path.of("samples/carport-several-faults.json"))
                        .replaceAll(
                                "(?s)\"photographs\": *\\[.*?\\]",
                                "\"photographs\": [{\"id\": \"ph1\", \"file\": \"wall.jpg\","
                                        + " \"shows\": \"the wall before it was covered\","
                                        + " \"taken\": \"2026-11-20\"},"
                                        + " {\"id\": \"ph2\", \"file\": \"gone.jpg\"}]")
                        .getBytes(StandardCharsets.UTF_8);
        Files.write(folder.resolve("wall.jpg"), picture(0x808080));
        Files.createSymbolicLink(folder.resolve("gone.jpg"), Path.of("pom.xml").toAbsolutePath());
        checked = CheckJob.check(record, Optional.empty(), RULES);
        photographs = Photographs.beside(folder, checked.job());
        assertEquals(2, photographs.byId().size(), "the record has both photographs");
        key = SigningKey.read(TestKeys.ec("Mere Tāmati"), TestKeys.PASSPHRASE.toCharArray());
        ReportJob report = report(TEMPLATES.resolve("installer-record"));
        plain = report.pdf(checked, record, photographs);
        signed = report.signed(checked, record, photographs, key, WHEN);
    }

    private static ReportJob report(Path template) {
        return new ReportJob(template, Paper.A4, ISSUED);
    }

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
                            .contains("It replaces report first/1."));
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
            assertTrue(title.endsWith(": care of the gutter"), title);
            assertTrue(text.contains(checked.findings().jobSha256()), "the same as on the record");
        }
    }

    private static Photographs withSignature() throws Exception {
        Path file = Files.write(folder.resolve("hand.jpg"), picture(0x2040A0));
        return photographs.withSignature((Photo.Print) Photographs.signatureIn(file));
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
                    assertTrue(text.contains(both.signature().orElseThrow().fileSha256()));
                }
            }
        }
    }

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
        assertTrue(said(proof).contains("and the data give \"Another "), said(proof));
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
        assertEquals(0, named.exitCode(), said(named));
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

    private static Manuscript manuscript(Optional<Made.Signer> signer) throws Exception {
        Path template = TEMPLATES.resolve("installer-record");
        Made made =
                new Made(
                        Program.nameAndVersion(),
                        "installer-record",
                        TemplateIdentity.sha256(template),
                        ISSUED.toString(),
                        "A4",
                        "",
                        signer,
                        photographs.made(),
                        Optional.empty());
        return new Typesetting(template, Allowance.USUAL)
                .forPaper(Edition.of(ISSUED, Paper.A4, made).issue(checked, record, photographs));
    }

    private static Made.Signer signer(SigningKey key) {
        return new Made.Signer(
                key.signedBy().name(), key.signedBy().fingerprint(), key.signedBy().selfMade());
    }

    private static Proof prove(byte[] pdf) throws Exception {
        return prove(pdf, Optional.empty());
    }

    private static Proof prove(byte[] pdf, Optional<String> signedBy) throws Exception {
        return new ProveReport(
                        Optional.empty(), false, RULES, Optional.empty(), TEMPLATES, signedBy)
                .prove(pdf);
    }

    private static String said(Proof proof) {
        return proof.lines().stream()
                .map(line -> line.stands().word() + ": " + line.says())
                .collect(Collectors.joining("\n"));
    }

    /** Somebody with any program for PDF can do this. */
    private static byte[] withFile(byte[] pdf, String name, UnaryOperator<String> change)
            throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            var file =
                    document.getDocumentCatalog()
                            .getNames()
                            .getEmbeddedFiles()
                            .getNames()
                            .get(name);
            String text =
                    new String(file.getEmbeddedFile().toByteArray(), StandardCharsets.ISO_8859_1);
            String changed = change.apply(text);
            assertFalse(text.equals(changed), "the file was changed");
            PDEmbeddedFile other =
                    new PDEmbeddedFile(
                            document,
                            new ByteArrayInputStream(
                                    changed.getBytes(StandardCharsets.ISO_8859_1)));
            file.setEmbeddedFile(other);
            file.setEmbeddedFileUnicode(other);
            return saved(document);
        }
    }

    private static byte[] saved(PDDocument document) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }

    private static byte[] picture(int colour) throws Exception {
        BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 60; x++) {
            image.setRGB(x, x % 40, colour);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpeg", out);
        return out.toByteArray();
    }

    private static void copy(Path from, Path to) throws Exception {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
    }
}
