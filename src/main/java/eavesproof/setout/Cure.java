package eavesproof.setout;

import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A change that serves, with all that the check said of the changed job: it may mend more than what
 * it was looked for.
 *
 * @param wrong what does not comply once it is made
 * @param more the rules that comply at more places than before
 */
record Cure(Remedy.Change change, Set<Trial.Key> wrong, Set<String> more) {

    static Cure of(Remedy.Change change, Checked before, Checked after) {
        Map<String, Integer> gained = new HashMap<>();
        count(gained, after.rulings(), 1);
        count(gained, before.rulings(), -1);
        Set<String> more = new HashSet<>();
        gained.forEach(
                (rule, by) -> {
                    if (by > 0) {
                        more.add(rule);
                    }
                });
        Set<Trial.Key> wrong = new HashSet<>();
        for (Ruling ruling : after.rulings()) {
            if (ruling.verdict() != Verdict.COMPLIES) {
                wrong.add(Trial.Key.of(ruling));
            }
        }
        return new Cure(change, wrong, more);
    }

    private static void count(Map<String, Integer> all, List<Ruling> rulings, int by) {
        for (Ruling ruling : rulings) {
            if (ruling.verdict() == Verdict.COMPLIES) {
                all.merge(ruling.rule(), by, Integer::sum);
            }
        }
    }

    /** Whether the finding complies once the change is made, or what came in its place does. */
    boolean mends(Ruling ruling) {
        return more.contains(ruling.rule()) && !wrong.contains(Trial.Key.of(ruling));
    }
}
