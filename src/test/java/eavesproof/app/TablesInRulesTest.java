package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.check.drools.PlainForm;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.RuleBook;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A rule set whose limits stand in a table of its folder. */
class TablesInRulesTest {
    private static final String RULE_SET =
            """
            {"name": "set", "title": "A set", "jurisdiction": "here",
             "documents": {"sheet": {"title": "A sheet", "edition": "1", "standing": "guidance"}},
             "clauses_not_checked": [], "must_judge": [], "decision": "simple"}
            """;

    private static final String RULE =
            """
            rule "bracket centres"
              @topic("support")
              @says("Closer where the gutter is wide.")
              @source("sheet 2")
            when
              $spacing : BracketSpacing($run : run)
              GutterKind(run == $run, named == "eaves")
              GutterMaterial(run == $run, $material : named)
              GutterWidth(run == $run, $width : widthMm)
            then
              require.atMost($spacing, table("centres", $material, $width), "mm");
            end
            """;

    private static final String TABLE =
            """
            # A sheet, table 1
            # material is words; width up mm; most mm
            material,width,most
            PVC-U,125,500
            PVC-U,150,450
            copper,125,750
            """;

    @TempDir private Path folder;

    @Test
    void theFiguresAreInTheRulesIdentityAndTheLayoutIsNot() throws Exception {
        String printed = book(RULE, TABLE).sha256();
        assertNotEquals(printed, book(RULE, TABLE.replace("450", "451")).sha256());
        assertNotEquals(printed, book(RULE, TABLE.replace("up mm", "down mm")).sha256());
        assertNotEquals(
                printed,
                book(
                                RULE,
                                TABLE.replace("150,450\n", "150,450\n")
                                        .replace("width up mm;", "width up mm +/- 1;"))
                        .sha256());
        assertEquals(printed, book(RULE, TABLE.replace("# A sheet, table 1", "# T")).sha256());
        assertEquals(printed, book(RULE, TABLE.replace("125,500", "125.0,500.00")).sha256());
        assertEquals(printed, book(RULE, TABLE.replace("\n", "\r\n")).sha256());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "table(\"centres\";table(\"other\";a table of its own folder",
                "$material, $width;$width;its keys [material, width]",
                "$material, $width;$width, $material;mm for material of table centres",
                "$material, $width;\"PVC\", $width;a key that the table has",
                "$material, $width;7, $width;expected a word",
                "up mm;up mm2;mm for width of table centres; expected mm2",
                "most mm;most in;the answer of table centres in in; expected mm",
                "most mm;most mm/m;the answer of table centres in mm/m; expected mm",
                "copper,125,750;copper,125,x;set/tables/centres.csv:6",
            })
    void aTableThatDoesNotFitIsRefusedWhenItIsRead(String old, String now, String message) {
        assertTrue((RULE + TABLE).contains(old), old);
        RefusedRules refused =
                assertThrows(
                        RefusedRules.class,
                        () -> book(RULE.replace(old, now), TABLE.replace(old, now)));
        assertTrue(refused.getMessage().contains(message), refused::getMessage);
    }

    @Test
    void aFileBesideTheTablesIsNotLeftOutInSilence() throws Exception {
        book(RULE, TABLE);
        Files.writeString(folder.resolve("set/tables/MORE.CSV"), TABLE);
        RefusedRules refused = assertThrows(RefusedRules.class, () -> book(RULE, TABLE));
        assertTrue(refused.getMessage().contains("tables/MORE.CSV"), refused::getMessage);
    }

    @Test
    void aTableOfTheFolderBelongsToWhatTellsShippedRulesFromChangedOnes() throws Exception {
        book(RULE, TABLE);
        RuleFolder once = RuleFolder.read(folder.resolve("set"), PlainForm::read);
        Files.writeString(folder.resolve("set/tables/centres.csv"), TABLE.replace("750", "751"));
        RuleFolder changed = RuleFolder.read(folder.resolve("set"), PlainForm::read);
        assertTrue(once.files().containsKey("tables/centres.csv"));
        assertNotEquals(once.files(), changed.files());
        assertEquals(
                "at most table centres by gutter material and gutter width, in mm, with other figures",
                eavesproof.rules.RuleChange.between(
                                once.ruleSet().rules(), changed.ruleSet().rules())
                        .get(0)
                        .demandAfter()
                        .orElseThrow());
    }

    private RuleBook book(String rule, String table) throws Exception {
        Path set = Files.createDirectories(folder.resolve("set/tables")).resolve("..").normalize();
        Files.writeString(set.resolve("rule-set.json"), RULE_SET);
        Files.writeString(set.resolve("support.drl"), rule);
        Files.writeString(set.resolve("tables/centres.csv"), table);
        return new RuleSets(folder, PlainForm::read).book("set");
    }
}
