package eavesproof.report;

import freemarker.core.Environment;
import freemarker.template.TemplateException;
import java.io.Writer;

/** What a template writes, up to so many characters. */
final class CappedText extends Writer {
    private final StringBuilder text = new StringBuilder();
    private final int most;

    CappedText(int most) {
        this.most = most;
    }

    /** Thrown where the template stands, so that the place can be told. */
    static final class Full extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final transient TemplateException where;

        Full(int most) {
            super("wrote more than " + most + " characters");
            where = new TemplateException("", Environment.getCurrentEnvironment());
            where.getLineNumber(); // reckoned now, while the template still stands there
        }

        TemplateException where() {
            return where;
        }
    }

    @Override
    public void write(char[] buffer, int offset, int length) {
        if (length > most - text.length()) {
            throw new Full(most);
        }
        text.append(buffer, offset, length);
    }

    @Override
    public void flush() {
        // Everything is here already.
    }

    @Override
    public void close() {
        // Nothing is open.
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
