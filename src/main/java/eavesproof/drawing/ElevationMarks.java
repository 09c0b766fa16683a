package eavesproof.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * Numbered findings above a gutter: a row of tags, and under it the stretch or the point that each
 * is about. Leaders keep the order of the tags, so that none crosses another.
 */
final class ElevationMarks {
    private static final double TOP_MM = 0.6;
    private static final double SLANT_MM = 4.5;
    private static final double BAR_MM = 1.7;
    private static final int MOST_BARS = 8;

    private final List<Tag> tags;
    private final StationScale scale;
    private final Map<Tag, Integer> levels = new LinkedHashMap<>();

    ElevationMarks(List<Numbered> findings, StationScale scale, double widthMm) {
        this.scale = scale;
        tags = Tag.row(findings, scale, 1, widthMm - 1);
        List<Double> reached = new ArrayList<>();
        for (Tag tag : tags) {
            if (isStretch(tag)) {
                int level = 0;
                while (level < reached.size() && reached.get(level) > from(tag) + 1e-6) {
                    level++;
                }
                level = Math.min(level, MOST_BARS - 1);
                if (level == reached.size()) {
                    reached.add(to(tag));
                } else {
                    reached.set(level, Math.max(reached.get(level), to(tag)));
                }
                levels.put(tag, level);
            }
        }
    }

    double heightMm() {
        int bars =
                levels.values().stream().max(Comparator.naturalOrder()).map(l -> l + 1).orElse(0);
        return tags.isEmpty() ? 0 : TOP_MM + Tag.HEIGHT_MM + SLANT_MM + bars * BAR_MM;
    }

    List<Mark> marks(DoubleUnaryOperator gutterTopByStation) {
        List<Mark> marks = new ArrayList<>();
        for (Tag tag : tags) {
            double x = Math.min(Math.max(tag.anchorMm(scale), scale.leftMm()), scale.rightMm());
            double foot;
            if (isStretch(tag)) {
                foot = heightMm() - levels.getOrDefault(tag, 0) * BAR_MM - 0.4;
                bar(marks, from(tag), to(tag), foot);
            } else {
                foot = gutterTopByStation.applyAsDouble(tag.members().get(0).middleMm());
                marks.add(new Mark.Circle(new Point(x, foot), 0.75, Fill.INK, Line.NONE));
            }
            leader(marks, tag, x, foot);
            box(marks, tag);
        }
        return marks;
    }

    private void leader(List<Mark> marks, Tag tag, double x, double foot) {
        double bend = TOP_MM + Tag.HEIGHT_MM + SLANT_MM - 1;
        Point head = new Point(tag.xMm(), TOP_MM + Tag.HEIGHT_MM);
        marks.add(
                new Mark.Stroke(
                        List.of(head, new Point(x, bend), new Point(x, Math.max(foot, bend))),
                        Line.FINE));
    }

    private static void bar(List<Mark> marks, double left, double right, double y) {
        marks.add(Mark.Stroke.between(left, y, right, y, Line.FINE));
        marks.add(Mark.Stroke.between(left, y - 0.6, left, y + 0.8, Line.FINE));
        marks.add(Mark.Stroke.between(right, y - 0.6, right, y + 0.8, Line.FINE));
    }

    private static void box(List<Mark> marks, Tag tag) {
        double width = tag.widthMm();
        marks.add(
                Mark.Area.box(
                        tag.xMm() - width / 2,
                        TOP_MM,
                        width,
                        Tag.HEIGHT_MM,
                        Fill.WHITE,
                        edge(tag.verdict())));
        marks.add(
                new Mark.Words(
                        new Point(tag.xMm(), TOP_MM + Tag.HEIGHT_MM / 2 + 0.95),
                        tag.text(),
                        Anchor.MIDDLE,
                        Tag.SIZE_PT,
                        Weight.STRONG,
                        0));
    }

    static Line edge(eavesproof.judge.Verdict verdict) {
        return switch (verdict) {
            case DOES_NOT_COMPLY -> Line.HEAVY;
            case TOO_CLOSE -> Line.DASHED;
            case NOT_RECORDED -> Line.DOTTED;
            case COMPLIES, NOT_APPLICABLE -> Line.FINE;
        };
    }

    private static boolean isStretch(Tag tag) {
        return tag.members().stream().anyMatch(m -> m.toMm() > m.fromMm());
    }

    private double from(Tag tag) {
        double from = tag.members().stream().mapToDouble(Numbered::fromMm).min().orElseThrow();
        return Math.max(scale.x(from), scale.leftMm());
    }

    private double to(Tag tag) {
        double to = tag.members().stream().mapToDouble(Numbered::toMm).max().orElseThrow();
        return Math.min(scale.x(to), scale.rightMm());
    }
}
