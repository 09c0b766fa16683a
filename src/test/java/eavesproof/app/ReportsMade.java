package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import eavesproof.exchange.Made;
import eavesproof.report.Allowance;
import eavesproof.report.Manuscript;
import eavesproof.report.Paper;
import eavesproof.report.Photo;
import eavesproof.report.TemplateIdentity;
import eavesproof.report.Typesetting;
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
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** Reports of a job with faults, as they were made, to be proved and to be tampered with. */
abstract class ReportsMade {
    static final Path RULES = Path.of("rules");

    static final Path TEMPLATES = Path.of("report-templates");

    static final LocalDate ISSUED = LocalDate.of(2026, 11, 25);

    static final Instant WHEN = Instant.parse("2026-11-25T08:30:00Z");

    @TempDir static Path folder;

    static byte[] record;

    static CheckedJob checked;

    static Photographs photographs;

    static SigningKey key;

    static byte[] plain;

    static byte[] signed;

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
        photographs = Photographs.beside(folder, checked.job(), false);
        assertEquals(2, photographs.byId().size(), "the record has both photographs");
        key = SigningKey.read(TestKeys.ec("Mere Tāmati"), TestKeys.PASSPHRASE.toCharArray());
        ReportJob report = report(TEMPLATES.resolve("installer-record"));
        plain = report.pdf(checked, record, photographs);
        signed = report.signed(checked, record, photographs, key, WHEN);
    }

    static ReportJob report(Path template) {
        return new ReportJob(template, Paper.A4, ISSUED);
    }

    static Manuscript manuscript(Optional<Made.Signer> signer) throws Exception {
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
                        List.of());
        return new Typesetting(template, Allowance.USUAL)
                .forPaper(Edition.of(ISSUED, Paper.A4, made).issue(checked, record, photographs));
    }

    static Made.Signer signer(SigningKey key) {
        return new Made.Signer(
                key.signedBy().name(), key.signedBy().fingerprint(), key.signedBy().selfMade());
    }

    static Proof prove(byte[] pdf) throws Exception {
        return prove(pdf, Optional.empty());
    }

    static Proof prove(byte[] pdf, Optional<String> signedBy) throws Exception {
        return new ProveReport(
                        Optional.empty(), false, RULES, Optional.empty(), TEMPLATES, signedBy)
                .prove(pdf);
    }

    static String said(Proof proof) {
        return proof.lines().stream()
                .map(line -> line.stands().word() + ": " + line.says())
                .collect(Collectors.joining("\n"));
    }

    /** Somebody with any program for PDF can do this. */
    static byte[] withFile(byte[] pdf, String name, UnaryOperator<String> change) throws Exception {
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

    static byte[] saved(PDDocument document) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }

    static byte[] picture(int colour) throws Exception {
        BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 60; x++) {
            image.setRGB(x, x % 40, colour);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpeg", out);
        return out.toByteArray();
    }

    static void copy(Path from, Path to) throws Exception {
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

    static Photographs withSignature() throws Exception {
        Path file = Files.write(folder.resolve("hand.jpg"), picture(0x2040A0));
        return photographs.withSignature("", (Photo.Print) Photographs.signatureIn(file));
    }
}
