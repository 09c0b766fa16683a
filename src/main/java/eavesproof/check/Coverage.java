package eavesproof.check;

import eavesproof.check.Requirement.State;
import eavesproof.rules.Rule;
import eavesproof.survey.Answer;
import eavesproof.survey.FactKind;
import eavesproof.survey.Facts;
import eavesproof.survey.Survey;
import eavesproof.survey.Vocabulary;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Every rule laid against every subject, and what no rule is known to speak of. The engine says
 * which rules met which subjects; the conditions are compared here too, and the two must agree.
 */
public record Coverage(List<Requirement> requirements, List<Uncovered> uncovered) {

    public Coverage {
        requirements = List.copyOf(requirements);
        uncovered = List.copyOf(uncovered);
    }

    /**
     * Places of one run with facts that the rule set must judge and on which no rule speaks.
     *
     * @param why what kept each rule away, in words
     * @param places how many places of the run
     */
    public record Uncovered(FactKind kind, String run, int places, List<String> why) {
        public Uncovered {
            why = List.copyOf(why);
        }
    }

    /**
     * @param mustJudge names of the fact kinds on which silence is no answer
     * @throws Engine.EngineFault if the engine crashed, or saw other matches than the conditions
     *     give
     */
    public static Coverage of(
            List<Rule> rules, List<String> mustJudge, Survey survey, Engine engine) {
        List<Facts.Fact> facts = survey.known().stream().map(Answer.Known::fact).toList();
        IdentityHashMap<Facts.Fact, Set<String>> matched = matchedRules(engine.matches(facts));
        AnswersByPlace answers = new AnswersByPlace(survey);
        List<Requirement> requirements = new ArrayList<>();
        int expected = 0;
        for (Rule rule : rules) {
            FactKind kind = Vocabulary.kind(rule.subject().kind()).orElseThrow();
            for (Answer subject : survey.of(kind)) {
                RuleOnSubject.Laid laid = RuleOnSubject.lay(rule, subject, answers);
                requirements.add(laid.requirement());
                boolean engineMatched =
                        subject instanceof Answer.Known known
                                && matched.getOrDefault(known.fact(), Set.of())
                                        .contains(rule.name());
                if (engineMatched != laid.engineShouldMatch()) {
                    throw new Engine.EngineFault(
                            "the engine and the conditions disagree on rule \""
                                    + rule.name()
                                    + "\" at "
                                    + subject.place().keys());
                }
                expected += engineMatched ? 1 : 0;
            }
        }
        int seen = matched.values().stream().mapToInt(Set::size).sum();
        if (seen != expected) {
            throw new Engine.EngineFault(
                    "the engine reported " + seen + " matches where " + expected + " were due");
        }
        return new Coverage(requirements, uncovered(mustJudge, survey, requirements));
    }

    private static IdentityHashMap<Facts.Fact, Set<String>> matchedRules(
            List<Engine.Match> matches) {
        IdentityHashMap<Facts.Fact, Set<String>> byFact = new IdentityHashMap<>();
        for (Engine.Match match : matches) {
            if (!byFact.computeIfAbsent(match.subject(), f -> new HashSet<>()).add(match.rule())) {
                throw new Engine.EngineFault(
                        "the engine met rule \"" + match.rule() + "\" twice on one subject");
            }
        }
        return byFact;
    }

    /**
     * A rule in the dark does not speak of its subject: nobody knows whether it applies, and if it
     * does not, perhaps no rule does. That every limit happens to be met must not hide that.
     */
    private static List<Uncovered> uncovered(
            List<String> mustJudge, Survey survey, List<Requirement> requirements) {
        IdentityHashMap<Answer, Set<String>> keptAway = new IdentityHashMap<>();
        Set<Answer> spokenOf = java.util.Collections.newSetFromMap(new IdentityHashMap<>());
        for (Requirement requirement : requirements) {
            if (requirement.state() == State.OFF || requirement.state() == State.IN_THE_DARK) {
                keptAway.computeIfAbsent(requirement.subject(), s -> new LinkedHashSet<>())
                        .addAll(requirement.because());
            } else {
                spokenOf.add(requirement.subject());
            }
        }
        List<Uncovered> result = new ArrayList<>();
        for (String name : mustJudge) {
            FactKind kind = Vocabulary.kind(name).orElseThrow();
            Map<String, List<Answer>> byRun = new LinkedHashMap<>();
            for (Answer answer : survey.of(kind)) {
                if (!(answer instanceof Answer.NoneHere) && !spokenOf.contains(answer)) {
                    byRun.computeIfAbsent(
                                    answer.place().key("run").orElse(""), r -> new ArrayList<>())
                            .add(answer);
                }
            }
            byRun.forEach(
                    (run, answers) -> {
                        Set<String> why = new LinkedHashSet<>();
                        answers.forEach(a -> why.addAll(keptAway.getOrDefault(a, Set.of())));
                        result.add(new Uncovered(kind, run, answers.size(), List.copyOf(why)));
                    });
        }
        return result;
    }
}
