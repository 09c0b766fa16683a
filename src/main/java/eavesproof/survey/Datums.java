package eavesproof.survey;

import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Which set-ups can be joined, and what is added to a reading of each to bring it to one datum. Two
 * set-ups are joined by readings that both took of one point: the offset is the difference of the
 * two, the mean of the differences where there are several such points.
 *
 * <p>Ties can be gone round in a circle, and then must come back to where they began. Where they
 * miss that by more than what they were read with explains, one of the readings is wrong and nobody
 * knows which: no set-up that these ties join is to be believed. The same holds where several
 * points contradict each other.
 */
final class Datums {
    /** By the word of the tie, then by set-up: every reading of that point. */
    private final Map<String, Map<String, List<Uncertain>>> ties = new TreeMap<>();

    private final Map<String, String> roots = new TreeMap<>();
    private final Map<String, Uncertain> offsets = new TreeMap<>();

    private final Map<String, String> unclosed = new TreeMap<>();
    private final Map<String, Closing> closings = new TreeMap<>();

    /** By how much going round misses, and what the readings explain, mm. */
    private record Closing(String text, double missesMm, double explainedMm) {
        private static final double ROUNDING_MM = 1e-6;

        boolean fails() {
            return missesMm > explainedMm + ROUNDING_MM;
        }

        boolean isRoundNothing() {
            return missesMm < ROUNDING_MM && explainedMm < ROUNDING_MM;
        }

        boolean worseThan(@Nullable Closing other) {
            return other == null || missesMm * other.explainedMm > other.missesMm * explainedMm;
        }
    }

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
        close(steps);
    }

    /** Why no reading of a set-up is to be believed, where its ties contradict each other. */
    Optional<String> unclosed(String setUp) {
        return Optional.ofNullable(unclosed.get(setUp));
    }

    /** How well ties that go round close, where those of a set-up do. */
    Optional<Working> closing(String setUp) {
        return Optional.ofNullable(closings.get(root(setUp)))
                .map(
                        it ->
                                new Working(
                                        "ties close to",
                                        Decimals.with(it.missesMm(), Unit.MM),
                                        it.text() + ", of " + explains(it)));
    }

    private static String explains(Closing closing) {
        return Decimals.with(closing.explainedMm(), Unit.MM)
                + " that what they were read with explains";
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

    private void close(Map<String, Map<String, List<Uncertain>>> steps) {
        Map<String, String> broken = new TreeMap<>();
        steps.forEach(
                (here, others) ->
                        others.forEach(
                                (there, ofPoints) -> {
                                    if (here.compareTo(there) < 0) {
                                        close(here, there, ofPoints, broken);
                                    }
                                }));
        for (String setUp : steps.keySet()) {
            String why = broken.get(root(setUp));
            if (why != null) {
                unclosed.put(setUp, why);
            }
        }
        closings.keySet().removeAll(broken.keySet());
        roots.keySet().removeAll(unclosed.keySet());
        offsets.keySet().removeAll(unclosed.keySet());
    }

    private void close(
            String here, String there, List<Uncertain> ofPoints, Map<String, String> broken) {
        String between = "set-ups " + here + " and " + there;
        Optional<String> contradiction = Repeats.contradiction(ofPoints);
        if (contradiction.isPresent()) {
            String why = "the ties between " + between + " contradict each other: ";
            broken.putIfAbsent(root(here), why + contradiction.get());
            broken.putIfAbsent(root(there), why + contradiction.get());
            return;
        }
        Uncertain misses = toRoot(here, mean(ofPoints)).minus(toRoot(there, Uncertain.exact(0)));
        if (!misses.isStated()) {
            return;
        }
        Closing closing =
                new Closing(
                        "round by " + between,
                        Math.abs(misses.value()),
                        Repeats.CONTRADICTION * misses.standardUncertainty());
        if (closing.fails()) {
            broken.putIfAbsent(
                    root(here),
                    "the ties do not close: "
                            + Decimals.with(closing.missesMm(), Unit.MM)
                            + " "
                            + closing.text()
                            + ", and what they were read with explains "
                            + Decimals.with(closing.explainedMm(), Unit.MM));
        } else if (!closing.isRoundNothing() && closing.worseThan(closings.get(root(here)))) {
            closings.put(root(here), closing);
        }
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
