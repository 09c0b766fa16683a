package eavesproof.setout;

import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the check says of a changed job, held against what it said before. */
record Trial(boolean serves, List<Ruling> worse) {

    /** One requirement at one place; of gaps several may share what is known of their place. */
    record Key(String rule, Map<String, String> place) {
        static Key of(Ruling ruling) {
            return new Key(ruling.rule(), ruling.subject().place().keys());
        }
    }

    private record Held(Key key, Verdict verdict) {}

    /**
     * It serves if every finding that it is meant to mend complies (or, where its place is no more,
     * what came instead does), nothing needs action that did not before, nothing that complied is
     * let off instead, and no rule has become silent.
     *
     * <p>The findings that are not as they should be come along, for another change on top.
     */
    static Trial of(Checked before, Checked after, List<Ruling> targets) {
        Map<Held, Integer> allowed = new HashMap<>();
        Map<String, Integer> complied = new HashMap<>();
        Set<Key> held = new HashSet<>();
        for (Ruling ruling : before.rulings()) {
            if (ruling.verdict() == Verdict.COMPLIES) {
                complied.merge(ruling.rule(), 1, Integer::sum);
                held.add(Key.of(ruling));
            } else if (ruling.verdict().needsAction()) {
                allowed.merge(new Held(Key.of(ruling), ruling.verdict()), 1, Integer::sum);
            }
        }
        Set<Key> meant = new HashSet<>();
        targets.forEach(it -> meant.add(Key.of(it)));
        Map<String, Integer> complies = new HashMap<>();
        List<Ruling> worse = new ArrayList<>();
        boolean letOff = false;
        for (Ruling ruling : after.rulings()) {
            Key key = Key.of(ruling);
            if (ruling.verdict() == Verdict.COMPLIES) {
                complies.merge(ruling.rule(), 1, Integer::sum);
            } else if (ruling.verdict() == Verdict.NOT_APPLICABLE) {
                letOff |= held.contains(key) || meant.contains(key);
            } else if (meant.contains(key)
                    || allowed.merge(new Held(key, ruling.verdict()), -1, Integer::sum) < 0) {
                worse.add(ruling);
            }
        }
        boolean mended =
                targets.stream()
                        .allMatch(
                                it ->
                                        complies.getOrDefault(it.rule(), 0)
                                                > complied.getOrDefault(it.rule(), 0));
        boolean silent = !before.uncovered().containsAll(after.uncovered());
        return new Trial(mended && worse.isEmpty() && !letOff && !silent, List.copyOf(worse));
    }
}
