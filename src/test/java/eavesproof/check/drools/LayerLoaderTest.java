package eavesproof.check.drools;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.check.Engine.EngineFault;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LayerLoaderTest {
    private static final LayerCompiler NO_COMPILER =
            text -> {
                throw new AssertionError("the compiler was asked for " + text.packageName());
            };

    @Test
    void compiledRulesOnTheClassPathNeedNoCompiler() throws RefusedRules {
        List<Rule> rules = Plain.read(Plain.RULE);
        assertEquals(1, loader(LayerFiles.of(rules)).load(rules).getRules().size());
    }

    /**
     * The build has put them there; a change of one number alone must not bring the compiler in.
     */
    @Test
    void shippedRulesWithAnotherLimitNeedNoCompiler() throws Exception {
        List<Rule> rules = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("rules/trade-practice"))) {
            for (Path file : files.filter(one -> one.toString().endsWith(".drl")).toList()) {
                String text = Files.readString(file).replace("$spacing, 500,", "$spacing, 450,");
                rules.addAll(Plain.read(text));
            }
        }
        LayerLoader loader = new LayerLoader(LayerLoaderTest.class.getClassLoader(), NO_COMPILER);
        assertEquals(rules.size(), loader.load(rules).getRules().size());
    }

    @Test
    void aChangedLimitNeedsNoCompiler() throws RefusedRules {
        SortedMap<String, byte[]> shipped = LayerFiles.of(Plain.read(Plain.RULE));
        String changed = Plain.change("500", "450").replace("practice 1.2", "practice 9");
        assertEquals(1, loader(shipped).load(Plain.read(changed)).getRules().size());
    }

    @Test
    void aChangedConditionDoes() throws RefusedRules {
        SortedMap<String, byte[]> shipped = LayerFiles.of(Plain.read(Plain.RULE));
        List<Rule> changed = Plain.read(Plain.change("150.50", "150.51"));
        assertThrows(AssertionError.class, () -> loader(shipped).load(changed));
    }

    @Test
    void compiledRulesOfAnotherTextUnderTheRightNameAreAFault() throws RefusedRules {
        List<Rule> rules = Plain.read(Plain.RULE);
        TreeMap<String, byte[]> wrong = new TreeMap<>(LayerFiles.of(rules));
        wrong.replaceAll(
                (path, bytes) ->
                        path.endsWith(".txt") ? replaced(bytes, "150.50", "150.5") : bytes);
        assertFault("another text", rules, wrong);
    }

    @Test
    void compiledRulesOfAnotherConditionUnderTheRightNameAreAFault() throws RefusedRules {
        staleUnderTheRightName(Plain.change("150.50", "150.51"));
    }

    @Test
    void compiledRulesOfAnotherWordUnderTheRightNameAreAFault() throws RefusedRules {
        staleUnderTheRightName(Plain.change("\"eaves\"", "\"box\""));
    }

    @Test
    void compiledRulesOfAnotherNameUnderTheRightNameAreAFault() throws RefusedRules {
        staleUnderTheRightName(Plain.change("bracket centres", "bracket centers"));
    }

    @Test
    void compiledRulesOfAnotherKindUnderTheRightNameAreAFault() throws RefusedRules {
        staleUnderTheRightName(Plain.change("BracketSpacing", "EndSupport"));
    }

    @Test
    void oneCompiledRuleTooManyUnderTheRightNameIsAFault() throws RefusedRules {
        staleUnderTheRightName(Plain.RULE + Plain.change("bracket centres", "more"));
    }

    @Test
    void compiledRulesThatCannotBeReadAreAFault() throws RefusedRules {
        List<Rule> rules = Plain.read(Plain.RULE);
        TreeMap<String, byte[]> broken = new TreeMap<>(LayerFiles.of(rules));
        broken.replaceAll((path, bytes) -> path.endsWith(".class") ? new byte[] {1} : bytes);
        assertFault("cannot be loaded", rules, broken);
    }

    @Test
    void theSameRulesAreTheSameBytes() throws RefusedRules {
        SortedMap<String, byte[]> once = LayerFiles.of(Plain.read(Plain.RULE));
        SortedMap<String, byte[]> again = LayerFiles.of(Plain.read(Plain.RULE));
        assertEquals(once.keySet(), again.keySet());
        once.forEach((path, bytes) -> assertArrayEquals(bytes, again.get(path), path));
    }

    @Test
    void everyFileLiesInThePackageThatIsNamedByItsContent() throws RefusedRules {
        List<Rule> rules = Plain.read(Plain.RULE);
        String folder = LayerText.of(rules).folder();
        assertTrue(folder.matches("eavesproof/layer/h[0-9a-f]{32}/"), folder);
        LayerFiles.of(rules).keySet().forEach(path -> assertTrue(path.startsWith(folder), path));
    }

    @Test
    void theOrderOfRulesDoesNotChangeThePackage() throws RefusedRules {
        String other = Plain.change("bracket centres", "other").replace("\"eaves\"", "\"box\"");
        assertEquals(
                LayerText.of(Plain.read(Plain.RULE + other)),
                LayerText.of(Plain.read(other + Plain.RULE)));
        assertNotEquals(LayerText.of(Plain.read(Plain.RULE)), LayerText.of(Plain.read(other)));
    }

    /** Classes of other rules, compiled into the package of the plain rule, with its note. */
    private static void staleUnderTheRightName(String other) throws RefusedRules {
        List<Rule> rules = Plain.read(Plain.RULE);
        LayerText right = LayerText.of(rules);
        LayerText stale = LayerText.of(Plain.read(other));
        LayerText wrong =
                new LayerText(
                        right.packageName(),
                        stale.drl().replace(stale.packageName(), right.packageName()));
        TreeMap<String, byte[]> files = new TreeMap<>(LayerFiles.of(wrong, new ModelCompiler()));
        String note = LayerFiles.note(right);
        String model =
                new String(files.get(note), StandardCharsets.US_ASCII).lines().toList().get(0);
        files.put(note, (model + "\n" + right.drl()).getBytes(StandardCharsets.US_ASCII));
        assertFault("not what the rule files say", rules, files);
    }

    private static void assertFault(String says, List<Rule> rules, Map<String, byte[]> files) {
        EngineFault fault = assertThrows(EngineFault.class, () -> loader(files).load(rules));
        assertTrue(String.valueOf(fault.getMessage()).contains(says), fault::getMessage);
    }

    private static LayerLoader loader(Map<String, byte[]> files) {
        ClassLoader classPath = LayerLoaderTest.class.getClassLoader();
        return new LayerLoader(LayerFiles.loader(files, classPath), NO_COMPILER);
    }

    private static byte[] replaced(byte[] bytes, String old, String now) {
        String text = new String(bytes, StandardCharsets.US_ASCII);
        assertTrue(text.contains(old));
        return text.replace(old, now).getBytes(StandardCharsets.US_ASCII);
    }
}
