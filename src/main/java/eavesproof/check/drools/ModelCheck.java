package eavesproof.check.drools;

import eavesproof.check.Engine.EngineFault;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleText;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drools.model.Binding;
import org.drools.model.Condition;
import org.drools.model.Constraint;
import org.drools.model.Model;
import org.drools.model.Pattern;
import org.drools.model.SingleConstraint;

/**
 * Compares a compiled model with the rules that it should hold, as far as a model says what it is:
 * names, fact kinds, variables and the text of every condition.
 */
final class ModelCheck {
    private ModelCheck() {}

    /**
     * @throws EngineFault if the model holds anything else
     */
    static void holds(Model model, String packageName, List<Rule> rules) {
        TreeSet<String> expected =
                rules.stream()
                        .map(ModelCheck::expected)
                        .collect(Collectors.toCollection(TreeSet::new));
        TreeSet<String> found =
                model.getRules().stream()
                        .map(ModelCheck::found)
                        .collect(Collectors.toCollection(TreeSet::new));
        boolean nothingElse =
                model.getPackageName().equals(packageName)
                        && model.getRules().size() == rules.size()
                        && model.getGlobals().isEmpty()
                        && model.getQueries().isEmpty();
        if (!nothingElse || !found.equals(expected)) {
            throw new EngineFault(
                    "compiled rules are not what the rule files say: "
                            + found
                            + " lie in "
                            + packageName
                            + " where "
                            + expected
                            + " are due");
        }
    }

    private static String expected(Rule rule) {
        return LayerText.patterns(rule).stream()
                .map(
                        pattern ->
                                line(
                                        pattern.variable(),
                                        pattern.kind(),
                                        pattern.conditions().stream().map(ModelCheck::expected)))
                .collect(Collectors.joining("\n", rule.name() + "\n", ""));
    }

    /** Of a binding a model tells only the variable. */
    private static String expected(Rule.Condition condition) {
        return condition instanceof Rule.Bind bind
                ? bind.variable()
                : RuleText.condition(condition);
    }

    private static String found(org.drools.model.Rule rule) {
        return rule.getView().getSubConditions().stream()
                .filter(part -> part.getType() != Condition.Type.CONSEQUENCE)
                .map(ModelCheck::found)
                .collect(Collectors.joining("\n", rule.getName() + "\n", ""));
    }

    private static String found(Condition part) {
        if (!(part instanceof Pattern<?> pattern)) {
            return part.getType().name();
        }
        List<String> conditions = new ArrayList<>();
        for (Binding binding : pattern.getBindings()) {
            conditions.add(binding.getBoundVariable().getName());
        }
        collect(pattern.getConstraint(), conditions);
        return line(
                pattern.getPatternVariable().getName(),
                pattern.getPatternVariable().getType().getSimpleName(),
                conditions.stream());
    }

    private static void collect(Constraint constraint, List<String> conditions) {
        if (constraint instanceof SingleConstraint single) {
            String text = single.predicateInformation().getStringConstraint();
            if (!text.isEmpty()) {
                conditions.add(text);
            }
        }
        constraint.getChildren().forEach(child -> collect(child, conditions));
    }

    private static String line(String variable, String kind, Stream<String> conditions) {
        return variable + " : " + kind + conditions.sorted().toList();
    }
}
