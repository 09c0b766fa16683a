package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.check.Engine;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.RuleChange;
import eavesproof.survey.Facts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RuleSetsTest {
    private static final Path SHIPPED = Path.of("rules");
    private static final String CENTRES = "bracket centres";

    private static final String LAYER =
            """
            {"name": "layer", "title": "A layer", "jurisdiction": "here",
             "builds_on": "trade-practice", "replaces": [%s], "drops": {},
             "documents": {"sheet": {"title": "A sheet", "edition": "1", "standing": "guidance"}},
             "clauses_not_checked": [], "must_judge": []}
            """;

    private static final String RULE =
            """
            rule "bracket centres"
              @topic("support")
              @says("Closer.")
              @source("sheet 2")
            when
              $spacing : BracketSpacing($run : run)
              GutterKind(run == $run, named == "eaves")
            then
              require.atMost($spacing, 450, "mm");
            end
            """;

    @TempDir private Path folder;

    @Test
    void aShippedRuleSetIsLoadedByItsName() throws Exception {
        LoadedRules loaded = RuleSets.load("trade-practice", SHIPPED);
        assertTrue(loaded.asShipped());
        assertEquals(List.of(), loaded.changes());
        assertTrue(loaded.book().rule(CENTRES).isPresent());
        List<Facts.Fact> facts =
                List.of(
                        new Facts.BracketSpacing("a", "b1", "b2", 490),
                        new Facts.GutterKind("a", "eaves"),
                        new Facts.GutterMaterial("a", "PVC-U"),
                        new Facts.Jointing("a", "cemented"));
        assertTrue(
                loaded.engine().matches(facts).stream()
                        .map(Engine.Match::rule)
                        .anyMatch(CENTRES::equals));
    }

    @Test
    void everyShippedRuleSetLoads() throws Exception {
        List<String> names = RuleSets.names(SHIPPED);
        assertTrue(names.contains("trade-practice"));
        for (String name : names) {
            LoadedRules loaded = RuleSets.load(name, SHIPPED);
            assertEquals(name, loaded.book().name());
            assertTrue(loaded.asShipped(), name);
        }
    }

    @Test
    void shippedRulesAreReadWithoutTheParser() throws Exception {
        for (String name : RuleSets.names(SHIPPED)) {
            RuleFolder.read(SHIPPED.resolve(name), RuleSetsTest::fromSheet);
        }
    }

    private static List<eavesproof.rules.Rule> fromSheet(String file, byte[] bytes) {
        return Shipped.rules(file, bytes)
                .orElseThrow(() -> new AssertionError(file + " has no sheet"));
    }

    @Test
    void anUntouchedCopyElsewhereIsStillAsShipped() throws Exception {
        Path copy = copyOfShipped("trade-practice");
        assertTrue(RuleSets.load(copy.toString(), SHIPPED).asShipped());
    }

    @Test
    void aCopyWithAnotherLimitSaysSo() throws Exception {
        Path copy = copyOfShipped("trade-practice");
        change(copy.resolve("support.drl"), "$spacing, 500,", "$spacing, 450,");
        LoadedRules loaded = RuleSets.load(copy.toString(), SHIPPED);
        assertFalse(loaded.asShipped());
        RuleChange change = loaded.changes().get(0);
        assertEquals(CENTRES, change.rule());
        assertEquals(RuleChange.Kind.LIMIT_CHANGED, change.kind());
        assertEquals(Optional.of("at most 500 mm"), change.demandBefore());
        assertEquals(Optional.of("at most 450 mm"), change.demandAfter());
    }

    @Test
    void aCopyUnderAnotherNameIsComparedWithWhatItWasMadeFrom() throws Exception {
        Path copy = copyOfShipped("my-valley");
        change(copy.resolve("rule-set.json"), "\"trade-practice\"", "\"my-valley\"");
        change(copy.resolve("support.drl"), "$spacing, 500,", "$spacing, 450,");
        LoadedRules loaded = RuleSets.load(copy.toString(), SHIPPED);
        assertFalse(loaded.asShipped());
        assertEquals(
                List.of(CENTRES),
                loaded.changes().stream().map(RuleChange::rule).distinct().toList());
    }

    @Test
    void oneMoreRuleFileIsNotAsShipped() throws Exception {
        Path copy = copyOfShipped("trade-practice");
        Files.writeString(copy.resolve("more.drl"), "// nothing yet\n");
        assertFalse(RuleSets.load(copy.toString(), SHIPPED).asShipped());
    }

    @Test
    void aLayerIsLaidOverTheShippedRules() throws Exception {
        LoadedRules loaded = RuleSets.load(layer("\"bracket centres\"").toString(), SHIPPED);
        assertFalse(loaded.asShipped());
        assertEquals("layer", loaded.book().name());
        assertEquals(2, loaded.book().layers().size());
        assertEquals(List.of(CENTRES), loaded.changes().stream().map(RuleChange::rule).toList());
    }

    @Test
    void whatALayerBuildsOnIsLookedForBesideItFirst() throws Exception {
        Path below = copyOfShipped("trade-practice");
        change(below.resolve("support.drl"), "$spacing, 300,", "$spacing, 299,");
        LoadedRules loaded = RuleSets.load(layer("\"bracket centres\"").toString(), SHIPPED);
        assertTrue(
                loaded.changes().stream()
                        .anyMatch(one -> one.demandAfter().equals(Optional.of("at most 299 mm"))));
    }

    @Test
    void aNameFromBelowThatIsNotReplacedIsRefused() throws Exception {
        refused("layer/more.drl:1", layer("").toString());
    }

    @Test
    void whatIsNeitherANameNorAFolderIsRefused() throws Exception {
        refused("rule set", "no-such");
        refused("rule set", "");
        refused("rule set", "a\0b");
    }

    @Test
    void aFolderWithoutARuleSetIsRefused() throws Exception {
        refused("rule-set.json", folder.toString());
    }

    @Test
    void aKindToBeJudgedThatDoesNotExistIsRefused() throws Exception {
        Path copy = copyOfShipped("trade-practice");
        change(copy.resolve("rule-set.json"), "\"BracketSpacing\"", "\"BracketSpaces\"");
        refused("rule-set.json", copy.toString());
    }

    @Test
    void aRuleFileWithAnotherEndingIsNotLeftOutInSilence() throws Exception {
        Path copy = copyOfShipped("trade-practice");
        Files.writeString(copy.resolve("MORE.DRL"), "");
        refused("MORE.DRL", copy.toString());
    }

    @Test
    void aRuleSetThatBuildsOnItselfIsRefused() throws Exception {
        Path copy = copyOfShipped("trade-practice");
        change(
                copy.resolve("rule-set.json"),
                "\"builds_on\": null",
                "\"builds_on\": \"trade-practice\"");
        refused("trade-practice/rule-set.json", copy.toString());
    }

    private static void refused(String where, String nameOrFolder) {
        RefusedRules refused =
                assertThrows(RefusedRules.class, () -> RuleSets.load(nameOrFolder, SHIPPED));
        assertTrue(refused.getMessage().contains(where), refused::getMessage);
    }

    private Path layer(String replaces) throws IOException {
        Path layer = Files.createDirectories(folder.resolve("layer"));
        Files.writeString(layer.resolve("rule-set.json"), LAYER.formatted(replaces));
        Files.writeString(layer.resolve("more.drl"), RULE);
        return layer;
    }

    private Path copyOfShipped(String name) throws IOException {
        Path copy = Files.createDirectories(folder.resolve(name));
        try (Stream<Path> files = Files.list(SHIPPED.resolve("trade-practice"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        return copy;
    }

    private static void change(Path file, String old, String now) throws IOException {
        String text = Files.readString(file);
        assertTrue(text.contains(old), old);
        Files.writeString(file, text.replace(old, now));
    }
}
