package eavesproof.app;

import eavesproof.report.RequirementInWords;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleChange;
import eavesproof.rules.RuleSet;
import eavesproof.rules.RuleText;
import eavesproof.survey.FactKind;
import eavesproof.survey.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What became of one rule, in words: each thing that differs, with what it was. */
final class ChangedRule {
    private final RuleBook from;
    private final RuleBook to;
    private final List<String> parts = new ArrayList<>();

    private ChangedRule(RuleBook from, RuleBook to) {
        this.from = from;
        this.to = to;
    }

    /** bracket centres: at most 450 mm, was at most 500 mm. */
    static String inWords(RuleChange change, RuleBook from, RuleBook to) {
        String name = change.rule() + ": ";
        if (change.before().isEmpty()) {
            Rule added = change.after().orElseThrow();
            String where = String.join(" and ", RequirementInWords.when(added));
            return name
                    + "added, "
                    + change.demandAfter().orElse("")
                    + (where.isEmpty() ? "" : ", where " + where);
        }
        if (change.after().isEmpty()) {
            String reason = reason(change.rule(), to);
            return name
                    + "left out, was "
                    + change.demandBefore().orElse("")
                    + (reason.isEmpty() ? "" : " (" + reason + ")");
        }
        return name + new ChangedRule(from, to).differences(change);
    }

    static String renamed(Rule before, Rule after) {
        return before.name() + ": now called " + after.name() + ", and the same otherwise";
    }

    private static String reason(String rule, RuleBook book) {
        return book.layers().stream()
                .flatMap(layer -> Stream.ofNullable(layer.drops().get(rule)))
                .reduce("", (lower, higher) -> higher);
    }

    private String differences(RuleChange change) {
        Rule before = change.before().orElseThrow();
        Rule after = change.after().orElseThrow();
        String was = change.demandBefore().orElse("");
        String now = change.demandAfter().orElse("");
        if (!was.equals(now)) {
            parts.add(now.startsWith(was + ", with") ? now : now + ", was " + was);
        }
        differ("judges ", subject(before), subject(after));
        circumstances(before, after);
        differ("decided ", from.decision(before).text(), to.decision(after).text());
        differ("source ", source(before, from), source(after, to));
        differ("topic ", before.topic(), after.topic());
        differ("says ", quoted(before.says()), quoted(after.says()));
        return parts.isEmpty() ? "written otherwise" : String.join("; ", parts);
    }

    private void circumstances(Rule before, Rule after) {
        List<String> were = RequirementInWords.when(before);
        List<String> are = RequirementInWords.when(after);
        String added = only(are, were);
        String gone = only(were, are);
        if (!added.isEmpty()) {
            parts.add("now only where " + added);
        }
        if (!gone.isEmpty()) {
            parts.add("no longer only where " + gone);
        }
        if (added.isEmpty() && gone.isEmpty() && !asked(before).equals(asked(after))) {
            parts.add("what it asks of its circumstances is joined otherwise");
        }
    }

    private static String only(List<String> these, List<String> those) {
        return these.stream()
                .filter(one -> !those.contains(one))
                .collect(Collectors.joining(" and "));
    }

    private static List<String> asked(Rule rule) {
        return Stream.concat(Stream.of(rule.subject()), rule.circumstances().stream())
                .map(RuleText::pattern)
                .sorted()
                .toList();
    }

    private void differ(String what, String was, String now) {
        if (!was.equals(now)) {
            parts.add(what + now + ", was " + was);
        }
    }

    private static String subject(Rule rule) {
        return Vocabulary.kind(rule.subject().kind()).map(FactKind::says).orElse("");
    }

    private static String source(Rule rule, RuleBook book) {
        RuleSet.Document document = book.document(rule);
        String clause = rule.source().clause();
        return quoted(document.title() + (clause.isEmpty() ? "" : ", " + clause));
    }

    private static String quoted(String words) {
        return "“" + words + "”";
    }
}
