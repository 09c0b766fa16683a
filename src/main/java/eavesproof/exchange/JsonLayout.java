package eavesproof.exchange;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Writes JSON for people to read and fill in: what fits on a line stays on a line. Maps, lists,
 * texts, numbers, booleans and null; no floating point, so that nothing depends on its printing.
 */
final class JsonLayout {
    private static final int WIDTH = 100;

    private final StringBuilder out = new StringBuilder();

    private JsonLayout() {}

    static String of(Object value) {
        JsonLayout layout = new JsonLayout();
        layout.write(value, 0, 0);
        return layout.out.append('\n').toString();
    }

    /**
     * @param before how much of the line is taken already
     */
    private void write(@Nullable Object value, int depth, int before) {
        String line = inline(value);
        if (before + line.length() < WIDTH) {
            out.append(line);
        } else if (value instanceof Map<?, ?> map) {
            broken('{', map.entrySet(), '}', depth, entry -> entry(entry, depth + 1));
        } else if (value instanceof List<?> list) {
            int indent = 2 * (depth + 1);
            broken('[', list, ']', depth, item -> write(item, depth + 1, indent));
        } else {
            out.append(line);
        }
    }

    private void entry(Map.Entry<?, ?> entry, int depth) {
        String key = quoted(entry.getKey()) + ": ";
        out.append(key);
        write(entry.getValue(), depth, 2 * depth + key.length());
    }

    private <T> void broken(
            char opens, Iterable<T> parts, char closes, int depth, Consumer<T> write) {
        out.append(opens);
        for (Iterator<T> each = parts.iterator(); each.hasNext(); ) {
            out.append('\n').append("  ".repeat(depth + 1));
            write.accept(each.next());
            out.append(each.hasNext() ? "," : "");
        }
        out.append('\n').append("  ".repeat(depth)).append(closes);
    }

    private static String inline(@Nullable Object value) {
        StringBuilder line = new StringBuilder();
        String comma = "";
        if (value instanceof Map<?, ?> map) {
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                line.append(comma).append(quoted(entry.getKey())).append(": ");
                line.append(inline(entry.getValue()));
                comma = ", ";
            }
            return "{" + line + "}";
        } else if (value instanceof List<?> list) {
            for (Object item : list) {
                line.append(comma).append(inline(item));
                comma = ", ";
            }
            return "[" + line + "]";
        }
        return value instanceof String ? quoted(value) : String.valueOf(value);
    }

    private static String quoted(Object text) {
        return '"'
                + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(text.toString()))
                + '"';
    }
}
