package eavesproof.exchange;

import eavesproof.quantity.Unit;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.RuleProblem;
import eavesproof.rules.Table;
import eavesproof.rules.Table.Meeting;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads a published table: its source, how its columns are met, their names, and one answer a row.
 *
 * <pre>
 * # E1/AS1 Amendment 11, figure 15, read off the printed curve
 * # pitch up deg; roof between m2 +/- 1; section mm2
 * pitch,roof,section
 * 25,34,4043
 * </pre>
 */
public final class TableFile {
    /** How tables are called, and with .csv their files. */
    public static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9.-]{0,60}");

    private static final int MOST_BYTES = 256 * 1024;
    private static final int MOST_PROBLEMS = 50;
    private static final int MOST_COLUMNS = 6;
    private static final int FIRST_ROW = 4;

    private static final Pattern SOURCE = Pattern.compile("# (\\S.{0,399})");
    private static final Pattern KEY =
            Pattern.compile(
                    "([a-z][a-z0-9_]{0,30}) (is|up|down|between) ([^+]{1,20}?)( \\+/- (.{1,20}))?");
    private static final Pattern ANSWER =
            Pattern.compile("([a-z][a-z0-9_]{0,30}) ([^+]{1,20}?)( \\+/- (.{1,20}))?");
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9][0-9]{0,8})(\\.[0-9]{1,6})?");
    private static final String WORDS = "words";
    private static final String COLUMNS =
            "# key is|up|down|between unit; ...; answer unit (or words; +/- a tolerance)";

    private final String file;
    private final List<RuleProblem> problems = new ArrayList<>();

    private TableFile(String file) {
        this.file = file;
    }

    /**
     * @param file what messages call it
     * @throws RefusedRules with everything that is wrong with the file
     */
    public static Table read(String file, String name, byte[] bytes) throws RefusedRules {
        TableFile reading = new TableFile(file);
        Optional<Table> table = reading.table(name, bytes);
        if (table.isEmpty() || !reading.problems.isEmpty()) {
            throw new RefusedRules(reading.problems);
        }
        return table.get();
    }

    private Optional<Table> table(String name, byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            problem(0, bytes.length + " bytes", "at most " + MOST_BYTES);
            return Optional.empty();
        }
        Problems unreadable = new Problems();
        String text = FileText.of(bytes, unreadable);
        unreadable.inFileOrder().forEach(one -> problem(one.line(), one.found(), one.expected()));
        List<String> lines = text == null ? List.of() : text.lines().toList();
        if (lines.size() < FIRST_ROW) {
            problem(0, lines.size() + " lines", "source, columns, their names, and rows");
            return Optional.empty();
        }
        Matcher source = SOURCE.matcher(lines.get(0));
        if (!source.matches()) {
            problem(1, shown(lines.get(0)), "# and the source of the table");
        }
        List<Table.Key> keys = new ArrayList<>();
        Optional<Table.Answer> answer = columns(lines.get(1), keys);
        if (answer.isEmpty() || !problems.isEmpty()) {
            return Optional.empty();
        }
        names(lines.get(2), keys, answer.get());
        List<Table.Row> rows = new TableRows(keys, answer.get(), this::problem).read(lines);
        return problems.isEmpty()
                ? Optional.of(new Table(name, source.group(1), keys, answer.get(), rows))
                : Optional.empty();
    }

    private Optional<Table.Answer> columns(String line, List<Table.Key> keys) {
        List<String> parts = List.of(line.replaceFirst("^# ", "").split("; ", -1));
        if (!line.startsWith("# ") || parts.size() < 2 || parts.size() > MOST_COLUMNS) {
            problem(2, shown(line), COLUMNS);
            return Optional.empty();
        }
        int last = parts.size() - 1;
        for (int i = 0; i < last; i++) {
            key(parts.get(i), i == last - 1).ifPresent(keys::add);
        }
        Matcher answer = ANSWER.matcher(parts.get(last));
        if (!answer.matches() || !isKind(answer.group(2), answer.group(4))) {
            problem(2, shown(parts.get(last)), COLUMNS + "; units: " + Unit.symbols());
            return Optional.empty();
        }
        Optional<Unit> unit = Unit.of(answer.group(2));
        if (unit.isEmpty() && keys.stream().anyMatch(key -> key.meeting() == Meeting.BETWEEN)) {
            problem(2, shown(line), "a number to find between numbers, not words");
        }
        return Optional.of(new Table.Answer(answer.group(1), unit, tolerance(answer.group(4))));
    }

    private Optional<Table.Key> key(String written, boolean last) {
        Matcher key = KEY.matcher(written);
        if (!key.matches() || !isKind(key.group(3), key.group(5))) {
            problem(2, shown(written), COLUMNS + "; units: " + Unit.symbols());
            return Optional.empty();
        }
        Meeting meeting =
                Arrays.stream(Meeting.values())
                        .filter(one -> one.word().equals(key.group(2)))
                        .findFirst()
                        .orElseThrow();
        Optional<Unit> unit = Unit.of(key.group(3));
        if (unit.isEmpty() && meeting != Meeting.IS) {
            problem(2, shown(written), "words met by is");
        }
        if (meeting == Meeting.BETWEEN && !last) {
            problem(2, shown(written), "between for the last key only");
        }
        return Optional.of(new Table.Key(key.group(1), meeting, unit, tolerance(key.group(5))));
    }

    private static boolean isKind(String unit, @Nullable String tolerance) {
        boolean number = Unit.of(unit).isPresent();
        return tolerance == null
                ? number || unit.equals(WORDS)
                : number && NUMBER.matcher(tolerance).matches() && !tolerance.startsWith("-");
    }

    private static double tolerance(@Nullable String written) {
        return written == null ? 0 : Double.parseDouble(written);
    }

    private void names(String line, List<Table.Key> keys, Table.Answer answer) {
        List<String> expected = new ArrayList<>(keys.stream().map(Table.Key::name).toList());
        expected.add(answer.name());
        if (!line.equals(String.join(",", expected))) {
            problem(3, shown(line), String.join(",", expected));
        }
        if (expected.stream().distinct().count() != expected.size()) {
            problem(3, shown(line), "each name once");
        }
    }

    private void problem(int line, String found, String expected) {
        if (problems.size() < MOST_PROBLEMS) {
            problems.add(RuleProblem.at(file, line, found, expected));
        }
    }

    private static String shown(String text) {
        return Shown.quoted(text);
    }
}
