package eavesproof.app;

import eavesproof.findings.Findings;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleSet;
import eavesproof.rules.Stated;
import eavesproof.survey.BasisKey;
import eavesproof.survey.FactKind;
import eavesproof.survey.Vocabulary;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The sheet of a rule set: all that it will check, for people who do not read rule files.
 *
 * @param used which rules these are, and what of their documents they do not check
 * @param layers what lies over what, the root first
 * @param requirements by topic, then name
 * @param stated what it states for the engineering, in words with the source
 * @param mustJudge on what silence is no answer
 */
public record RulesInWords(
        Findings.RulesUsed used,
        List<String> layers,
        List<RequirementInWords> requirements,
        List<String> stated,
        List<String> mustJudge) {

    public RulesInWords {
        layers = List.copyOf(layers);
        requirements = List.copyOf(requirements);
        stated = List.copyOf(stated);
        mustJudge = List.copyOf(mustJudge);
    }

    public static RulesInWords of(LoadedRules rules) {
        RuleBook book = rules.book();
        return new RulesInWords(
                RulesOfJob.inWords(rules),
                book.layers().stream().map(layer -> layer.name()).toList(),
                book.rules().stream()
                        .map(rule -> RequirementInWords.of(rule, book))
                        .sorted(
                                Comparator.comparing(RequirementInWords::topic)
                                        .thenComparing(RequirementInWords::name))
                        .toList(),
                stated(book),
                book.mustJudge().stream()
                        .map(Vocabulary::kind)
                        .flatMap(Optional::stream)
                        .map(FactKind::says)
                        .toList());
    }

    /** The places of rain would fill pages: their number is said, with where it comes from. */
    private static List<String> stated(RuleBook book) {
        List<String> stated = new ArrayList<>();
        Map<Rule.Cited, Integer> places = new LinkedHashMap<>();
        book.basis()
                .forEach(
                        (key, one) -> {
                            if (key.startsWith(BasisKey.RAIN_AT.key() + " ")) {
                                places.merge(one.source(), 1, Integer::sum);
                            } else {
                                stated.add(stated(key.replace('_', ' '), one.text(), one, book));
                            }
                        });
        book.basis().values().stream()
                .filter(one -> places.containsKey(one.source()))
                .forEach(
                        one -> {
                            Integer many = places.remove(one.source());
                            if (many != null) {
                                stated.add(stated("rain at", many + " places", one, book));
                            }
                        });
        return stated;
    }

    private static String stated(String what, String is, Stated one, RuleBook book) {
        RuleSet.Document document = book.document(one);
        return Stream.of(
                        what + ": " + is,
                        document.title(),
                        document.edition(),
                        one.source().clause(),
                        document.standing().words())
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
    }
}
