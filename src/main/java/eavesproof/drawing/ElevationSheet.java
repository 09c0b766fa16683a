package eavesproof.drawing;

import eavesproof.job.Run;
import eavesproof.job.WayPart;
import eavesproof.job.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The marks of one elevation, from top to bottom: numbered findings with their leaders, the timber,
 * the gutter with what is on it, names, falls, lengths to keep clear, stations.
 */
final class ElevationSheet {
    static final double SMALL_PT = 6.8;
    private static final double SIDE_MM = 15;
    private static final double TIMBER_MM = 2;
    private static final double GUTTER_MM = 6.4;
    private static final double MOST_DROP_MM = 9;

    /** From the highest lip to the lowest sole where the depth of the gutter is drawn to scale. */
    private static final double MOST_TALL_MM = 19;

    private static final double LEAST_GUTTER_MM = 4;
    private static final double STUB_MM = 6.5;
    private static final List<Integer> STEEPER =
            List.of(200, 150, 100, 80, 60, 50, 40, 30, 25, 20, 15, 10, 8, 6, 5, 4, 3, 2, 1);

    private final Run.Straight straight;
    private final Built built;
    private final double lengthMm;
    private final StationScale scale;
    private final Sole sole;
    private final int steeper;
    private final Optional<ElevationWater> water;
    private final double gutterMm;
    private final Rooms rooms;
    private final List<Mark> marks = new ArrayList<>();
    private final double gutterTopMm;
    private final double lowestSoleMm;
    private final double heightMm;

    ElevationSheet(Built built, double lengthMm, double widthMm) {
        this.built = built;
        this.straight = built.straight();
        this.lengthMm = lengthMm;
        scale = Elevation.scale(straight, lengthMm, SIDE_MM, widthMm - SIDE_MM);
        sole = Sole.of(straight);
        Optional<ElevationWater> known = ElevationWater.of(built).filter(it -> sole.isRead());
        int toScale = known.map(it -> steeper(it.lipMm() + sole.dropMm(), MOST_TALL_MM)).orElse(1);
        double deep = known.map(it -> it.lipMm() * scale.paperMmPerMm() * toScale).orElse(0.0);
        boolean shown = deep >= LEAST_GUTTER_MM && deep <= 2 * MOST_TALL_MM;
        water = known.filter(it -> shown);
        steeper = shown ? toScale : steeper(sole.dropMm(), MOST_DROP_MM);
        gutterMm = shown ? deep : GUTTER_MM;
        rooms = new Rooms(0.5, widthMm - 0.5);
        ElevationMarks above = new ElevationMarks(Elevation.marked(built), scale, widthMm);
        double timberTop = above.heightMm() + 1;
        gutterTopMm = timberTop + TIMBER_MM + 0.8;
        lowestSoleMm = soleY(sole.dropMm(), gutterTopMm);
        timber(timberTop);
        gutter();
        things();
        water.ifPresent(it -> marks.addAll(it.sign(scale, this::soleY, tall())));
        marks.addAll(above.marks(station -> soleY(station) - gutterMm));
        ElevationFeet below = new ElevationFeet(built, scale, rooms, lowestSoleMm + STUB_MM);
        marks.addAll(below.names(this::soleY));
        water.ifPresent(it -> marks.addAll(below.water(it)));
        marks.addAll(below.falls(sole));
        marks.addAll(below.keepClear(gutterTopMm));
        marks.addAll(below.stations(lengthMm));
        heightMm = below.bottomMm() + 3.2;
        marks.add(Mark.Words.level(SIDE_MM, heightMm - 0.8, saysScale(), Anchor.START, SMALL_PT));
    }

    double heightMm() {
        return heightMm;
    }

    List<Mark> marks() {
        return marks;
    }

    private int steeper(double heightMm, double most) {
        double onPaper = heightMm * scale.paperMmPerMm();
        return STEEPER.stream().filter(s -> s * onPaper <= most).findFirst().orElse(1);
    }

    private double soleY(double dropMm, double topMm) {
        return topMm + gutterMm + dropMm * scale.paperMmPerMm() * steeper;
    }

    private double soleY(double stationMm) {
        return soleY(sole.belowMm(stationMm), gutterTopMm);
    }

    private String saysScale() {
        String along = "Seen from outside, 1:" + scale.ratio() + " along its length; ";
        if (water.isPresent()) {
            return along
                    + (steeper == 1
                            ? "heights to the same scale"
                            : "heights " + steeper + " × taller")
                    + ", from the sole to the lower lip; the water is that of the design rain.";
        }
        String fall =
                !sole.isRead()
                        ? "the fall is not recorded, the sole is drawn level"
                        : sole.dropMm() == 0
                                ? "the readings are level"
                                : "fall drawn " + steeper + " × steeper";
        return along + fall + "; the depth of the gutter is not to scale.";
    }

