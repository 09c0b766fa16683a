package eavesproof.drawing;

import eavesproof.quantity.Decimals;
import java.util.ArrayList;
import java.util.List;

/**
 * One row for each part that the water passes: what comes to it as a bar against the one upright
 * line that stands for all that it carries. What is beyond the line is hatched; what is not known
 * is dotted, and never drawn as if it were nothing.
 */
final class PassageBars {
    private static final double SIZE = WaterSheet.SMALL_PT;
    private static final double ROW_MM = 6;

    /** Before what another outlet takes. */
    private static final double BETWEEN_MM = 2.4;

    private static final double BAR_MM = 3;
    private static final double HEAD_MM = 6.4;
    private static final double NAMES_MM = 27;
    private static final double WHOLE_MM = 21;
    private static final double MOST_OF_IT = 1.35;
    private static final double PERCENT_MM = 40;

    private final double left;
    private final double zero;
    private final double whole;
    private final double percent;
    private final double right;
    private final List<Mark> marks = new ArrayList<>();
    private double y = HEAD_MM;

    PassageBars(Passage passage, double leftMm, double rightMm) {
        left = leftMm;
        right = rightMm;
        zero = left + NAMES_MM;
        whole = zero + WHOLE_MM;
        percent = zero + PERCENT_MM;
        marks.add(words(whole, 3.4, "all it carries", Anchor.MIDDLE));
        marks.add(words(right, 3.4, "comes to it, of that", Anchor.END));
        String leadsTo = "";
        for (Passage.Part part : passage.parts()) {
            boolean named = !part.id().isEmpty();
            if (named && leadsTo.equals(part.id())) {
                arrow();
            } else if (named) {
                y += BETWEEN_MM;
            }
            row(part);
            leadsTo = part.to();
            y += ROW_MM;
        }
        marks.add(Mark.Stroke.between(zero, HEAD_MM - 1.4, zero, y - 1.4, Line.FINE));
        marks.add(Mark.Stroke.between(whole, HEAD_MM - 1.4, whole, y - 1.4, Line.PLAIN));
    }

    List<Mark> marks() {
        return marks;
    }

    double heightMm() {
        return y + 1;
    }

    /** From the row above to this one. */
    private void arrow() {
        Point from = new Point(left + 1, y - ROW_MM + BAR_MM + 0.6);
        Point tip = new Point(left + 1, y + 0.2);
        marks.add(new Mark.Stroke(List.of(from, tip), Line.FINE));
        marks.add(Mark.Area.arrowHead(from, tip, 1.8));
    }

    private void row(Passage.Part part) {
        double base = y + BAR_MM - 0.7;
        marks.add(words(left + 2.6, base, shortened(part.name(), NAMES_MM - 3.6), Anchor.START));
        if (part.load().isPresent()) {
            Passage.Load load = part.load().get();
            bar(load.ratio());
            marks.add(words(percent, base, percent(load.ratio()), Anchor.END));
            marks.add(words(right, base, load.words(), Anchor.END));
        } else if (part.why().isPresent()) {
            marks.add(Mark.Area.box(zero, y, WHOLE_MM, BAR_MM, Fill.NONE, Line.DOTTED));
            marks.add(words(right, base, part.words(), Anchor.END));
        } else {
            marks.add(words(right, base, shortened(part.words(), right - whole - 1), Anchor.END));
        }
    }

    private void bar(double ratio) {
        double within = Math.min(ratio, 1) * WHOLE_MM;
        if (within > 0) {
            marks.add(Mark.Area.box(zero, y, within, BAR_MM, Fill.SHADE, Line.FINE));
        }
        if (ratio > 1) {
            double beyond = (Math.min(ratio, MOST_OF_IT) - 1) * WHOLE_MM;
            marks.add(Mark.Area.box(whole, y, beyond, BAR_MM, Fill.HATCHED, Line.FINE));
        }
        if (ratio > MOST_OF_IT) {
            double end = zero + MOST_OF_IT * WHOLE_MM;
            Point from = new Point(end, y + BAR_MM / 2);
            marks.add(Mark.Area.arrowHead(from, new Point(end + 2.2, y + BAR_MM / 2), 2.2));
        }
    }

    static String percent(double ratio) {
        return ratio < 10
                ? Decimals.plain(ratio * 100, 0) + " %"
                : ratio < 1000 ? Decimals.plain(ratio, 0) + " ×" : "all spills";
    }

    private static String shortened(String text, double widthMm) {
        String shown = text;
        for (int kept = text.codePointCount(0, text.length());
                kept > 0 && Lettering.widthMm(shown, SIZE, Weight.REGULAR) > widthMm;
                kept--) {
            shown = text.substring(0, text.offsetByCodePoints(0, kept - 1)).strip() + " …";
        }
        return shown;
    }

    private static Mark.Words words(double x, double y, String text, Anchor anchor) {
        return Mark.Words.level(x, y, text, anchor, SIZE);
    }
}
