package eavesproof.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.judge.Verdict;
import eavesproof.quantity.Unit;
import eavesproof.rules.RuleSet;
import eavesproof.survey.Place;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class InWordsTest {
    @Test
    void aStretchIsNamedByItsStraightItsEndsAndItsStations() {
        Place place = Place.of("run", "a", "from", "b3", "to", "b4").at("a1", 1450, 1990.5);

        assertEquals("run a, straight a1, from b3 to b4, 1450 to 1990.5 mm", InWords.place(place));
    }

    @Test
    void aPointHasOneStation() {
        Place place = Place.of("run", "a", "joint", "j1").at("a1", 3000, 3000);

        assertEquals("run a, straight a1, joint j1, at 3000 mm", InWords.place(place));
    }

    @Test
    void aStraightThatIsTheKeyIsNamedOnce() {
        Place place = Place.of("run", "a", "straight", "a1").at("a1", 0, 6000);

        assertEquals("run a, straight a1, 0 to 6000 mm", InWords.place(place));
    }

    @Test
    void sidesZonesAndEndsAreSaidAsPeopleSayThem() {
        assertEquals(
                "run a, outlet o1, left side",
                InWords.place(Place.of("run", "a", "outlet", "o1", "side", "left")));
        assertEquals(
                "run a, keep-clear zone z1", InWords.place(Place.of("run", "a", "zone", "z1")));
    }

    @Test
    void aPlaceThatIsHalfKnownSaysTheHalfThatIs() {
        assertEquals("run a, from b3", InWords.place(Place.of("run", "a", "from", "b3")));
        assertEquals("run a, to b4", InWords.place(Place.of("run", "a", "to", "b4")));
        assertEquals("the whole job", InWords.place(Place.of()));
    }

    @Test
    void aMeasureShowsItsUncertaintyWhereThereIsOne() {
        assertEquals(
                "490 ± 1.1 mm",
                measured(new Finding.MeasuredNumber(490, Unit.MM, Optional.of(1.1))));
        assertEquals("2", measured(new Finding.MeasuredNumber(2, Unit.COUNT, Optional.of(0.0))));
        assertEquals(
                "490 mm", measured(new Finding.MeasuredNumber(490, Unit.MM, Optional.empty())));
        assertEquals("kerb", measured(new Finding.MeasuredWord("kerb")));
    }

    @Test
    void aFallIsAlsoARatio() {
        assertEquals(
                "2.5 mm/m (1:400)",
                measured(new Finding.MeasuredNumber(2.5, Unit.MM_PER_M, Optional.empty())));
        assertEquals(
                "-1 mm/m",
                measured(new Finding.MeasuredNumber(-1, Unit.MM_PER_M, Optional.empty())));
    }

    @Test
    void aLimitInAnotherUnitIsAlsoShownAsWritten() {
        assertEquals(
                "at most 914.4 mm (36 in)",
                limit(new Finding.NumberLimit(true, 914.4, Unit.MM, "36 in")));
        assertEquals("at least 2", limit(new Finding.NumberLimit(false, 2, Unit.COUNT, "2")));
        assertEquals(
                "one of kerb, soakaway", limit(new Finding.WordLimit(List.of("kerb", "soakaway"))));
        assertEquals("must be no", limit(new Finding.WordLimit(List.of("no"))));
    }

    @Test
    void aMarginSaysWhichSideOfTheLimitItIs() {
        assertEquals(Optional.of("20 mm to spare"), margin(true, 480));
        assertEquals(Optional.of("over by 40 mm"), margin(true, 540));
        assertEquals(Optional.of("short by 20 mm"), margin(false, 480));
        assertEquals(Optional.of("nothing to spare"), margin(true, 500));
        assertEquals(Optional.empty(), InWords.margin(Examples.discharge("kerb", "kerb")));
    }

    @Test
    void aMarginThatRoundsToNothingIsNotCalledNothing() {
        assertEquals(Optional.of("over by less than 0.1 mm"), margin(true, 500.02));
        assertEquals(Optional.of("less than 0.1 mm to spare"), margin(true, 499.98));
    }

    @Test
    void aSourceNamesItsStandingUnlessThatIsItsName() {
        assertEquals(
                "Eaves handbook, 3rd, 5.1, from memory",
                InWords.source(
                        new Finding.Source(
                                "Eaves handbook", "3rd", "5.1", RuleSet.Standing.FROM_MEMORY)));
        assertEquals(
                "Common practice of the trade",
                InWords.source(
                        new Finding.Source(
                                "Common practice of the trade",
                                "",
                                "",
                                RuleSet.Standing.COMMON_PRACTICE)));
    }

    @Test
    void listsReadAsPeopleSayThem() {
        assertEquals("", InWords.list(List.of()));
        assertEquals("a", InWords.list(List.of("a")));
        assertEquals("a, b and c", InWords.list(List.of("a", "b", "c")));
    }

    @Test
    void aValueThatMissesItsLimitIsNeverPrintedAsTheLimit() {
        Finding missed = held(Verdict.DOES_NOT_COMPLY, true, 500.04);
        assertEquals(Optional.of("500.04 ± 1.1 mm"), InWords.measured(missed));
        assertEquals(Optional.of("at most 500 mm"), InWords.limit(missed));
        assertEquals(Optional.of("over by 0.04 mm"), InWords.margin(missed));
        Finding met = held(Verdict.COMPLIES, true, 499.98);
        assertEquals(Optional.of("500 ± 1.1 mm"), InWords.measured(met));
    }

    @Test
    void anUncertaintyIsNeverPrintedAsNone() {
        assertEquals(
                "490 ± 0.04 mm",
                measured(new Finding.MeasuredNumber(490, Unit.MM, Optional.of(0.04))));
    }

    private static String measured(Finding.Measured measured) {
        Finding like = Examples.spacing("b1", "b2", 0, 490);
        return InWords.measured(
                        like(like, Verdict.COMPLIES, Optional.of(measured), like.limit(), 10))
                .orElseThrow();
    }

    private static String limit(Finding.Limit limit) {
        Finding like = Examples.spacing("b1", "b2", 0, 490);
        return InWords.limit(like(like, Verdict.COMPLIES, like.measured(), Optional.of(limit), 10))
                .orElseThrow();
    }

    private static Optional<String> margin(boolean atMost, double measuredMm) {
        return InWords.margin(held(Verdict.COMPLIES, atMost, measuredMm));
    }

    private static Finding held(Verdict verdict, boolean atMost, double measuredMm) {
        Finding like = Examples.spacing("b1", "b2", 0, measuredMm);
        return like(
                like,
                verdict,
                like.measured(),
                Optional.of(new Finding.NumberLimit(atMost, 500, Unit.MM, "500 mm")),
                atMost ? 500 - measuredMm : measuredMm - 500);
    }

    private static Finding like(
            Finding like,
            Verdict verdict,
            Optional<Finding.Measured> measured,
            Optional<Finding.Limit> limit,
            double margin) {
        return new Finding(
                like.rule(),
                like.topic(),
                like.says(),
                verdict,
                like.kind(),
                like.measures(),
                like.place(),
                measured,
                limit,
                Optional.of(margin),
                like.probability(),
                like.decision(),
                like.because(),
                like.source(),
                like.provenance(),
                like.assumed(),
                like.remedy(),
                like.workings());
    }
}
