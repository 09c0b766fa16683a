package eavesproof.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.RuleSetFile;
import eavesproof.exchange.TableFile;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.RuleSet;
import eavesproof.rules.Table;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RainPlacesTest {
    private static final String RULE_SET =
            """
            {"name": "one", "title": "One", "jurisdiction": "here",
             "documents": {"sheet": {"title": "A sheet", "edition": "1", "standing": "guidance"}},
             "clauses_not_checked": [], "must_judge": [], "decision": "simple",
             "basis": {"rain_at": {"is": "rainfall", "source": "sheet 3"}}}
            """;

    private static final String PLACES =
            "# A sheet\n# place is words; rain in/h\nplace,rain\nDry Creek,4\n\"Creek, Wet\",5.5\n";

    @Test
    void eachPlaceIsAnEntryOfTheBasisInMmAnHour() throws RefusedRules {
        RuleSet laid = RainPlaces.in(ruleSet(RULE_SET), tables(PLACES), "f");
        assertEquals(Set.of("rain_at Dry Creek", "rain_at Creek, Wet"), laid.basis().keySet());
        assertEquals("101.6", laid.basis().get("rain_at Dry Creek").text());
        assertEquals("139.7", laid.basis().get("rain_at Creek, Wet").text());
    }

    @Test
    void aRuleSetWithoutPlacesStaysAsItIs() throws RefusedRules {
        RuleSet without = ruleSet(RULE_SET.replaceAll(",\\s*\"basis\".*\\}\\}\\}", "}"));
        assertSame(without, RainPlaces.in(without, Map.of(), "f"));
    }

    @Test
    void aTableThatIsNotThereOrNoneOfPlacesAndRainIsRefused() throws RefusedRules {
        refused(Map.of());
        refused(tables(PLACES.replace("rain in/h", "rain in")));
        refused(tables(PLACES.replace("Dry Creek,4", "Dry Creek,-")));
        refused(tables("# A sheet\n# size up mm; rain in/h\nsize,rain\n4,4\n"));
    }

    private static void refused(Map<String, Table> tables) throws RefusedRules {
        RuleSet ruleSet = ruleSet(RULE_SET);
        RefusedRules refused =
                assertThrows(RefusedRules.class, () -> RainPlaces.in(ruleSet, tables, "f"));
        assertTrue(refused.getMessage().contains("rain_at"), refused::getMessage);
    }

    private static RuleSet ruleSet(String json) throws RefusedRules {
        return RuleSetFile.read("f", json.getBytes(StandardCharsets.UTF_8));
    }

    private static Map<String, Table> tables(String csv) throws RefusedRules {
        byte[] bytes = csv.getBytes(StandardCharsets.UTF_8);
        return Map.of("rainfall", TableFile.read("f", "rainfall", bytes));
    }
}
