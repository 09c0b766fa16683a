package eavesproof.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.quantity.Unit;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleProblem;
import eavesproof.rules.Table;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TableFileTest {
    private static final String TABLE =
            """
            # A document, edition 1, table 2
            # place is words; pitch up deg; roof between m2 +/- 1; section mm2
            place,pitch,roof,section
            "Here, by the sea",25,34,4043
            "Here, by the sea",25,62,6773
            "Here, by the sea",35,29,4043
            There,25,10,4000.5
            """;

    @Test
    void aTableIsReadAsItStands() throws RefusedRules {
        Table table = read(TABLE);
        assertEquals("A document, edition 1, table 2", table.source());
        assertEquals(
                List.of(
                        new Table.Key("place", Table.Meeting.IS, Optional.empty(), 0),
                        new Table.Key("pitch", Table.Meeting.UP, Optional.of(Unit.DEGREE), 0),
                        new Table.Key("roof", Table.Meeting.BETWEEN, Optional.of(Unit.M2), 1)),
                table.keys());
        assertEquals(new Table.Answer("section", Optional.of(Unit.MM2), 0), table.answer());
        assertEquals(4, table.rows().size());
        assertEquals(new Rule.Text("Here, by the sea"), table.rows().get(0).keys().get(0));
        assertEquals(new Rule.Num(4000.5, "4000.5"), table.rows().get(3).answer());
        assertEquals(7, table.rows().get(3).line());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "# A document;A document;1;# and the source",
                "pitch up deg;pitch near deg;2;key is|up|down|between unit",
                "pitch up deg;pitch up degrees;2;units: [mm, m",
                "between m2 +/- 1;between m2 +/- -1;2;tolerance",
                "between m2 +/- 1;between m2 +/- NaN;2;tolerance",
                "place is words;place up words;2;words met by is",
                "pitch up deg;pitch between deg;2;between for the last key only",
                "section mm2;section words;2;a number to find between numbers",
                "place,pitch,roof,section;place,pitch,section;3;place,pitch,roof,section",
                "25,62,6773;25,62;5;4 cells",
                "25,62,6773;25,62,6773,1;5;4 cells",
                "25,62,6773;25,62,NaN;5;a number in mm2",
                "25,62,6773;25,62,1e9;5;a number in mm2",
                "25,62,6773;25,62,;5;a number in mm2",
                "25,62,6773;25,62,-;5;a number in mm2",
                "25,62,6773;25,0x10,6773;5;a number in m2",
                "25,62,6773;25,34,6773;5;each row of keys once",
                "25,62,6773;25,33,6773;5;ascending numbers",
                "35,29,4043;5,29,4043;6;ascending numbers",
                "There,;\"There,;7;4 cells",
            })
    void whatIsWrongIsSaidWithItsLine(String old, String now, int line, String expected) {
        assertTrue(TABLE.contains(old), old);
        RuleProblem problem = problems(TABLE.replace(old, now)).get(0);
        assertEquals("t.csv:" + line, problem.where(), problem::text);
        assertTrue(problem.expected().contains(expected), problem::text);
    }

    @Test
    void equalWordsLieTogether() {
        RuleProblem problem = problems(TABLE + "\"Here, by the sea\",55,29,4043\n").get(0);
        assertEquals("t.csv:8", problem.where());
        assertEquals("equal words in rows together", problem.expected());
    }

    @Test
    void anAnswerMayBeSomeWords() throws RefusedRules {
        String words = "# s\n# i up mm/h; type words\ni,type\n90,A|C\n";
        assertEquals(new Rule.Text("A|C"), read(words).rows().get(0).answer());
        assertTrue(problems(words.replace("A|C", "A||C")).get(0).text().contains("words with |"));
        assertTrue(problems(words.replace("A|C", "A|A")).get(0).text().contains("words with |"));
    }

    @Test
    void aDashIsARowForWhichNothingIsPrinted() throws RefusedRules {
        Table table =
                read("# A document\n# pitch up deg; roof m2\npitch,roof\n25,60\n35,-\n45,40\n");
        assertEquals(Table.NONE, table.rows().get(1).answer());
    }

    @Test
    void aTableMayNotBeOfAnySize() {
        String big = TABLE + "There,26,1,1\n".repeat(30_000);
        assertTrue(problems(big).get(0).expected().contains("at most 262144"));
        StringBuilder many = new StringBuilder("# s\n# a up mm; b mm\na,b\n");
        for (int i = 0; i < 5001; i++) {
            many.append(i).append(",1\n");
        }
        assertTrue(problems(many.toString()).get(0).expected().contains("at most 5000 rows"));
    }

    @Test
    void aFileOfAnotherKindIsRefusedAndNotHalfRead() {
        for (String text : List.of("", "\n\n\n\n", "# a\n# b\n", "{}", "\u0000\u0000", "\ufeff")) {
            assertThrows(RefusedRules.class, () -> read(text), text);
        }
    }

    private static Table read(String text) throws RefusedRules {
        return TableFile.read("t.csv", "t", text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<RuleProblem> problems(String text) {
        return assertThrows(RefusedRules.class, () -> read(text)).problems();
    }
}
