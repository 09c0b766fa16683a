package eavesproof.report.pdf;

import eavesproof.drawing.Face;
import eavesproof.report.SignedBy;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDAppearanceContentStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.SignatureOptions;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDSignatureField;

/**
 * Puts a signature behind a document as an incremental update (ISO 32000-2, 12.8): what was written
 * before stays as it is. The same document, signer, moment and value give the same bytes, so that
 * whoever has the value can put it again and see whether anything else was added.
 */
final class Signing {
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss 'UTC'", Locale.ROOT)
                    .withZone(ZoneOffset.UTC);
    private static final int START_OF_FINGERPRINT = 16;
    private static final float LARGEST_PT = 8.5f;
    private static final float MARGIN_PT = 3;

    private final Fonts fonts;
    private final SignedBy by;
    private final Instant when;

    /** Makes the value of the signature over the bytes that it covers. */
    @FunctionalInterface
    interface Value {
        byte[] over(byte[] content) throws IOException;
    }

    Signing(Fonts fonts, SignedBy by, Instant when) {
        this.fonts = fonts;
        this.by = by;
        this.when = when;
    }

    /**
     * @param reserved how many bytes the value may take
     */
    byte[] put(byte[] written, int reserved, Value value) {
        try (PDDocument document = Loader.loadPDF(written);
                SignatureOptions options = new SignatureOptions()) {
            // PDFBox would make the second half of the identifier from the clock.
            document.setDocumentId(ByteBuffer.wrap(Certificates.sha256(written)).getLong());
            PDSignatureField field = field(document);
            PDAnnotationWidget widget = field.getWidgets().get(0);
            PDRectangle rectangle = widget.getRectangle();
            PDSignature signature = signature();
            field.setValue(signature);
            options.setPreferredSignatureSize(reserved);
            document.addSignature(
                    signature, content -> value.over(content.readAllBytes()), options);
            // PDFBox takes a field that it did not make for one that nobody is to see.
            widget.setRectangle(rectangle);
            widget.setAppearance(SignatureField.appearance(appearance(document, rectangle)));
            widget.getCOSObject().setNeedToBeUpdated(true);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.saveIncremental(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PDSignatureField field(PDDocument document) {
        PDAcroForm form = document.getDocumentCatalog().getAcroForm(null);
        if (form == null
                || !(form.getField(SignatureField.NAME) instanceof PDSignatureField field)) {
            throw new IllegalStateException("the document was not written to be signed");
        }
        return field;
    }

    private PDSignature signature() {
        PDSignature signature = new PDSignature();
        signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
        signature.setSubFilter(PDSignature.SUBFILTER_ETSI_CADES_DETACHED);
        signature.setName(by.name());
        signature.setReason("Installer's measurement record and declaration");
        Calendar moment = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        moment.setTimeInMillis(when.getEpochSecond() * 1000);
        signature.setSignDate(moment);
        return signature;
    }

    private PDAppearanceStream appearance(PDDocument document, PDRectangle rectangle)
            throws IOException {
        PDAppearanceStream stream = SignatureField.empty(document, rectangle);
        PDFont font = fonts.embedded(document, Face.REGULAR);
        List<String> lines =
                List.of(
                        by.name(),
                        "signed digitally " + MOMENT.format(when),
                        "certificate "
                                + by.fingerprint().substring(0, START_OF_FINGERPRINT)
                                + "… (SHA-256)");
        float leading = (rectangle.getHeight() - 2 * MARGIN_PT) / lines.size();
        float y = rectangle.getHeight() - MARGIN_PT;
        try (PDAppearanceContentStream content = new PDAppearanceContentStream(stream)) {
            for (String line : lines) {
                String printable = fonts.printable(Face.REGULAR, line);
                y -= leading;
                content.beginText();
                content.setFont(
                        font, size(font, printable, leading, rectangle.getWidth() - 2 * MARGIN_PT));
                content.newLineAtOffset(MARGIN_PT, y + leading / 4);
                content.showText(printable);
                content.endText();
            }
        }
        font.subset();
        return stream;
    }

    /** As large as the line allows, and small enough for the width. */
    private static float size(PDFont font, String line, float leading, float width)
            throws IOException {
        float size = Math.min(LARGEST_PT, leading * 0.8f);
        float needed = font.getStringWidth(line) / 1000 * size;
        return needed <= width ? size : size * width / needed;
    }
}
