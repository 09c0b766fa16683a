package eavesproof.report;

import eavesproof.findings.Finding;
import eavesproof.findings.InWords;
import eavesproof.quantity.Decimals;
import eavesproof.rules.Decision;
import eavesproof.rules.DemandInWords;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleSet;
import eavesproof.survey.FactKind;
import eavesproof.survey.Vocabulary;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One rule as people read it.
 *
 * @param measured what it is about: from one support to the next, centre to centre
 * @param demand at most 500 mm
 * @param where what names in the demand stand for
 * @param when what must be so for it to apply
 * @param source document, edition, clause and standing
 * @param cited the same in short: what the document is called in the list of documents, the clause,
 *     and the standing where nobody here has seen the document
 * @param decision how a measured value decides; {@code mark} the same in a word
 * @param layer the rule set that it comes from
 */
public record RequirementInWords(
        String name,
        String topic,
        String says,
        String measured,
        String demand,
        List<String> where,
        List<String> when,
        String source,
        String cited,
        String decision,
        String mark,
        String layer) {

    public RequirementInWords {
        where = List.copyOf(where);
        when = List.copyOf(when);
    }

    static RequirementInWords of(Rule rule, RuleBook book) {
        return new RequirementInWords(
                rule.name(),
                rule.topic(),
                rule.says(),
                kind(rule.subject()).says(),
                DemandInWords.of(rule),
                where(rule),
                when(rule),
                source(rule, book),
                cited(rule, book),
                kind(rule.subject()).observed()
                        ? "as it is counted or seen"
                        : decision(book.decision(rule)),
                kind(rule.subject()).observed() ? "counted" : mark(book.decision(rule)),
                layer(rule, book));
    }

    /** The same without conditions that are said elsewhere. */
    RequirementInWords without(List<String> said) {
        return new RequirementInWords(
                name,
                topic,
                says,
                measured,
                demand,
                where,
                when.stream().filter(condition -> !said.contains(condition)).toList(),
                source,
                cited,
                decision,
                mark,
                layer);
    }

    private static String cited(Rule rule, RuleBook book) {
        List<String> parts = new ArrayList<>();
        parts.add((rule.source().document() + " " + rule.source().clause()).strip());
        RuleSet.Standing standing = book.document(rule).standing();
        if (standing.isUnconfirmed()) {
            parts.add(standing.words());
        }
        return String.join(", ", parts);
    }

    private static String mark(Decision decision) {
        return decision.guard() == 0
                ? "simple"
                : decision.guard() == 1
                        ? "guarded"
                        : "guarded " + Decimals.plain(decision.guard(), 3);
    }

    private static String decision(Decision decision) {
        if (decision.guard() == 0) {
            return "by the reading as it is";
        }
        String times = decision.guard() == 1 ? "" : Decimals.plain(decision.guard(), 3) + " times ";
        return "with " + times + "the uncertainty kept inside the limit";
    }

    private static String layer(Rule rule, RuleBook book) {
        for (int i = 0; i < book.layers().size(); i++) {
            if (book.inForceOf(i).stream().anyMatch(one -> one.name().equals(rule.name()))) {
                return book.layers().get(i).name();
            }
        }
        throw new IllegalArgumentException(rule.name() + " is no rule of " + book.name());
    }

    /** The numbers that circumstances bind and the demand reckons with. */
    private static List<String> where(Rule rule) {
        Map<String, String> bound = new LinkedHashMap<>();
        for (Rule.Pattern circumstance : rule.circumstances()) {
            FactKind kind = kind(circumstance);
            for (Rule.Condition condition : circumstance.conditions()) {
                if (condition instanceof Rule.Bind bind && bind.field().equals(kind.measure())) {
                    bound.put(kind.title(), kind.says());
                }
            }
        }
        List<String> where = new ArrayList<>();
        String demand = DemandInWords.of(rule);
        bound.forEach(
                (title, says) -> {
                    if (demand.contains(title)) {
                        where.add(title + ": " + says);
                    }
                });
        return where;
    }

    /** What must be so for it to apply. */
    public static List<String> when(Rule rule) {
        return rule.circumstances().stream().flatMap(one -> when(one).stream()).toList();
    }

    private static List<String> when(Rule.Pattern circumstance) {
        FactKind kind = kind(circumstance);
        return circumstance.conditions().stream()
                .filter(Rule.Compare.class::isInstance)
                .map(Rule.Compare.class::cast)
                .map(compare -> kind.title() + " " + comparison(compare, kind))
                .toList();
    }

    private static String comparison(Rule.Compare compare, FactKind kind) {
        String unit = kind.unit().map(one -> " " + one.symbol()).orElse("");
        String literal =
                compare.literal() instanceof Rule.Num number
                        ? number.written() + unit
                        : ((Rule.Text) compare.literal()).word();
        return switch (compare.operator()) {
                    case EQUAL -> "is ";
                    case LESS -> "is less than ";
                    case AT_MOST -> "is at most ";
                    case MORE -> "is more than ";
                    case AT_LEAST -> "is at least ";
                }
                + literal;
    }

    private static String source(Rule rule, RuleBook book) {
        RuleSet.Document document = book.document(rule);
        return InWords.source(
                new Finding.Source(
                        document.title(),
                        document.edition(),
                        rule.source().clause(),
                        document.standing()));
    }

    private static FactKind kind(Rule.Pattern pattern) {
        return Vocabulary.kind(pattern.kind()).orElseThrow();
    }
}
