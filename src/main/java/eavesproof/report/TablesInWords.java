package eavesproof.report;

import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleBook;
import eavesproof.rules.Table;
import eavesproof.rules.Tables;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The published tables that rules in force look their limits up in, to be read beside them. */
final class TablesInWords {
    private TablesInWords() {}

    static List<Report.Grid> of(RuleBook book) {
        Map<Table, Report.Grid> grids = new LinkedHashMap<>();
        for (Rule rule : book.rules()) {
            for (Rule.Lookup lookup : Tables.in(rule)) {
                lookup.figures()
                        .ifPresent(table -> grids.computeIfAbsent(table, TablesInWords::grid));
            }
        }
        return List.copyOf(grids.values());
    }

    private static Report.Grid grid(Table table) {
        List<Report.Column> columns = new ArrayList<>();
        int share = 100 / (table.keys().size() + 1);
        for (Table.Key key : table.keys()) {
            columns.add(column(key.name() + ", " + met(key), key.unit(), key.tolerance(), share));
        }
        Table.Answer answer = table.answer();
        columns.add(column(answer.name(), answer.unit(), answer.tolerance(), share));
        return new Report.Grid(
                "Table " + table.name() + ": " + table.source(),
                columns,
                table.rows().stream().map(TablesInWords::row).toList(),
                "");
    }

    /** How a value that is not printed meets the rows. */
    private static String met(Table.Key key) {
        return switch (key.meeting()) {
            case IS -> "exactly";
            case UP -> "up to";
            case DOWN -> "from";
            case BETWEEN -> "straight lines between";
        };
    }

    private static Report.Column column(
            String name, Optional<Unit> unit, double tolerance, int share) {
        String head =
                name
                        + unit.map(one -> ", " + one.symbol()).orElse("")
                        + (tolerance == 0 ? "" : " ± " + Decimals.plain(tolerance, 6));
        return new Report.Column(
                head, unit.isPresent() ? "figures" : "words", String.valueOf(share));
    }

    private static List<String> row(Table.Row row) {
        List<String> cells = new ArrayList<>();
        row.keys().forEach(key -> cells.add(cell(key)));
        cells.add(cell(row.answer()));
        return cells;
    }

    private static String cell(Rule.Literal cell) {
        return cell instanceof Rule.Num number
                ? number.written()
                : ((Rule.Text) cell).word().replace("|", ", ");
    }
}
