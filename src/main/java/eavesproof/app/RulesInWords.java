package eavesproof.app;

import eavesproof.findings.Findings;
import eavesproof.rules.RuleBook;
import eavesproof.survey.FactKind;
import eavesproof.survey.Vocabulary;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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

    private static List<String> stated(RuleBook book) {
        List<String> stated = new ArrayList<>();
        book.basis()
                .forEach(
                        (key, one) ->
                                stated.add(
                                        String.join(
                                                ", ",
                                                Stream.of(
                                                                key.replace('_', ' ')
                                                                        + ": "
                                                                        + one.text(),
                                                                book.document(one).title(),
                                                                book.document(one).edition(),
                                                                one.source().clause(),
                                                                book.document(one)
                                                                        .standing()
                                                                        .words())
                                                        .filter(part -> !part.isEmpty())
                                                        .toList())));
        return stated;
    }
}
