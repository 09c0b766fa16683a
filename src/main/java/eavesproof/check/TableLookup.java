package eavesproof.check;

import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.rules.Rule;
import eavesproof.rules.Table;
import eavesproof.survey.Measure;
import eavesproof.survey.Working;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Finds the row of a table that its keys mean, and where a key lies within its uncertainty of the
 * edge of a band, every row that may be meant. What lies outside the table has no row.
 *
 * <p>A key that is exactly a printed one belongs to that one.
 */
final class TableLookup {
    /** Turning inches to millimetres and back must not push a key off a printed one. */
    private static final double ROUNDING = 1e-9;

    private static final double SQRT_3 = StrictMath.sqrt(3);

    private final Table table;
    private final List<Measure> keys;
    private final List<Found> found = new ArrayList<>();
    private final Set<String> near = new LinkedHashSet<>();

    /**
     * @param keys as many as the table has, each in a unit of its column's dimension
     */
    TableLookup(Table table, List<Measure> keys) {
        this.table = table;
        this.keys = keys;
    }

    /**
     * What one row answers, or what lies between two.
     *
     * @param words those of the answer; none where it is a number
     */
    record Found(Uncertain number, List<String> words, Working working) {}

    /** At least one. */
    List<Found> rows() throws CannotTell {
        narrow(table.rows(), 0);
        return List.copyOf(found);
    }

    /** Keys that lie within their uncertainty of a row other than their own. */
    List<String> near() {
        return List.copyOf(near);
    }

    private void narrow(List<Table.Row> rows, int index) throws CannotTell {
        if (index == keys.size()) {
            answer(rows.get(0));
            return;
        }
        Table.Key column = table.keys().get(index);
        if (column.unit().isEmpty()) {
            narrow(ofWord(rows, index), index + 1);
            return;
        }
        Unit unit = column.unit().get();
        Uncertain key = inUnit(index, unit);
        if (column.meeting() == Table.Meeting.BETWEEN) {
            between(rows, index, key);
            return;
        }
        if (!key.isStated()) {
            throw new CannotTell(
                    "which row of table "
                            + table.name()
                            + " counts cannot be told, because "
                            + String.join("; ", key.unstated()));
        }
        for (double printed : meant(rows, index, column, key)) {
            narrow(rows.stream().filter(row -> at(row, index) == printed).toList(), index + 1);
        }
    }

    private List<Table.Row> ofWord(List<Table.Row> rows, int index) throws CannotTell {
        String word = ((Measure.Word) keys.get(index)).word();
        List<Table.Row> same =
                rows.stream()
                        .filter(row -> row.keys().get(index).equals(new Rule.Text(word)))
                        .toList();
        if (same.isEmpty()) {
            throw outside(table.keys().get(index).name() + " " + word);
        }
        return same;
    }

    private Uncertain inUnit(int index, Unit unit) {
        Measure.Number number = (Measure.Number) keys.get(index);
        return number.value().times(number.unit().convert(1, unit));
    }

    /** The printed keys that the key may mean, ascending. */
    private List<Double> meant(List<Table.Row> rows, int index, Table.Key column, Uncertain key)
            throws CannotTell {
        List<Double> printed = rows.stream().map(row -> at(row, index)).distinct().toList();
        double reach = key.expandedUncertainty() + column.tolerance();
        int first = place(printed, key.value() - reach, column.meeting());
        int last = place(printed, key.value() + reach, column.meeting());
        int own = place(printed, key.value(), column.meeting());
        String text = text(column, key);
        if (own < 0 || own >= printed.size()) {
            throw outside(text);
        }
        if (first < 0 || last >= printed.size()) {
            throw outside(text + " may be, by its uncertainty,");
        }
        if (first != last) {
            near.add(
                    text
                            + " lies within its uncertainty of another row of table "
                            + table.name()
                            + ", and the stricter one was taken");
        }
        return printed.subList(first, last + 1);
    }

    /** Where the key belongs; -1 below the table, the number of printed ones above it. */
    private static int place(List<Double> printed, double key, Table.Meeting meeting) {
        double slack = ROUNDING * Math.max(1, Math.abs(key));
        int below = 0;
        while (below < printed.size() && printed.get(below) < key - slack) {
            below++;
        }
        boolean exact = below < printed.size() && printed.get(below) <= key + slack;
        return switch (meeting) {
            case UP -> below;
            case DOWN -> exact ? below : below - 1;
            case IS -> exact ? below : -1;
            case BETWEEN -> throw new IllegalStateException("between has no row of its own");
        };
    }

