package eavesproof.exchange;

import java.util.Locale;

/** Pieces of a file made short and fit to be printed on a terminal or a page. */
final class Shown {
    private static final int LONGEST = 60;

    private Shown() {}

    static String quoted(String text) {
        return '"' + plain(text) + '"';
    }

    /** A text with everything invisible written out, and cut where it gets long. */
    static String plain(String text) {
        StringBuilder shown = new StringBuilder();
        int taken = 0;
        for (int at = 0; at < text.length() && taken < LONGEST; taken++) {
            int letter = text.codePointAt(at);
            at += Character.charCount(letter);
            if (visible(letter)) {
                shown.appendCodePoint(letter);
            } else {
                shown.append(String.format(Locale.ROOT, "\\u%04x", letter));
            }
            if (taken + 1 == LONGEST && at < text.length()) {
                shown.append("…");
            }
        }
        return shown.toString();
    }

    private static boolean visible(int letter) {
        return switch (Character.getType(letter)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.PRIVATE_USE,
                    Character.SURROGATE,
                    Character.UNASSIGNED ->
                    false;
            default -> true;
        };
    }

    /** One step of a JSON pointer (RFC 6901 section 3). */
    static String step(String key) {
        return '/' + plain(key).replace("~", "~0").replace("/", "~1");
    }
}
