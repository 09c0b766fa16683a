package eavesproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Fills a table row by row; columns in which nothing is recorded are left out. */
final class Grids {
    static final String NOT_RECORDED = "not recorded";

    private final String caption;
    private final String empty;
    private final List<Report.Column> columns = new ArrayList<>();
    private final List<List<@Nullable String>> rows = new ArrayList<>();

    Grids(String caption, String empty) {
        this.caption = caption;
        this.empty = empty;
    }

    /** A column of words that takes so much of the room, compared with the others. */
    Grids words(String head, int share) {
        return column(head, "words", share);
    }

    Grids figures(String head, int share) {
        return column(head, "figures", share);
    }

    Grids name(String head, int share) {
        return column(head, "name", share);
    }

    private Grids column(String head, String kind, int share) {
        columns.add(new Report.Column(head, kind, String.valueOf(share)));
        return this;
    }

    Grids row(@Nullable String... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException(
                    cells.length + " cells for " + columns.size() + " columns");
        }
        List<@Nullable String> row = new ArrayList<>();
        for (String cell : cells) {
            row.add(cell);
        }
        rows.add(row);
        return this;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** A cell that nobody recorded says so; a column of nothing else is not printed. */
    Report.Grid grid() {
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            int column = i;
            if (i == 0 || rows.stream().anyMatch(row -> row.get(column) != null)) {
                kept.add(i);
            }
        }
        int all = kept.stream().mapToInt(i -> Integer.parseInt(columns.get(i).share())).sum();
        return new Report.Grid(
                caption,
                kept.stream().map(i -> shared(columns.get(i), all)).toList(),
                rows.stream()
                        .map(row -> kept.stream().map(i -> cell(row.get(i))).toList())
                        .toList(),
                empty);
    }

    private static Report.Column shared(Report.Column column, int all) {
        int share = Integer.parseInt(column.share()) * 100 / all;
        return new Report.Column(column.head(), column.kind(), String.valueOf(share));
    }

    private static String cell(@Nullable String text) {
        return Objects.requireNonNullElse(text, NOT_RECORDED);
    }
}
