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
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
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

    /** A thousand brackets on each of ten runs take a minute and a half on a slow machine. */
    private static final Duration USUAL = Duration.ofMinutes(6);

    private final Fonts fonts = new Fonts();
    private final Duration longest;

    public PdfWriter() {
        this(USUAL);
    }

    /**
     * @param longest for the layout, after which it is left behind: a stranger's style sheet may
     *     never come to an end
     */
    PdfWriter(Duration longest) {
        this.longest = longest;
    }

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
        // The layout keeps what it needs with its thread, so that all of it is done on one.
        FutureTask<byte[]> writing = new FutureTask<>(() -> written(manuscript, touch));
        Thread worker = new Thread(writing, "layout");
        worker.setDaemon(true);
        worker.start();
        try {
            return writing.get(longest.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            worker.interrupt();
            throw trouble("was not laid out within " + longest.toMillis() + " ms", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw trouble("was interrupted", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof LayoutTrouble trouble) {
                throw trouble;
            }
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e.getCause() instanceof RuntimeException fault
                    ? fault
                    : new IllegalStateException(e.getCause());
        }
    }

    private static LayoutTrouble trouble(String said, Throwable cause) {
        return new LayoutTrouble(XhtmlReader.PAGE, 0, 0, said, cause);
    }

    private byte[] written(Manuscript manuscript, LastTouch touch) throws LayoutTrouble {
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
            Band.paint(document, manuscript.band(), fonts);
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
            throw trouble("cannot be laid out: " + e.getMessage(), e);
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
