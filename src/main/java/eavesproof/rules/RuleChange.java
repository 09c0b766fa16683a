package eavesproof.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What became of one rule from one state of the rules to another.
 *
 * @param before empty where it was added
 * @param after empty where it was dropped
 * @param reason why it was dropped, in the words of whoever did; else empty
 */
public record RuleChange(
        Kind kind, String rule, Optional<Rule> before, Optional<Rule> after, String reason) {

    public enum Kind {
        ADDED,
        DROPPED,
        REPLACED,
        /** Replaced by one that differs in what it demands and in nothing else that counts. */
        LIMIT_CHANGED
    }

    /** What differs, sorted by name; a rule that only moved to another line does not. */
    public static List<RuleChange> between(List<Rule> before, List<Rule> after) {
        Map<String, Rule> old = byName(before);
        Map<String, Rule> now = byName(after);
        TreeMap<String, RuleChange> changes = new TreeMap<>();
        old.forEach(
                (name, rule) -> {
                    if (!now.containsKey(name)) {
                        changes.put(name, dropped(rule, ""));
                    }
                });
        now.forEach(
                (name, rule) -> {
                    Rule was = old.get(name);
                    if (was == null) {
                        changes.put(name, added(rule));
                    } else if (!RuleText.of(was).equals(RuleText.of(rule))
                            || !figures(was).equals(figures(rule))) {
                        changes.put(name, replaced(was, rule));
                    }
                });
        return new ArrayList<>(changes.values());
    }

    static RuleChange added(Rule rule) {
        return new RuleChange(Kind.ADDED, rule.name(), Optional.empty(), Optional.of(rule), "");
    }

    static RuleChange dropped(Rule rule, String reason) {
        return new RuleChange(
                Kind.DROPPED, rule.name(), Optional.of(rule), Optional.empty(), reason);
    }

    static RuleChange replaced(Rule before, Rule after) {
        boolean onlyLimit =
                before.subject().equals(after.subject())
                        && before.circumstances().equals(after.circumstances())
                        && before.decision().equals(after.decision())
                        && !before.demand().equals(after.demand());
        return new RuleChange(
                onlyLimit ? Kind.LIMIT_CHANGED : Kind.REPLACED,
                after.name(),
                Optional.of(before),
                Optional.of(after),
                "");
    }

    /** What was demanded before, and what is now: at most 500 mm. */
    public Optional<String> demandBefore() {
        return before.map(DemandInWords::of);
    }

    /** Where the words are the same and the figures of a table are not, that is said. */
    public Optional<String> demandAfter() {
        Optional<String> now = after.map(DemandInWords::of);
        boolean onlyFigures =
                now.equals(demandBefore())
                        && !before.map(RuleChange::figures).equals(after.map(RuleChange::figures));
        return onlyFigures ? now.map(words -> words + ", with other figures") : now;
    }

    /** bracket centres: at most 450 mm, was at most 500 mm. */
    public String inWords() {
        String now = demandAfter().orElse("");
        String was = demandBefore().orElse("");
        return rule
                + switch (kind) {
                    case ADDED -> ": added, " + now;
                    case DROPPED ->
                            ": left out, was "
                                    + was
                                    + (reason.isEmpty() ? "" : " (" + reason + ")");
                    case LIMIT_CHANGED -> ": " + now + ", was " + was;
                    case REPLACED -> ": rewritten, " + now + ", was " + was;
                };
    }

    /** Of the tables that it looks things up in. */
    public static List<String> figures(Rule rule) {
        return Tables.in(rule).stream()
                .map(lookup -> lookup.figures().map(Table::content).orElse(""))
                .toList();
    }

    private static Map<String, Rule> byName(List<Rule> rules) {
        Map<String, Rule> named = new LinkedHashMap<>();
        rules.forEach(rule -> named.put(rule.name(), rule));
        return named;
    }
}
