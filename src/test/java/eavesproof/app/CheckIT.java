package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import eavesproof.app.Launcher.Answer;
import eavesproof.rules.Sha256;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Jobs held against the shipped rules, as somebody at a terminal does it. */
class CheckIT {
    private static final Path SAMPLES = Launcher.distribution().resolve("samples");
    private static final Path GOOD = SAMPLES.resolve("verandah-pvc.json");
    private static final Path FAULTY = SAMPLES.resolve("carport-several-faults.json");
    private static final Path UNFINISHED = SAMPLES.resolve("lean-to-not-recorded.json");
    private static final Path CLOSE = SAMPLES.resolve("shed-too-close.json");

    @TempDir Path elsewhere;
    private Launcher eavesproof;

    @BeforeEach
    void callItFromAFolderOfItsOwn() {
        eavesproof = Launcher.from(elsewhere);
    }

    @Test
    void aJobThatKeepsTheRulesComplies() throws Exception {
        Answer answer = eavesproof.ask("check", GOOD.toString());

        assertEquals(0, answer.exit(), answer::out);
        assertTrue(answer.out().contains("  Complies: "), answer::out);
        assertEquals("", answer.err());
    }

    @Test
    void aJobWithFaultsDoesNotComplyAndTheFaultsComeFirst() throws Exception {
        Answer answer = eavesproof.ask("check", FAULTY.toString());

        assertEquals(1, answer.exit(), answer::out);
        int faults = answer.out().indexOf("\nDOES NOT COMPLY\n");
        int rest = answer.out().indexOf("\nCOMPLIES\n");
        assertTrue(faults > 0 && faults < rest, answer::out);
    }

    @Test
    void whatIsNotRecordedOrTooCloseIsNotShownToComply() throws Exception {
        Answer unfinished = eavesproof.ask("check", UNFINISHED.toString());
        assertEquals(2, unfinished.exit(), unfinished::out);
        assertTrue(unfinished.out().contains("\nNOT RECORDED\n"), unfinished::out);

        Answer close = eavesproof.ask("check", CLOSE.toString());
        assertEquals(2, close.exit(), close::out);
        assertTrue(close.out().contains("\nTOO CLOSE TO CALL\n"), close::out);
    }

    @Test
    void everyLineFitsEightyColumnsAndNoneIsColouredForAFile() throws Exception {
        for (Path sample : List.of(GOOD, FAULTY, UNFINISHED, CLOSE)) {
            Answer answer =
                    eavesproof.with("TERM", "xterm-256color").ask("check", sample.toString());
            assertTrue(answer.out().lines().allMatch(line -> line.length() <= 80), answer::out);
            assertFalse(answer.out().contains("\u001b"), answer::out);
        }
    }

    @Test
    void theSameQuestionHasTheSameAnswer() throws Exception {
        String once = eavesproof.ask("check", FAULTY.toString()).out();
        String again = eavesproof.with("LC_ALL", "C").ask("check", FAULTY.toString()).out();

        assertEquals(once, again);
    }

    @Test
    void otherProgramsGetTheSameOutcomeAndCanSeeWhichRecordItWas() throws Exception {
        Answer answer = eavesproof.ask("check", "--format", "json", FAULTY.toString());
        JsonNode findings = new ObjectMapper().readTree(answer.out());

        assertEquals(1, answer.exit());
        assertEquals("does-not-comply", findings.get("outcome").asText());
        assertEquals(Sha256.of(Files.readAllBytes(FAULTY)), findings.get("job_sha256").asText());
        assertTrue(findings.at("/rules/as_shipped").asBoolean());
        assertTrue(findings.get("findings").size() > 10);
    }

    @Test
    void whatOtherProgramsGetKeepsToThePublishedSchema() throws Exception {
        Schema published;
        try (InputStream schema =
                CheckIT.class.getResourceAsStream("/eavesproof/findings.schema.json")) {
            published =
                    SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                            .getSchema(schema);
        }
        for (Path sample : List.of(GOOD, FAULTY, UNFINISHED, CLOSE)) {
            String json = eavesproof.ask("check", "--format", "json", sample.toString()).out();
            assertEquals(List.of(), published.validate(json, InputFormat.JSON), sample::toString);
        }
    }

