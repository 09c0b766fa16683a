package eavesproof.app;

import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.findings.InWords;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleChange;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What differs from one rule set to another.
 *
 * @param rules what becomes of each rule that differs
 * @param others what else can move a verdict
 * @param notChecked clauses that one of them alone does not check
 */
public record CompareRules(List<String> rules, List<String> others, List<String> notChecked) {

    public CompareRules {
        rules = List.copyOf(rules);
        others = List.copyOf(others);
        notChecked = List.copyOf(notChecked);
    }

    public static CompareRules of(LoadedRules from, LoadedRules to) {
        RuleBook a = from.book();
        RuleBook b = to.book();
        return new CompareRules(
                RuleChange.between(a.rules(), b.rules()).stream()
                        .map(one -> RulesOfJob.inWords(one))
                        .toList(),
                others(a, b),
                onlyIn(a.clausesNotChecked(), b.clausesNotChecked(), a.name(), b.name()));
    }

    /** Whether every job comes to the same under both. */
    public boolean isSame() {
        return rules.isEmpty() && others.isEmpty();
    }

    /** Which verdicts on one job differ; a place that only one of them judges is among them. */
    public static List<String> verdicts(Findings from, Findings to) {
        Map<String, Finding> before = byPlace(from);
        Map<String, Finding> after = byPlace(to);
        Set<String> places = new LinkedHashSet<>(after.keySet());
        places.addAll(before.keySet());
        List<String> changed = new ArrayList<>();
        for (String place : places) {
            String was = verdict(before.get(place));
            String now = verdict(after.get(place));
            if (!was.equals(now)) {
                changed.add(place + ": " + now + ", was " + was);
            }
        }
        return changed;
    }

    private static String verdict(@Nullable Finding finding) {
        if (finding == null) {
            return "not judged";
        }
        String margin = InWords.margin(finding).map(words -> " (" + words + ")").orElse("");
        return finding.verdict().words() + (finding.verdict().needsAction() ? margin : "");
    }

    private static Map<String, Finding> byPlace(Findings findings) {
        Map<String, Finding> byPlace = new LinkedHashMap<>();
        findings.findings()
                .forEach(
                        finding ->
                                byPlace.put(
                                        finding.rule() + ", " + InWords.place(finding.place()),
                                        finding));
        return byPlace;
    }

    private static List<String> others(RuleBook a, RuleBook b) {
        List<String> others = new ArrayList<>();
        Set<String> keys = new TreeSet<>(a.basis().keySet());
        keys.addAll(b.basis().keySet());
        for (String key : keys) {
            String was = Optional.ofNullable(a.basis().get(key)).map(s -> s.text()).orElse("none");
            String now = Optional.ofNullable(b.basis().get(key)).map(s -> s.text()).orElse("none");
            differ(others, key.replace('_', ' '), was, now);
        }
        differ(others, "decision rule", a.decision().text(), b.decision().text());
        for (String kind : onlyIn(a.mustJudge(), b.mustJudge(), a.name(), b.name())) {
            others.add("must be judged, " + kind);
        }
        return others;
    }

    private static void differ(List<String> differences, String what, String was, String now) {
        if (!was.equals(now)) {
            differences.add(what + ": " + now + ", was " + was);
        }
    }

    private static List<String> onlyIn(List<String> a, List<String> b, String nameA, String nameB) {
        List<String> only = new ArrayList<>();
        a.stream()
                .filter(one -> !b.contains(one))
                .forEach(one -> only.add("only in " + nameA + ": " + one));
        b.stream()
                .filter(one -> !a.contains(one))
                .forEach(one -> only.add("only in " + nameB + ": " + one));
        return only;
    }
}
