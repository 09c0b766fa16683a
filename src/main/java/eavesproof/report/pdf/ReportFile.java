package eavesproof.report.pdf;

import eavesproof.report.LayoutTrouble;
import eavesproof.report.Manuscript;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;

/** A report taken apart again: its data, its pictures and its signatures. */
public final class ReportFile {
    /** More than the reader of records takes. */
    private static final int LARGEST_PART = 40_000_000;

    private final byte[] bytes;
    private final Map<String, byte[]> attachments = new LinkedHashMap<>();
    private final Map<String, byte[]> pictures = new TreeMap<>();
    private final List<SignatureReader> readers = new ArrayList<>();
    private final List<FoundSignature> signatures = new ArrayList<>();

    private ReportFile(byte[] bytes) {
        this.bytes = bytes;
    }

    public static ReportFile open(byte[] bytes) throws NotAReport {
        ReportFile file = new ReportFile(bytes.clone());
        try (PDDocument document = Loader.loadPDF(file.bytes)) {
            file.takeAttachments(document);
            file.takePictures(document);
            for (PDSignature signature : document.getSignatureDictionaries()) {
                SignatureReader reader = new SignatureReader(file.bytes, signature);
                file.readers.add(reader);
                file.signatures.add(reader.read());
            }
            return file;
        } catch (IOException | RuntimeException | StackOverflowError e) {
            // A reader that meets hostile bytes fails with whatever comes first.
            throw new NotAReport("cannot be read as PDF");
        }
    }

    private void takeAttachments(PDDocument document) throws IOException {
        PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
        PDEmbeddedFilesNameTreeNode tree = names == null ? null : names.getEmbeddedFiles();
        Map<String, PDComplexFileSpecification> files = tree == null ? null : tree.getNames();
        if (files == null) {
            return;
        }
        for (Map.Entry<String, PDComplexFileSpecification> file : files.entrySet()) {
            if (file.getValue() != null && file.getValue().getEmbeddedFile() != null) {
                try (InputStream in = file.getValue().getEmbeddedFile().createInputStream()) {
                    attachments.put(file.getKey(), bounded(in));
                }
            }
        }
    }

    private void takePictures(PDDocument document) throws IOException {
        for (COSObject object : document.getDocument().getObjectsByType(COSName.XOBJECT)) {
            if (object.getObject() instanceof COSStream stream
                    && COSName.IMAGE.equals(stream.getCOSName(COSName.SUBTYPE))
                    && COSName.DCT_DECODE.equals(stream.getFilters())) {
                try (InputStream in = stream.createRawInputStream()) {
                    byte[] picture = bounded(in);
                    pictures.put(HexFormat.of().formatHex(Certificates.sha256(picture)), picture);
                }
            }
        }
    }

    private static byte[] bounded(InputStream in) throws IOException {
        byte[] part = in.readNBytes(LARGEST_PART + 1);
        if (part.length > LARGEST_PART) {
            throw new IOException("a part of the file is larger than any that a report has");
        }
        return part;
    }

    public Optional<byte[]> attachment(String name) {
        return Optional.ofNullable(attachments.get(name)).map(byte[]::clone);
    }

    /** A photograph as it was printed. */
    public Optional<byte[]> picture(String sha256) {
        return Optional.ofNullable(pictures.get(sha256)).map(byte[]::clone);
    }

    public List<FoundSignature> signatures() {
        return List.copyOf(signatures);
    }

    /**
     * Prints again and compares byte for byte: the report up to its signature, and the rest with
     * what signing adds.
     *
     * @return what differs, in sentences; empty where nothing does
     */
    public List<String> differences(Manuscript again) throws LayoutTrouble {
        byte[] printed = new PdfWriter().write(again);
        if (Arrays.equals(printed, bytes)) {
            return List.of();
        }
        int same = Arrays.mismatch(printed, bytes);
        if (same < printed.length) {
            List<String> found = new ArrayList<>(TextDifference.between(bytes, printed));
            found.add(
                    "The file is not what the program prints from this data: it differs from byte "
                            + same
                            + " on.");
            return found;
        }
        if (again.signedBy().isEmpty() || signatures.size() != 1) {
            return List.of(
                    (bytes.length - same) + " bytes were added after the end of the report.");
        }
        return Arrays.equals(bytes, signedAgain(again, printed))
                ? List.of()
                : List.of("More than the signature was added after the end of the report.");
    }

    private byte[] signedAgain(Manuscript again, byte[] printed) {
        SignatureReader reader = readers.get(0);
        FoundSignature found = signatures.get(0);
        // A signature by anybody else has another name on it and shows as a difference.
        return new Signing(
                        new Fonts(),
                        found.by().orElse(again.signedBy().orElseThrow()),
                        found.when())
                .put(printed, Math.max(1, reader.reserved()), content -> reader.cms());
    }
}
