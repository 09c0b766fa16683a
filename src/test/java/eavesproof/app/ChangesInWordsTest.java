package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.findings.Findings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything that somebody can change in a copy of the shipped rules is itemised. */
class ChangesInWordsTest {
    private static final Path SHIPPED = Path.of("rules");
    private static final String SAID = "rule-set.json";

    @TempDir Path folder;

    private Findings.RulesUsed changed(String file, String old, String now) throws Exception {
        return changed("trade-practice", file, old, now);
    }

    private Findings.RulesUsed changed(String set, String file, String old, String now)
            throws Exception {
        Path copy = folder.resolve(set);
        copy(SHIPPED.resolve(set), copy);
        String text = Files.readString(copy.resolve(file));
        assertTrue(text.contains(old), old);
        Files.writeString(copy.resolve(file), text.replace(old, now));
        return RulesOfJob.inWords(RuleSets.load(copy.toString(), SHIPPED));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
    }

    private static Findings.RulesUsed shipped() throws Exception {
        return RulesOfJob.inWords(RuleSets.load("trade-practice", SHIPPED));
    }

    @Test
    void anotherLimitNamesBoth() throws Exception {
        assertEquals(
                List.of("bracket centres: at most 900 mm, was at most 500 mm"),
                changed("support.drl", "$spacing, 500,", "$spacing, 900,").changes());
    }

    @Test
    void aConditionThatWasTakenAwayIsNamedAndNotTheLimitThatStayed() throws Exception {
        List<String> changes =
                changed(
                                "support.drl",
                                "  HeavyRain(run == $run, said == \"yes\")\n",
                                "  HeavyRain(run == $run, said == \"no\")\n")
                        .changes();
        assertEquals(1, changes.size(), changes.toString());
        assertTrue(
                changes.get(0).startsWith("bracket centres where rain is heavy: now only where "),
                changes.get(0));
        assertTrue(changes.get(0).contains("; no longer only where "), changes.get(0));
        assertFalse(changes.get(0).contains("300 mm"), changes.get(0));
    }

    @Test
    void anotherDecisionOfARuleAndOtherWordsAreNamed() throws Exception {
        assertEquals(
                List.of(
                        "bracket centres: decided simple, was guarded r=1; says “Brackets of a"
                                + " cemented PVC-U gutter are somewhere.”, was “Brackets of a"
                                + " cemented PVC-U gutter are close enough together to keep it from"
                                + " sagging.”"),
                changed(
                                "support.drl",
                                "cemented PVC-U gutter are close enough together to keep it from"
                                        + " sagging.\")\n",
                                "cemented PVC-U gutter are somewhere.\")\n  @decision(\"simple\")\n")
                        .changes());
    }

    @Test
    void aRuleUnderAnotherNameIsSaidToBeTheSame() throws Exception {
        assertEquals(
                List.of("bracket centres: now called brackets, and the same otherwise"),
                changed("support.drl", "rule \"bracket centres\"", "rule \"brackets\"").changes());
    }

    @Test
    void anotherDecisionRuleOfTheWholeIsNamed() throws Exception {
        assertEquals(
                List.of("decision rule: simple, was guarded r=1"),
                changed(SAID, "{\"guard\": 1}", "\"simple\"").changes());
    }

    @Test
    void whatNeedNoLongerBeJudgedIsNamed() throws Exception {
        List<String> changes = changed(SAID, "    \"EndSupport\",\n", "").changes();
        assertEquals(List.of("must judge: left out, was EndSupport"), changes);
    }

    @Test
    void whatEveryRuleSetMustJudgeCannotBeLeftOut() throws Exception {
        assertEquals(
                List.of("Nothing that decides or is printed: comments and layout alone."),
                changed(SAID, "    \"BracketSpacing\",\n", "").changes());
    }

    @Test
    void aDocumentThatIsSaidToBeMoreThanItIsIsNamed() throws Exception {
        assertEquals(
                List.of(
                        "document en-12056-3: edition: 2026, was 2000; standing: law, was from memory"),
                changed(
                                SAID,
                                "\"edition\": \"2000\",\n      \"valid_from\": null,\n      \"valid_to\":"
                                        + " null,\n      \"date_checked\": \"2026-11-25\",\n     "
                                        + " \"standing\": \"from memory\"",
                                "\"edition\": \"2026\",\n      \"valid_from\": null,\n      \"valid_to\":"
                                        + " null,\n      \"date_checked\": \"2026-11-25\",\n     "
                                        + " \"standing\": \"law\"")
                        .changes());
    }

    @Test
    void aBasisOfAnotherCountryIsNamed() throws Exception {
        assertEquals(
                List.of(
                        "wall share: 0.2 (Approved Document H, drainage and waste disposal, as"
                                + " remembered and as quoted, H3 table 1), was 0.5 (Approved"
                                + " Document H, drainage and waste disposal, as remembered and as"
                                + " quoted, H3 table 1)"),
                changed("gb-eng", SAID, "{\"is\": 0.5,", "{\"is\": 0.2,").changes());
    }

    @Test
    void aRuleBelowThatACopyDropsIsNamedWithItsReason() throws Exception {
        List<String> changes =
                changed(
                                "gb-eng",
                                SAID,
                                "\"drops\": {}",
                                "\"drops\": {\"bracket centres\": \"nobody looks\"}")
                        .changes();
        assertEquals(
                List.of("bracket centres: left out, was at most 500 mm (nobody looks)"), changes);
    }

    @Test
    void titleAndClausesAreNamedAndHaveAHashOfTheirOwn() throws Exception {
        Findings.RulesUsed renamed =
                changed(SAID, "What a tidy gutter job satisfies", "The law of gutters");
        assertEquals(
                List.of("title: The law of gutters, was What a tidy gutter job satisfies"),
                renamed.changes());
        assertEquals(shipped().sha256(), renamed.sha256());
        assertNotEquals(shipped().wordsSha256(), renamed.wordsSha256());
    }

    @Test
    void aClauseThatIsNoLongerNamedAsNotCheckedIsNamed() throws Exception {
        String clause = shipped().clausesNotChecked().get(0);
        Findings.RulesUsed silent = changed(SAID, "\"" + clause + "\",", "");
        assertEquals(List.of("named as not checked: left out, was " + clause), silent.changes());
        assertNotEquals(shipped().wordsSha256(), silent.wordsSha256());
    }

    @Test
    void aCommentAloneChangesNothingThatDecidesOrIsPrinted() throws Exception {
        Findings.RulesUsed commented =
                changed("support.drl", "// What holds the gutter up.", "// Hello.");
        assertEquals(
                List.of("Nothing that decides or is printed: comments and layout alone."),
                commented.changes());
        assertFalse(commented.asShipped());
    }
}
