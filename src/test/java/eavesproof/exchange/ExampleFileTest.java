package eavesproof.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.ExampleFile.Example;
import eavesproof.findings.Expectation;
import eavesproof.judge.Verdict;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ExampleFileTest {
    private static final String RUN =
            """
            {"id": "%s", "straights": [{"id": "%s1", "brackets": [{"id": "b1"}, {"id": "b2"}]}]}""";

    private static final String FILE =
            """
            {"title": "two brackets",
             "job": {"id": "j", "runs": [%s, %s]},
             "expect": [{"rule": "bracket centres", "verdict": "not-recorded",
               "subject": {"run": "a", "gutter_end": "a1.left"}, "why": "no stations"}]}
            """
                    .formatted(RUN.formatted("a", "a"), RUN.formatted("b", "b"));

    private static Example read(String text) throws BadRecord {
        return ExampleFile.read(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<RecordProblem> refused(String text) {
        return assertThrows(BadRecord.class, () -> read(text)).problems();
    }

    @Test
    void anExampleIsAJobWithWhatItExpects() throws BadRecord {
        Example example = read(FILE);
        assertEquals("two brackets", example.title());
        assertEquals("j", example.job().id());
        assertEquals(
                List.of(
                        new Expectation(
                                "bracket centres",
                                Map.of("run", "a", "gutterEnd", "a1.left"),
                                Verdict.NOT_RECORDED,
                                "no stations")),
                example.expect());
    }

    @Test
    void twoRunsOfAnExampleMayEachHaveABracketOfTheSameName() throws BadRecord {
        assertEquals(2, read(FILE).job().runs().size());
    }

    @Test
    void oneRunOfAnExampleMayNot() {
        RecordProblem twice = refused(FILE.replaceFirst("b2", "b1")).get(0);
        assertEquals("/job/runs/0/straights/0/brackets/1/id", twice.pointer());
    }

    @Test
    void theJobInItIsReadAsStrictlyAsAnyOther() {
        RecordProblem unknown = refused(FILE.replaceFirst("\"brackets\"", "\"hangers\"")).get(0);
        assertTrue(unknown.pointer().startsWith("/job/runs/0"), unknown.text());
        assertEquals(2, unknown.line());
    }

    @Test
    void aVerdictThatThereIsNotIsRefused() {
        assertEquals(
                "/expect/0/verdict",
                refused(FILE.replace("not-recorded", "passes")).get(0).pointer());
    }

    @Test
    void anExpectationWithoutItsReasonIsRefused() {
        assertEquals(
                "/expect/0",
                refused(FILE.replace(", \"why\": \"no stations\"", "")).get(0).pointer());
    }

    @Test
    void aKeyThatNoFactHasIsRefused() {
        assertEquals(
                "/expect/0/subject/roof",
                refused(FILE.replace("gutter_end", "roof")).get(0).pointer());
    }
}
