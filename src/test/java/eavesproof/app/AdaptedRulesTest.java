package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.findings.Outcome;
import eavesproof.judge.Verdict;
import eavesproof.survey.BasisKey;
import eavesproof.survey.FactKind;
import eavesproof.survey.Vocabulary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What rules/README.md tells people to do, done. */
class AdaptedRulesTest {
    private static final Path README = Path.of("rules/README.md");
    private static final Path SHIPPED = Path.of("rules/trade-practice");
    private static final Path SAMPLE = Path.of("samples/verandah-pvc.json");

    @TempDir Path folder;

    private Path copyOfTradePractice() throws IOException {
        Path copy = Files.createDirectory(folder.resolve("my-valley"));
        try (Stream<Path> files = Files.list(SHIPPED)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        edit(copy.resolve("rule-set.json"), "\"trade-practice\"", "\"my-valley\"");
        return copy;
    }

    private static void edit(Path file, String old, String now) throws IOException {
        String text = Files.readString(file);
        assertTrue(text.contains(old), old);
        Files.writeString(file, text.replace(old, now));
    }

    private static String block(String kind) throws IOException {
        Matcher block =
                Pattern.compile("(?s)```" + kind + " layer\n(.*?)```")
                        .matcher(Files.readString(README));
        assertTrue(block.find(), kind);
        return block.group(1);
    }

    private static Findings check(Path rules) throws IOException {
        return ShippedRules.named(rules.toString()).check(Files.readAllBytes(SAMPLE));
    }

    private static Set<String> rules(Findings findings, Verdict verdict) {
        return findings.of(verdict).stream()
                .map(Finding::rule)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void aCopyWithNothingChangedComesToTheSame() throws IOException {
        assertEquals(Outcome.COMPLIES, check(copyOfTradePractice()).outcome());
    }

    /** The sample has its brackets 462 mm apart. */
    @Test
    void aCopyWith450For500TurnsTheSampleIntoOneThatDoesNotComply() throws IOException {
        Path copy = copyOfTradePractice();
        edit(copy.resolve("support.drl"), "$spacing, 500,", "$spacing, 450,");
        Findings findings = check(copy);
        assertEquals(Outcome.DOES_NOT_COMPLY, findings.outcome());
        assertEquals(Set.of("bracket centres"), rules(findings, Verdict.DOES_NOT_COMPLY));
    }

    @Test
    void theLayerOfTheReadmeReplacesOneRuleAndDropsAnother() throws IOException {
        Path layer = Files.createDirectory(folder.resolve("our-valley"));
        Files.writeString(layer.resolve("rule-set.json"), block("json"));
        Files.writeString(layer.resolve("support.drl"), block("drl"));
        Findings findings = check(layer);
        assertEquals(Outcome.DOES_NOT_COMPLY, findings.outcome());
        assertEquals(Set.of("bracket centres"), rules(findings, Verdict.DOES_NOT_COMPLY));
        assertTrue(
                findings.findings().stream()
                        .noneMatch(it -> it.rule().equals("bracket centres where rain is heavy")));
        assertTrue(rules(findings, Verdict.COMPLIES).contains("fall"));
    }

    @Test
    void theReadmeListsTheFactKindsAsTheyAre() throws IOException {
        List<String> table =
                Files.readString(README)
                        .lines()
                        .dropWhile(line -> !line.equals("## The fact kinds"))
                        .takeWhile(line -> !line.equals("## The basis"))
                        .filter(line -> line.startsWith("| ") && !line.startsWith("| kind "))
                        .toList();
        List<String> kinds = Vocabulary.kinds().stream().map(AdaptedRulesTest::row).toList();
        assertEquals(kinds, table);
    }

    @Test
    void theReadmeListsTheKeysOfTheBasisAsTheyAre() throws IOException {
        List<String> table =
                Files.readString(README)
                        .lines()
                        .dropWhile(line -> !line.equals("## The basis"))
                        .filter(line -> line.startsWith("| ") && !line.startsWith("| key "))
                        .toList();
        List<String> keys =
                Arrays.stream(BasisKey.values())
                        .map(
                                it ->
                                        "| "
                                                + it.key()
                                                + " | "
                                                + it.says()
                                                + " | "
                                                + it.expected()
                                                + " |")
                        .toList();
        assertEquals(keys, table);
    }

    private static String row(FactKind kind) {
        String values =
                kind.unit().map(unit -> unit.symbol()).orElse(String.join(", ", kind.words()));
        List<String> cells =
                List.of(kind.name(), String.join(", ", kind.keys()), kind.measure(), values);
        return "| " + String.join(" | ", cells) + " |";
    }
}
