package eavesproof.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What is in force once all layers lie over one another. */
public final class RuleBook {
    /**
     * What no rule set can leave unsaid, our choice: how a gutter hangs, where its water goes and
     * whether it carries it. One rule of a stranger shows nothing of a job.
     */
    private static final List<String> LEAST =
            List.of(
                    "SupportCount",
                    "BracketSpacing",
                    "ReachFall",
                    "OutletCount",
                    "GutterRatio",
                    "DischargeKind");

    private final List<RuleSet> layers;
    private final SortedMap<String, Rule> effective;
    private final List<List<Rule>> ofLayer;
    private final List<List<RuleChange>> changes;
    private final Map<String, RuleSet.Document> documents;
    private final SortedMap<String, Stated> basis;
    private final Decision decision;

    RuleBook(
            List<RuleSet> layers,
            SortedMap<String, Rule> effective,
            List<List<Rule>> ofLayer,
            List<List<RuleChange>> changes,
            Map<String, RuleSet.Document> documents,
            SortedMap<String, Stated> basis,
            Decision decision) {
        this.layers = List.copyOf(layers);
        this.effective = new TreeMap<>(effective);
        this.ofLayer = List.copyOf(ofLayer);
        this.changes = changes.stream().map(List::copyOf).toList();
        this.documents = Collections.unmodifiableMap(new LinkedHashMap<>(documents));
        this.basis = Collections.unmodifiableSortedMap(new TreeMap<>(basis));
        this.decision = decision;
    }

    /**
     * @param rootFirst the layers as {@link Layers} finds them
     * @throws RefusedRules with everything by which the layers contradict each other
     */
    public static RuleBook of(List<RuleSet> rootFirst) throws RefusedRules {
        return new Laying(rootFirst).book();
    }

    public List<RuleSet> layers() {
        return layers;
    }

    public String name() {
        return top().name();
    }

    public String title() {
        return top().title();
    }

    public String jurisdiction() {
        return top().jurisdiction();
    }

    /** The rules in force, sorted by name. */
    public List<Rule> rules() {
        return List.copyOf(effective.values());
    }

    public Optional<Rule> rule(String name) {
        return Optional.ofNullable(effective.get(name));
    }

    /** What one layer adds to the rules in force: its own that no higher one replaces or drops. */
    public List<Rule> inForceOf(int layer) {
        return ofLayer.get(layer);
    }

    /** What each layer above the root did to the rules below it, from the root up. */
    public List<RuleChange> changes() {
        return changes.stream().flatMap(List::stream).toList();
    }

    /** What one layer did to the rules below it; nothing for the root. */
    public List<RuleChange> changesBy(int layer) {
        return changes.get(layer);
    }

    /** Those of all layers, by key. */
    public Map<String, RuleSet.Document> documents() {
        return documents;
    }

    /** Those that a rule in force or something of the basis is from. */
    public Map<String, RuleSet.Document> citedDocuments() {
        Map<String, RuleSet.Document> cited = new LinkedHashMap<>(documents);
        Set<String> keys = new LinkedHashSet<>();
        effective.values().forEach(rule -> keys.add(rule.source().document()));
        basis.values().forEach(stated -> keys.add(stated.source().document()));
        cited.keySet().retainAll(keys);
        return cited;
    }

    /** The document that a rule in force cites. */
    public RuleSet.Document document(Rule rule) {
        RuleSet.Document document = documents.get(rule.source().document());
        if (document == null) {
            throw new IllegalArgumentException(rule.name() + " is no rule of " + name());
        }
        return document;
    }

    /** What is stated for the engineering; of the highest layer that states it. */
    public SortedMap<String, Stated> basis() {
        return basis;
    }

    /** The document from which something is stated. */
    public RuleSet.Document document(Stated stated) {
        RuleSet.Document document = documents.get(stated.source().document());
        if (document == null) {
            throw new IllegalArgumentException(stated + " is not stated by " + name());
        }
        return document;
    }

    /**
     * Names of the fact kinds on which silence is no answer: those of all layers, and the least.
     */
    public List<String> mustJudge() {
        return union(
                Stream.concat(
                        layers.stream().flatMap(layer -> layer.mustJudge().stream()),
                        LEAST.stream()));
    }

    public List<String> clausesNotChecked() {
        return union(layers.stream().flatMap(layer -> layer.clausesNotChecked().stream()));
    }

    /** Of the highest layer that states one. */
    public Decision decision() {
        return decision;
    }

    public Decision decision(Rule rule) {
        return rule.decision().orElse(decision);
    }

    /** Names that a layer replaces, over all layers. */
    public Set<String> replaced() {
        return new LinkedHashSet<>(union(layers.stream().flatMap(one -> one.replaces().stream())));
    }

    /** Names that a layer drops, over all layers. */
    public Set<String> dropped() {
        return new LinkedHashSet<>(
                union(layers.stream().flatMap(one -> one.drops().keySet().stream())));
    }

    /** Over everything that can move a verdict; comments, line ends and order do not count. */
    public String sha256() {
        return Identity.of(this);
    }

    /** Over what is printed and moves no verdict: titles, words, clauses that are not checked. */
    public String wordsSha256() {
        return Identity.ofWords(this);
    }

    private RuleSet top() {
        return layers.get(layers.size() - 1);
    }

    private static List<String> union(Stream<String> all) {
        return new ArrayList<>(
                all.collect(java.util.stream.Collectors.toCollection(LinkedHashSet::new)));
    }
}
