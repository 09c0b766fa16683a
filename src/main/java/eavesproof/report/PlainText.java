package eavesproof.report;

import java.text.Normalizer;

/**
 * Text that somebody typed, made harmless: it cannot hide, turn round, break or flood what is
 * printed around it.
 */
public final class PlainText {
    /** Longer than any remark that belongs in a report. */
    public static final int LONGEST = 10_000;

    private static final char REPLACEMENT = '\uFFFD';

    private PlainText() {}

    /** Text that may run over several lines. */
    public static String of(String text) {
        return clean(shortened(text), true);
    }

    /** Text that stays on one line: a line break or a tab becomes a space. */
    public static String line(String text) {
        return clean(shortened(text), false);
    }

    private static String shortened(String text) {
        if (text.codePointCount(0, text.length()) <= LONGEST) {
            return text;
        }
        int end = text.offsetByCodePoints(0, LONGEST);
        int left = text.codePointCount(end, text.length());
        return text.substring(0, end) + " [" + left + " more characters left out]";
    }

    private static String clean(String text, boolean lines) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints()
                .forEach(
                        c -> {
                            if (c == '\n' || c == '\t' || c == '\r') {
                                out.append(lines && c == '\n' ? '\n' : ' ');
                            } else if (isHarmful(c)) {
                                out.append(REPLACEMENT);
                            } else {
                                out.appendCodePoint(c);
                            }
                        });
        // Composed letters: the fonts set an accent beside its letter when it comes on its own.
        return Normalizer.normalize(out, Normalizer.Form.NFC);
    }

    /**
     * Controls, halves of a surrogate pair, non-characters, private characters, and what changes
     * the direction or the joining of its neighbours without being seen.
     */
    private static boolean isHarmful(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR ->
                    true;
            case Character.FORMAT -> c != SOFT_HYPHEN;
            default -> (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
        };
    }

    private static final int SOFT_HYPHEN = 0xAD;
}
