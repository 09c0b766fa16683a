package eavesproof.survey;

import eavesproof.quantity.Uncertain;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which set-ups can be joined, and what is added to a reading of each to bring it to one datum. Two
 * set-ups are joined by readings that both took of one point: the offset is the difference of the
 * two, the mean of the differences where there are several such points. Where these contradict each
 * other the two are not joined.
 */
final class Datums {
    /** By the word of the tie, then by set-up: every reading of that point. */
    private final Map<String, Map<String, List<Uncertain>>> ties = new TreeMap<>();

    private final Map<String, String> roots = new TreeMap<>();
    private final Map<String, Uncertain> offsets = new TreeMap<>();

    void tie(String word, String setUp, Uncertain below) {
        ties.computeIfAbsent(word, it -> new TreeMap<>())
                .computeIfAbsent(setUp, it -> new ArrayList<>())
                .add(below);
    }

    /** To be called once all ties are in. */
    void join() {
        Map<String, Map<String, List<Uncertain>>> steps = steps();
        for (String root : steps.keySet()) {
            if (!roots.containsKey(root)) {
                spread(root, steps);
            }
        }
    }

    /** Set-ups that are joined have the same; one that is tied to none stands alone. */
    String root(String setUp) {
        return roots.getOrDefault(setUp, setUp);
    }

    Uncertain toRoot(String setUp, Uncertain below) {
        Uncertain offset = offsets.get(setUp);
        return offset == null ? below : below.plus(offset);
    }

    static Uncertain mean(List<Uncertain> of) {
        return of.stream().reduce(Uncertain::plus).orElseThrow().times(1.0 / of.size());
    }

    /** From set-up to set-up, what each shared point says the offset is. */
    private Map<String, Map<String, List<Uncertain>>> steps() {
        Map<String, Map<String, List<Uncertain>>> steps = new TreeMap<>();
        for (Map<String, List<Uncertain>> point : ties.values()) {
            String one = "";
            Uncertain ofOne = null;
            for (Map.Entry<String, List<Uncertain>> read : point.entrySet()) {
                String other = read.getKey();
                Uncertain ofOther = mean(read.getValue());
                if (ofOne != null) {
                    Uncertain offset = ofOne.minus(ofOther);
                    step(steps, one, other, offset);
                    step(steps, other, one, offset.times(-1));
                }
                one = other;
                ofOne = ofOther;
            }
        }
        return steps;
    }

    private static void step(
            Map<String, Map<String, List<Uncertain>>> steps,
            String to,
            String from,
            Uncertain offset) {
        steps.computeIfAbsent(to, it -> new TreeMap<>())
                .computeIfAbsent(from, it -> new ArrayList<>())
                .add(offset);
    }

    private void spread(String root, Map<String, Map<String, List<Uncertain>>> steps) {
        Deque<String> next = new ArrayDeque<>(List.of(root));
        roots.put(root, root);
        while (!next.isEmpty()) {
            String here = next.remove();
            for (Map.Entry<String, List<Uncertain>> step :
                    steps.getOrDefault(here, Map.of()).entrySet()) {
                String there = step.getKey();
                if (Repeats.contradiction(step.getValue()).isEmpty()
                        && roots.putIfAbsent(there, root) == null) {
                    offsets.put(there, toRoot(here, mean(step.getValue())));
                    next.add(there);
                }
            }
        }
    }
}
