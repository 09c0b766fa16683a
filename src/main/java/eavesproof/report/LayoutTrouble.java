package eavesproof.report;

import org.jspecify.annotations.Nullable;

/**
 * A template, or the page that came out of it, cannot be used.
 *
 * <p>Line and column count from 1; 0 means that no place can be named.
 */
public final class LayoutTrouble extends Exception {
    private static final long serialVersionUID = 1L;

    private final String template;
    private final int line;
    private final int column;

    public LayoutTrouble(
            String template, int line, int column, String said, @Nullable Throwable cause) {
        super(place(template, line, column) + ": " + said, cause);
        this.template = template;
        this.line = Math.max(line, 0);
        this.column = Math.max(column, 0);
    }

    public LayoutTrouble(String template, String said) {
        super(template + ": " + said);
        this.template = template;
        this.line = 0;
        this.column = 0;
    }

    public String template() {
        return template;
    }

    public int line() {
        return line;
    }

    public int column() {
        return column;
    }

    private static String place(String template, int line, int column) {
        return line > 0 ? template + ", line " + line + ", column " + column : template;
    }
}
