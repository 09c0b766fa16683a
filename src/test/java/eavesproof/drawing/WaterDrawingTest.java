package eavesproof.drawing;

import static eavesproof.drawing.Straights.deep;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Run;
import eavesproof.job.Said;
import eavesproof.survey.WaterLine;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaterDrawingTest {
    private static final double WIDTH_MM = 174;
    private static final double ACROSS_MM = 74;
    private static final List<Run.Reading> FALLING =
            List.of(Straights.sole(0, 400, "s", null), Straights.sole(5000, 410, "s", null));

    @Test
    void howNearTheWaterComesToTheLipIsSaidUnderTheGutter() {
        Elevation elevation = wet(deep(0, 30), deep(2000, 32.5), deep(5000, 10));
        assertTrue(
                texts(elevation).contains("17.5 mm below the front lip"),
                texts(elevation)::toString);
        String alt = elevation.drawing().orElseThrow().alt();
        assertTrue(alt.contains("nearest to the lip at 2000 mm, 17.5 mm below the front lip"), alt);
    }

    @Test
    void onAnotherStraightThePlaceIsNotMarked() {
        WaterLine here = Straights.water(deep(0, 30), deep(5000, 10));
        WaterLine elsewhere =
                new WaterLine(
                        here.along(),
                        new WaterLine.At("a2", 100, 45, 5),
                        here.lower(),
                        here.lipMm(),
                        here.across());
        Elevation elevation = Elevation.of(Straights.wet(straight(), elsewhere), WIDTH_MM);
        assertFalse(
                texts(elevation).stream()
                        .anyMatch(text -> text.contains("lip") && !text.startsWith("Seen")));
        assertFalse(elevation.drawing().orElseThrow().alt().contains("lip"));
    }

    /** Lengths 1:35, heights so much taller that 50 mm of depth and 10 mm of fall fit 19 mm. */
    @Test
    void whereTheWaterIsKnownHeightsAreToOneScale() {
        assertTrue(
                texts(wet(deep(0, 30), deep(5000, 10))).stream()
                        .anyMatch(text -> text.contains("heights 10 × taller, from the sole")));
    }

    @Test
    void waterThatSpillsIsDrawnToTheLipAndSaidToBeAboveIt() {
        Elevation elevation = wet(deep(0, 80), deep(5000, 70));
        assertTrue(texts(elevation).contains("30 mm above the front lip"));
        Mark.Area water = tinted(elevation.drawing().orElseThrow().marks()).get(0);
        Mark.Stroke lip =
                elevation.drawing().orElseThrow().marks().stream()
                        .filter(m -> m instanceof Mark.Stroke s && s.line() == Line.PLAIN)
                        .map(Mark.Stroke.class::cast)
                        .findFirst()
                        .orElseThrow();
        assertEquals(lip.points().get(0).yMm(), water.outline().get(0).yMm(), 1e-9);
        assertEquals(lip.points().get(1).yMm(), water.outline().get(1).yMm(), 1e-9);
    }

    @Test
    void aStraightWhoseLevelsWereNotReadShowsNoWater() {
        Built built =
                Straights.wet(
                        Straights.bare("a1", 5000.0), Straights.water(deep(0, 30), deep(5000, 10)));
        assertEquals(
                List.of(), tinted(Elevation.of(built, WIDTH_MM).drawing().orElseThrow().marks()));
    }

    @Test
    void whatIsFreeAndHowDeepTheWaterIsStandBesideTheSection() {
        List<Mark> marks = across(deep(100, 32.5), eaves(20.0, 12.0, "yes"));
        assertTrue(
                texts(marks)
                        .containsAll(
                                List.of(
                                        "17.5 mm free",
                                        "32.5 mm deep",
                                        "front lip, lower",
                                        "back lip",
                                        "eaves lined")),
                () -> texts(marks).toString());
        assertTrue(
                marks.stream().anyMatch(m -> m instanceof Mark.Area a && a.fill() == Fill.SHADE));
    }

    @Test
    void waterOverTheLipIsSaidToSpill() {
        List<String> texts = texts(across(deep(100, 62), eaves(20.0, 12.0, "no")));
        assertTrue(texts.containsAll(List.of("spills, 12 mm", "above the lip", "eaves not lined")));
        assertFalse(texts.stream().anyMatch(text -> text.endsWith("free")));
    }

    @ParameterizedTest
    @CsvSource({"20,", ",12", ","})
    void aFasciaWhosePlaceIsNotRecordedIsDotted(Double below, Double gap) {
        List<Mark> marks = across(deep(100, 32.5), eaves(below, gap, null));
        assertFalse(
                marks.stream().anyMatch(m -> m instanceof Mark.Area a && a.fill() == Fill.SHADE));
        assertTrue(
                marks.stream().anyMatch(m -> m instanceof Mark.Area a && a.edge() == Line.DOTTED));
        assertTrue(texts(marks).contains("lining not recorded"));
    }

    @Test
    void waterThatIsNotKnownIsNoEmptyGutter() {
        GutterAcross across = new GutterAcross(Optional.empty(), null, ACROSS_MM);
        assertTrue(texts(across.marks()).contains("is not known; the reason stands below."));
        assertEquals(List.of(), tinted(across.marks()));
    }

    @Property(tries = 200)
    void theSectionStaysWithinItsPartOfThePaper(
            @ForAll @DoubleRange(min = 1, max = 3000) double wide,
            @ForAll @DoubleRange(min = 1, max = 900) double deep,
            @ForAll @DoubleRange(min = 0, max = 999) double water,
            @ForAll @DoubleRange(min = -500, max = 500) double below,
            @ForAll @DoubleRange(min = 0, max = 500) double gap) {
        WaterLine line =
                new WaterLine(
                        List.of(),
                        new WaterLine.At("a1", 0, water, deep - water),
                        WaterLine.Lip.BOTH,
                        deep,
                        List.of(
                                new WaterLine.Across(0, deep),
                                new WaterLine.Across(0, 0),
                                new WaterLine.Across(wide, 0),
                                new WaterLine.Across(wide, deep)));
        GutterAcross across =
                new GutterAcross(Optional.of(line), eaves(below, gap, "yes"), ACROSS_MM);
        for (Mark mark : across.marks()) {
            for (Point point : points(mark)) {
                assertTrue(
                        point.xMm() >= 0
                                && point.xMm() <= ACROSS_MM + 2
                                && point.yMm() >= 0
                                && point.yMm() <= across.heightMm(),
                        () -> point + " of " + mark);
            }
        }
    }

    @Test
    void aPartThatCarriesTooLittleIsHatchedBeyondTheLine() {
        List<Mark> marks = bars(part("outlet o1", 1.2, "1.2 of 1 L/s"));
        assertTrue(
                marks.stream().anyMatch(m -> m instanceof Mark.Area a && a.fill() == Fill.HATCHED));
        assertTrue(texts(marks).containsAll(List.of("outlet o1", "120 %", "1.2 of 1 L/s")));
    }

    @Test
    void aPartThatCarriesEnoughIsNotHatched() {
        List<Mark> marks = bars(part("outlet o1", 0.5, "0.5 of 1 L/s"));
        assertFalse(
                marks.stream().anyMatch(m -> m instanceof Mark.Area a && a.fill() == Fill.HATCHED));
    }

    @Test
    void aPartThatIsNotKnownIsDottedAndHasNoBar() {
        List<Mark> marks =
                bars(
                        new Passage.Part(
                                "d1",
                                "",
                                "downpipe d1",
                                Optional.empty(),
                                Passage.NOT_KNOWN,
                                Optional.of("the size of downpipe d1 is not recorded")));
        assertTrue(
                marks.stream().anyMatch(m -> m instanceof Mark.Area a && a.edge() == Line.DOTTED));
        assertFalse(
                marks.stream().anyMatch(m -> m instanceof Mark.Area a && a.fill() == Fill.SHADE));
        assertTrue(texts(marks).contains("not known"));
    }

    @ParameterizedTest
    @CsvSource({"0.504, 50 %", "9.999, 1000 %", "12, 12 ×", "1000, all spills"})
    void ratiosAreSaidAsPeopleReadThem(double ratio, String words) {
        assertEquals(words, PassageBars.percent(ratio));
    }

    @Test
    void aLongNameKeepsOutOfTheBars() {
        List<Mark> marks = bars(part("downpipe " + "w".repeat(200), 0.5, "0.5 of 1 L/s"));
        double bar =
                marks.stream()
                        .filter(m -> m instanceof Mark.Area a && a.fill() == Fill.SHADE)
                        .mapToDouble(m -> ((Mark.Area) m).outline().get(0).xMm())
                        .min()
                        .orElseThrow();
        Mark.Words name =
                marks.stream()
                        .filter(m -> m instanceof Mark.Words w && w.text().startsWith("downpipe w"))
                        .map(Mark.Words.class::cast)
                        .findFirst()
                        .orElseThrow();
        assertTrue(name.at().xMm() + name.widthMm() < bar);
    }

    /** A square of 10 mm cut half-way down. */
    @Test
    void waterFillsWhatLiesBelowItsLevel() {
        List<Point> below =
                Clip.below(
                        List.of(
                                new Point(0, 0),
                                new Point(0, 10),
                                new Point(10, 10),
                                new Point(10, 0)),
                        5);
        assertEquals(
                List.of(new Point(0, 5), new Point(0, 10), new Point(10, 10), new Point(10, 5)),
                below);
    }

    private static Run.Straight straight() {
        return Straights.with(5000, FALLING, List.of());
    }

    private static Elevation wet(WaterLine.At... along) {
        return Elevation.of(Straights.wet(straight(), Straights.water(along)), WIDTH_MM);
    }

    private static List<Mark> across(WaterLine.At at, Run.EavesSection eaves) {
        return new GutterAcross(Optional.of(Straights.water(at)), eaves, ACROSS_MM).marks();
    }

    private static Run.EavesSection eaves(Double below, Double gap, String lined) {
        return new Run.EavesSection(
                below, null, gap, null, new Said<>(lined, "seen", null, null), null, null);
    }

    private static Passage.Part part(String name, double ratio, String words) {
        return new Passage.Part(
                name,
                "",
                name,
                Optional.of(new Passage.Load(ratio, words)),
                words,
                Optional.empty());
    }

    private static List<Mark> bars(Passage.Part part) {
        return new PassageBars(new Passage(List.of(part)), 78, WIDTH_MM).marks();
    }

    private static List<Mark.Area> tinted(List<Mark> marks) {
        return marks.stream()
                .filter(m -> m instanceof Mark.Area a && a.fill() == Fill.TINT)
                .map(Mark.Area.class::cast)
                .toList();
    }

    private static List<String> texts(Elevation elevation) {
        return texts(elevation.drawing().orElseThrow().marks());
    }

    private static List<String> texts(List<Mark> marks) {
        return marks.stream()
                .filter(Mark.Words.class::isInstance)
                .map(mark -> ((Mark.Words) mark).text())
                .toList();
    }

    private static List<Point> points(Mark mark) {
        if (mark instanceof Mark.Stroke stroke) {
            return stroke.points();
        }
        if (mark instanceof Mark.Area area) {
            return area.outline();
        }
        if (mark instanceof Mark.Words words) {
            return words.room(0);
        }
        return Stream.<Point>of().toList();
    }
}
