package eavesproof.check.drools;

import eavesproof.rules.Rule;
import eavesproof.rules.RuleText;
import eavesproof.rules.Sha256;
import eavesproof.survey.FactKind;
import eavesproof.survey.Facts;
import eavesproof.survey.Vocabulary;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drools.modelcompiler.KieBaseBuilder;

/**
 * The conditions of one layer printed again for Drools, and the package that they belong in.
 *
 * <p>The package is named by what it holds, so that equal conditions are equal classes wherever
 * they lie, and a class of other conditions never takes their place. Limits are not in it: a
 * changed limit compiles nothing. Every pattern has a variable, without which the generated classes
 * differ from build to build.
 */
record LayerText(String packageName, String drl) {
    private static final String PACKAGE = "eavesproof.layer.h";
    private static final int DIGITS = 32;

    /** A sign that the plain form has no way to write, so that no variable of a rule is this. */
    private static final String CIRCUMSTANCE = "$c_";

    static LayerText of(List<Rule> rules) {
        String body = imports(rules) + conditions(rules);
        String hash = Sha256.of(body + vocabulary() + droolsVersion());
        String name = PACKAGE + hash.substring(0, DIGITS);
        return new LayerText(name, "package " + name + "\n" + body);
    }

    /** The subject and the circumstances of a rule, each with a variable. */
    static List<Rule.Pattern> patterns(Rule rule) {
        List<Rule.Pattern> patterns = new ArrayList<>(List.of(rule.subject()));
        for (Rule.Pattern one : rule.circumstances()) {
            String variable = CIRCUMSTANCE + patterns.size();
            patterns.add(new Rule.Pattern(one.kind(), variable, one.conditions()));
        }
        return patterns;
    }

    /** Whether a variable is one that the rule itself wrote. */
    static boolean isOfRule(String variable) {
        return !variable.startsWith(CIRCUMSTANCE);
    }

    /** Where its files lie, with a slash at the end. */
    String folder() {
        return packageName.replace('.', '/') + "/";
    }

    /** All kinds with their components, units and words, for what was made under another. */
    static String vocabulary() {
        return Vocabulary.kinds().stream()
                .map(LayerText::kind)
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private static String kind(FactKind kind) {
        String unit = kind.unit().map(Enum::name).orElse("");
        return kind.name() + kind.keys() + kind.measure() + unit + kind.words();
    }

    private static String imports(List<Rule> rules) {
        TreeSet<String> kinds = new TreeSet<>();
        rules.forEach(rule -> patterns(rule).forEach(pattern -> kinds.add(pattern.kind())));
        return kinds.stream()
                .map(kind -> "import " + Facts.class.getName() + "." + kind + "\n")
                .collect(Collectors.joining());
    }

    private static String conditions(List<Rule> rules) {
        return rules.stream()
                .sorted(Comparator.comparing(Rule::name))
                .map(LayerText::conditions)
                .collect(Collectors.joining());
    }

    private static String conditions(Rule rule) {
        return patterns(rule).stream()
                .map(pattern -> "  " + RuleText.pattern(pattern) + "\n")
                .collect(
                        Collectors.joining(
                                "", "rule \"" + rule.name() + "\"\nwhen\n", "then\nend\n"));
    }

    private static String droolsVersion() {
        String version = KieBaseBuilder.class.getPackage().getImplementationVersion();
        if (version == null) {
            throw new IllegalStateException("the jar of Drools does not say its version");
        }
        return version;
    }
}
