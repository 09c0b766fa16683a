package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.rules.RefusedRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Folders of rules from strangers: refused in words, or harmless, and soon. */
class HostileRuleSetsTest {
    private static final Path SHIPPED = Path.of("rules");
    private static final Path SAMPLE = Path.of("samples/verandah-pvc.json");
    private static final String RULE_SET =
            """
            {"name": "guest", "title": "A guest", "jurisdiction": "elsewhere",
             "builds_on": "trade-practice", "clauses_not_checked": [], "must_judge": []}
            """;
    private static final String RULES = "// none yet\n";

    @TempDir Path temporary;
    private Path guest;

    @BeforeEach
    void aGuestArrives() throws IOException {
        guest = Files.createDirectory(temporary.resolve("guest"));
        Files.writeString(guest.resolve("rule-set.json"), RULE_SET);
        Files.writeString(guest.resolve("own.drl"), RULES);
    }

    /** Were it refused as it is, all of the below would prove nothing. */
    @Test
    void asItIsTheGuestIsTaken() throws Exception {
        assertEquals("guest", load().book().name());
        assertTrue(verify().isWell());
    }

    @Test
    void aRuleFileThatIsALinkToElsewhereIsRefused() throws Exception {
        Path secret = Files.writeString(temporary.resolve("secret"), "rule \"s3cret\"\n");
        replaceByLink(guest.resolve("own.drl"), secret);
        RefusedRules refused = refused("guest/own.drl");
        assertFalse(refused.getMessage().contains("s3cret"), refused::getMessage);
    }

    @Test
    void aRuleSetThatIsALinkToElsewhereIsRefused() throws Exception {
        Path secret = Files.writeString(temporary.resolve("secret"), RULE_SET);
        replaceByLink(guest.resolve("rule-set.json"), secret);
        refused("guest/rule-set.json");
    }

    @Test
    void aFolderOfTablesThatIsALinkToElsewhereIsRefused() throws Exception {
        Path tables = Files.createDirectory(temporary.resolve("tables"));
        Files.writeString(tables.resolve("t.csv"), "# s\n# a up mm; b mm\na,b\n1,2\n");
        Files.createSymbolicLink(guest.resolve("tables"), tables);
        refused("guest/tables/t.csv");
    }

    @Test
    void anExampleThatIsALinkToElsewhereIsNotRead() throws Exception {
        Path examples = Files.createDirectory(guest.resolve("examples"));
        Path secret = Files.writeString(temporary.resolve("secret"), "s3cret");
        Files.createSymbolicLink(examples.resolve("a.json"), secret);
        List<String> wrong = verify().wrong();
        assertEquals(1, wrong.size(), wrong::toString);
        assertTrue(wrong.get(0).contains("a file of this folder"), wrong::toString);
    }

    @Test
    void aLinkWithinTheFolderIsAsGoodAsAFile() throws Exception {
        Files.move(guest.resolve("own.drl"), guest.resolve("kept.txt"));
        Files.createSymbolicLink(guest.resolve("own.drl"), Path.of("kept.txt"));
        assertEquals("guest", load().book().name());
    }

    @Test
    void aFolderThatIsCalledLikeARuleFileIsRefused() throws Exception {
        Files.createDirectory(guest.resolve("more.drl"));
        refused("guest/more.drl");
    }

    @Test
    void fiveThousandRuleFilesAreRefusedUnread() throws Exception {
        for (int i = 0; i < 5000; i++) {
            Files.createFile(guest.resolve("r" + i + ".drl"));
        }
        assertTrue(refused("guest/").getMessage().contains("at most 100"));
    }

    @Test
    void fiveThousandFilesOfOtherKindsAreNoConcernOfOurs() throws Exception {
        for (int i = 0; i < 5000; i++) {
            Files.createFile(guest.resolve("note" + i + ".txt"));
        }
        assertEquals("guest", load().book().name());
    }

    @Test
    void ofFiveThousandExamplesTwoHundredAreTried() throws Exception {
        Path examples = Files.createDirectory(guest.resolve("examples"));
        for (int i = 0; i < 5000; i++) {
            Files.writeString(examples.resolve("e" + i + ".json"), "{}");
        }
        List<String> wrong = verify().wrong();
        assertTrue(wrong.stream().anyMatch(one -> one.contains("5000 files")), wrong::toString);
        assertTrue(wrong.size() < 2000, () -> wrong.size() + " lines");
    }

    @Test
    void aFileOfManyMegabytesIsRefusedWithItsSize() throws Exception {
        for (String name : List.of("own.drl", "rule-set.json")) {
            String good = Files.readString(guest.resolve(name));
            Files.writeString(guest.resolve(name), " ".repeat(5_000_000));
            assertTrue(refused("guest/" + name).getMessage().contains("5000000 bytes"));
            Files.writeString(guest.resolve(name), good);
        }
    }

