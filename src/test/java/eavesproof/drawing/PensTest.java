package eavesproof.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class PensTest {
    private static final String NASTY = "<b onload='x'>&amp; \"a\" \u0000 \uD800 ]]>";

    private static final Drawing EVERY_MARK =
            new Drawing(
                    100,
                    60.5,
                    NASTY,
                    List.of(
                            Mark.Stroke.between(0, 0, 1e-7, 12345.6789e-3, Line.CHAIN),
                            Mark.Area.box(10, 10, 30, 20, Fill.SHADE, Line.HEAVY),
                            Mark.Area.box(50, 10, 30, 20, Fill.HATCHED, Line.DASHED),
                            new Mark.Circle(new Point(90, 50), 3, Fill.INK, Line.DOTTED),
                            new Mark.Words(
                                    new Point(50, 55), NASTY, Anchor.END, 9, Weight.STRONG, 30)));

    @Test
    void theSvgIsWellFormedAndSaysWhatItShows() throws Exception {
        Document svg = parse(SvgPen.write(EVERY_MARK));
        assertEquals("svg", svg.getDocumentElement().getNodeName());
        String shown = "<b onload='x'>&amp; \"a\" \uFFFD \uFFFD ]]>";
        assertEquals(shown, svg.getDocumentElement().getAttribute("aria-label"));
        assertEquals(shown, svg.getElementsByTagName("title").item(0).getTextContent());
        assertEquals(shown, svg.getElementsByTagName("text").item(0).getTextContent());
        assertEquals(0, svg.getElementsByTagName("b").getLength());
    }

    @Test
    void theSvgAsksForNothingFromOutside() {
        String svg = SvgPen.write(EVERY_MARK);
        assertFalse(svg.contains("href") || svg.contains("url(") || svg.contains("<style"));
        assertEquals(1, svg.split("http", -1).length - 1, "only the name of the namespace");
    }

    @Test
    void theSvgIsTheSameInEveryLocaleAndInPlainNumbers() {
        String expected = SvgPen.write(EVERY_MARK);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertEquals(expected, SvgPen.write(EVERY_MARK));
        } finally {
            Locale.setDefault(before);
        }
        assertTrue(expected.contains("points=\"0,0 0,12.346\""), expected);
    }

    @Test
    void theSvgHasItsSizeInMillimetres() throws Exception {
        Element svg = parse(SvgPen.write(EVERY_MARK)).getDocumentElement();
        assertEquals("100mm", svg.getAttribute("width"));
        assertEquals("60.5mm", svg.getAttribute("height"));
        assertEquals("0 0 100 60.5", svg.getAttribute("viewBox"));
    }

    @Test
    void java2dPaintsInkWhereTheMarksAre() {
        BufferedImage image = new BufferedImage(1000, 605, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, 1000, 605);
        graphics.scale(10, 10);
        Java2DPen.paint(EVERY_MARK, graphics);
        graphics.dispose();
        assertEquals(0xFFC8C8C8, image.getRGB(250, 200), "the shaded box");
        assertEquals(0xFF000000, image.getRGB(100, 200), "its heavy edge");
        assertEquals(0xFF000000, image.getRGB(900, 500), "the solid circle");
        assertEquals(0xFFFFFFFF, image.getRGB(450, 200), "bare paper");
    }

    @Test
    void java2dSetsWordsFromTheirAnchor() {
        Mark.Words words = Mark.Words.level(60, 20, "left fittings", Anchor.END, 12);
        BufferedImage image = new BufferedImage(1000, 400, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, 1000, 400);
        graphics.scale(10, 10);
        Java2DPen.paint(new Drawing(100, 40, "words", List.of(words)), graphics);
        graphics.dispose();
        int left = 1000;
        int right = 0;
        for (int x = 0; x < 1000; x++) {
            for (int y = 0; y < 400; y++) {
                if (image.getRGB(x, y) != 0xFFFFFFFF) {
                    left = Math.min(left, x);
                    right = Math.max(right, x);
                }
            }
        }
        assertEquals(600, right, 8);
        assertEquals(600 - 10 * words.widthMm(), left, 8);
    }

    private static Document parse(String xml) throws Exception {
        return DocumentBuilderFactory.newDefaultInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(xml)));
    }
}
