package eavesproof.drawing;

import eavesproof.job.Run;
import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.WaterLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Across the gutter where the water comes nearest to the lip, the building to the left: the water,
 * what is left above it, and how the gutter lies against the fascia as far as that is recorded.
 */
final class GutterAcross {
    private static final double SIZE = WaterSheet.SMALL_PT;
    private static final double TOP_MM = 4.5;
    private static final double TIMBER_LEFT_MM = 9;
    private static final double TIMBER_MM = 5;
    private static final double WIDEST_MM = 36;
    private static final double HIGHEST_MM = 32;
    private static final double BESIDE_MM = 5;
    private static final double FOOT_MM = 5;
    private static final List<Double> SCALES =
            List.of(1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 5.0, 6.0, 8.0, 10.0, 15.0, 20.0, 30.0, 50.0);

    private final double widthMm;
    private final List<Mark> marks = new ArrayList<>();
    private double heightMm;

    GutterAcross(Optional<WaterLine> line, Run.@Nullable EavesSection eaves, double widthMm) {
        this.widthMm = widthMm;
        line.ifPresentOrElse(it -> new Across(it, eaves).draw(), this::nothing);
    }

    List<Mark> marks() {
        return marks;
    }

    double heightMm() {
        return heightMm;
    }

    private void nothing() {
        marks.add(Mark.Area.box(1, TOP_MM, widthMm - 2, 24, Fill.NONE, Line.DOTTED));
        words(widthMm / 2, TOP_MM + 11, "How the water stands in the gutter", Anchor.MIDDLE);
        words(widthMm / 2, TOP_MM + 15, "is not known; the reason stands below.", Anchor.MIDDLE);
        heightMm = TOP_MM + 26;
    }

    private void words(double x, double y, String text, Anchor anchor) {
        marks.add(Mark.Words.level(x, y, text, anchor, SIZE));
    }

    private void stroke(double x1, double y1, double x2, double y2, Line line) {
        marks.add(Mark.Stroke.between(x1, y1, x2, y2, line));
    }

    /** One section at its scale. */
    private final class Across {
        private final WaterLine water;
        private final @Nullable Double gapMm;
        private final @Nullable Double belowMm;
        private final @Nullable String lined;
        private final double minX;
        private final double maxX;
        private final double topMm;
        private final double scale;
        private final boolean timberKnown;
        private final double backX;

        Across(WaterLine water, Run.@Nullable EavesSection eaves) {
            this.water = water;
            gapMm = eaves == null ? null : eaves.gapBehindMm();
            belowMm = eaves == null ? null : eaves.backEdgeBelowFasciaTopMm();
            lined = eaves == null ? null : eaves.lined().is();
            minX = water.across().stream().mapToDouble(WaterLine.Across::xMm).min().orElseThrow();
            maxX = water.across().stream().mapToDouble(WaterLine.Across::xMm).max().orElseThrow();
            double highest =
                    water.across().stream().mapToDouble(WaterLine.Across::yMm).max().orElseThrow();
            // Farther away than the gutter is wide or high, the drawing would show nothing else.
            timberKnown =
                    gapMm != null
                            && belowMm != null
                            && gapMm >= 0
                            && gapMm <= maxX - minX
                            && Math.abs(belowMm) <= highest;
            topMm = timberKnown ? Math.max(highest, back().yMm() + timberTopAbove()) : highest;
            double behind = timberKnown ? Objects.requireNonNull(gapMm) : 0;
            scale = scale(maxX - minX + behind, topMm);
            backX = TIMBER_LEFT_MM + TIMBER_MM + behind / scale;
        }

        private double timberTopAbove() {
            return Objects.requireNonNull(belowMm);
        }

        private static double scale(double wideMm, double heightMm) {
            double widest = Math.max(wideMm / WIDEST_MM, heightMm / HIGHEST_MM);
            return SCALES.stream().filter(s -> s >= widest).findFirst().orElse(Math.ceil(widest));
        }

        private WaterLine.Across back() {
            return lip(0, lowest());
        }

        private WaterLine.Across front() {
            return lip(lowest(), water.across().size() - 1);
        }

        private int lowest() {
            int lowest = 0;
            for (int i = 1; i < water.across().size(); i++) {
                lowest =
                        water.across().get(i).yMm() < water.across().get(lowest).yMm() ? i : lowest;
            }
            return lowest;
        }

        private WaterLine.Across lip(int from, int to) {
            WaterLine.Across highest = water.across().get(from);
            for (int i = from; i <= to; i++) {
                WaterLine.Across point = water.across().get(i);
                highest = point.yMm() > highest.yMm() ? point : highest;
            }
            return highest;
        }

        private double x(double mm) {
            return backX + (mm - minX) / scale;
        }

        private double y(double mm) {
            return TOP_MM + (topMm - mm) / scale;
        }

        private Point point(WaterLine.Across at) {
            return new Point(x(at.xMm()), y(at.yMm()));
        }

