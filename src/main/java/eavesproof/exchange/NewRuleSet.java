package eavesproof.exchange;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The {@code rule-set.json} of a rule set that is begun. */
public final class NewRuleSet {
    private NewRuleSet() {}

    /**
     * @param buildsOn the rule set that it is laid over
     * @param replaces names of rules below for which it has its own
     */
    public static String on(
            String name,
            String title,
            String jurisdiction,
            String buildsOn,
            List<String> replaces) {
        Map<String, Object> file = new LinkedHashMap<>();
        file.put("name", name);
        file.put("title", title);
        file.put("jurisdiction", jurisdiction);
        file.put("builds_on", buildsOn);
        file.put("replaces", replaces);
        file.put("drops", Map.of());
        file.put("documents", Map.of());
        file.put("clauses_not_checked", List.of());
        file.put("must_judge", List.of());
        file.put("basis", Map.of());
        file.put("decision", null);
        return JsonLayout.of(file);
    }
}
