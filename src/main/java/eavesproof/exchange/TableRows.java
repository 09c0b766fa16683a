package eavesproof.exchange;

import eavesproof.quantity.Unit;
import eavesproof.rules.Rule;
import eavesproof.rules.Table;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the rows of a table. Numbers of a key ascend among the rows that share the keys before it,
 * and equal words lie together, so that no row of keys comes twice and none is out of place.
 */
final class TableRows {
    /** Where what is wrong with a line is told. */
    interface Told {
        void problem(int line, String found, String expected);
    }

    private static final int MOST_ROWS = 5000;
    private static final int FIRST_ROW = 4;
    private static final Pattern CELL = Pattern.compile("(?:\"([^\"]*)\"|([^\",]*))(?:,|$)");
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9][0-9]{0,8})(\\.[0-9]{1,6})?");
    private static final Pattern WORDS =
            Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} .,/'()&-]{0,79})");

    private final List<Table.Key> keys;
    private final Table.Answer answer;
    private final Told told;
    private final Set<String> finished = new HashSet<>();
    private List<Rule.Literal> before = List.of();

    TableRows(List<Table.Key> keys, Table.Answer answer, Told told) {
        this.keys = keys;
        this.answer = answer;
        this.told = told;
    }

    List<Table.Row> read(List<String> lines) {
        if (lines.size() - FIRST_ROW >= MOST_ROWS) {
            told.problem(0, lines.size() + " lines", "at most " + MOST_ROWS + " rows");
            return List.of();
        }
        List<Table.Row> rows = new ArrayList<>();
        for (int i = FIRST_ROW - 1; i < lines.size(); i++) {
            row(lines.get(i), i + 1).ifPresent(rows::add);
        }
        return rows;
    }

    private Optional<Table.Row> row(String line, int number) {
        List<String> cells = cells(line);
        if (cells.size() != keys.size() + 1) {
            told.problem(number, Shown.quoted(line), (keys.size() + 1) + " cells with , between");
            return Optional.empty();
        }
        List<Rule.Literal> read = new ArrayList<>();
        for (int i = 0; i < keys.size(); i++) {
            cell(cells.get(i), keys.get(i).unit(), number, false).ifPresent(read::add);
        }
        String answered = cells.get(keys.size());
        Optional<Rule.Literal> found =
                answered.equals(Table.NONE.word()) && !liesBetween()
                        ? Optional.of(Table.NONE)
                        : cell(answered, answer.unit(), number, true);
        if (found.isEmpty() || read.size() != keys.size()) {
            return Optional.empty();
        }
        inOrder(read, number);
        before = read;
        return Optional.of(new Table.Row(read, found.get(), number));
    }

    /** No line can be drawn to where nothing is printed. */
    private boolean liesBetween() {
        return keys.stream().anyMatch(key -> key.meeting() == Table.Meeting.BETWEEN);
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        Matcher cell = CELL.matcher(line);
        int at = 0;
        boolean more = true;
        while (more && cell.find(at) && cell.start() == at) {
            cells.add(cell.group(1) != null ? cell.group(1) : cell.group(2));
            at = cell.end();
            more = cell.group().endsWith(",");
        }
        return more || at < line.length() ? List.of() : cells;
    }

    private Optional<Rule.Literal> cell(
            String written, Optional<Unit> unit, int line, boolean several) {
        if (unit.isPresent()) {
            if (NUMBER.matcher(written).matches()) {
                return Optional.of(new Rule.Num(Double.parseDouble(written), written));
            }
            told.problem(line, Shown.quoted(written), "a number in " + unit.get().symbol());
            return Optional.empty();
        }
        List<String> words = several ? List.of(written.split("\\|", -1)) : List.of(written);
        boolean once = new HashSet<>(words).size() == words.size();
        if (once && words.stream().allMatch(word -> WORDS.matcher(word).matches())) {
            return Optional.of(new Rule.Text(written));
        }
        told.problem(line, Shown.quoted(written), several ? "words with | between" : "a word");
        return Optional.empty();
    }

    private void inOrder(List<Rule.Literal> row, int line) {
        if (before.isEmpty()) {
            return;
        }
        int same = 0;
        while (same < row.size() && same(before.get(same), row.get(same))) {
            same++;
        }
        if (same == row.size()) {
            told.problem(line, "the keys of the row above again", "each row of keys once");
        } else if (row.get(same) instanceof Rule.Num now) {
            if (now.value() < ((Rule.Num) before.get(same)).value()) {
                told.problem(line, now.written() + " below a greater number", "ascending numbers");
            }
        } else {
            finished.add(path(before, same));
            if (finished.contains(path(row, same))) {
                told.problem(line, path(row, same) + " again", "equal words in rows together");
            }
        }
    }

    private static boolean same(Rule.Literal one, Rule.Literal other) {
        return (one instanceof Rule.Num a && other instanceof Rule.Num b)
                ? a.value() == b.value()
                : one.equals(other);
    }

    private static String path(List<Rule.Literal> keys, int last) {
        StringBuilder path = new StringBuilder();
        for (Rule.Literal key : keys.subList(0, last + 1)) {
            path.append(path.isEmpty() ? "" : ", ")
                    .append(key instanceof Rule.Num n ? n.value() : ((Rule.Text) key).word());
        }
        return path.toString();
    }
}
