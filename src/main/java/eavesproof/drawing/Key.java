package eavesproof.drawing;

import eavesproof.job.Run;
import eavesproof.job.Said;
import eavesproof.job.WayPart;
import eavesproof.job.Words;
import eavesproof.judge.Verdict;
import java.util.ArrayList;
import java.util.List;

/** What the lines and symbols of the elevations mean. */
public final class Key {
    private static final double ROW_MM = 7.6;
    private static final double DEEP_MM = 4.4;
    private static final double PICTURE_MM = 11;
    private static final int COLUMNS = 5;

    private final double columnMm;
    private final List<Mark> marks = new ArrayList<>();
    private int count;

    private Key(double widthMm) {
        columnMm = widthMm / COLUMNS;
    }

    public static Drawing of(double widthMm) {
        Key key = new Key(widthMm);
        key.entries();
        int rows = (key.count + COLUMNS - 1) / COLUMNS;
        return new Drawing(
                widthMm,
                rows * ROW_MM,
                "Key to the drawings: brackets, joints, fittings, outlets, ends, timber, lengths to"
                        + " keep clear, the water in the design rain, what is not recorded, and how findings"
                        + " are marked.",
                key.marks);
    }

    private void entries() {
        for (String words :
                List.of(
                        "bracket",
                        "joint",
                        "expansion joint",
                        "fitting",
                        "fitting that carries",
                        "outlet",
                        "sole, as read",
                        "not recorded",
                        "timber",
                        "stop end",
                        "corner",
                        "keep clear of joints",
                        "water, design rain",
                        "nearest to the lip",
                        "does not comply",
                        "too close to call",
                        "not recorded")) {
            double x = count % COLUMNS * columnMm;
            double y = Math.floorDiv(count, COLUMNS) * ROW_MM;
            picture(words, x + PICTURE_MM / 2, y + 1.2, count);
            marks.add(Mark.Words.level(x + PICTURE_MM + 2, y + 4.6, words, Anchor.START, 7.5));
            count++;
        }
    }

    private void picture(String words, double x, double top, int nth) {
        switch (words) {
            case "bracket" -> on(x, top, Symbols.bracket(x, top, DEEP_MM));
            case "joint" -> on(x, top, Symbols.joint(joint("cemented"), x, top, DEEP_MM));
            case "expansion joint" ->
                    on(x, top, Symbols.joint(joint("expansion"), x, top, DEEP_MM));
            case "fitting" -> on(x, top, Symbols.fitting(fitting(Words.NO), x, top, DEEP_MM));
            case "fitting that carries" ->
                    on(x, top, Symbols.fitting(fitting(Words.YES), x, top, DEEP_MM));
            case "outlet" ->
                    on(
                            x,
                            top - 1.6,
                            Symbols.outlet(
                                    outlet(),
                                    x,
                                    top + 2.8,
                                    top + 7,
                                    new StationScale(x - 5, x + 5, 0, 500)));
            case "sole, as read" -> {
                line(x, top + 2.5, Line.HEAVY);
                marks.add(Symbols.reading(x - 4, top + 2.5));
                marks.add(Symbols.reading(x + 4, top + 2.5));
            }
            case "timber" ->
                    marks.add(Mark.Area.box(x - 5, top + 1.5, 10, 2, Fill.SHADE, Line.FINE));
            case "stop end" -> end(x, top, Line.HEAVY);
            case "corner" -> end(x, top, Line.DASHED);
            case "keep clear of joints" ->
                    marks.add(Mark.Area.box(x - 5, top + 1.2, 10, 2.6, Fill.HATCHED, Line.FINE));
            case "water, design rain" -> water(x, top);
            case "nearest to the lip" -> {
                water(x, top);
                marks.add(ElevationWater.level(x, top + 2));
            }
            case "does not comply" -> tag(x, top, Verdict.DOES_NOT_COMPLY);
            case "too close to call" -> tag(x, top, Verdict.TOO_CLOSE);
            default -> {
                if (nth < COLUMNS * 2) {
                    line(x, top + 2.5, Line.DOTTED);
                } else {
                    tag(x, top, Verdict.NOT_RECORDED);
                }
            }
        }
    }

    /** A piece of gutter with the symbol on it. */
    private void on(double x, double top, List<Mark> symbol) {
        line(x, top, Line.PLAIN);
        line(x, top + DEEP_MM, Line.HEAVY);
        marks.addAll(symbol);
    }

    private void water(double x, double top) {
        line(x, top, Line.PLAIN);
        marks.add(Mark.Area.box(x - 5, top + 2, 10, DEEP_MM - 2, Fill.TINT, Line.NONE));
        line(x, top + 2, Line.FINE);
        line(x, top + DEEP_MM, Line.HEAVY);
    }

    private void end(double x, double top, Line line) {
        marks.add(Mark.Stroke.between(x, top, x + 5, top, Line.PLAIN));
        marks.add(Mark.Stroke.between(x, top + DEEP_MM, x + 5, top + DEEP_MM, Line.HEAVY));
        marks.add(Mark.Stroke.between(x, top, x, top + DEEP_MM, line));
    }

    private void line(double x, double y, Line line) {
        marks.add(Mark.Stroke.between(x - 5, y, x + 5, y, line));
    }

    private void tag(double x, double top, Verdict verdict) {
        marks.add(
                Mark.Area.box(
                        x - Tag.HEIGHT_MM / 2,
                        top + 0.3,
                        Tag.HEIGHT_MM,
                        Tag.HEIGHT_MM,
                        Fill.WHITE,
                        ElevationMarks.edge(verdict)));
        marks.add(
                new Mark.Words(
                        new Point(x, top + 0.3 + Tag.HEIGHT_MM / 2 + 0.95),
                        "1",
                        Anchor.MIDDLE,
                        Tag.SIZE_PT,
                        Weight.STRONG,
                        0));
    }

    private static Run.Joint joint(String kind) {
        return new Run.Joint("", kind, 0.0, null, null, null, null, null, null);
    }

    private static Run.Fitting fitting(String carries) {
        return new Run.Fitting("", null, 0.0, Words.YES, null, carries, null);
    }

    private static WayPart.Outlet outlet() {
        return new WayPart.Outlet(
                "",
                null,
                null,
                null,
                0.0,
                160.0,
                null,
                Said.nothing(),
                Said.nothing(),
                null,
                null,
                null,
                null,
                80.0,
                null,
                null,
                null,
                null);
    }
}
