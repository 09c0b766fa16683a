package eavesproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeSet;

/** What the bundled faces can print, and how wide it comes out. */
public final class Lettering {
    /** 1 pt = 1/72 in, as in PDF and CSS. */
    public static final double MM_PER_PT = 25.4 / 72;

    private static final int REPLACEMENT = 0xFFFD;

    private static final Map<Face, Glyphs> GLYPHS =
            Map.of(
                    Face.REGULAR, new Glyphs(Face.REGULAR.bytes()),
                    Face.STRONG, new Glyphs(Face.STRONG.bytes()),
                    Face.FALLBACK, new Glyphs(Face.FALLBACK.bytes()));

    private Lettering() {}

    /** A piece of text that one face can set. */
    record Piece(Face face, String text, double widthMm) {}

    /** How wide the text comes out on paper; no kerning and no ligatures, as the pens set it. */
    public static double widthMm(String text, double sizePt, Weight weight) {
        return pieces(text, sizePt, weight).stream().mapToDouble(Piece::widthMm).sum();
    }

    /** The characters of the text that no bundled face can print, as code points. */
    public static NavigableSet<Integer> missing(CharSequence text) {
        NavigableSet<Integer> missing = new TreeSet<>();
        text.codePoints()
                .filter(
                        c ->
                                !isLayout(c)
                                        && !canPrint(Face.REGULAR, c)
                                        && !canPrint(Face.FALLBACK, c))
                .forEach(missing::add);
        return missing;
    }

    /** The text cut where the face changes; what no face has becomes the replacement character. */
    static List<Piece> pieces(String text, double sizePt, Weight weight) {
        List<Piece> pieces = new ArrayList<>();
        StringBuilder run = new StringBuilder();
        Face current = weight.face();
        double em = 0;
        for (int c : text.codePoints().toArray()) {
            Face face = canPrint(weight.face(), c) ? weight.face() : Face.FALLBACK;
            int printed = canPrint(face, c) ? c : isLayout(c) ? ' ' : REPLACEMENT;
            if (face != current && !run.isEmpty()) {
                pieces.add(new Piece(current, run.toString(), em * sizePt * MM_PER_PT));
                run.setLength(0);
                em = 0;
            }
            current = face;
            run.appendCodePoint(printed);
            em += glyphs(face).advanceEm(printed);
        }
        if (!run.isEmpty()) {
            pieces.add(new Piece(current, run.toString(), em * sizePt * MM_PER_PT));
        }
        return pieces;
    }

    /** Controls and formatting characters are never printed, whatever glyph a font has for them. */
    private static boolean canPrint(Face face, int codePoint) {
        int type = Character.getType(codePoint);
        return type != Character.CONTROL
                && type != Character.FORMAT
                && glyphs(face).advanceEm(codePoint) >= 0;
    }

    private static Glyphs glyphs(Face face) {
        return Objects.requireNonNull(GLYPHS.get(face), "no drawing is lettered in that face");
    }

    private static boolean isLayout(int codePoint) {
        return codePoint == '\n' || codePoint == '\r' || codePoint == '\t' || codePoint == 0xAD;
    }
}
