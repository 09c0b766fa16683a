package eavesproof.setout;

import eavesproof.judge.Ruling;
import eavesproof.survey.Survey;
import java.util.List;
import java.util.Set;

/**
 * What the whole check says of a job.
 *
 * @param uncovered the places of which no rule speaks though the rule set must judge them, in words
 */
public record Checked(Survey survey, List<Ruling> rulings, Set<String> uncovered) {
    public Checked {
        rulings = List.copyOf(rulings);
        uncovered = Set.copyOf(uncovered);
    }
}
