package eavesproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainTextTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u0000", "\u0007", "\u001B", "\u007F", "\u0085", // controls
                "\u202A", "\u202E", "\u2066", "\u2069", "\u200E", "\u061C", // direction
                "\u200B", "\u200D", "\uFEFF", // unseen
                "\uD800", "\uDFFF", // halves
                "\uFFFE", "\uFFFF", "\uFDD0", "\uE000", // not characters of anybody's text
                "\u2028", "\u2029"
            })
    void whatCouldHideOrTurnItsNeighboursIsReplaced(String harmful) {
        assertEquals("a\uFFFDb", PlainText.of("a" + harmful + "b"));
    }

    @Test
    void ordinaryTextIsLeftAlone() {
        String text = "Ōtaki – 14 °C, ≤ 500 mm, “north” ½\nsecond line \uD83D\uDE00";
        assertEquals(text, PlainText.of(text));
    }

    @Test
    void aLineStaysALine() {
        assertEquals("a b c  d", PlainText.line("a\nb\tc\r\nd"));
    }

    @Test
    void anAccentOnItsOwnJoinsItsLetter() {
        assertEquals("\u014Ctaki", PlainText.of("O\u0304taki"));
    }

    @Test
    void aFloodIsCutAndTheCutIsSaid() {
        String cut = PlainText.of("\uD83D\uDE00".repeat(PlainText.LONGEST + 7));
        assertTrue(cut.endsWith(" [7 more characters left out]"), cut.substring(cut.length() - 40));
        assertFalse(cut.contains("\uFFFD"), "no character is cut in half");
    }

    @Test
    void aTextThatCannotBePrintedIsKnown() {
        Unprintable found = Unprintable.in("\u732B and \uD83E\uDDFF");
        assertEquals("U+732B, U+1F9FF", found.missingNames());
        assertFalse(found.rightToLeft());
        assertTrue(Unprintable.in("\u0634").rightToLeft());
        assertTrue(Unprintable.in("Ōtaki ≤ 500 mm").isEmpty());
    }
}