    private void timber(double topMm) {
        Run.Fascia fascia = straight.fascia();
        if (fascia == null || fascia.beginsMm() == null || fascia.endsMm() == null) {
            return;
        }
        double left = scale.x(Math.max(fascia.beginsMm(), scale.firstStationMm()));
        double right = scale.x(Math.min(fascia.endsMm(), scale.lastStationMm()));
        if (right > left) {
            marks.add(Mark.Area.box(left, topMm, right - left, TIMBER_MM, Fill.SHADE, Line.FINE));
        }
    }

    private void gutter() {
        List<Double> bends = new ArrayList<>(List.of(0.0, lengthMm));
        sole.lines().forEach(line -> bends.addAll(line.keySet()));
        List<Double> stations =
                bends.stream().filter(s -> s >= 0 && s <= lengthMm).sorted().distinct().toList();
        List<Point> top = new ArrayList<>();
        List<Point> outline = new ArrayList<>();
        for (double station : stations) {
            top.add(new Point(scale.x(station), soleY(station) - gutterMm));
        }
        outline.addAll(top);
        for (int i = stations.size() - 1; i >= 0; i--) {
            outline.add(new Point(scale.x(stations.get(i)), soleY(stations.get(i))));
        }
        marks.add(new Mark.Area(outline, Fill.WHITE, Line.NONE));
        water.ifPresent(it -> marks.addAll(it.marks(scale, this::soleY, stations, tall())));
        marks.add(new Mark.Stroke(top, Line.PLAIN));
        for (int i = 1; i < stations.size(); i++) {
            double from = stations.get(i - 1);
            double to = stations.get(i);
            boolean read =
                    sole.lines().stream()
                            .anyMatch(line -> line.firstKey() <= from && line.lastKey() >= to);
            boolean itself = sole.surface().equals(Words.SURFACES.get(0));
            Line line = !read ? Line.DOTTED : itself ? Line.HEAVY : Line.DASHED;
            marks.add(
                    Mark.Stroke.between(scale.x(from), soleY(from), scale.x(to), soleY(to), line));
        }
    }

    private double tall() {
        return scale.paperMmPerMm() * steeper;
    }

    /** Everything on the gutter. */
    private void things() {
        for (Placed<Run.Bracket> bracket : Placed.brackets(straight)) {
            double station = bracket.stationMm();
            marks.addAll(Symbols.bracket(x(station), top(station), gutterMm));
        }
        for (Placed<Run.Joint> joint : Placed.joints(straight)) {
            double station = joint.stationMm();
            marks.addAll(Symbols.joint(joint.thing(), x(station), top(station), gutterMm));
        }
        for (Placed<Run.Fitting> fitting : Placed.fittings(straight)) {
            double station = fitting.stationMm();
            marks.addAll(Symbols.fitting(fitting.thing(), x(station), top(station), gutterMm));
        }
        for (Placed<WayPart.Outlet> outlet : Placed.outlets(built)) {
            outlet(outlet.thing(), outlet.stationMm());
        }
        sole.lines()
                .forEach(
                        line ->
                                line.keySet().stream()
                                        .filter(s -> s >= 0 && s <= lengthMm)
                                        .forEach(s -> marks.add(Symbols.reading(x(s), soleY(s)))));
        marks.addAll(Symbols.end(straight.leftEnd(), x(0.0), top(0.0), gutterMm, Anchor.END));
        marks.addAll(
                Symbols.end(
                        straight.rightEnd(), x(lengthMm), top(lengthMm), gutterMm, Anchor.START));
    }

    private void outlet(WayPart.Outlet outlet, double station) {
        double foot = lowestSoleMm + STUB_MM;
        marks.addAll(Symbols.outlet(outlet, x(station), soleY(station), foot, scale));
        double half = Symbols.outletHalfMm(outlet, scale.paperMmPerMm());
        rooms.take(
                new Rooms.Box(
                        x(station) - half - 0.3, soleY(station), x(station) + half + 0.3, foot));
    }

    private double x(double stationMm) {
        return scale.x(stationMm);
    }

    private double top(double stationMm) {
        return soleY(stationMm) - gutterMm;
    }

    static <T> List<T> or(@Nullable List<T> list) {
        return Objects.requireNonNullElse(list, List.of());
    }
}
