package eavesproof.check.drools;

import eavesproof.rules.Decision;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Rule books made from texts in the plain form. */
final class Books {
    private Books() {}

    static RuleBook of(String... texts) throws RefusedRules {
        return RuleBook.of(List.of(layer("root", List.of(), List.of(), texts)));
    }

    static RuleBook over(RuleSet root, RuleSet above) throws RefusedRules {
        return RuleBook.of(List.of(root, above));
    }

    static RuleSet layer(String name, List<String> replaces, List<String> drops, String... texts)
            throws RefusedRules {
        Map<String, String> dropped = new LinkedHashMap<>();
        drops.forEach(rule -> dropped.put(rule, "not here"));
        List<Rule> rules = Plain.read(String.join("\n", texts));
        RuleSet.Document practice =
                new RuleSet.Document(
                        "practice",
                        "Common practice",
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        RuleSet.Standing.COMMON_PRACTICE);
        return new RuleSet(
                name,
                name,
                "nowhere",
                Optional.empty(),
                replaces,
                dropped,
                Map.of(practice.key(), practice),
                List.of(),
                List.of(),
                Optional.of(Decision.SIMPLE),
                Map.of(),
                rules);
    }
}
