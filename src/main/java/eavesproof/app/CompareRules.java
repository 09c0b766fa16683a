package eavesproof.app;

import eavesproof.findings.InWords;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleChange;
import eavesproof.rules.RuleSet;
import eavesproof.survey.BasisKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

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
                RuleChange.between(a.rules(), b.rules()).stream().map(RuleChange::inWords).toList(),
                others(a, b),
                besides(a.clausesNotChecked(), b.clausesNotChecked()),
                besides(b.clausesNotChecked(), a.clausesNotChecked()));
    }

    /** Whether every job comes to the same under both. */
    public boolean isSame() {
        return rules.isEmpty() && others.isEmpty();
    }

    private static List<String> others(RuleBook a, RuleBook b) {
        List<String> others = new ArrayList<>();
        Set<String> keys = new TreeSet<>(a.basis().keySet());
        keys.addAll(b.basis().keySet());
        int places = 0;
        for (String key : keys) {
            if (key.startsWith(BasisKey.RAIN_AT.key() + " ")) {
                places += Objects.equals(a.basis().get(key), b.basis().get(key)) ? 0 : 1;
                continue;
            }
            String was = Optional.ofNullable(a.basis().get(key)).map(s -> s.text()).orElse("none");
            String now = Optional.ofNullable(b.basis().get(key)).map(s -> s.text()).orElse("none");
            differ(others, key.replace('_', ' '), was, now);
        }
        if (places > 0) {
            others.add("another design rain, or none, for " + InWords.count(places, "place"));
        }
        differ(others, "decision rule", a.decision().text(), b.decision().text());
        besides(b.mustJudge(), a.mustJudge()).forEach(kind -> others.add("must judge " + kind));
        besides(a.mustJudge(), b.mustJudge())
                .forEach(kind -> others.add("need no longer judge " + kind));
        a.documents()
                .forEach(
                        (key, was) -> {
                            RuleSet.Document now = b.documents().getOrDefault(key, was);
                            differ(others, "the document " + key, words(was), words(now));
                        });
        return others;
    }

    /** What of a document can move an outcome: when it was in force, and how well it is known. */
    private static String words(RuleSet.Document document) {
        List<String> words = new ArrayList<>();
        words.add(document.title());
        words.add(document.edition());
        words.add(document.validFrom().map(day -> "from " + day).orElse(""));
        words.add(document.validTo().map(day -> "to " + day).orElse(""));
        words.add(document.standing().words());
        words.removeIf(String::isEmpty);
        return String.join(", ", words);
    }

    private static void differ(List<String> differences, String what, String was, String now) {
        if (!was.equals(now)) {
            differences.add(what + ": " + now + ", was " + was);
        }
    }

    private static List<String> besides(List<String> all, List<String> known) {
        return all.stream().filter(one -> !known.contains(one)).toList();
    }
}
