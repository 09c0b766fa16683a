package eavesproof.check.drools;

import eavesproof.check.Engine;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleBook;
import eavesproof.survey.Facts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/** The rules in force, loaded into Drools layer by layer from the root up. */
public final class DroolsEngine implements Engine {
    /** Far more than any job needs; a session that takes longer is at fault. */
    private static final int LONGEST_SECONDS = 60;

    private final KieBase rules;
    private final Map<String, String> subjects;
    private final int longestMillis;

    /**
     * @param subjects rule to the variable of its subject
     */
    DroolsEngine(KieBase rules, Map<String, String> subjects, int longestMillis) {
        this.rules = rules;
        this.subjects = Map.copyOf(subjects);
        this.longestMillis = longestMillis;
    }

    /**
     * An engine for the rules in force, from compiled classes on the class path where there are
     * such, else from those kept, else compiled now.
     *
     * @param keptIn where compiled classes are kept from one run to the next
     * @throws EngineFault if what was loaded is not exactly the rules in force
     */
    public static DroolsEngine of(RuleBook book, Optional<PrivateFolder> keptIn) {
        ClassLoader classPath = DroolsEngine.class.getClassLoader();
        return of(
                book,
                new LayerLoader(classPath, new ModelCompiler(), () -> new KeptLayers(keptIn)));
    }

    /** Keeps nothing. */
    static DroolsEngine of(RuleBook book) {
        return of(book, Optional.empty());
    }

    static DroolsEngine of(RuleBook book, LayerLoader loader) {
        List<Model> models = new ArrayList<>();
        for (int i = 0; i < book.layers().size(); i++) {
            Set<String> inForce = names(book.inForceOf(i));
            if (!inForce.isEmpty()) {
                models.add(new PartOfModel(loader.load(book.layers().get(i).rules()), inForce));
            }
        }
        KieBase base = base(models);
        Map<String, String> subjects = new TreeMap<>();
        book.rules().forEach(rule -> subjects.put(rule.name(), rule.subject().variable()));
        if (!loaded(base).equals(List.copyOf(subjects.keySet()))) {
            throw new EngineFault(
                    "loaded the rules "
                            + loaded(base)
                            + " where "
                            + subjects.keySet()
                            + " were due");
        }
        return new DroolsEngine(base, subjects, LONGEST_SECONDS * 1000);
    }

    @Override
    public List<Match> matches(List<Facts.Fact> facts) {
        return new Session(rules, subjects, longestMillis).matches(facts);
    }

    private static KieBase base(List<Model> models) {
        try {
            return KieBaseBuilder.createKieBaseFromModel(models);
        } catch (RuntimeException | LinkageError e) {
            throw new EngineFault("the compiled rules cannot be loaded", e);
        }
    }

    /** Sorted, and a name as often as it was loaded. */
    private static List<String> loaded(KieBase base) {
        return base.getKiePackages().stream()
                .flatMap(one -> one.getRules().stream())
                .map(org.kie.api.definition.rule.Rule::getName)
                .sorted()
                .toList();
    }

    private static Set<String> names(List<Rule> rules) {
        return rules.stream().map(Rule::name).collect(Collectors.toCollection(TreeSet::new));
    }
}
