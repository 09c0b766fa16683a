package eavesproof.app.cli;

import eavesproof.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Text for a terminal of eighty columns, broken between words and never within an amount. */
final class Page {
    static final int WIDTH = 80;

    private static final int LEAST_DOTS = 3;

    private static final char HELD_TOGETHER = '\u00a0';
    private static final Pattern WITHIN_AN_AMOUNT =
            Pattern.compile(
                    Unit.symbols().stream()
                            .map(Pattern::quote)
                            .collect(
                                    Collectors.joining(
                                            "|",
                                            "(?<=\\d) (?=(?:to|±|",
                                            ")(?:\\W|$))|(?<=\\b(?:to|at)) (?=\\d)|(?<=±) ")));

    /** How a line looks where colour is wanted; without it every line reads the same. */
    enum Look {
        PLAIN(""),
        STRONG("\u001b[1m"),
        FAINT("\u001b[2m"),
        ALARM("\u001b[1;31m");

        private final String begins;

        Look(String begins) {
            this.begins = begins;
        }

        private String around(String text) {
            return begins.isEmpty() || text.isEmpty() ? text : begins + text + "\u001b[0m";
        }
    }

    private final boolean colour;
    private final StringBuilder text = new StringBuilder();

    Page(boolean colour) {
        this.colour = colour;
    }

    /** A paragraph at an indent. */
    Page say(int indent, Look look, String paragraph) {
        return say(indent, indent, look, paragraph);
    }

    Page say(int indent, String paragraph) {
        return say(indent, indent, Look.PLAIN, paragraph);
    }

    /** A paragraph of which the lines after the first stand further in, or out. */
    Page say(int first, int others, Look look, String paragraph) {
        int indent = first;
        for (String line : lines(paragraph, WIDTH - first, WIDTH - others)) {
            put(indent, look, line);
            indent = others;
        }
        return this;
    }

    /** A paragraph with what matters of it at the right edge, dots leading there. */
    Page lead(int first, int others, Look look, String paragraph, String right) {
        String end = visible(right);
        int taken = length(end) + LEAST_DOTS + 2;
        if (taken > WIDTH / 2) {
            return say(first, others, look, paragraph + ": " + right);
        }
        List<String> lines = lines(paragraph, WIDTH - taken - first, WIDTH - taken - others);
        int indent = first;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (i == lines.size() - 1) {
                int dots = WIDTH - indent - length(line) - length(end) - 2;
                line = line + " " + ".".repeat(dots) + " " + end;
            }
            put(indent, look, line);
            indent = others;
        }
        return this;
    }

    /** Something on the left and what it means on the right of it, from a column on. */
    Page pair(int indent, int column, String left, String right) {
        int room = column - indent - length(left);
        if (room < 2) {
            return say(indent, left).say(column, right);
        }
        String apart = String.valueOf(HELD_TOGETHER).repeat(room);
        return say(indent, column, Look.PLAIN, left + apart + right);
    }

    Page gap() {
        text.append('\n');
        return this;
    }

    private void put(int indent, Look look, String line) {
        text.append(" ".repeat(indent)).append(colour ? look.around(line) : line).append('\n');
    }

    String text() {
        return text.toString();
    }

    private static List<String> lines(String paragraph, int first, int others) {
        String visible = visible(paragraph);
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int room = first;
        for (String word :
                WITHIN_AN_AMOUNT
                        .matcher(visible)
                        .replaceAll(String.valueOf(HELD_TOGETHER))
                        .split(" ")) {
            String left = word;
            int space = line.isEmpty() ? 0 : 1;
            if (length(line) + space + length(left) > room && !line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
                room = others;
                space = 0;
            }
            while (length(left) > room) {
                int cut = left.offsetByCodePoints(0, room);
                lines.add(left.substring(0, cut));
                left = left.substring(cut);
                room = others;
            }
            line.append(" ".repeat(space)).append(left);
        }
        lines.add(line.toString());
        return lines.stream().map(done -> done.replace(HELD_TOGETHER, ' ')).toList();
    }

    private static int length(CharSequence text) {
        return Character.codePointCount(text, 0, text.length());
    }

    /** What a record says must not steer the terminal that shows it. */
    private static String visible(String text) {
        return text.codePoints()
                .map(
                        letter ->
                                switch (Character.getType(letter)) {
                                    case Character.CONTROL,
                                            Character.FORMAT,
                                            Character.LINE_SEPARATOR,
                                            Character.PARAGRAPH_SEPARATOR,
                                            Character.SURROGATE ->
                                            '\ufffd';
                                    default -> letter;
                                })
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
