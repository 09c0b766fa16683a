package eavesproof.app;

import static eavesproof.app.Situation.at;
import static eavesproof.app.Situation.dropOver10M;
import static eavesproof.app.Situation.spacing;
import static eavesproof.judge.Verdict.COMPLIES;
import static eavesproof.judge.Verdict.DOES_NOT_COMPLY;
import static eavesproof.judge.Verdict.NOT_APPLICABLE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.survey.Facts;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The figures for gasketed PVC-U and for metal, each held against the shipped rules at its limit
 * and next to it with where it comes from; and what no rule may speak of.
 */
class OtherGuttersTest {
    private static final ShippedRules RULES = ShippedRules.named("trade-practice");

    private static Situation gasketed() {
        return new Situation(RULES, "eaves", "PVC-U", "gasket");
    }

    private static Situation metal(String material, double widthMm) {
        return new Situation(RULES, "eaves", material, "sealed and riveted")
                .with(new Facts.GutterWidth("a", widthMm));
    }

    /** UK plumbing textbook: 1000 mm, 750 mm in heavy snow, within 150 mm of ends and unions. */
    @Test
    void gasketedPvcHasItsOwnFigures() {
        Situation snow = gasketed().with(new Facts.SnowArea("a", "yes")).with(spacing(751));
        assertEquals(COMPLIES, snow.verdict("bracket centres with gaskets"));
        assertEquals(DOES_NOT_COMPLY, snow.verdict("bracket centres with gaskets where snow lies"));
        assertEquals(NOT_APPLICABLE, snow.verdict("bracket centres"));
        assertEquals(
                DOES_NOT_COMPLY, at(gasketed(), spacing(1001), "bracket centres with gaskets"));
        Facts.Fact end = new Facts.EndSupport("a", "a1.left", 151);
        assertEquals(DOES_NOT_COMPLY, at(gasketed(), end, "support near an end with gaskets"));
        Facts.Fact union = new Facts.JointSupport("a", "j1", 150);
        assertEquals(COMPLIES, at(gasketed(), union, "support near a gasket joint"));
    }

    /** UK plumbing textbook: level allowed. */
    @Test
    void gasketedPvcMayLieLevel() {
        assertEquals(COMPLIES, at(gasketed(), dropOver10M(0), "fall with gaskets"));
        assertEquals(DOES_NOT_COMPLY, at(gasketed(), dropOver10M(-1), "fall with gaskets"));
    }

    /**
     * New Zealand roofing code of practice v25.12 5.4.2.1: at least 1:500. A run of 10 m that drops
     * 20 mm meets 1:500, one that drops 19 mm misses it (arithmetic).
     */
    @Test
    void metalFallsOneInFiveHundred() {
        assertEquals(COMPLIES, at(metal("copper", 150), dropOver10M(20), "fall in metal"));
        assertEquals(DOES_NOT_COMPLY, at(metal("copper", 150), dropOver10M(19), "fall in metal"));
    }

    /** The same, 5.4.2.3: 750 mm below 180 mm width; 600 mm to 300 mm or in snow. */
    @Test
    void theWiderAMetalGutterTheCloserItsBrackets() {
        String narrow = "bracket centres in narrow metal";
        String wide = "bracket centres in wide metal";
        assertEquals(COMPLIES, at(metal("copper", 179), spacing(750), narrow));
        assertEquals(DOES_NOT_COMPLY, at(metal("copper", 179), spacing(751), narrow));
        assertEquals(NOT_APPLICABLE, at(metal("copper", 180), spacing(751), narrow));
        assertEquals(COMPLIES, at(metal("copper", 180), spacing(600), wide));
        assertEquals(DOES_NOT_COMPLY, at(metal("copper", 300), spacing(601), wide));
        Situation snow = metal("copper", 100).with(new Facts.SnowArea("a", "yes"));
        assertEquals(
                DOES_NOT_COMPLY,
                at(snow, spacing(601), "bracket centres in metal where snow lies"));
    }

