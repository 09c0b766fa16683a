package eavesproof.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * The identity of a rule book: a digest over what can move a verdict, printed again in one fixed
 * way. Words for people, comments, line ends, the order of things and the names of files are not in
 * it.
 */
final class Identity {
    private final StringBuilder text = new StringBuilder();

    private Identity() {}

    static String of(RuleBook book) {
        Identity identity = new Identity();
        identity.write(book);
        return Sha256.of(identity.text.toString());
    }

    /** Of what people read and no verdict depends on. */
    static String ofWords(RuleBook book) {
        Identity identity = new Identity();
        identity.writeWords(book);
        return Sha256.of(identity.text.toString());
    }

    private void writeWords(RuleBook book) {
        line("name", book.name());
        line("title", book.title());
        line("jurisdiction", book.jurisdiction());
        lines("layer", book.layers().stream().map(RuleSet::name).toList());
        lines("not checked", book.clausesNotChecked());
        for (Rule rule : book.rules()) {
            line("rule", rule.name());
            line("topic", rule.topic());
            line("says", rule.says());
            line("checked", book.document(rule).checked().orElse(""));
        }
        for (Stated stated : book.basis().values()) {
            line("checked", book.document(stated).checked().orElse(""));
        }
    }

    private void write(RuleBook book) {
        line("decision", book.decision().text());
        lines("must judge", new TreeSet<>(book.mustJudge()));
        lines("replaced", new TreeSet<>(book.replaced()));
        lines("dropped", new TreeSet<>(book.dropped()));
        book.basis()
                .forEach(
                        (key, stated) -> {
                            line("basis", key);
                            line("is", stated.text());
                            line("clause", stated.source().clause());
                            document(book.document(stated));
                        });
        for (Rule rule : book.rules()) {
            line("rule", rule.name());
            line("subject", RuleText.pattern(sorted(rule.subject())));
            lines(
                    "circumstance",
                    rule.circumstances().stream()
                            .map(one -> RuleText.pattern(sorted(one)))
                            .sorted()
                            .toList());
            line("demand", RuleText.words(rule.demand()));
            List<Rule.Lookup> lookups = Tables.in(rule);
            if (!lookups.isEmpty()) {
                lines("table", lookups.stream().map(Identity::figures).toList());
            }
            line("decision", book.decision(rule).text());
            line("clause", rule.source().clause());
            document(book.document(rule));
        }
    }

    private static String figures(Rule.Lookup lookup) {
        return lookup.figures().map(Table::content).orElse("");
    }

    /** The document too: an outcome that rests on a figure known second hand says so. */
    private void document(RuleSet.Document document) {
        line("document", document.key());
        line("title", document.title());
        line("edition", document.edition());
        line("valid from", document.validFrom().orElse(""));
        line("valid to", document.validTo().orElse(""));
        line("standing", document.standing().words());
    }

    private static Rule.Pattern sorted(Rule.Pattern pattern) {
        List<Rule.Condition> conditions = new ArrayList<>(pattern.conditions());
        conditions.sort(Comparator.comparing(RuleText::condition));
        return new Rule.Pattern(pattern.kind(), pattern.variable(), conditions);
    }

    private void lines(String what, Collection<String> values) {
        line(what, String.valueOf(values.size()));
        values.forEach(value -> line(what, value));
    }

    /** With its length, so that no value can pass for two lines. */
    private void line(String what, String value) {
        text.append(what).append(' ').append(value.length()).append(' ').append(value);
        text.append('\n');
    }
}
