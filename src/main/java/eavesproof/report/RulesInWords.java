package eavesproof.report;

import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleChange;
import eavesproof.survey.FactKind;
import eavesproof.survey.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * All that a rule set will check, for people who do not read rule files.
 *
 * @param layers what lies over what, the root first
 * @param count how many requirements
 * @param always conditions that every requirement has
 * @param topics by name
 * @param laid what each layer above the root does to the rules below it
 * @param stated what it states for the engineering, in words with the source
 * @param mustJudge on what silence is no answer
 */
public record RulesInWords(
        String name,
        String title,
        String jurisdiction,
        List<String> layers,
        int count,
        List<String> always,
        List<Topic> topics,
        List<Laid> laid,
        List<String> stated,
        List<String> mustJudge,
        List<String> notChecked) {

    public RulesInWords {
        layers = List.copyOf(layers);
        always = List.copyOf(always);
        topics = List.copyOf(topics);
        laid = List.copyOf(laid);
        stated = List.copyOf(stated);
        mustJudge = List.copyOf(mustJudge);
        notChecked = List.copyOf(notChecked);
    }

    /** The requirements under one heading, by name. */
    public record Topic(String name, List<RequirementInWords> requirements) {
        public Topic {
            requirements = List.copyOf(requirements);
        }
    }

    /** What a layer adds, changes and leaves out, each with old and new limit. */
    public record Laid(String layer, String over, List<String> changes) {
        public Laid {
            changes = List.copyOf(changes);
        }
    }

    public static RulesInWords of(RuleBook book) {
        List<RequirementInWords> all =
                book.rules().stream().map(rule -> RequirementInWords.of(rule, book)).toList();
        List<String> always =
                all.get(0).when().stream()
                        .filter(one -> all.stream().allMatch(rule -> rule.when().contains(one)))
                        .toList();
        Map<String, List<RequirementInWords>> byTopic =
                all.stream()
                        .map(one -> one.without(always))
                        .collect(
                                Collectors.groupingBy(
                                        RequirementInWords::topic,
                                        TreeMap::new,
                                        Collectors.toList()));
        return new RulesInWords(
                book.name(),
                book.title(),
                book.jurisdiction(),
                book.layers().stream().map(layer -> layer.name()).toList(),
                all.size(),
                always,
                byTopic.entrySet().stream()
                        .map(topic -> new Topic(topic.getKey(), topic.getValue()))
                        .toList(),
                laid(book),
                StatedInWords.of(book),
                book.mustJudge().stream()
                        .map(Vocabulary::kind)
                        .flatMap(Optional::stream)
                        .map(FactKind::says)
                        .toList(),
                book.clausesNotChecked());
    }

    private static List<Laid> laid(RuleBook book) {
        List<Laid> laid = new ArrayList<>();
        for (int i = 1; i < book.layers().size(); i++) {
            laid.add(
                    new Laid(
                            book.layers().get(i).name(),
                            book.layers().get(i - 1).name(),
                            book.changesBy(i).stream().map(RuleChange::inWords).toList()));
        }
        return laid;
    }
}
