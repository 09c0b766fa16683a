package eavesproof.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LetteringTest {
    @Test
    void widthsAgreeWithThoseOfAnotherReaderOfTheFont() throws Exception {
        String text = "Left fittings: 9990 mm ± 2, fall 1:500, Ōtaki";
        Font font =
                Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(Face.STRONG.bytes()));
        double expected =
                font.deriveFont(1000f)
                        .getStringBounds(text, new FontRenderContext(null, true, true))
                        .getWidth();
        double widthPt = Lettering.widthMm(text, 10, Weight.STRONG) / 25.4 * 72;
        assertEquals(expected / 100, widthPt, 0.05);
    }

    @Test
    void digitsAreAllOfOneWidthSoThatColumnsLineUp() {
        double one = Lettering.widthMm("1", 10, Weight.REGULAR);
        for (String digit : "0 2 3 4 5 6 7 8 9".split(" ")) {
            assertEquals(one, Lettering.widthMm(digit, 10, Weight.REGULAR), 1e-9);
        }
    }

    @Test
    void theSignsOfTheTradeCanBePrinted() {
        assertEquals(
                Set.of(),
                Lettering.missing(
                        "āēīōū ≤ ≥ × ± ° ‰ ½ √ Δ µ ² ³ → ⌀ ✓ – — ‘’ “” … \u00A0\u2007\u2009\u202F\n\t"));
    }

    @Test
    void whatNoFaceHasIsNamed() {
        assertEquals(
                Set.of(0x732B, 0x1F9FF),
                Lettering.missing("a \u732B, again \u732B, and \uD83E\uDDFF"));
    }

    @Test
    void anInvisibleCharacterCountsAsMissingWhateverTheFontsHold() {
        assertEquals(Set.of(0x202E, 0x7), Lettering.missing("\u202E\u0007"));
    }

    @Test
    void textIsCutWhereTheFaceChangesAndUnknownCharactersAreReplaced() {
        List<Lettering.Piece> pieces = Lettering.pieces("a\u2192\u732Bb", 10, Weight.REGULAR);
        assertTrue(
                pieces.stream()
                        .anyMatch(p -> p.face() == Face.FALLBACK && p.text().endsWith("\uFFFD")));
        double sum = pieces.stream().mapToDouble(Lettering.Piece::widthMm).sum();
        assertEquals(Lettering.widthMm("a\u2192\u732Bb", 10, Weight.REGULAR), sum, 1e-9);
    }
}
