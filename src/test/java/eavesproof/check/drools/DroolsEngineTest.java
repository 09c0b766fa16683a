package eavesproof.check.drools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.check.Engine;
import eavesproof.check.Engine.EngineFault;
import eavesproof.check.Engine.Match;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.RuleBook;
import eavesproof.survey.Facts;
import java.util.List;
import java.util.Map;
import org.drools.modelcompiler.KieBaseBuilder;
import org.junit.jupiter.api.Test;
import org.kie.api.KieBase;

class DroolsEngineTest {
    private static final ClassLoader CLASS_PATH = DroolsEngineTest.class.getClassLoader();

    private static final Facts.Fact SPACING = new Facts.BracketSpacing("a", "b1", "b2", 490);
    private static final Facts.Fact OF_ANOTHER_RUN = new Facts.BracketSpacing("z", "b8", "b9", 490);
    private static final Facts.Fact EAVES = new Facts.GutterKind("a", "eaves");
    private static final Facts.Fact NARROW = new Facts.GutterWidth("a", 150.5);
    private static final Facts.Fact WIDE = new Facts.GutterWidth("a", 150.6);

    private static final String ENDS =
            Plain.change("bracket centres", "ends").replace("BracketSpacing", "EndSupport");
    private static final Facts.Fact END = new Facts.EndSupport("a", "e1", 100);

    @Test
    void aRuleMeetsTheSubjectWhoseCircumstancesHold() throws RefusedRules {
        Engine engine = DroolsEngine.of(Books.of(Plain.RULE));
        List<Match> matches = engine.matches(List.of(OF_ANOTHER_RUN, SPACING, EAVES, NARROW));
        assertEquals(1, matches.size());
        assertEquals("bracket centres", matches.get(0).rule());
        assertSame(SPACING, matches.get(0).subject());
        assertEquals(
                Map.of("$run", "a", "$width", 150.5, "$spacing", SPACING), matches.get(0).bound());
    }

    @Test
    void aRuleMeetsNothingWhereACircumstanceDoesNotHoldOrIsNotThere() throws RefusedRules {
        Engine engine = DroolsEngine.of(Books.of(Plain.RULE));
        assertEquals(List.of(), engine.matches(List.of(SPACING, EAVES, WIDE)));
        assertEquals(List.of(), engine.matches(List.of(SPACING, NARROW)));
        assertEquals(List.of(), engine.matches(List.of()));
    }

    @Test
    void oneEngineServesOneJobAfterTheOther() throws RefusedRules {
        Engine engine = DroolsEngine.of(Books.of(Plain.RULE));
        assertEquals(1, engine.matches(List.of(SPACING, EAVES, NARROW)).size());
        assertEquals(0, engine.matches(List.of(SPACING)).size());
        assertEquals(1, engine.matches(List.of(SPACING, EAVES, NARROW)).size());
    }

    @Test
    void aReplacedRuleIsSilentAndItsSuccessorSpeaks() throws RefusedRules {
        String snow = "SnowArea(run == $run, said == \"yes\")\nthen";
        String above = Plain.RULE.replace("then", snow);
        RuleBook book =
                Books.over(
                        Books.layer("root", List.of(), List.of(), Plain.RULE, ENDS),
                        Books.layer("above", List.of("bracket centres"), List.of(), above));
        Engine engine = DroolsEngine.of(book);
        List<Facts.Fact> facts = List.of(SPACING, END, EAVES, NARROW);
        assertEquals(List.of("ends"), rules(engine.matches(facts)));
        List<Facts.Fact> snowy =
                List.of(SPACING, END, EAVES, NARROW, new Facts.SnowArea("a", "yes"));
        assertEquals(List.of("bracket centres", "ends"), rules(engine.matches(snowy)));
    }

    @Test
    void aDroppedRuleIsSilent() throws RefusedRules {
        RuleBook book =
                Books.over(
                        Books.layer("root", List.of(), List.of(), Plain.RULE, ENDS),
                        Books.layer("above", List.of(), List.of("ends")));
        List<Facts.Fact> facts = List.of(SPACING, END, EAVES, NARROW);
        assertEquals(List.of("bracket centres"), rules(DroolsEngine.of(book).matches(facts)));
    }

    /** The same conditions are the same package, and loading it twice would keep one in silence. */
    @Test
    void aLayerThatReplacesEveryRuleByItselfIsLoadedOnce() throws RefusedRules {
        RuleBook book =
                Books.over(
                        Books.layer("root", List.of(), List.of(), Plain.RULE),
                        Books.layer("above", List.of("bracket centres"), List.of(), Plain.RULE));
        List<Facts.Fact> facts = List.of(SPACING, EAVES, NARROW);
        assertEquals(List.of("bracket centres"), rules(DroolsEngine.of(book).matches(facts)));
    }

    @Test
    void aSessionThatCrashesIsAFault() {
        assertFault("the rules stopped", "GutterKind(named.charAt(99) == 'x')", 10_000);
    }

    @Test
    void aSessionThatOverflowsItsStackIsAFault() {
        assertFault(
                "the rules stopped",
                "GutterKind(eavesproof.check.drools.Traps.deep(1) > 0)",
                10_000);
    }

    @Test
    void aSessionThatHangsIsAFault() {
        assertFault("took longer", "GutterKind(eavesproof.check.drools.Traps.slow() > 0)", 200);
    }

    @Test
    void moreMatchesThanThereCanBeAreAFault() {
        assertFault("matches fired", "Object() Object() Object()", 10_000);
    }

    @Test
    void aMatchWithoutItsSubjectIsAFault() {
        assertFault("stopped with an error", "$other : Object()", 10_000);
    }

    private static List<String> rules(List<Match> matches) {
        return matches.stream().map(Match::rule).sorted().toList();
    }

    /** Such conditions are never admitted; here they reach Drools by the back door. */
    private static void assertFault(String says, String conditions, int longestMillis) {
        String name = "eavesproof.layer.trap";
        String drl =
                "package %s\nimport %s.*\nrule \"trap\"\nwhen\n  $s : GutterKind()\n  %s\nthen\nend\n"
                        .formatted(name, Facts.class.getName(), conditions);
        LayerCompiler.Compiled compiled = new ModelCompiler().compile(new LayerText(name, drl));
        ClassLoader loader = LayerFiles.loader(compiled.classes(), CLASS_PATH);
        KieBase base =
                KieBaseBuilder.createKieBaseFromModel(
                        List.of(LayerLoader.model(compiled.modelClass(), loader)));
        String subject = conditions.startsWith("$other") ? "$gone" : "$s";
        Engine engine = new DroolsEngine(base, Map.of("trap", subject), longestMillis);
        EngineFault fault =
                assertThrows(EngineFault.class, () -> engine.matches(List.of(EAVES, NARROW)));
        String whole = fault.getMessage() + fault.getCause();
        assertTrue(whole.contains(says), whole);
    }
}
