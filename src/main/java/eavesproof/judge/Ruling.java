package eavesproof.judge;

import eavesproof.check.Requirement;
import eavesproof.quantity.Uncertain;
import eavesproof.rules.Decision;
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
}
