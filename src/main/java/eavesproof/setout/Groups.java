package eavesproof.setout;

import eavesproof.judge.Demanded;
import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Findings that one change could mend together. */
final class Groups {
    private Groups() {}

    /** By kind and place, or by kind and straight; only what is known to miss its limit. */
    static List<List<Ruling>> of(List<Ruling> rulings) {
        return of(rulings, Groups::canBeChanged);
    }

    /** What a change put or left wrong, be it too close to call only: that is not good enough. */
    static List<List<Ruling>> wrong(List<Ruling> rulings) {
        return of(
                rulings,
                it ->
                        it.verdict() != Verdict.NOT_RECORDED
                                && !(it.demanded() instanceof Demanded.NotKnown));
    }

    private static List<List<Ruling>> of(List<Ruling> rulings, Predicate<Ruling> which) {
        Map<List<Object>, List<Ruling>> groups = new LinkedHashMap<>();
        for (Ruling ruling : rulings) {
            if (which.test(ruling)) {
                Object place =
                        Proposals.alongTheStraight(ruling)
                                ? List.of(Case.run(ruling), Case.straight(ruling))
                                : ruling.subject().place().keys();
                groups.computeIfAbsent(
                                List.of(ruling.subject().kind().name(), place),
                                none -> new ArrayList<>())
                        .add(ruling);
            }
        }
        return List.copyOf(groups.values());
    }

    /** The findings of a group place by place. */
    static List<List<Ruling>> apart(List<Ruling> group) {
        Map<Map<String, String>, List<Ruling>> places = new LinkedHashMap<>();
        group.forEach(
                it ->
                        places.computeIfAbsent(
                                        it.subject().place().keys(), none -> new ArrayList<>())
                                .add(it));
        return List.copyOf(places.values());
    }

    /** Whether the limit is missed for sure, be it that the rule may not apply. */
    static boolean canBeChanged(Ruling ruling) {
        return !(ruling.demanded() instanceof Demanded.NotKnown)
                && (ruling.verdict() == Verdict.DOES_NOT_COMPLY
                        || (ruling.verdict() == Verdict.TOO_CLOSE && ruling.misses()));
    }
}
