package eavesproof.rules;

import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A published table as values, one answer a row.
 *
 * @param name of its file without the ending
 * @param source document, edition and number, in words for people
 * @param keys what it is entered with, outermost first
 * @param rows sorted by their keys, each row of keys once
 */
public record Table(String name, String source, List<Key> keys, Answer answer, List<Row> rows) {
    /** The answer of a row for which the document prints none. */
    public static final Rule.Text NONE = new Rule.Text("-");

    public Table {
        keys = List.copyOf(keys);
        rows = List.copyOf(rows);
        if (keys.isEmpty() || rows.isEmpty()) {
            throw new IllegalArgumentException("the table " + name + " has no keys or no rows");
        }
        for (Row row : rows) {
            if (row.keys().size() != keys.size()) {
                throw new IllegalArgumentException(
                        "line " + row.line() + " of table " + name + " has other keys");
            }
        }
    }

    /** How a key meets the printed ones. */
    public enum Meeting {
        /** It is the printed one. */
        IS("is"),
        /** The next printed one at or above it counts; a band is its upper bound. */
        UP("up"),
        /** The next printed one at or below it counts. */
        DOWN("down"),
        /** The answer lies on a straight line between the printed ones on either side. */
        BETWEEN("between");

        private final String word;

        Meeting(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * @param unit empty where the key is a word
     * @param tolerance how far a printed key may be misread, in its unit; 0 where it is printed
     */
    public record Key(String name, Meeting meeting, Optional<Unit> unit, double tolerance) {}

    /**
     * @param unit empty where the answer is words
     * @param tolerance how far a printed answer may be misread, in its unit
     */
    public record Answer(String name, Optional<Unit> unit, double tolerance) {}

    /**
     * @param answer a number, or words with | between
     * @param line of the file
     */
    public record Row(List<Rule.Literal> keys, Rule.Literal answer, int line) {
        public Row {
            keys = List.copyOf(keys);
        }
    }

    /** All that can move a verdict, printed in one fixed way; not its name and its source. */
    String content() {
        String columns =
                keys.stream()
                        .map(
                                key ->
                                        key.name()
                                                + " "
                                                + key.meeting().word()
                                                + " "
                                                + kind(key.unit(), key.tolerance()))
                        .collect(Collectors.joining("; "));
        return rows.stream()
                .map(Table::content)
                .collect(
                        Collectors.joining(
                                "\n",
                                columns + "; " + kind(answer.unit(), answer.tolerance()) + "\n",
                                ""));
    }

    private static String kind(Optional<Unit> unit, double tolerance) {
        return unit.map(Unit::symbol).orElse("words") + " " + Decimals.plain(tolerance, 9);
    }

    private static String content(Row row) {
        return row.keys().stream().map(Table::content).collect(Collectors.joining(","))
                + ","
                + content(row.answer());
    }

    private static String content(Rule.Literal cell) {
        return cell instanceof Rule.Num number
                ? Decimals.plain(number.value(), 9)
                : ((Rule.Text) cell).word();
    }
}
