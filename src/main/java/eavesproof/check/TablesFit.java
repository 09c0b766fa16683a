package eavesproof.check;

import eavesproof.quantity.Unit;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleProblem;
import eavesproof.rules.Table;
import eavesproof.rules.Tables;
import eavesproof.survey.FactKind;
import eavesproof.survey.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether the tables of a rule fit it: as many keys, words where words are looked for, units of one
 * dimension, and an answer in the very unit that is demanded.
 */
public final class TablesFit {
    private final Rule rule;
    private final List<RuleProblem> problems = new ArrayList<>();

    private TablesFit(Rule rule) {
        this.rule = rule;
    }

    /** What does not fit; nothing where all does. */
    public static List<RuleProblem> problems(List<Rule> rules) {
        return rules.stream().flatMap(rule -> new TablesFit(rule).found().stream()).toList();
    }

    private List<RuleProblem> found() {
        for (Rule.Lookup lookup : Tables.in(rule)) {
            Table table = lookup.figures().orElseThrow();
            if (table.keys().size() != lookup.keys().size()) {
                problem(lookup.keys().size() + " keys of table " + table.name(), names(table));
                continue;
            }
            for (int i = 0; i < lookup.keys().size(); i++) {
                key(lookup.keys().get(i), table, i);
            }
            answer(lookup, table);
        }
        return problems;
    }

    private static String names(Table table) {
        return "its keys " + table.keys().stream().map(Table.Key::name).toList();
    }

    private void key(Rule.Key key, Table table, int index) {
        Table.Key column = table.keys().get(index);
        String what = " for " + column.name() + " of table " + table.name();
        if (key instanceof Rule.Text text) {
            boolean there =
                    table.rows().stream().anyMatch(row -> row.keys().get(index).equals(text));
            if (column.unit().isPresent() || !there) {
                problem("\"" + text.word() + "\"" + what, "a key that the table has");
            }
        } else if (key instanceof Rule.Num number) {
            if (column.unit().isEmpty()) {
                problem(number.written() + what, "a word");
            }
        } else {
            bound((Rule.Bound) key, column, what);
        }
    }

    private void bound(Rule.Bound key, Table.Key column, String what) {
        Optional<Unit> unit = kindOf(key.variable()).flatMap(FactKind::unit);
        boolean words = unit.isEmpty() && column.unit().isEmpty();
        boolean same =
                unit.isPresent()
                        && column.unit()
                                .filter(one -> one.dimension() == unit.get().dimension())
                                .isPresent();
        if (!words && !same) {
            problem(
                    key.variable() + " in " + unit.map(Unit::symbol).orElse("words") + what,
                    column.unit().map(Unit::symbol).orElse("words"));
        }
    }

    /** Of the circumstance that binds the variable to what it measures. */
    private Optional<FactKind> kindOf(String variable) {
        return rule.circumstances().stream()
                .filter(
                        pattern ->
                                pattern.conditions().stream()
                                        .filter(Rule.Bind.class::isInstance)
                                        .map(Rule.Bind.class::cast)
                                        .anyMatch(bind -> bind.variable().equals(variable)))
                .findFirst()
                .flatMap(pattern -> Vocabulary.kind(pattern.kind()));
    }

    private void answer(Rule.Lookup lookup, Table table) {
        String what = "the answer of table " + table.name() + " in ";
        Optional<Unit> unit = table.answer().unit();
        if (rule.demand() instanceof Rule.OneOfTable) {
            List<String> known =
                    Vocabulary.kind(rule.subject().kind()).map(FactKind::words).orElse(List.of());
            if (unit.isPresent()) {
                problem(what + unit.get().symbol(), "words of " + rule.subject().kind());
            } else {
                table.rows().stream()
                        .flatMap(row -> Stream.of(((Rule.Text) row.answer()).word().split("\\|")))
                        .distinct()
                        .filter(word -> !word.equals(Table.NONE.word()))
                        .filter(word -> !known.contains(word))
                        .forEach(word -> problem(word + " in table " + table.name(), "" + known));
            }
            return;
        }
        Unit demanded = demanded();
        boolean alone = limit().equals(lookup);
        boolean fits =
                unit.isPresent()
                        && (unit.get() == demanded
                                || (!alone && unit.get().dimension() != demanded.dimension()));
        if (!fits) {
            problem(what + unit.map(Unit::symbol).orElse("words"), demanded.symbol());
        }
    }

    private Rule.Limit limit() {
        return rule.demand() instanceof Rule.AtMost most
                ? most.limit()
                : ((Rule.AtLeast) rule.demand()).limit();
    }

    private Unit demanded() {
        String symbol =
                rule.demand() instanceof Rule.AtMost most
                        ? most.unit()
                        : ((Rule.AtLeast) rule.demand()).unit();
        return Unit.of(symbol).orElseThrow();
    }

    private void problem(String found, String expected) {
        problems.add(RuleProblem.at(rule.file(), rule.line(), found, expected));
    }
}