    private void answer(Table.Row row) throws CannotTell {
        List<String> columns = new ArrayList<>();
        for (int i = 0; i < table.keys().size(); i++) {
            columns.add(text(table.keys().get(i), row.keys().get(i)));
        }
        String at = "row " + String.join(", ", columns);
        if (row.answer().equals(Table.NONE)) {
            throw outside(at);
        }
        if (row.answer() instanceof Rule.Num number) {
            number(misread(number.value()), at);
        } else {
            String words = ((Rule.Text) row.answer()).word();
            Working working = working(words, at);
            found.add(new Found(Uncertain.exact(0), List.of(words.split("\\|")), working));
        }
    }

    /** Linear between the printed ones; rows are those that share the keys before. */
    private void between(List<Table.Row> rows, int index, Uncertain key) throws CannotTell {
        Table.Key column = table.keys().get(index);
        double reach = key.expandedUncertainty();
        double x = key.value();
        double slack = ROUNDING * Math.max(1, Math.abs(x));
        double least = at(rows.get(0), index) - slack;
        double most = at(rows.get(rows.size() - 1), index) + slack;
        if (x < least || x > most) {
            throw outside(text(column, key));
        }
        if (x - reach < least || x + reach > most) {
            throw outside(text(column, key) + " may be, by its uncertainty,");
        }
        double steepest = 0;
        double value = answer(rows, 0);
        String at = "row " + text(column, rows.get(0).keys().get(index));
        double wide = reach + column.tolerance();
        for (int i = 1; i < rows.size(); i++) {
            double x0 = at(rows.get(i - 1), index);
            double x1 = at(rows.get(i), index);
            double y0 = answer(rows, i - 1);
            double slope = (answer(rows, i) - y0) / (x1 - x0);
            if (x - wide <= x1 && x + wide >= x0 && Math.abs(slope) > Math.abs(steepest)) {
                steepest = slope;
            }
            if (x >= x0 && x <= x1 + slack) {
                value = x >= x1 ? answer(rows, i) : y0 + slope * (x - x0);
                at =
                        "between "
                                + text(column, rows.get(i - 1).keys().get(index))
                                + " and "
                                + text(column, rows.get(i).keys().get(index));
            }
        }
        String source = "reading of " + column.name() + " in table " + table.name();
        Uncertain moved = key.minus(Uncertain.exact(x)).times(steepest);
        Uncertain read = Uncertain.of(0, source, column.tolerance() / SQRT_3 * steepest);
        Uncertain result = misread(value).plus(moved);
        number(column.tolerance() > 0 ? result.plus(read) : result, before(rows, index) + at);
    }

    private String before(List<Table.Row> rows, int index) {
        StringBuilder before = new StringBuilder();
        for (int i = 0; i < index; i++) {
            before.append(text(table.keys().get(i), rows.get(0).keys().get(i))).append(", ");
        }
        return before.toString();
    }

    /** With a printed answer's own tolerance, a half-width (JCGM 100:2008 4.3.7). */
    private Uncertain misread(double answer) {
        double tolerance = table.answer().tolerance();
        return tolerance == 0
                ? Uncertain.exact(answer)
                : Uncertain.of(answer, "reading of table " + table.name(), tolerance / SQRT_3);
    }

    private void number(Uncertain value, String at) {
        Unit unit = table.answer().unit().orElseThrow();
        found.add(new Found(value, List.of(), working(Decimals.with(value.value(), unit), at)));
    }

    private Working working(String value, String at) {
        return new Working("table " + table.name(), value, at + "; " + table.source());
    }

    private static double at(Table.Row row, int index) {
        return ((Rule.Num) row.keys().get(index)).value();
    }

    private static double answer(List<Table.Row> rows, int index) {
        return ((Rule.Num) rows.get(index).answer()).value();
    }

    private static String text(Table.Key column, Rule.Literal cell) {
        return column.name()
                + " "
                + (cell instanceof Rule.Num number
                        ? number.written() + " " + column.unit().map(Unit::symbol).orElse("")
                        : ((Rule.Text) cell).word());
    }

    private static String text(Table.Key column, Uncertain key) {
        Unit unit = column.unit().orElseThrow();
        return column.name() + " " + Decimals.plain(key.value(), 4) + " " + unit.symbol();
    }

    private CannotTell outside(String what) {
        return new CannotTell(what + " is outside this table (" + table.name() + ")");
    }
}
