package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Gutter;
import eavesproof.job.Job;
import eavesproof.job.Run.Bracket;
import eavesproof.job.Run.Fascia;
import eavesproof.job.Said;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Loads by plain arithmetic: 5000 mm2 of water weigh 0.005 x 1000 x 9.81 = 49.05 N a metre. */
class BracketLoadsTest {
    private final AJob job = new AJob();

    BracketLoadsTest() {
        job.gutter = gutter(told(5000.0), told(350.0));
        job.outlet("o1", "a1", 1000.0);
        job.a1.lengthMm = 2000.0;
        job.a1.bracket("b1", 100.0).bracket("b2", 900.0).bracket("b3", 1500.0);
    }

    private static Said<Double> told(Double number) {
        return new Said<>(number, "told", "the maker", null);
    }

    private static Gutter gutter(Said<Double> area, Said<Double> capacity) {
        var profile = new Gutter.Profile("half-round", 125.0, 62.0, null, null, null, null);
        return new Gutter(
                "g", "eaves", "PVC-U", "cemented", profile, area, capacity, null, null, null, null);
    }

    private double load(String bracket) {
        return job.survey().facts(Facts.BracketLoad.class).stream()
                .filter(it -> it.bracket().equals(bracket))
                .findFirst()
                .orElseThrow()
                .forceN();
    }

    @Test
    void aBracketBetweenTwoOthersCarriesHalfOfBothSpans() {
        assertEquals(49.05 * (0.8 + 0.6) / 2, load("b2"), 1e-9);
    }

    /** R = q (l + a)² / 2l, moments about the next support: (0.6 + 0.5)² / 1.2 m. */
    @Test
    void theLastBracketIsLeveredByTheOverhang() {
        assertEquals(49.05 * 1.1 * 1.1 / 1.2, load("b3"), 1e-9);
        assertEquals(49.05 * 0.9 * 0.9 / 1.6, load("b1"), 1e-9);
    }

    @Test
    void whatHangsOnABracketIsALengthOfGutterToo() {
        List<Double> lengths =
                job.survey().facts(Facts.BracketShare.class).stream()
                        .map(it -> (double) Math.round(it.lengthMm()))
                        .toList();
        assertEquals(List.of(506.0, 700.0, 1008.0), lengths);
    }

    @Test
    void nothingHangsOnABracketWithoutAScrew() {
        job.a1.brackets.set(1, new Bracket("b2", 900.0, 0, 4, null, null, null));
        assertEquals(
                List.of("a b2: bracket b2 has no screw, so that nothing can hang on it"),
                job.survey().none(Facts.BracketLoad.class));
        // b3 is levered by 500 mm behind a span of 1400 mm.
        assertEquals(49.05 * 1.9 * 1.9 / 2.8, load("b3"), 1e-9);
    }

    @Test
    void whatABracketCarriesIsAGapWhereItsScrewsWereNotCounted() {
        job.a1.brackets.set(1, new Bracket("b2", 900.0, null, 4, null, null, null));
        assertEquals(3, job.survey().gaps(Facts.BracketLoad.class).size());
    }

    @Test
    void aBracketAllByItselfCarriesTheWholeStraight() {
        job.a1.brackets.clear();
        job.a1.bracket("b1", 700.0);
        assertEquals(49.05 * 2, load("b1"), 1e-9);
    }

    @Test
    void aScrewedFittingTakesItsShare() {
        job.a1.fitting("f1", 1200.0, "yes");
        assertEquals(49.05 * (0.8 + 0.3) / 2, load("b2"), 1e-9);
    }

    @Test
    void aFittingThatIsPerhapsScrewedLeavesItsNeighboursOpenAndNoOthers() {
        job.a1.fitting("f1", 1200.0, null);
        String why = ": whether fitting f1 is screwed to the fascia is not recorded";
        assertEquals(
                List.of("a b2" + why, "a b3" + why, "a f1" + why),
                job.survey().gaps(Facts.BracketLoad.class));
        assertEquals(1, job.survey().facts(Facts.BracketLoad.class).size());
    }

    @Test
    void withoutAnAreaNothingIsKnownOfTheLoad() {
        job.gutter = gutter(Said.nothing(), told(350.0));
        assertEquals(
                "a b1: the area of gutter g when it is full is not recorded",
                job.survey().gaps(Facts.BracketLoad.class).get(0));
    }

    @Test
    void theLengthOfTheStraightIsNeededForItsLastBracketOnly() {
        job.a1.lengthMm = null;
        assertEquals(
                List.of("a b3: the length of straight a1 is not recorded"),
                job.survey().gaps(Facts.BracketLoad.class));
    }

