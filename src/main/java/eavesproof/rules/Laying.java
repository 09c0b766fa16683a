package eavesproof.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Lays the layers over one another from the root up, and notes where they contradict. */
final class Laying {
    private static final int MOST_RULES = 1000;
    private static final String SOURCE =
            "a key of documents in rule-set.json, then the clause; there are ";

    private final List<RuleSet> layers;
    private final List<RuleProblem> problems = new ArrayList<>();
    private final TreeMap<String, Rule> effective = new TreeMap<>();
    private final Map<String, Integer> layerOf = new HashMap<>();
    private final Map<String, RuleSet.Document> documents = new LinkedHashMap<>();
    private final TreeMap<String, Stated> basis = new TreeMap<>();
    private final List<List<RuleChange>> changes = new ArrayList<>();
    private final List<List<Rule>> own = new ArrayList<>();
    private Optional<Decision> decision = Optional.empty();

    Laying(List<RuleSet> rootFirst) {
        if (rootFirst.isEmpty()) {
            throw new IllegalArgumentException("no layer at all");
        }
        this.layers = rootFirst;
    }

    RuleBook book() throws RefusedRules {
        for (RuleSet layer : layers) {
            changes.add(new ArrayList<>());
            documents(layer);
            basis(layer);
            List<Rule> rules = rules(layer);
            drop(layer);
            lay(layer, rules);
            decision = layer.decision().or(() -> decision);
            own.add(rules);
        }
        RuleSet root = layers.get(0);
        if (decision.isEmpty()) {
            problem(root, "no decision", "simple, or {\"guard\": a factor}");
        }
        if (effective.isEmpty() || effective.size() > MOST_RULES) {
            problem(root, effective.size() + " rules", "some, and at most " + MOST_RULES);
        }
        if (!problems.isEmpty()) {
            throw new RefusedRules(problems);
        }
        List<List<Rule>> inForce = new ArrayList<>();
        for (int i = 0; i < own.size(); i++) {
            inForce.add(inForce(i));
        }
        return new RuleBook(
                layers,
                effective,
                inForce,
                changes,
                documents,
                basis,
                decision.orElse(Decision.SIMPLE));
    }

    private List<Rule> inForce(int layer) {
        return own.get(layer).stream()
                .filter(rule -> layerOf.getOrDefault(rule.name(), -1) == layer)
                .toList();
    }

    /** One key is one document: a rule below must not end up citing the edition of one above. */
    private void documents(RuleSet layer) {
        layer.documents()
                .forEach(
                        (key, document) -> {
                            RuleSet.Document below = documents.putIfAbsent(key, document);
                            if (below != null && !below.equals(document)) {
                                problem(
                                        layer,
                                        "the document " + key + " of a layer below, changed",
                                        "a key of its own");
                            }
                        });
    }

    private void basis(RuleSet layer) {
        layer.basis()
                .forEach(
                        (key, stated) -> {
                            String source = stated.source().text();
                            Optional<Rule.Cited> cited = Citation.in(source, documents.keySet());
                            if (cited.isEmpty()) {
                                problem(
                                        layer,
                                        "basis " + key + " with the source " + source,
                                        SOURCE + String.join(", ", documents.keySet()));
                            }
                            basis.put(key, cited.map(stated::citing).orElse(stated));
                        });
    }

    /** The layer's own, each with the document that it cites. */
    private List<Rule> rules(RuleSet layer) {
        Set<String> names = new HashSet<>();
        List<Rule> rules = new ArrayList<>();
        for (Rule rule : layer.rules()) {
            if (!names.add(rule.name())) {
                problem(rule, "the name " + rule.name() + " again", "each name once");
                continue;
            }
            Optional<Rule.Cited> cited = Citation.in(rule.source().text(), documents.keySet());
            if (cited.isEmpty()) {
                problem(
                        rule,
                        "@source " + rule.source().text(),
                        SOURCE + String.join(", ", documents.keySet()));
            }
            rules.add(cited.map(rule::citing).orElse(rule));
        }
        return rules;
    }

    private void drop(RuleSet layer) {
        layer.drops()
                .forEach(
                        (name, reason) -> {
                            Rule below = effective.remove(name);
                            layerOf.remove(name);
                            if (below == null) {
                                problem(layer, "drops " + name, "a rule that is there below");
                            } else {
                                change(RuleChange.dropped(below, reason));
                            }
                        });
    }

    private void lay(RuleSet layer, List<Rule> rules) {
        Set<String> open = new HashSet<>(layer.replaces());
        for (Rule rule : rules) {
            boolean listed = open.remove(rule.name());
            Rule below = effective.put(rule.name(), rule);
            layerOf.put(rule.name(), own.size());
            if (below != null && !listed) {
                problem(
                        rule,
                        "the name " + rule.name() + " of a rule below",
                        "it in replaces, or another name");
            } else if (below == null && listed) {
                problem(layer, "replaces " + rule.name(), "a rule that is there below");
            } else if (below != null) {
                change(RuleChange.replaced(below, rule));
            } else if (!own.isEmpty()) {
                change(RuleChange.added(rule));
            }
        }
        for (String name : layer.replaces()) {
            if (open.contains(name)) {
                problem(layer, "replaces " + name, "a rule of that name in its own files");
            }
        }
    }

    /** Of the layer that is being laid. */
    private void change(RuleChange change) {
        changes.get(changes.size() - 1).add(change);
    }

    private void problem(RuleSet layer, String found, String expected) {
        problems.add(new RuleProblem(layer.name() + "/rule-set.json", found, expected));
    }

    private void problem(Rule rule, String found, String expected) {
        problems.add(RuleProblem.at(rule.file(), rule.line(), found, expected));
    }
}