    @Test
    void aRecordThatNobodyFilledInIsNotShownToComply() throws Exception {
        assertEquals(0, eavesproof.ask("record", "-o", "new.json").exit());

        Answer answer = eavesproof.ask("check", "new.json");

        assertEquals(2, answer.exit(), answer::err);
        assertFalse(answer.out().contains("\nCOMPLIES\n"), answer::out);
    }

    @Test
    void anExistingRecordStaysUnlessAskedOtherwise() throws Exception {
        Path mine = Files.writeString(elsewhere.resolve("mine.json"), "mine");

        Answer refused = eavesproof.ask("record", "-o", "mine.json");
        assertEquals(74, refused.exit());
        assertTrue(refused.err().contains("mine.json: is there already"), refused::err);
        assertEquals("mine", Files.readString(mine));

        assertEquals(0, eavesproof.ask("record", "-o", "mine.json", "--force").exit());
        assertNotEquals("mine", Files.readString(mine));
    }

    @Test
    void fiveMistakesAreFiveMessages() throws Exception {
        String good = Files.readString(GOOD);
        String bad =
                good.replaceFirst("\"rule_set\":", "\"ruleset\":")
                        .replaceFirst("\"length_mm\": *[0-9.]+", "\"length_mm\": -5")
                        .replaceFirst("\"jointing\": *\"[a-z ]+\"", "\"jointing\": \"glue\"")
                        .replaceFirst("\"kind\": *\"tape\"", "\"kind\": 7")
                        .replaceFirst("\"hold\": *\"[a-z]+\"", "\"hold\": \"loose\"");
        assertNotEquals(good, bad);
        Files.writeString(elsewhere.resolve("bad.json"), bad);

        Answer answer = eavesproof.ask("check", "bad.json");

        assertEquals(65, answer.exit(), answer::err);
        assertEquals("", answer.out());
        long messages =
                answer.err().lines().filter(line -> line.matches("bad\\.json:\\d+:\\d+.*")).count();
        assertEquals(5, messages, answer::err);
        assertTrue(
                answer.err().endsWith("5 mistakes in bad.json; nothing was done\n"), answer::err);
        assertTrue(answer.err().lines().allMatch(line -> line.length() <= 80), answer::err);
    }

    @Test
    void aRuleFileWithAMistakeIsNamedWithItsLine() throws Exception {
        Path rules = Files.createDirectory(elsewhere.resolve("mine"));
        String sheet =
                Files.readString(
                        Launcher.distribution().resolve("rules/trade-practice/rule-set.json"));
        Files.writeString(
                rules.resolve("rule-set.json"), sheet.replace("\"trade-practice\"", "\"mine\""));
        Files.writeString(
                rules.resolve("own.drl"), "rule \"x\"\nwhen\n  $s : BracketSpacin()\nthen\nend\n");

        Answer answer = eavesproof.ask("check", GOOD.toString(), "--rules", "mine");

        assertEquals(65, answer.exit(), answer::err);
        assertEquals("", answer.out());
        assertTrue(answer.err().contains("own.drl:"), answer::err);
    }

    @Test
    void whatCannotBeUnderstoodOrReadSaysWhichItIs() throws Exception {
        Answer unknown = eavesproof.ask("check", "--frmat", "json", GOOD.toString());
        assertEquals(64, unknown.exit());
        assertTrue(unknown.err().contains("unknown option --frmat"), unknown::err);

        Answer format = eavesproof.ask("check", "--format", "xml", GOOD.toString());
        assertEquals(64, format.exit());

        Answer missing = eavesproof.ask("check", "none.json");
        assertEquals(74, missing.exit());
        assertTrue(missing.err().contains("none.json: there is no such file"), missing::err);

        assertEquals("", unknown.out() + format.out() + missing.out());
    }

    @Test
    void rulesThatAreNotThereAreRefused() throws Exception {
        Answer answer = eavesproof.ask("check", GOOD.toString(), "--rules", "atlantis");

        assertEquals(65, answer.exit(), answer::err);
        assertTrue(answer.err().contains("atlantis"), answer::err);
        assertTrue(answer.err().contains("trade-practice"), answer::err);
    }
}
