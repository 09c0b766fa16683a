package eavesproof.drawing;

import eavesproof.job.Run;
import eavesproof.job.WayPart;
import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How each thing on a gutter is drawn; the key shows the same. */
final class Symbols {
    private static final double LEAST_PIPE_MM = 1.6;

    private Symbols() {}

    /** A strap down the front with a foot under the sole. */
    static List<Mark> bracket(double x, double top, double depth) {
        double foot = top + depth + 1.3;
        return List.of(
                Mark.Stroke.between(x, top - 0.8, x, foot, Line.PLAIN),
                Mark.Stroke.between(x - 0.55, foot, x + 0.55, foot, Line.PLAIN));
    }

    static List<Mark> joint(Run.Joint joint, double x, double top, double depth) {
        List<Mark> marks = new ArrayList<>();
        boolean expansion = Words.EXPANSION.equals(joint.kind());
        double half = expansion ? 0.95 : 0.5;
        Line side = joint.kind() == null ? Line.DOTTED : expansion ? Line.HEAVY : Line.PLAIN;
        double foot = top + depth;
        marks.add(Mark.Area.box(x - half, top, 2 * half, depth, Fill.WHITE, Line.NONE));
        marks.add(Mark.Stroke.between(x - half, top, x - half, foot, side));
        marks.add(Mark.Stroke.between(x + half, top, x + half, foot, side));
        if (Words.YES.equals(joint.screwedToFascia())) {
            marks.add(square(x, top + depth / 2, Fill.INK, Line.PLAIN));
        }
        return marks;
    }

    /**
     * A square: solid if the gutter lies in it and it is screwed to the fascia, and so supports the
     * gutter; outlined if either is not so; dotted where that is not recorded.
     */
    static List<Mark> fitting(Run.Fitting fitting, double x, double top, double depth) {
        String carries = fitting.carriesGutter();
        String screwed = fitting.screwedToFascia();
        boolean supports = Words.YES.equals(carries) && Words.YES.equals(screwed);
        boolean known = supports || Words.NO.equals(carries) || Words.NO.equals(screwed);
        return List.of(
                Mark.Stroke.between(x, top, x, top + depth, Line.FINE),
                square(
                        x,
                        top + depth / 2,
                        supports ? Fill.INK : Fill.WHITE,
                        known ? Line.PLAIN : Line.DOTTED));
    }

    static Mark reading(double x, double soleY) {
        return new Mark.Circle(new Point(x, soleY), 0.62, Fill.INK, Line.NONE);
    }

    static double outletHalfMm(WayPart.Outlet outlet, double paperMmPerMm) {
        Double body = outlet.bodyMm();
        return body == null ? 1.5 : Math.max(0.9, body * paperMmPerMm / 2);
    }

    /**
     * Its body beneath the sole, dotted where its length is not recorded, and its pipe. The ends of
     * the gutter cut it.
     */
    static List<Mark> outlet(
            WayPart.Outlet outlet, double x, double soleY, double foot, StationScale scale) {
        double half = outletHalfMm(outlet, scale.paperMmPerMm());
        double left = Math.max(x - half, scale.leftMm());
        double right = Math.min(x + half, scale.rightMm());
        Double size = outlet.sizeMm();
        double wide = size == null ? 0 : size * scale.paperMmPerMm();
        double pipe = Math.min(2 * half, Math.max(LEAST_PIPE_MM, wide));
        double neck = soleY + 1.8;
        Line side = size == null ? Line.DOTTED : Line.PLAIN;
        Line edge = outlet.bodyMm() == null ? Line.DOTTED : Line.PLAIN;
        double pipeLeft = Math.max(x - pipe / 2, scale.leftMm());
        double pipeRight = Math.min(x + pipe / 2, scale.rightMm());
        return List.of(
                Mark.Area.box(left, soleY, right - left, neck - soleY, Fill.TINT, edge),
                Mark.Stroke.between(pipeLeft, neck, pipeLeft, foot, side),
                Mark.Stroke.between(pipeRight, neck, pipeRight, foot, side));
    }

    /** A stop end closes the gutter, a corner is dashed, an open end is left open. */
    static List<Mark> end(
            Run.@Nullable End end, double x, double top, double depth, Anchor anchor) {
        String kind = end == null ? null : end.kind();
        Line line =
                kind == null
                        ? Line.DOTTED
                        : switch (kind) {
                            case "stop end" -> Line.HEAVY;
                            case Words.CORNER -> Line.DASHED;
                            default -> Line.NONE;
                        };
        List<Mark> marks = new ArrayList<>();
        if (line != Line.NONE) {
            marks.add(Mark.Stroke.between(x, top, x, top + depth, line));
        }
        double beside = anchor == Anchor.END ? x - 1.4 : x + 1.4;
        double middle = top + depth / 2;
        String words = kind == null ? "not recorded" : kind.equals("open") ? "open end" : kind;
        marks.add(Mark.Words.level(beside, middle, words, anchor, ElevationSheet.SMALL_PT));
        if (end != null && end.gapToWallMm() != null) {
            String gap = "gap " + Decimals.with(end.gapToWallMm(), Unit.MM);
            marks.add(Mark.Words.level(beside, middle + 2.6, gap, anchor, ElevationSheet.SMALL_PT));
        }
        return marks;
    }

    private static Mark square(double x, double y, Fill fill, Line edge) {
        return Mark.Area.box(x - 0.8, y - 0.8, 1.6, 1.6, fill, edge);
    }
}