    @Test
    void twentyThousandRulesAreRefused() throws Exception {
        String rule =
                Files.readString(Path.of("rules/trade-practice/joints.drl"))
                        .replaceFirst("(?s)^.*?(rule \".*?\nend\n).*$", "$1");
        for (int file = 0; file < 90; file++) {
            StringBuilder rules = new StringBuilder();
            for (int i = 0; i < 150; i++) {
                rules.append(
                        rule.replaceFirst("rule \"[^\"]*\"", "rule \"r" + file + "." + i + "\""));
            }
            Files.writeString(guest.resolve("r" + file + ".drl"), rules.toString());
        }
        assertTrue(refused("trade-practice/rule-set.json").getMessage().contains("at most 1000"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"../trade-practice", "/etc", "a/b", "..", "C:x", "a\\u0000b", "~", ""})
    void builtOnSomethingThatIsNoNameItIsRefused(String name) throws Exception {
        edit("\"trade-practice\"", "\"" + name + "\"");
        refused("guest/rule-set.json");
    }

    @Test
    void aCircleOfTwoIsRefused() throws Exception {
        sibling("second", "guest");
        edit("\"trade-practice\"", "\"second\"");
        assertTrue(refused("second/rule-set.json").getMessage().contains("a circle"));
    }

    @Test
    void aTowerOfLayersIsRefused() throws Exception {
        for (int i = 0; i < 100; i++) {
            sibling("layer" + i, "layer" + (i + 1));
        }
        edit("\"trade-practice\"", "\"layer0\"");
        assertTrue(refused("rule-set.json").getMessage().contains("at most 10"));
    }

    @Test
    void aSiblingThatGoesByAnotherNameIsRefused() throws Exception {
        sibling("second", "trade-practice");
        Path file = temporary.resolve("second/rule-set.json");
        Files.writeString(file, Files.readString(file).replace("\"second\"", "\"trade-practice\""));
        edit("\"trade-practice\"", "\"second\"");
        refused("second/rule-set.json");
    }

    /** A stranger cannot pass for what came with the program by taking its name. */
    @Test
    void aShippedNameDoesNotMakeShippedRules() throws Exception {
        edit("\"guest\"", "\"gb-eng\"");
        assertFalse(load().asShipped());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "\"A guest\" | [[[[[[[[ | 1",
                "\"must_judge\": [] | \"must_judge\": [], \"decision\": {\"guard\": NaN} | 2",
                "\"must_judge\": [] | \"must_judge\": [], \"decision\": {\"guard\": 1e400} | 2",
                "\"must_judge\": [] | \"must_judge\": [], \"decision\": {\"guard\": -1} | 2",
                "\"must_judge\": [] | \"must_judge\": [], \"must_judge\": [] | 2",
                "\"must_judge\": [] | \"must_judge\": [\"Runtime\"] | ",
                "\"must_judge\": [] | \"must_judge\": [\"java.lang.Runtime\"] | 2",
                "\"A guest\" | \"A \\u202etseug\" | 1",
                "\"A guest\" | \"A \\u001b[2J\" | 1",
                "\"A guest\" | \"A \\ud800\" | 1",
                "\"A guest\" | {\"$ref\": \"file:///etc/passwd\"} | 1",
            })
    void whatARuleSetMayNotSayIsRefusedWithItsLine(String old, String now, String line)
            throws Exception {
        edit(old, now);
        RefusedRules refused = refused("guest/rule-set.json");
        String where = refused.problems().get(0).where();
        assertTrue(line == null || where.contains(".json:" + line + ":"), refused::getMessage);
        assertTrue(refused.getMessage().length() < 3000, refused::getMessage);
    }

    @Test
    void anExampleOfAMillionListsOrOfNonsenseIsOneWrongLineOrAFew() throws Exception {
        Path examples = Files.createDirectory(guest.resolve("examples"));
        Files.writeString(examples.resolve("deep.json"), "{\"job\": " + "[".repeat(500_000));
        Files.writeString(examples.resolve("large.json"), " ".repeat(2_000_000));
        Files.writeString(examples.resolve("nonsense.json"), "\u0000\u0001");
        Files.createDirectory(examples.resolve("folder.json"));
        List<String> wrong = verify().wrong();
        for (String name : List.of("deep", "large", "nonsense", "folder")) {
            assertTrue(wrong.stream().anyMatch(one -> one.contains(name + ".json")), name);
        }
        assertTrue(wrong.size() < 20, wrong::toString);
    }

    @Test
    void theJobIsStillCheckedAgainstAGuest() throws Exception {
        CheckedJob checked = CheckJob.check(Files.readAllBytes(SAMPLE), guestName(), SHIPPED);
        assertFalse(checked.findings().rules().asShipped());
    }

    private java.util.Optional<String> guestName() {
        return java.util.Optional.of(guest.toString());
    }

    private void sibling(String name, String buildsOn) throws IOException {
        Path folder = Files.createDirectory(temporary.resolve(name));
        Files.writeString(
                folder.resolve("rule-set.json"),
                RULE_SET.replace("\"guest\"", "\"" + name + "\"")
                        .replace("\"trade-practice\"", "\"" + buildsOn + "\""));
    }

    private void edit(String old, String now) throws IOException {
        Path file = guest.resolve("rule-set.json");
        String text = Files.readString(file);
        assertTrue(text.contains(old), old);
        Files.writeString(file, text.replace(old, now));
    }

    private static void replaceByLink(Path file, Path target) throws IOException {
        Files.delete(file);
        Files.createSymbolicLink(file, target);
    }

    private LoadedRules load() throws Exception {
        return RuleSets.load(guest.toString(), SHIPPED);
    }

    private VerifyRules verify() throws Exception {
        return assertTimeout(
                Duration.ofSeconds(30), () -> VerifyRules.of(guest.toString(), SHIPPED));
    }

    private RefusedRules refused(String where) {
        RefusedRules refused =
                assertTimeout(
                        Duration.ofSeconds(30), () -> assertThrows(RefusedRules.class, this::load));
        assertTrue(
                Objects.requireNonNull(refused.getMessage()).contains(where), refused::getMessage);
        return refused;
    }
}
