package eavesproof.report.pdf;

import eavesproof.drawing.SvgPen;
import eavesproof.report.About;
import eavesproof.report.Attachment;
import eavesproof.report.Manuscript;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/**
 * Turns a painted document into one that lasts and that comes out the same each time: ISO 19005-3
 * (PDF/A-3), with the metadata, colour space, attachments and file identifier set here, from the
 * manuscript alone, because the libraries take theirs from the clock and the platform.
 */
final class Archiving {
    private static final String SRGB = "sRGB IEC61966-2.1";

    private final PDDocument document;
    private final Manuscript manuscript;
    private final Calendar issued;

    private Archiving(PDDocument document, Manuscript manuscript) {
        this.document = document;
        this.manuscript = manuscript;
        this.issued = calendar(manuscript.about().issued());
    }

    static void finish(PDDocument document, Manuscript manuscript) throws IOException {
        Archiving archiving = new Archiving(document, manuscript);
        archiving.describe();
        archiving.nameTheColours();
        archiving.attach();
        document.setDocumentId(archiving.identity());
    }

    private void describe() throws IOException {
        About about = manuscript.about();
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(about.title());
        information.setAuthor(about.author());
        information.setSubject(about.subject());
        information.setCreator(about.program());
        information.setProducer(about.program());
        information.setCreationDate(issued);
        information.setModificationDate(issued);
        document.setDocumentInformation(information);
        document.getDocumentCatalog().setLanguage(about.language());
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(Xmp.of(about).getBytes(StandardCharsets.UTF_8));
        document.getDocumentCatalog().setMetadata(metadata);
    }

    /** By hand: PDFBox's own way leads through java.awt.color, and its bytes depend on the JDK. */
    private void nameTheColours() throws IOException {
        COSStream profile = document.getDocument().createCOSStream();
        try (OutputStream out = profile.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(SrgbProfile.bytes());
        }
        profile.setInt(COSName.N, 3);
        COSDictionary intent = new COSDictionary();
        intent.setItem(COSName.TYPE, COSName.getPDFName("OutputIntent"));
        intent.setItem(COSName.S, COSName.getPDFName("GTS_PDFA1"));
        intent.setString(COSName.getPDFName("OutputConditionIdentifier"), SRGB);
        intent.setString(COSName.INFO, SRGB);
        intent.setItem(COSName.getPDFName("DestOutputProfile"), profile);
        COSArray intents = new COSArray();
        intents.add(intent);
        document.getDocumentCatalog()
                .getCOSObject()
                .setItem(COSName.getPDFName("OutputIntents"), intents);
    }

    private void attach() throws IOException {
        if (manuscript.attachments().isEmpty()) {
            return;
        }
        Map<String, PDComplexFileSpecification> files = new TreeMap<>();
        COSArray associated = new COSArray();
        for (Attachment attachment : manuscript.attachments()) {
            PDComplexFileSpecification file = file(attachment);
            files.put(attachment.name(), file);
            associated.add(file);
        }
        PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(files);
        PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
        if (names == null) {
            names = new PDDocumentNameDictionary(document.getDocumentCatalog());
        }
        names.setEmbeddedFiles(tree);
        document.getDocumentCatalog().setNames(names);
        document.getDocumentCatalog().getCOSObject().setItem("AF", associated);
    }

    private PDComplexFileSpecification file(Attachment attachment) throws IOException {
        byte[] content = attachment.content();
        PDEmbeddedFile stream =
                new PDEmbeddedFile(
                        document, new ByteArrayInputStream(content), COSName.FLATE_DECODE);
        stream.setSubtype(attachment.mediaType());
        stream.setSize(content.length);
        stream.setCreationDate(issued);
        stream.setModDate(issued);
        PDComplexFileSpecification file = new PDComplexFileSpecification();
        file.setFile(attachment.name());
        file.setFileUnicode(attachment.name());
        file.setFileDescription(attachment.description());
        file.setEmbeddedFile(stream);
        file.setEmbeddedFileUnicode(stream);
        file.getCOSObject().setName("AFRelationship", "Data");
        return file;
    }

    /** The same manuscript, the same number; PDFBox makes the file identifier from it. */
    private long identity() {
        MessageDigest digest = sha256();
        update(digest, manuscript.xhtml());
        manuscript
                .drawings()
                .forEach(
                        (id, drawing) -> {
                            update(digest, id);
                            update(digest, SvgPen.write(drawing));
                        });
        manuscript
                .photographs()
                .forEach(
                        (address, print) -> {
                            update(digest, address);
                            digest.update(print.jpeg());
                        });
        for (Attachment attachment : manuscript.attachments()) {
            update(digest, attachment.name());
            digest.update(attachment.content());
        }
        update(digest, manuscript.paper().name());
        manuscript.band().forEach(line -> update(digest, line));
        return ByteBuffer.wrap(digest.digest()).getLong();
    }

    private static void update(MessageDigest digest, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        digest.update(ByteBuffer.allocate(4).putInt(bytes.length).array());
        digest.update(bytes);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static Calendar calendar(Instant instant) {
        Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        calendar.setTimeInMillis(instant.toEpochMilli());
        return calendar;
    }
}
