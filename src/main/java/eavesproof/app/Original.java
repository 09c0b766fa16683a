package eavesproof.app;

import eavesproof.rules.Rule;
import eavesproof.rules.RuleSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;

/** Finds the shipped rule set that a changed one was made from. */
final class Original {
    private Original() {}

    /**
     * The rules as shipped of the one with the same name, else of the one that at least half of the
     * rules have their names from; nothing for a rule set of its own.
     */
    static Optional<List<Rule>> of(
            RuleSet changed, Map<String, SortedMap<String, String>> shippedFiles) {
        Map<String, String> same = shippedFiles.get(changed.name());
        if (same != null) {
            return Optional.of(Shipped.rulesOf(same));
        }
        Set<String> names = changed.rules().stream().map(Rule::name).collect(Collectors.toSet());
        return shippedFiles.entrySet().stream()
                .filter(shipped -> !changed.buildsOn().equals(Optional.of(shipped.getKey())))
                .map(shipped -> Shipped.rulesOf(shipped.getValue()))
                .filter(rules -> 2 * shared(rules, names) >= Math.max(1, rules.size()))
                .max(Comparator.comparingLong(rules -> shared(rules, names)));
    }

    private static long shared(List<Rule> rules, Set<String> names) {
        return rules.stream().filter(rule -> names.contains(rule.name())).count();
    }
}
