package eavesproof.rules;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds what a rule set is laid over, down to the one that builds on nothing. */
public final class Layers {
    /** A country, a region, a council and a house style are four. */
    private static final int MOST_LAYERS = 10;

    private Layers() {}

    /** Where rule sets are found. */
    public interface Shelf {
        /** The rule set of that name, its rules included; empty where there is none. */
        Optional<RuleSet> find(String name) throws RefusedRules;
    }

    /**
     * The rule set and all below it, the root first.
     *
     * @throws RefusedRules if one of them is not found, or builds on itself by whatever way
     */
    public static List<RuleSet> under(RuleSet top, Shelf shelf) throws RefusedRules {
        List<RuleSet> layers = new ArrayList<>(List.of(top));
        Set<String> names = new LinkedHashSet<>(List.of(top.name()));
        Optional<String> next = top.buildsOn();
        while (next.isPresent()) {
            String name = next.get();
            String where = layers.get(0).name() + "/rule-set.json";
            if (!names.add(name)) {
                String way = String.join(" on ", names) + " on " + name;
                throw refused(where, "a circle: " + way, "builds_on that ends somewhere");
            }
            if (layers.size() == MOST_LAYERS) {
                throw refused(where, "one layer more", "at most " + MOST_LAYERS + " layers");
            }
            Optional<RuleSet> below = shelf.find(name);
            if (below.isEmpty()) {
                throw refused(where, "builds_on " + name, "a rule set that there is");
            }
            if (!below.get().name().equals(name)) {
                throw refused(
                        name + "/rule-set.json",
                        "the name " + below.get().name(),
                        name + ", as its folder is called");
            }
            layers.add(0, below.get());
            next = below.get().buildsOn();
        }
        return layers;
    }

    private static RefusedRules refused(String where, String found, String expected) {
        return new RefusedRules(List.of(new RuleProblem(where, found, expected)));
    }
}
