package eavesproof.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.rules.Decision;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleProblem;
import eavesproof.rules.RuleSet;
import eavesproof.rules.Stated;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RuleSetFileTest {
    private static final String GOOD =
            """
            {
              "name": "our-valley",
              "title": "Gutters in our valley",
              "jurisdiction": "our valley",
              "builds_on": "trade-practice",
              "replaces": ["bracket centres"],
              "drops": {"bracket centres where rain is heavy": "It never does."},
              "documents": {
                "data sheet": {"title": "Data sheet", "edition": "2026", "valid_from": "2026-01-01",
                  "valid_to": null, "date_checked": "2026-11-25", "standing": "guidance"}
              },
              "clauses_not_checked": ["Screws."],
              "must_judge": ["BracketSpacing"],
              "decision": {"guard": 0.5},
              "basis": {"run_off": {"is": 0.9, "source": "data sheet 2"},
                "roof_rain": {"is": "plan", "source": "data sheet"}}
            }
            """;

    @Test
    void everyKeyIsRead() throws RefusedRules {
        RuleSet.Document sheet =
                new RuleSet.Document(
                        "data sheet",
                        "Data sheet",
                        "2026",
                        Optional.of("2026-01-01"),
                        Optional.empty(),
                        Optional.of("2026-11-25"),
                        RuleSet.Standing.GUIDANCE);
        RuleSet expected =
                new RuleSet(
                        "our-valley",
                        "Gutters in our valley",
                        "our valley",
                        Optional.of("trade-practice"),
                        List.of("bracket centres"),
                        Map.of("bracket centres where rain is heavy", "It never does."),
                        Map.of("data sheet", sheet),
                        List.of("Screws."),
                        List.of("BracketSpacing"),
                        Optional.of(new Decision(0.5)),
                        Map.of(
                                "run_off",
                                new Stated(
                                        new Rule.Num(0.9, "0.9"),
                                        new Rule.Cited("data sheet 2", "")),
                                "roof_rain",
                                new Stated(
                                        new Rule.Text("plan"), new Rule.Cited("data sheet", ""))),
                        List.of());
        assertEquals(expected, read(GOOD));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"\"simple\" | 0", "{\"guard\": 1} | 1", "{\"guard\": 0} | 0"})
    void aDecisionIsSimpleOrGuarded(String written, double guard) throws RefusedRules {
        RuleSet read = read(GOOD.replace("{\"guard\": 0.5}", written));
        assertEquals(Optional.of(new Decision(guard)), read.decision());
    }

    @Test
    void whatMayBeLeftOutIsEmpty() throws RefusedRules {
        RuleSet read =
                read(
                        """
                        {"name": "a", "title": "b", "jurisdiction": "c",
                         "clauses_not_checked": [], "must_judge": []}
                        """);
        assertEquals(Optional.empty(), read.buildsOn());
        assertEquals(Optional.empty(), read.decision());
        assertTrue(read.replaces().isEmpty() && read.drops().isEmpty());
        assertTrue(read.basis().isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"our-valley\" | \"../nz\" | 2 | small letters",
                "\"our-valley\" | 5 | 2 | small letters",
                "\"name\": | \"names\": | 1 | small letters",
                "\"trade-practice\" | \"/etc\" | 5 | the name of a rule set",
                "[\"bracket centres\"] | \"bracket centres\" | 6 | a list",
                "[\"bracket centres\"] | [\"a\", \"a\"] | 6 | it once",
                "\"It never does.\" | \"\" | 7 | a text",
                "\"It never does.\" | null | 7 | a text",
                "\"2026-01-01\" | \"2026-02-30\" | 9 | a date",
                "\"guidance\" | \"gospel\" | 10 | one of",
                "\"edition\" | \"editions\" | 9 | a text, empty if none",
                "[\"Screws.\"] | null | 1 | a list",
                "\"BracketSpacing\" | 7 | 13 | the name of a fact kind",
                "{\"guard\": 0.5} | {\"guard\": 11} | 14 | 0 to 10",
                "{\"guard\": 0.5} | {\"guard\": 0.00001} | 14 | three decimals",
                "{\"guard\": 0.5} | {\"guard\": 1, \"more\": 1} | 14 | 0 to 10",
                "{\"guard\": 0.5} | \"lenient\" | 14 | 0 to 10",
                "{\"guard\": 0.5} | true | 14 | 0 to 10",
                "\"decision\" | \"jurisdiction\" | 14 | each key only once",
                "\"decision\" | \"bases\" | 14 | one of",
                "\"is\": 0.9 | \"is\": [0.9] | 15 | a number or a text",
                "\"is\": 0.9 | \"was\": 0.9 | 15 | a number or a text",
                "\"run_off\" | \"Run-Off\" | 15 | a key of the basis",
                "\"data sheet 2\" | 2 | 15 | a text on one line",
            })
    void whatIsWrongIsSaidWithItsLine(String old, String now, int line, String expected) {
        assertTrue(GOOD.contains(old));
        RefusedRules refused = assertThrows(RefusedRules.class, () -> read(GOOD.replace(old, now)));
        assertTrue(
                refused.problems().stream()
                        .filter(one -> one.where().startsWith("rule-set.json:" + line + ":"))
                        .anyMatch(one -> one.expected().contains(expected)),
                refused::getMessage);
    }

    @Test
    void allProblemsAreSaidAtOnceInTheirOrder() {
        String text = GOOD.replace("our-valley", "Our Valley").replace("guidance", "gospel");
        RefusedRules refused = assertThrows(RefusedRules.class, () -> read(text));
        assertEquals(
                List.of("rule-set.json:2:11", "rule-set.json:10:67"),
                refused.problems().stream().map(RuleProblem::where).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "null", "7", "{", "{}", "{}{}", "{\"name\": NaN}", "\"x\""})
    void whatIsNoRuleSetIsRefused(String text) {
        assertThrows(RefusedRules.class, () -> read(text));
    }

    @Test
    void deepNestingIsRefused() {
        assertThrows(RefusedRules.class, () -> read("{\"name\":" + "[".repeat(100_000)));
    }

    private static RuleSet read(String text) throws RefusedRules {
        return RuleSetFile.read("rule-set.json", text.getBytes(StandardCharsets.UTF_8));
    }
}
