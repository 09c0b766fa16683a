package eavesproof.app;

import eavesproof.rules.RuleBook;
import java.util.List;

/**
 * What differs from one rule set to another.
 *
 * @param rules what becomes of each rule that differs
 * @param others what else can move a verdict
 * @param notCheckedBefore clauses that the first alone does not check
 * @param notCheckedAfter clauses that the second alone does not check
 */
public record CompareRules(
        List<String> rules,
        List<String> others,
        List<String> notCheckedBefore,
        List<String> notCheckedAfter) {

    public CompareRules {
        rules = List.copyOf(rules);
        others = List.copyOf(others);
        notCheckedBefore = List.copyOf(notCheckedBefore);
        notCheckedAfter = List.copyOf(notCheckedAfter);
    }

    public static CompareRules of(LoadedRules from, LoadedRules to) {
        RuleBook a = from.book();
        RuleBook b = to.book();
        return new CompareRules(
                ChangesInWords.rules(a, b),
                ChangesInWords.settings(a, b),
                besides(a.clausesNotChecked(), b.clausesNotChecked()),
                besides(b.clausesNotChecked(), a.clausesNotChecked()));
    }

    /** Whether every job comes to the same under both. */
    public boolean isSame() {
        return rules.isEmpty() && others.isEmpty();
    }

    private static List<String> besides(List<String> all, List<String> known) {
        return all.stream().filter(one -> !known.contains(one)).toList();
    }
}
