package eavesproof.check.drools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.rules.Decision;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleProblem;
import eavesproof.rules.RuleText;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlainFormTest {
    private static final String LIMIT = "500";

    @Test
    void aRuleIsReadAsItStands() throws RefusedRules {
        Rule rule = Plain.read(Plain.RULE).get(0);
        Rule expected =
                new Rule(
                        "bracket centres",
                        "support",
                        "Brackets are close enough.",
                        new Rule.Cited("practice", "1.2"),
                        Optional.empty(),
                        new Rule.Pattern(
                                "BracketSpacing",
                                "$spacing",
                                List.of(new Rule.Bind("$run", "run"))),
                        List.of(
                                new Rule.Pattern(
                                        "GutterKind",
                                        "",
                                        List.of(
                                                new Rule.Join("run", "$run"),
                                                new Rule.Compare(
                                                        "named",
                                                        Rule.Operator.EQUAL,
                                                        new Rule.Text("eaves")))),
                                new Rule.Pattern(
                                        "GutterWidth",
                                        "",
                                        List.of(
                                                new Rule.Join("run", "$run"),
                                                new Rule.Bind("$width", "widthMm"),
                                                new Rule.Compare(
                                                        "widthMm",
                                                        Rule.Operator.AT_MOST,
                                                        new Rule.Num(150.5, "150.50"))))),
                        new Rule.AtMost(new Rule.Constant(new Rule.Num(500, "500")), "mm"),
                        "plain.drl",
                        1);
        assertEquals(expected, rule);
    }

    @Test
    void anEmptyFileHasNoRules() throws RefusedRules {
        assertEquals(List.of(), Plain.read(""));
        assertEquals(List.of(), Plain.read("// nothing yet\n"));
    }

    @Test
    void commentsAndLineEndsChangeNothingButTheLine() throws RefusedRules {
        String commented =
                "// a note\n" + Plain.RULE.replace("when\n", "when /* of\nthem */ // all\n");
        Rule rule = Plain.read(commented.replace("\n", "\r\n")).get(0);
        assertEquals(Plain.RULE, RuleText.of(rule));
        assertEquals(2, rule.line());
    }

    @Test
    void whatLooksLikeACommentInATextStays() throws RefusedRules {
        Rule rule = Plain.with("close enough.", "close // enough /* by far */.");
        assertEquals("Brackets are close // enough /* by far */.", rule.says());
    }

    @ParameterizedTest
    @CsvSource({"simple, 0", "guarded 1, 1", "guarded 0.5, 0.5"})
    void aDecisionOfItsOwnIsRead(String written, double guard) throws RefusedRules {
        Rule rule = Plain.with("when", "@decision(\"" + written + "\") when");
        assertEquals(Optional.of(new Decision(guard)), rule.decision());
    }

    @ParameterizedTest
    @CsvSource({
        "4 * $width, 4 * $width",
        "(4 * $width), 4 * $width",
        "1 - (2 - 3), 1 - (2 - 3)",
        "(1 - 2) - 3, 1 - 2 - 3",
        "(1 + 2) * 3, (1 + 2) * 3",
        "1 / (2 * 3), 1 / (2 * 3)",
        "-5 + $width / -2.5, -5 + $width / -2.5",
        "'2 * table(\"t\", $width, \"PVC-U\", 25)', '2 * table(\"t\", $width, \"PVC-U\", 25)'",
    })
    void aLimitKeepsItsMeaning(String written, String printed) throws RefusedRules {
        Rule.AtMost demand = (Rule.AtMost) Plain.with(LIMIT, written).demand();
        assertEquals(printed, RuleText.limit(demand.limit()));
    }

    @Test
    void productsComeBeforeSumsAndFromTheLeft() throws RefusedRules {
        Rule.AtMost demand = (Rule.AtMost) Plain.with(LIMIT, "1 - 2 - 3 * 4").demand();
        Rule.Limit two = new Rule.Arithmetic('-', number("1"), number("2"));
        Rule.Limit product = new Rule.Arithmetic('*', number("3"), number("4"));
        assertEquals(new Rule.Arithmetic('-', two, product), demand.limit());
    }

    private static Rule.Limit number(String written) {
        return new Rule.Constant(new Rule.Num(Double.parseDouble(written), written));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "BracketSpacing( | BracketSpacin( | 6 | perhaps BracketSpacing",
                "$run : run | $run : rum | 6 | a key of the subject",
                "widthMm <= | widthMM <= | 8 | perhaps widthMm",
                "named == \"eaves\" | named == \"eave\" | 7 | eaves, box, valley, concealed",
                "named == \"eaves\" | named == 5 | 7 | eaves, box, valley, concealed",
                "named == \"eaves\" | named <= \"eaves\" | 7 | eaves, box, valley, concealed",
                "widthMm <= 150.50 | widthMm <= \"150\" | 8 | and a number",
                "widthMm <= 150.50 | widthMm == 150 | 8 | one of < <= > >=",
                "GutterWidth(run == $run, | GutterWidth( | 8 | each of its keys joined",
                "\"mm\" | \"furlong\" | 10 | one of mm, m, in",
                "\"mm\" | \"mm/m\" | 10 | a unit that mm can be turned into",
                "atMost($spacing, 500, \"mm\") | oneOf($spacing, \"yes\") | 10 | atMost or atLeast",
                "atMost | atmost | 10 | require.atMost",
                "500, | f($width), | 10 | a number, a bound $variable, table(",
                "500, | table(\"T\", $width), | 10 | the name of a table",
                "500, | table(\"t\"), | 10 | its keys",
                "500, | table(\"t\", $run), | 10 | bound to what a circumstance measures",
                "500, | table(\"t\", 1, 2, 3, 4, 5, 6), | 10 | at most 5 keys",
                "500, | $run, | 10 | bound to the number of a circumstance",
                "500, | $other, | 10 | bound to the number of a circumstance",
                "500, | 5 / 0, | 10 | no division by zero",
                "500, | $width, 1, | 10 | the unit in quotes",
                "practice 1.2 |  | 1 | one text in quotes",
                "@topic(\"support\") |  | 1 | @topic, @says and @source",
                "bracket centres | bracket_centres | 1 | letters, digits",
            })
    void whatIsWrongIsSaidWithItsLine(String old, String now, int line, String expected) {
        String text = Plain.change(old, now == null ? "" : now);
        RefusedRules refused = assertThrows(RefusedRules.class, () -> Plain.read(text));
        RuleProblem problem = refused.problems().get(0);
        assertEquals("plain.drl:" + line, problem.where(), problem::text);
        assertTrue(problem.expected().contains(expected), problem::text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"in", "ft", "m"})
    void aBoundNumberIsNotTakenForAnotherUnit(String unit) {
        String text = Plain.change("500, \"mm\"", "4 * $width, \"" + unit + "\"");
        RefusedRules refused = assertThrows(RefusedRules.class, () -> Plain.read(text));
        assertTrue(refused.getMessage().contains("the unit of widthMm"), refused::getMessage);
    }

    @Test
    void allProblemsAreSaidAtOnce() {
        String two = Plain.RULE.replace("bracket centres", "other").replace("\"mm\"", "\"mn\"");
        String text = Plain.change("widthMm <= 150.50", "widthMm <= wide") + two;
        RefusedRules refused = assertThrows(RefusedRules.class, () -> Plain.read(text));
        List<String> where = refused.problems().stream().map(RuleProblem::where).toList();
        assertEquals(List.of("plain.drl:8", "plain.drl:21"), where);
    }

    @Test
    void aFileMayNotBeOfAnySize() {
        String text = Plain.RULE + "// ".repeat(30_000);
        RefusedRules refused = assertThrows(RefusedRules.class, () -> Plain.read(text));
        assertTrue(refused.getMessage().contains("at most 65536"), refused::getMessage);
    }

    @Test
    void aFileMayNotHoldAnyNumberOfRules() {
        StringBuilder many = new StringBuilder();
        for (int i = 0; i < 201; i++) {
            many.append("rule \"r").append(i).append("\" when A() then x; end\n");
        }
        RefusedRules refused = assertThrows(RefusedRules.class, () -> Plain.read(many.toString()));
        assertTrue(refused.getMessage().contains("at most 200"), refused::getMessage);
    }
}
