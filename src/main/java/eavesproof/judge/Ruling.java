package eavesproof.judge;

import eavesproof.check.Requirement;
import eavesproof.quantity.Uncertain;
import eavesproof.rules.Decision;
import eavesproof.rules.Rule;
import eavesproof.survey.Answer;
import java.util.List;
import java.util.Optional;

/**
 * The verdict on one requirement, and what it was decided by.
 *
 * @param margin measured against limit in the unit of the measure, positive on the right side, with
 *     its uncertainty; absent where one of the two is not known or is a word
 * @param probability that the true value meets the limit (JCGM 106:2012 7.3)
 * @param because why it is not a plain verdict on the limit; empty where it is
 */
public record Ruling(
        Requirement requirement,
        Verdict verdict,
        Optional<Uncertain> margin,
        Optional<Double> probability,
        Decision decision,
        List<String> because) {

    public Ruling {
        because = List.copyOf(because);
    }

    /** The name of the rule. */
    public String rule() {
        return requirement.rule().name();
    }

    /** What the rule was laid against. */
    public Answer subject() {
        return requirement.subject();
    }

    /** How much of the expanded uncertainty is kept inside the limit. */
    public double guard() {
        return decision.guard();
    }

    /** What the subject's measure must be. */
    public Demanded demanded() {
        if (requirement.limit() instanceof Requirement.NumberLimit number) {
            return requirement.rule().demand() instanceof Rule.AtMost
                    ? new Demanded.AtMost(number.value().value(), number.unit())
                    : new Demanded.AtLeast(number.value().value(), number.unit());
        }
        return requirement.limit() instanceof Requirement.WordLimit words
                ? new Demanded.OneOf(words.words())
                : new Demanded.NotKnown();
    }

    /** Whether the limit is known to be missed, by more than what is not sure about it. */
    public boolean misses() {
        if (demanded() instanceof Demanded.OneOf words) {
            return subject() instanceof Answer.Known known
                    && !words.words().contains(known.measure().text());
        }
        return margin.filter(Uncertain::isStated)
                .filter(it -> it.value() + guard() * it.expandedUncertainty() < 0)
                .isPresent();
    }
}
