package eavesproof.app;

import eavesproof.findings.Finding;
import eavesproof.findings.InWords;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleSet;
import eavesproof.rules.RuleText;
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
 * @param decision how a measured value decides
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
        String decision) {

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
                RuleText.words(rule.demand()),
                where(rule),
                rule.circumstances().stream().flatMap(one -> when(one).stream()).toList(),
                source(rule, book),
                kind(rule.subject()).observed()
                        ? "as it is counted or said"
                        : book.decision(rule).text());
    }

    /** The numbers that circumstances bind and the demand reckons with. */
    private static List<String> where(Rule rule) {
        Map<String, String> bound = new LinkedHashMap<>();
        for (Rule.Pattern circumstance : rule.circumstances()) {
            FactKind kind = kind(circumstance);
            for (Rule.Condition condition : circumstance.conditions()) {
                if (condition instanceof Rule.Bind bind && bind.field().equals(kind.measure())) {
                    bound.put(bind.variable(), kind.says());
                }
            }
        }
        List<String> where = new ArrayList<>();
        String demand = RuleText.words(rule.demand());
        bound.forEach(
                (variable, says) -> {
                    if (demand.contains(variable)) {
                        where.add(variable + " is " + says);
                    }
                });
        return where;
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
