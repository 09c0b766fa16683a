package eavesproof.findings;

import eavesproof.judge.Verdict;
import eavesproof.quantity.Unit;
import eavesproof.rules.RuleSet;
import eavesproof.survey.Place;
import eavesproof.survey.Provenance;
import eavesproof.survey.Working;
import java.util.List;
import java.util.Optional;

/**
 * One requirement held against one subject, finished.
 *
 * @param kind of the fact, as results write it: bracket-spacing
 * @param measures what the fact measures, in words for people
 * @param because why it is not a plain verdict on the limit
 * @param assumed circumstances that were assumed and that the verdict rests on, in words
 * @param remedy what to do, in words for people; absent where nothing is known to help
 */
public record Finding(
        String rule,
        String topic,
        String says,
        Verdict verdict,
        String kind,
        String measures,
        Place place,
        Optional<Measured> measured,
        Optional<Limit> limit,
        Optional<Double> margin,
        Optional<Double> probability,
        String decision,
        List<String> because,
        Source source,
        Optional<Provenance> provenance,
        List<String> assumed,
        Optional<String> remedy,
        List<Working> workings) {

    public Finding {
        because = List.copyOf(because);
        assumed = List.copyOf(assumed);
        workings = List.copyOf(workings);
    }

    /** What was found. */
    public sealed interface Measured {}

    /** A number; the expanded uncertainty (k = 2) is absent where it was not stated. */
    public record MeasuredNumber(double value, Unit unit, Optional<Double> expandedUncertainty)
            implements Measured {}

    public record MeasuredWord(String word) implements Measured {}

    /** What was required. */
    public sealed interface Limit {}

    public record NumberLimit(boolean atMost, double value, Unit unit, String asWritten)
            implements Limit {}

    public record WordLimit(List<String> words) implements Limit {
        public WordLimit {
            words = List.copyOf(words);
        }
    }

    /** Where the requirement comes from. */
    public record Source(
            String document, String edition, String clause, RuleSet.Standing standing) {}

    /** The run it is about; empty where it is about the whole job. */
    public String run() {
        return place.key("run").orElse("");
    }
}
