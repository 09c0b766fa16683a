package eavesproof.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class DrawingTest {
    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 2001})
    void aDrawingHasASizeThatPaperCanHave(double widthMm) {
        assertThrows(
                IllegalArgumentException.class, () -> new Drawing(widthMm, 10, "a run", List.of()));
    }

    @Test
    void aDrawingSaysInWordsWhatItShows() {
        assertThrows(IllegalArgumentException.class, () -> new Drawing(10, 10, " ", List.of()));
    }

    @Test
    void aPointThatIsNotANumberIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Point(Double.NaN, 0));
    }

    @ParameterizedTest
    @EnumSource(names = "NONE", mode = EnumSource.Mode.EXCLUDE)
    void noLineIsThinnerThanAPrinterCanHold(Line line) {
        assertTrue(line.widthMm() >= 0.8 / 72 * 25.4, line + " is " + line.widthMm() + " mm");
    }

    @Test
    void hatchingStaysInsideItsArea() {
        Mark.Area square = Mark.Area.box(20, 30, 10, 10, Fill.HATCHED, Line.NONE);
        List<Hatch.Rule> rules = Hatch.of(square);
        // The diagonal is 14.142 mm and the lines stand 1.8 mm apart.
        assertTrue(rules.size() == 7 || rules.size() == 8, "found " + rules.size());
        for (Hatch.Rule rule : rules) {
            for (Point end : List.of(rule.from(), rule.to())) {
                assertTrue(end.xMm() > 20 - 1e-9 && end.xMm() < 30 + 1e-9, end.toString());
                assertTrue(end.yMm() > 30 - 1e-9 && end.yMm() < 40 + 1e-9, end.toString());
            }
            assertEquals(
                    -1,
                    (rule.to().yMm() - rule.from().yMm()) / (rule.to().xMm() - rule.from().xMm()),
                    1e-9,
                    "rises to the right at 45°");
        }
    }

    @Test
    void hatchingLeavesANotchFree() {
        List<Point> u =
                List.of(
                        new Point(0, 0),
                        new Point(3, 0),
                        new Point(3, 5),
                        new Point(7, 5),
                        new Point(7, 0),
                        new Point(10, 0),
                        new Point(10, 10),
                        new Point(0, 10));
        List<Hatch.Rule> rules = Hatch.of(new Mark.Area(u, Fill.LEVEL_RULED, Line.NONE));
        for (Hatch.Rule rule : rules) {
            double length = rule.to().xMm() - rule.from().xMm();
            assertEquals(rule.from().yMm() < 5 ? 3 : 10, length, 1e-9);
        }
        assertTrue(rules.size() >= 6);
    }

    @Test
    void upwardWordsTakeTheirRoomAboveTheirPoint() {
        Mark.Words words =
                new Mark.Words(new Point(50, 50), "fall", Anchor.START, 10, Weight.REGULAR, 90);
        double top = words.room(0).stream().mapToDouble(Point::yMm).min().orElseThrow();
        double bottom = words.room(0).stream().mapToDouble(Point::yMm).max().orElseThrow();
        assertEquals(50, bottom, 1e-9);
        assertEquals(50 - words.widthMm(), top, 1e-9);
    }

    @Test
    void anArrowHeadEndsAtItsTip() {
        Mark.Area head = Mark.Area.arrowHead(new Point(0, 0), new Point(0, 10), 3);
        assertEquals(new Point(0, 10), head.outline().get(0));
        assertEquals(7, head.outline().get(1).yMm(), 1e-9);
        assertEquals(7, head.outline().get(2).yMm(), 1e-9);
    }
}
