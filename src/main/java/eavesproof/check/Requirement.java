package eavesproof.check;

import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.rules.Rule;
import eavesproof.survey.Answer;
import eavesproof.survey.Working;
import java.util.List;

/**
 * One rule laid against one subject: whether it applies, why not where it does not, and the limit.
 *
 * @param because what decided the state where it is not ON: conditions with the recorded values, or
 *     gaps
 * @param relied the known circumstances that were looked at
 */
public record Requirement(
        Rule rule,
        Answer subject,
        State state,
        Limit limit,
        List<String> because,
        List<Answer.Known> relied) {

    public Requirement {
        because = List.copyOf(because);
        relied = List.copyOf(relied);
        if (state != State.ON && because.isEmpty()) {
            throw new IllegalArgumentException(
                    "rule " + rule.name() + " is " + state + " for no reason");
        }
    }

    public enum State {
        /** A condition is known not to hold, and by more than the value's expanded uncertainty. */
        OFF,
        /** Every condition is known to hold, likewise. */
        ON,
        /** A condition lies within its value's expanded uncertainty; the subject is known. */
        BORDERLINE,
        /** A circumstance is a gap; the subject is known. */
        IN_THE_DARK,
        /** The subject is a gap, and no condition is known not to hold. */
        NO_SUBJECT
    }

    /** The limit as far as it can be told. */
    public sealed interface Limit {}

    /**
     * @param value in the unit of the subject's measure
     * @param asWritten as the rule has it: "36 in"
     */
    public record NumberLimit(Uncertain value, Unit unit, String asWritten, List<Working> workings)
            implements Limit {
        public NumberLimit {
            workings = List.copyOf(workings);
        }
    }

    public record WordLimit(List<String> words) implements Limit {
        public WordLimit {
            words = List.copyOf(words);
        }
    }

    /** It cannot be evaluated. */
    public record NoLimit(String why) implements Limit {}
}
