package eavesproof.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LayersTest {

    @Test
    void whatItBuildsOnIsFoundDownToTheRoot() throws RefusedRules {
        RuleSet root = set("root", Optional.empty());
        RuleSet middle = buildingOn("middle", "root");
        RuleSet top = buildingOn("top", "middle");
        List<RuleSet> layers =
                Layers.under(top, name -> Optional.of(name.equals("root") ? root : middle));
        assertEquals(List.of(root, middle, top), layers);
    }

    @Test
    void aCircleIsRefused() {
        RuleSet top = buildingOn("top", "middle");
        RuleSet middle = buildingOn("middle", "top");
        RefusedRules refused =
                assertThrows(
                        RefusedRules.class, () -> Layers.under(top, name -> Optional.of(middle)));
        assertTrue(refused.getMessage().contains("top on middle on top"), refused::getMessage);
    }

    @Test
    void whatIsNotThereToBuildOnIsRefused() {
        assertThrows(
                RefusedRules.class,
                () -> Layers.under(buildingOn("top", "gone"), name -> Optional.empty()));
    }

    @Test
    void aRuleSetFoundUnderAnotherNameIsRefused() {
        RuleSet other = set("other", Optional.empty());
        assertThrows(
                RefusedRules.class,
                () -> Layers.under(buildingOn("top", "middle"), name -> Optional.of(other)));
    }

    private static RuleSet buildingOn(String name, String below) {
        return set(name, Optional.of(below));
    }

    private static RuleSet set(String name, Optional<String> below) {
        return new RuleSet(
                name,
                "",
                "",
                below,
                List.of(),
                Map.of(),
                Map.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                Map.of(),
                List.of());
    }
}
