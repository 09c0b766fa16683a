package eavesproof.report;

import eavesproof.drawing.Lettering;
import java.util.Collections;
import java.util.Locale;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What of a text will not come out right on paper, so that the report can say so.
 *
 * @param missing code points that no bundled font has
 * @param rightToLeft whether the text holds letters that read from right to left
 */
public record Unprintable(NavigableSet<Integer> missing, boolean rightToLeft) {
    public Unprintable {
        missing = Collections.unmodifiableNavigableSet(new TreeSet<>(missing));
    }

    public static Unprintable in(String text) {
        return new Unprintable(
                Lettering.missing(text),
                text.codePoints().anyMatch(Unprintable::readsFromTheRight));
    }

    public boolean isEmpty() {
        return missing.isEmpty() && !rightToLeft;
    }

    /** The missing characters as code points, since they cannot be shown: "U+732B, U+1F600". */
    public String missingNames() {
        return missing.stream()
                .map(
                        c ->
                                "U+"
                                        + "0"
                                                .repeat(
                                                        Math.max(
                                                                0,
                                                                4
                                                                        - Integer.toHexString(c)
                                                                                .length()))
                                        + Integer.toHexString(c).toUpperCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
    }

    private static boolean readsFromTheRight(int c) {
        byte direction = Character.getDirectionality(c);
        return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }
}
