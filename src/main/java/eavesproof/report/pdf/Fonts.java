package eavesproof.report.pdf;

import com.openhtmltopdf.outputdevice.helper.AddedFont;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import eavesproof.drawing.Face;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.jspecify.annotations.Nullable;

/**
 * The bundled faces, parsed once. A parsed font is not safe between threads, so neither is this.
 *
 * <p>Ligatures are off: PDFBox would draw them, the glyph for "ft" has no Unicode value of its own,
 * and "left" would be copied out of the file as "le" (ISO 14289-1, 7.21.7).
 */
final class Fonts {
    /** The generic names too, since a style sheet that asks for one must not find nothing. */
    private static final List<String> FAMILIES =
            List.of("Source Sans 3", "sans-serif", "serif", "monospace");

    private final Map<Face, TrueTypeFont> parsed = new EnumMap<>(Face.class);

    /** A builder that sets all text in these faces, whatever family a style sheet names. */
    PdfRendererBuilder builder(PDDocument document) {
        Builder builder = new Builder();
        builder.usePDDocument(document);
        PDFontSupplier regular = supplier(Face.REGULAR, document);
        PDFontSupplier strong = supplier(Face.STRONG, document);
        PDFontSupplier italic = supplier(Face.ITALIC, document);
        for (String family : FAMILIES) {
            builder.useFont(regular, family, 400, FontStyle.NORMAL, true);
            builder.useFont(strong, family, 600, FontStyle.NORMAL, true);
            builder.useFont(italic, family, 400, FontStyle.ITALIC, true);
        }
        // Java2D knows the heavier face as a family of its own.
        builder.useFont(strong, "Source Sans 3 SemiBold", 400, FontStyle.NORMAL, true);
        builder.fallBackOn(regular, "Source Sans 3");
        builder.fallBackOn(supplier(Face.FALLBACK, document), "DejaVu Sans");
        builder.useReplacementText("\uFFFD");
        return builder;
    }

    /**
     * Without a last resort, text in a family that is not registered is left out without a word.
     */
    private static final class Builder extends PdfRendererBuilder {
        void fallBackOn(PDFontSupplier supplier, String family) {
            state._fonts.add(
                    new AddedFont(
                            supplier,
                            400,
                            family,
                            true,
                            FontStyle.NORMAL,
                            EnumSet.of(FSFontUseCase.FALLBACK_FINAL)));
        }
    }

    /** For text that is not laid out by the page. */
    PDFont embedded(PDDocument document, Face face) throws IOException {
        return PDType0Font.load(document, font(face), true);
    }

    /** The text with a question mark for each character that the face lacks. */
    String printable(Face face, String text) throws IOException {
        CmapLookup letters = font(face).getUnicodeCmapLookup();
        StringBuilder printable = new StringBuilder(text.length());
        text.codePoints()
                .forEach(c -> printable.appendCodePoint(letters.getGlyphId(c) == 0 ? '?' : c));
        return printable.toString();
    }

    private TrueTypeFont font(Face face) {
        return parsed.computeIfAbsent(face, Fonts::parse);
    }

    private PDFontSupplier supplier(Face face, PDDocument document) {
        return new Embedded(document, font(face));
    }

    private static TrueTypeFont parse(Face face) {
        try {
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(face.bytes()));
            font.setEnableGsub(false);
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Embeds the face in the document when it is first asked for, and once. */
    private static final class Embedded extends PDFontSupplier {
        private final PDDocument document;
        private final TrueTypeFont font;
        private @Nullable PDFont embedded;

        Embedded(PDDocument document, TrueTypeFont font) {
            super(null);
            this.document = document;
            this.font = font;
        }

        @Override
        public PDFont supply() {
            PDFont known = embedded;
            if (known == null) {
                try {
                    known = PDType0Font.load(document, font, true);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
                embedded = known;
            }
            return known;
        }
    }
}
