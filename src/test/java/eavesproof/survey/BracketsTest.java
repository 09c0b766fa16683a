package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.job.Run.Bracket;
import eavesproof.job.Run.End;
import eavesproof.job.Run.Fascia;
import eavesproof.job.Said;
import java.util.List;
import org.junit.jupiter.api.Test;

class BracketsTest {
    private final AJob job = new AJob();

    private Seen with(Integer screws, Integer holes, String metal) {
        job.a1.brackets.clear();
        job.a1.brackets.add(new Bracket("b7", 50.0, screws, holes, metal, null, null));
        return job.survey();
    }

    @Test
    void theHolesOfABracketAreCounted() {
        Seen seen = with(3, 4, "stainless steel");
        assertEquals(new Facts.BracketHoles("a", "b7", 4), seen.fact(Facts.BracketHoles.class));
        assertEquals(new Facts.EmptyHoles("a", "b7", 1), seen.fact(Facts.EmptyHoles.class));
        assertEquals(
                new Facts.ScrewMetal("a", "b7", "stainless steel"),
                seen.fact(Facts.ScrewMetal.class));
    }

    @Test
    void absentScrewsAreAGapThatNamesTheBracket() {
        Seen seen = with(null, 4, null);
        assertEquals(
                List.of("a b7: the screws of bracket b7 are not recorded"),
                seen.gaps(Facts.EmptyHoles.class));
        assertEquals(
                List.of("a b7: the metal of the screws of bracket b7 is not recorded"),
                seen.gaps(Facts.ScrewMetal.class));
        assertEquals(1, seen.facts(Facts.BracketHoles.class).size());
    }

    @Test
    void absentHolesAreAGap() {
        String gap = "a b7: the holes of bracket b7 are not recorded";
        assertEquals(List.of(gap), with(4, null, null).gaps(Facts.EmptyHoles.class));
        assertEquals(List.of(gap), with(4, null, null).gaps(Facts.BracketHoles.class));
    }

    @Test
    void asManyScrewsAsHolesLeaveNoneEmpty() {
        assertEquals(
                new Facts.EmptyHoles("a", "b7", 0), with(4, 4, null).fact(Facts.EmptyHoles.class));
    }

    @Test
    void moreScrewsThanHolesShowNothing() {
        assertEquals(
                List.of("a b7: bracket b7 is recorded with more screws than holes"),
                with(5, 4, null).gaps(Facts.EmptyHoles.class));
    }

    @Test
    void aBracketWithNoScrewHasNoMetalOfScrews() {
        assertEquals(
                List.of("a b7: bracket b7 has no screw"),
                with(0, 4, null).none(Facts.ScrewMetal.class));
    }

    @Test
    void anEmptyListOfBracketsHasNoneOfThese() {
        for (var type :
                List.of(Facts.BracketHoles.class, Facts.EmptyHoles.class, Facts.ScrewMetal.class)) {
            assertEquals(List.of("a: straight a1 has no bracket"), job.survey().none(type));
        }
    }

    @Test
    void absentBracketsAreAGapOfEachOfThese() {
        job.a1.brackets = null;
        for (var type :
                List.of(Facts.BracketHoles.class, Facts.EmptyHoles.class, Facts.ScrewMetal.class)) {
            assertEquals(
                    List.of("a: the brackets of straight a1 are not recorded"),
                    job.survey().gaps(type));
        }
    }

    @Test
    void theFirstAndLastBracketAreMeasuredFromTheEndsOfTheTimber() {
        job.a1.bracket("b1", 50.0).bracket("b2", 9900.0);
        job.a1.fascia = new Fascia(-20.0, 9960.0, null, null, Said.nothing(), Said.nothing(), null);
        assertEquals(
                List.of(
                        new Facts.TimberEndBracket("a", "a1.left", 70),
                        new Facts.TimberEndBracket("a", "a1.right", 60)),
                job.survey().facts(Facts.TimberEndBracket.class));
    }

    @Test
    void theFirstAndLastBracketAreThoseOfTheGutterAndNotOfTheRecord() {
        job.a1.bracket("b2", 5000.0).bracket("b3", 9900.0).bracket("b1", 50.0);
        assertEquals(
                List.of(
                        new Facts.TimberEndBracket("a", "a1.left", 50),
                        new Facts.TimberEndBracket("a", "a1.right", 100)),
                job.survey().facts(Facts.TimberEndBracket.class));
    }

    @Test
    void timberThatBeginsBeyondTheFirstBracketIsStillSoFarAway() {
        job.a1.bracket("b1", 50.0);
        job.a1.fascia = new Fascia(80.0, 100.0, null, null, Said.nothing(), Said.nothing(), null);
        assertEquals(30, job.survey().facts(Facts.TimberEndBracket.class).get(0).distanceMm());
    }

    @Test
    void atACornerTheTimberHasNoEnd() {
        job.a1.bracket("b1", 50.0);
        job.a1.left = new End("corner", null);
        assertEquals(
                List.of("a a1.left: a1.left is a corner"),
                job.survey().none(Facts.TimberEndBracket.class));
    }

    @Test
    void anAbsentFasciaOrEndIsAGap() {
        job.a1.bracket("b1", 50.0);
        job.a1.fascia =
                new Fascia(null, 10_000.0, null, null, Said.nothing(), Said.nothing(), null);
        job.a1.right = null;
        assertEquals(
                List.of(
                        "a a1.left: the station of the left end of the fascia is not recorded",
                        "a a1.right: the kind of end a1.right is not recorded"),
                job.survey().gaps(Facts.TimberEndBracket.class));
        job.a1.fascia = null;
        assertEquals(
                "a a1.left: the fascia of straight a1 is not recorded",
                job.survey().gaps(Facts.TimberEndBracket.class).get(0));
    }

    @Test
    void theFirstBracketIsOneThatIsScrewedOn() {
        job.a1.brackets.add(new Bracket("b1", 50.0, 0, 4, null, null, null));
        job.a1.bracket("b2", 400.0);
        assertEquals(400, job.survey().facts(Facts.TimberEndBracket.class).get(0).distanceMm());
        job.a1.brackets.set(0, new Bracket("b1", 50.0, null, 4, null, null, null));
        assertEquals(
                List.of("a a1.left: the screws of bracket b1 are not recorded"),
                job.survey().gaps(Facts.TimberEndBracket.class));
    }

    @Test
    void whereNoBracketIsScrewedOnThereIsNoFirst() {
        job.a1.brackets.add(new Bracket("b1", 50.0, 0, 4, null, null, null));
        assertEquals(
                "a a1.left: straight a1 has no bracket that is screwed on",
                job.survey().none(Facts.TimberEndBracket.class).get(0));
    }

    @Test
    void aBracketWithoutAStationMayBeTheFirst() {
        job.a1.bracket("b1", 50.0).bracket("b2", null);
        assertEquals(
                "a a1.left: the station of bracket b2 is not recorded",
                job.survey().gaps(Facts.TimberEndBracket.class).get(0));
    }
}
