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
     * The name of the one with the same name, else of the one that at least half of the rules have
     * their names from; nothing for a rule set of its own.
     */
    static Optional<String> of(
            RuleSet changed, Map<String, SortedMap<String, String>> shippedFiles) {
        if (shippedFiles.containsKey(changed.name())) {
            return Optional.of(changed.name());
        }
        Set<String> names = changed.rules().stream().map(Rule::name).collect(Collectors.toSet());
        return shippedFiles.entrySet().stream()
                .filter(shipped -> !changed.buildsOn().equals(Optional.of(shipped.getKey())))
                .map(one -> Map.entry(one.getKey(), Shipped.rulesOf(one.getValue())))
                .filter(one -> !one.getValue().isEmpty())
                .filter(one -> 2 * shared(one.getValue(), names) >= one.getValue().size())
                .max(Comparator.comparingLong(one -> shared(one.getValue(), names)))
                .map(Map.Entry::getKey);
    }

    private static long shared(List<Rule> rules, Set<String> names) {
        return rules.stream().filter(rule -> names.contains(rule.name())).count();
    }
}
