package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.rules.RefusedRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShippedLayersTest {
    private static final String RULE_SET =
            """
            {"name": "one", "title": "One", "jurisdiction": "here",
             "documents": {"sheet": {"title": "A sheet", "edition": "1", "standing": "guidance"}},
             "clauses_not_checked": [], "must_judge": [], "decision": "simple"}
            """;

    private static final String RULE =
            """
            rule "outlets"
              @topic("outlets")
              @says("There is an outlet.")
              @source("sheet 2")
            when
              $outlets : OutletCount($run : run)
              GutterKind(run == $run, named == "eaves")
            then
              require.atLeast($outlets, 1, "count");
            end
            """;

    @TempDir private Path folder;

    @Test
    void theSameRulesGiveTheSameFiles() throws Exception {
        SortedMap<String, String> once = built(RULE);
        assertEquals(once, built(RULE));
        assertTrue(once.keySet().stream().anyMatch(name -> name.endsWith(".class")));
        assertTrue(once.keySet().stream().anyMatch(name -> name.endsWith(".json")));
    }

    @Test
    void aChangedLimitChangesTheSheetAndNoClass() throws Exception {
        SortedMap<String, String> before = built(RULE);
        SortedMap<String, String> after = built(RULE.replace("1, \"count\"", "2, \"count\""));
        assertEquals(classes(before), classes(after));
        assertFalse(before.keySet().equals(after.keySet()));
    }

    @Test
    void whatIsNoLongerShippedIsSwept() throws Exception {
        SortedMap<String, String> before = built(RULE);
        SortedMap<String, String> after = built(RULE.replace("\"eaves\"", "\"box\""));
        assertEquals(before.size(), after.size());
        assertTrue(classes(after).keySet().stream().noneMatch(classes(before)::containsKey));
    }

    @Test
    void aBrokenClassIsCompiledAgain() throws Exception {
        SortedMap<String, String> good = built(RULE);
        String name = classes(good).keySet().iterator().next();
        Files.write(folder.resolve("classes").resolve(name), new byte[] {1});
        assertEquals(good, built(RULE));
    }

    @Test
    void aRuleSetThatIsNoGoodEndsTheBuild() {
        assertThrows(RefusedRules.class, () -> built(RULE.replace("sheet 2", "hearsay")));
    }

    private SortedMap<String, String> built(String rule) throws Exception {
        Path rules = folder.resolve("rules");
        Path classes = Files.createDirectories(folder.resolve("classes"));
        Files.createDirectories(rules.resolve("one"));
        Files.writeString(rules.resolve("one/rule-set.json"), RULE_SET);
        Files.writeString(rules.resolve("one/outlets.drl"), rule);
        ShippedLayers.main(
                new String[] {
                    rules.toString(),
                    classes.toString(),
                    folder.resolve("program.sha256").toString()
                });
        return files(classes);
    }

    private static SortedMap<String, String> files(Path classes) throws IOException {
        TreeMap<String, String> files = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(classes)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                String name = classes.relativize(path).toString().replace('\\', '/');
                files.put(name, eavesproof.rules.Sha256.of(Files.readAllBytes(path)));
            }
        }
        return files;
    }

    private static SortedMap<String, String> classes(SortedMap<String, String> files) {
        TreeMap<String, String> classes = new TreeMap<>(files);
        classes.keySet().removeIf(name -> !name.endsWith(".class"));
        return classes;
    }
}