    /**
     * The same, 5.4.2.2: 25 m of steel, 12 m of copper or aluminium, free to slide; 12 m of steel
     * that is fixed through.
     */
    @Test
    void eachMetalHasItsLengthBetweenBreaks() {
        assertLengthBetweenBreaks("copper", "copper", 12_000);
        assertLengthBetweenBreaks("aluminium", "aluminium", 12_000);
        assertLengthBetweenBreaks("steel", "steel", 25_000);
        assertLengthBetweenBreaks("galvanised steel", "galvanised steel", 25_000);
        assertLengthBetweenBreaks("zinc-aluminium coated steel", "coated steel", 25_000);
    }

    private static void assertLengthBetweenBreaks(String material, String name, double mm) {
        String rule = "length between breaks in " + name;
        Facts.Fact enough = new Facts.FreeLength("a", "a1.left", "a1.right", mm);
        Facts.Fact more = new Facts.FreeLength("a", "a1.left", "a1.right", mm + 1);
        Facts.Fact slides = new Facts.GutterHeld("a", "slides in its brackets");
        assertEquals(COMPLIES, at(metal(material, 150).with(slides), enough, rule));
        assertEquals(DOES_NOT_COMPLY, at(metal(material, 150).with(slides), more, rule));
    }

    @Test
    void steelThatIsFixedThroughHas12MBetweenBreaks() {
        Facts.Fact enough = new Facts.FreeLength("a", "a1.left", "a1.right", 12_000);
        Facts.Fact more = new Facts.FreeLength("a", "a1.left", "a1.right", 12_001);
        Facts.Fact through = new Facts.GutterHeld("a", "fixed through");
        String rule = "length between breaks in steel fixed through";
        assertEquals(COMPLIES, at(metal("steel", 150).with(through), enough, rule));
        assertEquals(DOES_NOT_COMPLY, at(metal("steel", 150).with(through), more, rule));
    }

    /**
     * The same, 14.18.3: at most 5 mm of water stand; that PVC-U is held to it is our own choice.
     */
    @Test
    void atMost5MmOfWaterStandInAGutter() {
        Facts.Fact shallow = new Facts.PondDepth("a", "o1", "left", 5);
        Facts.Fact deep = new Facts.PondDepth("a", "o1", "left", 5.1);
        String metal = "standing water in metal";
        assertEquals(COMPLIES, at(metal("copper", 150), shallow, metal));
        assertEquals(DOES_NOT_COMPLY, at(metal("copper", 150), deep, metal));
        assertEquals(COMPLIES, at(gasketed(), shallow, "standing water in PVC-U"));
        assertEquals(DOES_NOT_COMPLY, at(gasketed(), deep, "standing water in PVC-U"));
    }

    @Test
    void noRuleSpeaksOfAMetalWhoseMovementNobodyJudges() {
        for (String material : List.of("zinc", "cast iron", "stainless steel")) {
            Situation held = metal(material, 150).with(new Facts.SupportCount("a", "a1", 12));
            assertEquals(List.of("SupportCount"), held.uncovered(), material);
        }
        Situation copper = metal("copper", 150).with(new Facts.SupportCount("a", "a1", 12));
        assertTrue(copper.uncovered().isEmpty());
    }

    @Test
    void noRuleSpeaksOfTheBracketsOfAMetalGutterWiderThan300Mm() {
        Situation wide = metal("copper", 301).with(spacing(100));
        assertEquals(List.of("BracketSpacing"), wide.uncovered());
        Situation inSnow = wide.with(new Facts.SnowArea("a", "yes"));
        assertEquals(List.of("BracketSpacing"), inSnow.uncovered());
    }

    @Test
    void noRuleForEavesGuttersSpeaksOfABoxGutter() {
        Situation box =
                new Situation(RULES, "box", "PVC-U", "cemented")
                        .with(spacing(100))
                        .with(dropOver10M(50))
                        .with(new Facts.OutletCount("a", 1));
        assertEquals(List.of("BracketSpacing", "ReachFall", "OutletCount"), box.uncovered());
    }
}
