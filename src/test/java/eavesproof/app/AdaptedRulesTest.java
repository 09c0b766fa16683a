package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.findings.InWords;
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

    /** One rule that nobody can break shows nothing of a job, whatever its author says. */
    @Test
    void aRuleSetThatStandsAloneCannotPassWhatItDoesNotSpeakOf() throws IOException {
        Path alone = Files.createDirectory(folder.resolve("alone"));
        Files.writeString(
                alone.resolve("rule-set.json"),
                """
                {"name": "alone", "title": "All is well", "jurisdiction": "anywhere",
                 "builds_on": null, "replaces": [], "drops": {},
                 "documents": {"code": {"title": "A code", "edition": "1",
                   "date_checked": "2026-01-31", "standing": "acceptable solution"}},
                 "clauses_not_checked": [], "must_judge": [], "decision": "simple"}
                """);
        Files.writeString(
                alone.resolve("one.drl"),
                """
                rule "bracket centres"
                  @topic("support")
                  @says("It complies.")
                  @source("code 1")
                when
                  $spacing : BracketSpacing($run : run)
                  GutterKind(run == $run, named == "eaves")
                then
                  require.atMost($spacing, 500000, "mm");
                end
                """);
        Findings findings = check(alone);
        assertEquals(Outcome.NOT_SHOWN, findings.outcome());
        Set<String> silent =
                findings.uncovered().stream()
                        .map(one -> one.kind().name())
                        .collect(Collectors.toCollection(TreeSet::new));
        assertTrue(silent.containsAll(Set.of("ReachFall", "GutterRatio", "DischargeKind")));
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

    /** Its brackets are 462 mm apart, and it falls 3.5 mm on a metre. */
    @Test
    void theLayerOfTheReadmeReplacesTwoRulesAndDropsAnother() throws IOException {
        Path layer = Files.createDirectory(folder.resolve("my-council"));
        Files.writeString(layer.resolve("rule-set.json"), block("json"));
        Files.writeString(layer.resolve("own.drl"), block("drl"));
        Findings findings = check(layer);
        assertEquals(Set.of("at most 800 mm"), limits(findings, "bracket centres in England"));
        assertEquals(
                Set.of("at least 2.5 mm/m (1:400)"),
                limits(findings, "fall of a half-round gutter"));
        Set<String> met = rules(findings, Verdict.COMPLIES);
        assertTrue(
                met.containsAll(
                        Set.of(
                                "bracket centres in England",
                                "fall of a half-round gutter",
                                "bracket centres")));
        assertTrue(
                findings.findings().stream()
                        .noneMatch(it -> it.rule().equals("bracket centres where rain is heavy")));
        for (String change :
                List.of(
                        "bracket centres where rain is heavy: left out, was at most 300 mm (The"
                                + " town lies in the rain shadow of the hills.)",
                        "bracket centres in England: at most 800 mm, was at most 1000 mm; source"
                                + " “Letter of the council on gutters, 2”, was ",
                        "fall of a half-round gutter: at least 2.5 mm/m (1:400), was at least"
                                + " 0 mm/m; source ",
                        "document council: added, Letter of the council on gutters, 2026,"
                                + " guidance")) {
            assertTrue(
                    findings.rules().changes().stream().anyMatch(it -> it.startsWith(change)),
                    findings.rules().changes()::toString);
        }
        assertEquals(4, findings.rules().changes().size());
    }

    private static Set<String> limits(Findings findings, String rule) {
        return findings.findings().stream()
                .filter(finding -> finding.rule().equals(rule))
                .flatMap(finding -> InWords.limit(finding).stream())
                .collect(Collectors.toCollection(TreeSet::new));
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
