package eavesproof.report.pdf;

import eavesproof.drawing.Face;
import eavesproof.report.LayoutTrouble;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;

/**
 * What the program itself has to say on every page, on white along the top edge. It is painted
 * last, so that nothing that the text brings with it can lie over it.
 */
final class Band {
    private static final float A4_WIDTH = 595;
    private static final float SMALLEST = 280;
    private static final float HIGH = 31;
    private static final float SIDE = 51;
    private static final float LETTERS = 7.6f;
    private static final float LEADING = 9.4f;
    private static final float LOWEST = 27;

    private Band() {}

    static void paint(PDDocument document, List<String> lines, Fonts fonts)
            throws IOException, LayoutTrouble {
        if (lines.isEmpty()) {
            return;
        }
        PDFont font = fonts.embedded(document, Face.STRONG);
        for (PDPage page : document.getPages()) {
            PDRectangle sheet = page.getMediaBox();
            if (page.getRotation() != 0
                    || sheet.getLowerLeftX() != 0
                    || sheet.getLowerLeftY() != 0
                    || Math.min(sheet.getWidth(), sheet.getHeight()) < SMALLEST) {
                throw new LayoutTrouble(
                        XhtmlReader.PAGE,
                        "a page is turned or less than 99 mm wide or high, and has no room for what"
                                + " the program must say on it");
            }
            page.setCropBox(sheet);
            paint(document, page, lines, font);
        }
    }

    private static void paint(PDDocument document, PDPage page, List<String> lines, PDFont font)
            throws IOException {
        float scale = page.getMediaBox().getWidth() / A4_WIDTH;
        float top = page.getMediaBox().getHeight();
        try (PDPageContentStream out =
                new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
            out.beginMarkedContent(COSName.ARTIFACT);
            out.setNonStrokingColor(1f, 1f, 1f);
            out.addRect(0, top - HIGH * scale, page.getMediaBox().getWidth(), HIGH * scale);
            out.fill();
            out.setNonStrokingColor(0f, 0f, 0f);
            out.addRect(0, top - HIGH * scale, page.getMediaBox().getWidth(), 0.6f * scale);
            out.fill();
            float y = top - (LOWEST - LEADING * (lines.size() - 1)) * scale;
            for (String line : lines) {
                float room = page.getMediaBox().getWidth() - 2 * SIDE * scale;
                float fits = room / (font.getStringWidth(line) / 1000);
                out.beginText();
                out.setFont(font, Math.min(LETTERS * scale, fits));
                out.newLineAtOffset(SIDE * scale, y);
                out.showText(line);
                out.endText();
                y -= LEADING * scale;
            }
            out.endMarkedContent();
        }
    }
}
