package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Run;
import eavesproof.job.Run.CrossTilt;
import eavesproof.job.Run.End;
import eavesproof.job.Said;
import eavesproof.quantity.Uncertain;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is shown of the water in a run, and how far its freeboard may be off. */
class WaterLineTest {
    private final WetJob wet = new WetJob();

    @Test
    void theWaterIsShownFromEndToEndOfItsStraight() {
        Seen seen = wet.survey();
        WaterLine line = seen.survey().water("a").orElseThrow();
        List<WaterLine.At> on = line.on("a1");
        assertEquals(0, on.get(0).stationMm());
        assertEquals(10_000, on.get(on.size() - 1).stationMm(), 1e-6);
        assertEquals(
                seen.fact(Facts.GutterFreeboard.class).freeboardMm(),
                line.nearest().freeboardMm(),
                1e-9);
        assertEquals(WaterLine.Lip.FRONT, line.lower());
        // A half-round of 112 mm, turned about its own axis so that its lips differ by 5 mm.
        assertEquals(56 - 2.5, line.lipMm(), 0.01);
        for (WaterLine.At at : on) {
            assertEquals(line.lipMm(), at.depthMm() + at.freeboardMm(), 1e-9);
        }
        double sole = line.across().stream().mapToDouble(WaterLine.Across::yMm).min().orElseThrow();
        assertEquals(0, sole);
    }

    @Test
    void roundACornerEachStraightHasItsOwnWaterFromEndToEnd() {
        wet.job.a1.right = new End("corner", null);
        AStraight a2 = wet.job.straight("a2");
        a2.left = new End("corner", null);
        a2.tilts = List.of(new CrossTilt(5000.0, 5.0, null));
        a2.lengthMm = 4000.0;
        a2.reading(50, 421).reading(3950, 430);
        wet.job.way.add(wet.outlet("o1", 9900.0));
        WaterLine line = wet.survey().survey().water("a").orElseThrow();
        for (AStraight straight : List.of(wet.job.a1, a2)) {
            List<WaterLine.At> on = line.on(straight.id);
            assertEquals(0, on.get(0).stationMm(), 1e-6);
            assertEquals(straight.lengthMm, on.get(on.size() - 1).stationMm(), 1e-6);
        }
        assertEquals(line.along().size(), line.on("a1").size() + line.on("a2").size());
    }

    @Test
    void whichLipIsLowerIsNotToldWithinWhatTheReadingsMayBeOff() {
        wet.job.a1.tilts = List.of(new CrossTilt(5000.0, 0.1, null));
        assertEquals(
                WaterLine.Lip.NOT_TOLD, wet.survey().survey().water("a").orElseThrow().lower());
    }

    @Test
    void waterThatIsNotKnownIsNotShown() {
        wet.strainer = null;
        assertTrue(wet.survey().survey().water("a").isEmpty());
    }

    /** Each reading is off by what its rule and the level line may be off. */
    @Test
    void theFreeboardIsAsSureAsTheReadingsOfTheSoleAsFarAsThatIsKnown() {
        Seen seen = wet.survey();
        Uncertain freeboard = seen.value(seen.fact(Facts.GutterFreeboard.class));
        assertFalse(freeboard.isStated());
        assertFalse(freeboard.sources().isEmpty());
        double nothingLess =
                seen.known(seen.fact(Facts.GutterFreeboard.class)).workings().stream()
                        .filter(step -> step.name().equals("how sure"))
                        .mapToDouble(step -> Double.parseDouble(step.value().split(" ")[1]))
                        .findFirst()
                        .orElseThrow();
        assertEquals(2 * freeboard.standardUncertainty(), nothingLess, 0.05);
    }

    /**
     * When the whole sole moves the freeboard does not: what the three readings, each as sure as
     * the others, put into it adds up to nothing.
     */
    @Test
    void whatAllReadingsShareDoesNotMoveTheFreeboard() {
        Seen seen = wet.survey();
        Uncertain freeboard = seen.value(seen.fact(Facts.GutterFreeboard.class));
        double sum = freeboard.sources().values().stream().mapToDouble(it -> it).sum();
        double most =
                freeboard.sources().values().stream().mapToDouble(Math::abs).max().orElseThrow();
        assertTrue(most > 0.01, freeboard::toString);
        assertEquals(0, sum, 0.1 * most);
    }

    /** What a tenth more would leave is what a roof that is a tenth larger leaves. */
    @Test
    void whatATenthMoreWouldLeaveStandsBesideTheFreeboard() {
        Seen seen = wet.survey();
        WetJob larger = new WetJob();
        larger.planM2 = 66.0;
        double left = larger.survey().fact(Facts.GutterFreeboard.class).freeboardMm();
        String said =
                seen.known(seen.fact(Facts.GutterFreeboard.class)).workings().stream()
                        .filter(step -> step.name().contains("a tenth more"))
                        .map(Working::value)
                        .findFirst()
                        .orElseThrow();
        assertEquals(left, Double.parseDouble(said.replace(" mm", "")), 0.05 + 1e-9);
        assertTrue(left < seen.fact(Facts.GutterFreeboard.class).freeboardMm());
    }

    @Test
    void overflowsAreSaidNotToBeCounted() {
        wet.job.eaves =
                new Run.EavesSection(
                        8.0,
                        12.0,
                        10.0,
                        null,
                        Said.nothing(),
                        List.of("front slots", "a nozzle"),
                        null);
        Seen seen = wet.survey();
        for (Facts.Fact fact :
                List.of(
                        seen.fact(Facts.GutterFreeboard.class),
                        seen.fact(Facts.GutterRatio.class))) {
            assertTrue(
                    seen.known(fact).workings().stream()
                            .anyMatch(
                                    step ->
                                            step.value().equals("not counted")
                                                    && step.from()
                                                            .contains("front slots, a nozzle")),
                    fact::toString);
        }
    }
}
