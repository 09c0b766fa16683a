package eavesproof.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The tables that rules look their limits up in. */
public final class Tables {
    private Tables() {}

    /** Every look-up in what a rule demands. */
    public static List<Rule.Lookup> in(Rule rule) {
        Rule.Demand demand = rule.demand();
        if (demand instanceof Rule.OneOfTable choice) {
            return List.of(choice.lookup());
        }
        if (demand instanceof Rule.AtMost most) {
            return in(most.limit()).toList();
        }
        return demand instanceof Rule.AtLeast least ? in(least.limit()).toList() : List.of();
    }

    private static Stream<Rule.Lookup> in(Rule.Limit limit) {
        if (limit instanceof Rule.Arithmetic sum) {
            return Stream.concat(in(sum.left()), in(sum.right()));
        }
        return limit instanceof Rule.Lookup lookup ? Stream.of(lookup) : Stream.empty();
    }

    /**
     * The rules with the figures of the tables that they name.
     *
     * @param tables by name
     * @throws RefusedRules if a rule names a table that is not there
     */
    public static List<Rule> fill(List<Rule> rules, Map<String, Table> tables) throws RefusedRules {
        List<RuleProblem> problems = new ArrayList<>();
        for (Rule rule : rules) {
            for (Rule.Lookup lookup : in(rule)) {
                if (!tables.containsKey(lookup.table())) {
                    problems.add(
                            RuleProblem.at(
                                    rule.file(),
                                    rule.line(),
                                    "the table " + lookup.table(),
                                    "a table of its own folder: " + tables.keySet()));
                }
            }
        }
        if (!problems.isEmpty()) {
            throw new RefusedRules(problems);
        }
        return rules.stream().map(rule -> rule.demanding(filled(rule.demand(), tables))).toList();
    }

    private static Rule.Demand filled(Rule.Demand demand, Map<String, Table> tables) {
        if (demand instanceof Rule.AtMost most) {
            return new Rule.AtMost(filled(most.limit(), tables), most.unit());
        }
        if (demand instanceof Rule.AtLeast least) {
            return new Rule.AtLeast(filled(least.limit(), tables), least.unit());
        }
        return demand instanceof Rule.OneOfTable choice
                ? new Rule.OneOfTable(filled(choice.lookup(), tables))
                : demand;
    }

    private static Rule.Limit filled(Rule.Limit limit, Map<String, Table> tables) {
        if (limit instanceof Rule.Arithmetic sum) {
            return new Rule.Arithmetic(
                    sum.operator(), filled(sum.left(), tables), filled(sum.right(), tables));
        }
        return limit instanceof Rule.Lookup lookup ? filled(lookup, tables) : limit;
    }

    private static Rule.Lookup filled(Rule.Lookup lookup, Map<String, Table> tables) {
        return new Rule.Lookup(
                lookup.table(), lookup.keys(), Optional.ofNullable(tables.get(lookup.table())));
    }
}
