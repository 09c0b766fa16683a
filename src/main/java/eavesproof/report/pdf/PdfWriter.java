package eavesproof.report.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.PageSizeUnits;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.XRLog;
import eavesproof.report.LayoutTrouble;
import eavesproof.report.Manuscript;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;

/**
 * Makes a PDF of a manuscript: PDF/A-3a and PDF/UA-1, the same bytes for the same manuscript. One
 * writer serves one thread; it keeps its fonts from one document to the next.
 */
public final class PdfWriter {
    static {
        // Otherwise the layout talks on the standard error stream.
        XRLog.setLoggingEnabled(false);
        System.setProperty("java.awt.headless", "true");
    }

    private final Fonts fonts = new Fonts();

    public byte[] write(Manuscript manuscript) throws LayoutTrouble {
        return write(
                manuscript,
                manuscript.signedBy().isPresent() ? SignatureField::lay : LastTouch.NONE);
    }

    /**
     * Signs a document that {@link #write} made for this signer.
     *
     * @param when the moment that the signature names
     */
    public byte[] sign(byte[] written, SigningKey key, Instant when) {
        return new Signing(fonts, key.signedBy(), when).put(written, key.reserved(), key::cms);
    }

    byte[] write(Manuscript manuscript, LastTouch touch) throws LayoutTrouble {
        Document text = XhtmlReader.read(manuscript);
        Gate gate = new Gate(text, manuscript.photographs());
        try (PDDocument document = new PDDocument();
                PdfBoxRenderer renderer = renderer(text, manuscript, gate, document)) {
            paint(renderer);
            if (!gate.refused().isEmpty()) {
                throw new LayoutTrouble(
                        XhtmlReader.PAGE,
                        "asks for "
                                + String.join(", ", gate.refused())
                                + "; a report takes nothing from outside");
            }
            Archiving.finish(document, manuscript);
            touch.apply(
                    document,
                    id -> renderer.findPagePositionsByID(Pattern.compile(Pattern.quote(id))));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (SignatureField.NoPlace e) {
            throw new LayoutTrouble(XhtmlReader.PAGE, String.valueOf(e.getMessage()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The layout complains of a style sheet that it cannot follow by whatever exception it meets.
     */
    private static void paint(PdfBoxRenderer renderer) throws LayoutTrouble, IOException {
        try {
            renderer.createPDFKeepOpen();
        } catch (RuntimeException | StackOverflowError e) {
            throw new LayoutTrouble(
                    XhtmlReader.PAGE, 0, 0, "cannot be laid out: " + e.getMessage(), e);
        }
    }

    private PdfBoxRenderer renderer(
            Document text, Manuscript manuscript, Gate gate, PDDocument document) {
        PdfRendererBuilder builder = fonts.builder(document);
        builder.withW3cDocument(text, null);
        builder.usePdfAConformance(PdfAConformance.PDFA_3_A);
        builder.usePdfUaAccessibility(true);
        builder.withProducer(manuscript.about().program());
        builder.useDefaultPageSize(
                (float) manuscript.paper().widthMm(),
                (float) manuscript.paper().heightMm(),
                PageSizeUnits.MM);
        builder.useObjectDrawerFactory(new DrawingPlaces(manuscript.drawings()));
        gate.close(builder);
        return builder.buildPdfRenderer();
    }
}