    private void snowLies(double groundKnM2) {
        Said<Double> none = Said.nothing();
        Said<String> nobody = Said.nothing();
        job.circumstances =
                new Job.Circumstances(
                        AJob.said("yes"),
                        AJob.said("no"),
                        told(groundKnM2),
                        none,
                        nobody,
                        nobody,
                        nobody,
                        null);
    }

    /** 1.5 kN/m2 on 0.125 m are 187.5 N a metre, on 0.7 m of gutter; and the water. */
    @Test
    void snowLiesOnTheWidthOfTheGutterBesides() {
        snowLies(1.5);
        double newton =
                job.survey().facts(Facts.BracketSnowLoad.class).stream()
                        .filter(it -> it.bracket().equals("b2"))
                        .findFirst()
                        .orElseThrow()
                        .forceN();
        assertEquals((49.05 + 187.5) * 0.7, newton, 1e-9);
    }

    /** 500 mm2 are stated of a half-round of 125 mm, pi / 8 x 125 x 125 = 6136 mm2. */
    @Test
    void anAreaThatItsProfileContradictsIsAGap() {
        job.gutter = gutter(told(500.0), told(300.0));
        List<String> gaps = job.survey().gaps(Facts.BracketLoad.class);
        assertEquals(3, gaps.size());
        assertTrue(gaps.get(0).endsWith("500 mm2, and its profile gives 6136 mm2"), gaps.get(0));
    }

    @Test
    void noSnowLoadWhereSnowLiesIsAGap() {
        snowLies(0.0);
        String why = "the snow load on the ground is recorded as 0 where snow lies";
        assertEquals("a b1: " + why, job.survey().gaps(Facts.BracketSnowLoad.class).get(0));
        assertEquals("a: " + why, job.survey().gaps(Facts.OverhangingSnow.class).get(0));
    }

    @Test
    void aSnowLoadThatNobodyRecordedIsAGapAndNotNone() {
        assertEquals(
                "a b1: the snow load on the ground is not recorded",
                job.survey().gaps(Facts.BracketSnowLoad.class).get(0));
    }

    @Test
    void whatABracketCarriesIsAsStatedAndByWhom() {
        Seen seen = job.survey();
        Facts.BracketCapacity capacity = new Facts.BracketCapacity("a", "b2", 350);
        assertEquals(3, seen.facts(Facts.BracketCapacity.class).size());
        assertEquals("told by the maker", seen.known(capacity).provenance().text());
        job.gutter = gutter(told(5000.0), Said.nothing());
        assertEquals(
                "a b1: what a bracket of gutter g carries is not recorded",
                job.survey().gaps(Facts.BracketCapacity.class).get(0));
    }

    @Test
    void everyBracketSaysWhetherItsTimberIsSound() {
        job.a1.fascia =
                new Fascia(0.0, 2000.0, "pine", null, Said.nothing(), AJob.said("no"), null);
        assertEquals(
                List.of("no", "no", "no"),
                job.survey().facts(Facts.TimberSound.class).stream()
                        .map(Facts.TimberSound::said)
                        .toList());
        job.a1.fascia = null;
        assertEquals(
                List.of(
                        "a b1: whether the fascia of straight a1 is sound is not recorded",
                        "a b2: whether the fascia of straight a1 is sound is not recorded",
                        "a b3: whether the fascia of straight a1 is sound is not recorded"),
                job.survey().gaps(Facts.TimberSound.class));
    }

    @Test
    void howDeepScrewsBiteIsMeasuredOrAGap() {
        job.a1.brackets.clear();
        job.a1.brackets.add(new Bracket("b1", 100.0, 4, 4, "stainless steel", 4.2, 32.0));
        job.a1.bracket("b2", 900.0);
        job.a1.brackets.add(new Bracket("b3", 900.0, 0, 4, null, null, null));
        Seen seen = job.survey();
        assertEquals(new Facts.ScrewBite("a", "b1", 32), seen.fact(Facts.ScrewBite.class));
        assertTrue(seen.gaps(Facts.ScrewBite.class).get(0).startsWith("a b2: how deep"));
        assertEquals(List.of("a b3: bracket b3 has no screw"), seen.none(Facts.ScrewBite.class));
    }

    @Test
    void absentBracketsAreAGapAndAnEmptyListIsNone() {
        job.a1.brackets = null;
        assertEquals(
                List.of("a: the brackets of straight a1 are not recorded"),
                job.survey().gaps(Facts.BracketLoad.class));
        job.a1.brackets = List.of();
        assertEquals(
                List.of("a: straight a1 has no bracket"),
                job.survey().none(Facts.BracketLoad.class));
    }
}
