package eavesproof.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.judge.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class ElevationTest {
    private static final double WIDTH_MM = 174;

    @Property(tries = 150)
    void noLetteringLiesOnOtherLetteringOrLeavesThePaper(@ForAll long seed) {
        Drawing drawing = drawn(Straights.random(seed));
        List<Mark.Words> words = words(drawing);
        for (int i = 0; i < words.size(); i++) {
            Rooms.Box one = Rooms.of(words.get(i), 0);
            assertTrue(
                    one.left() >= 0
                            && one.right() <= WIDTH_MM
                            && one.top() >= 0
                            && one.bottom() <= drawing.heightMm() + 0.1,
                    words.get(i).text() + " leaves the paper: " + one);
            for (int j = i + 1; j < words.size(); j++) {
                assertFalse(
                        one.meets(Rooms.of(words.get(j), 0)),
                        words.get(i).text() + " lies on " + words.get(j).text());
            }
        }
    }

    @Property(tries = 150)
    void everyMarkStaysOnThePaper(@ForAll long seed) {
        Drawing drawing = drawn(Straights.random(seed));
        for (Mark mark : drawing.marks()) {
            for (Point point : points(mark)) {
                assertTrue(
                        point.xMm() >= 0
                                && point.xMm() <= WIDTH_MM
                                && point.yMm() >= 0
                                && point.yMm() <= drawing.heightMm(),
                        () -> point + " of " + mark);
            }
        }
    }

    @Property(tries = 150)
    void leadersDoNotCrossOneAnother(@ForAll long seed) {
        Built built = Straights.random(seed);
        StationScale scale =
                Elevation.scale(built.straight(), built.straight().lengthMm(), 15, WIDTH_MM - 15);
        List<Tag> tags = Tag.row(Elevation.marked(built), scale, 1, WIDTH_MM - 1);
        for (int i = 1; i < tags.size(); i++) {
            Tag left = tags.get(i - 1);
            Tag right = tags.get(i);
            assertTrue(left.anchorMm(scale) <= right.anchorMm(scale));
            assertTrue(
                    left.xMm() + left.widthMm() / 2 <= right.xMm() - right.widthMm() / 2,
                    left.text() + " lies on " + right.text());
        }
    }

    @Test
    void aFindingIsMarkedWithItsNumberAtItsPlace() {
        Built built =
                Straights.built(
                        Straights.with(5000, List.of(), List.of()),
                        new Numbered(3, 2, Verdict.DOES_NOT_COMPLY, 1000, 1600));
        Elevation elevation = Elevation.of(built, WIDTH_MM);
        assertTrue(texts(elevation.drawing().orElseThrow()).contains("3.2"));
        assertTrue(
                elevation
                        .drawing()
                        .orElseThrow()
                        .alt()
                        .contains("finding 3.2 (does not comply) from 1000 to 1600 mm"));
    }

    @Test
    void aFindingAboutTheWholeStraightIsSaidBesideTheDrawing() {
        Built built =
                Straights.built(
                        Straights.with(5000, List.of(), List.of()),
                        new Numbered(41, 0, Verdict.NOT_RECORDED, 0, 5000));
        Elevation elevation = Elevation.of(built, WIDTH_MM);
        assertFalse(texts(elevation.drawing().orElseThrow()).contains("41"));
        assertTrue(
                elevation
                        .notes()
                        .contains("About the whole straight, and so not marked at a place: 41."));
    }

    @Test
    void whereMarksAreTooManyNeighboursShareOne() {
        Numbered[] crowd =
                IntStream.rangeClosed(1, 99)
                        .mapToObj(
                                i ->
                                        new Numbered(
                                                1,
                                                i,
                                                Verdict.DOES_NOT_COMPLY,
                                                i * 400.0,
                                                i * 400.0))
                        .toArray(Numbered[]::new);
        Built built = Straights.built(Straights.with(40000, List.of(), List.of()), crowd);
        List<String> texts = texts(Elevation.of(built, WIDTH_MM).drawing().orElseThrow());
        assertTrue(texts.stream().anyMatch(text -> text.startsWith("1.1–1.")), texts::toString);
        assertTrue(texts.stream().anyMatch(text -> text.endsWith("–1.99")), texts::toString);
    }

    @Test
    void aHundredBracketsAreNamedAsFarAsThereIsRoomAndAlwaysAtBothEnds() {
        List<eavesproof.job.Run.Bracket> brackets =
                IntStream.rangeClosed(1, 100)
                        .mapToObj(i -> Straights.bracket("b" + i, i * 395.0))
                        .toList();
        List<String> texts =
                texts(drawn(Straights.built(Straights.with(40000, List.of(), brackets))));
        assertTrue(texts.contains("b1"));
        assertTrue(texts.contains("b100"));
        assertTrue(texts.stream().filter(text -> text.matches("b\\d+")).count() >= 15);
    }

    @Test
    void theFallIsExaggeratedAndSaysSo() {
        List<eavesproof.job.Run.Reading> falling =
                List.of(Straights.sole(0, 10, "L1", null), Straights.sole(10000, 30, "L1", null));
        Drawing drawing = drawn(Straights.built(Straights.with(10000, falling, List.of())));
        // 20 mm at 1:69.7 is 0.29 mm on paper; 30 times that is the most that stays under 9 mm.
        assertTrue(
                texts(drawing).stream().anyMatch(t -> t.contains("fall drawn 30 × steeper")),
                () -> texts(drawing).toString());
    }

    @Test
    void aFallThatWasNotReadIsDrawnLevelAndSaysSo() {
        Drawing drawing = drawn(Straights.built(Straights.bare("a1", 4000.0)));
        assertTrue(texts(drawing).stream().anyMatch(t -> t.contains("the fall is not recorded")));
        assertTrue(
                drawing.marks().stream()
                        .anyMatch(m -> m instanceof Mark.Stroke s && s.line() == Line.DOTTED));
    }

    @Test
    void aStraightWithoutALengthIsNotDrawnAndSaysSo() {
        Elevation elevation = Elevation.of(Straights.built(Straights.bare("a1", null)), WIDTH_MM);
        assertTrue(elevation.drawing().isEmpty());
        assertTrue(elevation.notes().contains("Not drawn, since its length is not recorded."));
    }

    @Test
    void whatIsNotRecordedIsNamedAndABracketWithoutAStationToo() {
        List<String> notes =
                Elevation.of(
                                Straights.built(
                                        Straights.with(
                                                4000,
                                                List.of(),
                                                List.of(Straights.bracket("b7", null)))),
                                WIDTH_MM)
                        .notes();
        assertEquals(List.of("Not drawn, since the station is not recorded: bracket b7."), notes);
    }

    @Test
    void readingsOfTwoSetUpsMakeOneLineOnlyWhereTheyAreTied() {
        var apart =
                Sole.of(
                        Straights.with(
                                9000,
                                List.of(
                                        Straights.sole(0, 10, "L1", null),
                                        Straights.sole(4000, 20, "L1", null),
                                        Straights.sole(4000, 120, "L2", null),
                                        Straights.sole(9000, 131, "L2", null)),
                                List.of()));
        assertEquals(2, apart.lines().size());
        var tied =
                Sole.of(
                        Straights.with(
                                9000,
                                List.of(
                                        Straights.sole(0, 10, "L1", null),
                                        Straights.sole(4000, 20, "L1", "t"),
                                        Straights.sole(4000, 120, "L2", "t"),
                                        Straights.sole(9000, 131, "L2", null)),
                                List.of()));
        assertEquals(1, tied.lines().size());
        assertEquals(21, tied.dropMm(), 1e-9);
    }

    private static Drawing drawn(Built built) {
        return Elevation.of(built, WIDTH_MM).drawing().orElseThrow();
    }

    private static List<Mark.Words> words(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(Mark.Words.class::cast)
                .toList();
    }

    private static List<String> texts(Drawing drawing) {
        return words(drawing).stream().map(Mark.Words::text).toList();
    }

    private static List<Point> points(Mark mark) {
        if (mark instanceof Mark.Stroke stroke) {
            return stroke.points();
        }
        if (mark instanceof Mark.Area area) {
            return area.outline();
        }
        return mark instanceof Mark.Circle circle ? List.of(circle.centre()) : new ArrayList<>();
    }
}