        void draw() {
            double foot = y(0) + FOOT_MM;
            timber(foot);
            water();
            marks.add(
                    new Mark.Stroke(water.across().stream().map(this::point).toList(), Line.HEAVY));
            lips();
            measures();
            lining(foot);
            words(
                    1,
                    foot + 6.6,
                    "Across, where the water is nearest to the lip, 1:"
                            + Decimals.plain(scale, 1)
                            + ";",
                    Anchor.START);
            words(
                    1,
                    foot + 9.6,
                    "the building is to the left, the fascia's own size not to scale.",
                    Anchor.START);
            heightMm = foot + 11;
        }

        private void timber(double foot) {
            double face = TIMBER_LEFT_MM + TIMBER_MM;
            double top = timberKnown ? y(back().yMm() + timberTopAbove()) : y(back().yMm());
            marks.add(
                    Mark.Area.box(
                            face - TIMBER_MM,
                            top,
                            TIMBER_MM,
                            foot - top,
                            timberKnown ? Fill.SHADE : Fill.NONE,
                            timberKnown ? Line.FINE : Line.DOTTED));
        }

        private void lining(double foot) {
            boolean yes = Words.YES.equals(lined);
            if (yes) {
                stroke(1, foot - 1.4, TIMBER_LEFT_MM, foot - 1.4, Line.PLAIN);
                stroke(1, foot - 0.4, TIMBER_LEFT_MM, foot - 0.4, Line.PLAIN);
            } else if (!Words.NO.equals(lined)) {
                stroke(1, foot - 0.9, TIMBER_LEFT_MM, foot - 0.9, Line.DOTTED);
            }
            String said =
                    yes
                            ? "eaves lined"
                            : Words.NO.equals(lined) ? "eaves not lined" : "lining not recorded";
            words(1, foot + 2.8, said, Anchor.START);
        }

        private double shownMm() {
            return Math.max(0, Math.min(water.nearest().depthMm(), water.lipMm()));
        }

        private void water() {
            List<Point> wet =
                    Clip.below(water.across().stream().map(this::point).toList(), y(shownMm()));
            if (wet.size() > 2) {
                marks.add(new Mark.Area(wet, Fill.TINT, Line.NONE));
                double left = wet.stream().mapToDouble(Point::xMm).min().orElseThrow();
                double right = wet.stream().mapToDouble(Point::xMm).max().orElseThrow();
                marks.add(ElevationWater.level((left + right) / 2, y(shownMm())));
            }
        }

        private void lips() {
            boolean backLower = water.lower() == WaterLine.Lip.BACK;
            boolean frontLower = water.lower() == WaterLine.Lip.FRONT;
            words(
                    point(back()).xMm() + 1.2,
                    point(back()).yMm() - 1.4,
                    backLower ? "back lip, lower" : "back lip",
                    Anchor.START);
            words(
                    point(front()).xMm() + 1.6,
                    point(front()).yMm() - 1.4,
                    frontLower ? "front lip, lower" : "front lip",
                    Anchor.START);
            if (water.nearest().freeboardMm() < 0) {
                if (!frontLower) {
                    spill(point(back()), -1);
                }
                if (!backLower) {
                    spill(point(front()), 1);
                }
            }
        }

        private void spill(Point lip, int way) {
            Point over = new Point(lip.xMm() + way * 2.2, lip.yMm() - 0.2);
            Point tip = new Point(lip.xMm() + way * 2.4, lip.yMm() + 5);
            marks.add(new Mark.Stroke(List.of(lip, over, tip), Line.PLAIN));
            marks.add(Mark.Area.arrowHead(over, tip, 2.2));
        }

        private void measures() {
            double at = x(maxX) + BESIDE_MM;
            double lip = y(water.lipMm());
            double surface = y(shownMm());
            double sole = y(0);
            Point lower = point(water.lower() == WaterLine.Lip.BACK ? back() : front());
            stroke(lower.xMm(), lip, at + 1, lip, Line.CHAIN);
            stroke(at - 1.2, sole, at + 1, sole, Line.FINE);
            stroke(at, lip, at, sole, Line.FINE);
            double free = water.nearest().freeboardMm();
            double text = Math.max(TOP_MM, Math.min((lip + surface) / 2, sole - 4) + 0.8);
            if (free < 0) {
                words(at + 1.8, text + 2, "spills, " + mm(-free), Anchor.START);
                words(at + 1.8, text + 5, "above the lip", Anchor.START);
            } else {
                stroke(at - 1.2, surface, at + 1, surface, Line.FINE);
                words(at + 1.8, text, mm(free) + " free", Anchor.START);
                words(
                        at + 1.8,
                        Math.max((surface + sole) / 2 + 0.8, text + 3),
                        mm(shownMm()) + " deep",
                        Anchor.START);
            }
        }

        private static String mm(double value) {
            return Decimals.with(value, Unit.MM);
        }
    }
}
