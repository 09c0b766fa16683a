package eavesproof.report;

import freemarker.core.Environment;
import freemarker.core.ParseException;
import freemarker.template.Configuration;
import freemarker.template.MalformedTemplateNameException;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateNotFoundException;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One filling of one template, on a thread of its own so that it can be left behind when its time
 * is up. It is a daemon thread: one that no interrupt reaches, such as a regular expression gone
 * astray, does not keep the program from ending.
 */
final class Filling implements Runnable {
    private static final int LOOK_EVERY_MS = 5;
    private static final int LAST_CHANCE_MS = 500;
    private static final int LONGEST_MESSAGE = 500;
    private static final Place UNKNOWN = new Place("", 0, 0);

    private final Configuration freemarker;
    private final String name;
    private final Map<String, ?> values;
    private final Allowance allowance;
    private final CappedText text;

    private volatile @Nullable Environment running;
    private volatile @Nullable Throwable failure;

    /** Where a template was seen at work. */
    private record Place(String template, int line, int column) {}

    Filling(Configuration freemarker, String name, Map<String, ?> values, Allowance allowance) {
        this.freemarker = freemarker;
        this.name = name;
        this.values = values;
        this.allowance = allowance;
        this.text = new CappedText(allowance.characters());
    }

    @Override
    public void run() {
        try {
            Template template = freemarker.getTemplate(name);
            Environment environment = template.createProcessingEnvironment(values, text);
            running = environment;
            environment.process();
        } catch (Throwable e) {
            // A template can exhaust the stack or the memory of its thread; that is its fault
            // alone.
            failure = e;
        }
    }

    String text() throws LayoutTrouble {
        Thread worker = new Thread(this, "template " + name);
        worker.setDaemon(true);
        worker.start();
        Place last = UNKNOWN;
        try {
            // Counted in looks and not by a clock, which has no place here.
            for (long looks = looks(); worker.isAlive() && looks > 0; looks--) {
                worker.join(LOOK_EVERY_MS);
                last = place(last);
            }
            if (worker.isAlive()) {
                worker.interrupt();
                worker.join(LAST_CHANCE_MS);
                throw trouble(
                        last, "did not end within " + allowance.time().toMillis() + " ms", null);
            }
        } catch (InterruptedException e) {
            worker.interrupt();
            Thread.currentThread().interrupt();
            throw trouble(last, "was interrupted", e);
        }
        Throwable thrown = failure;
        if (thrown != null) {
            throw trouble(thrown, last);
        }
        return text.toString();
    }

    private long looks() {
        return Math.max(1, allowance.time().toMillis() / LOOK_EVERY_MS);
    }

    /**
     * Where the template is at work. The worker goes on meanwhile, so the answer is only near the
     * truth, and now and then there is none; it serves a message and decides nothing.
     */
    private Place place(Place otherwise) {
        Environment environment = running;
        if (environment == null) {
            return otherwise;
        }
        try {
            return place(new TemplateException("", environment));
        } catch (RuntimeException e) {
            return otherwise;
        }
    }

    private Place place(TemplateException e) {
        Integer line = e.getLineNumber();
        Integer column = e.getColumnNumber();
        String template = e.getTemplateSourceName();
        return line == null || column == null || template == null
                ? UNKNOWN
                : new Place(template, line, column);
    }

    private LayoutTrouble trouble(Throwable thrown, Place last) {
        if (thrown instanceof CappedText.Full full) {
            return trouble(place(full.where()), String.valueOf(full.getMessage()), full);
        }
        if (thrown instanceof ParseException e) {
            Place place = new Place(e.getTemplateName(), e.getLineNumber(), e.getColumnNumber());
            return trouble(place, plain(e.getEditorMessage()), e);
        }
        if (thrown instanceof TemplateException e) {
            return trouble(place(e), plain(e.getMessageWithoutStackTop()), e);
        }
        if (thrown instanceof TemplateNotFoundException e) {
            return trouble(UNKNOWN, "not found in the folder of templates", e);
        }
        if (thrown instanceof MalformedTemplateNameException e) {
            return trouble(UNKNOWN, "not a name inside the folder of templates", e);
        }
        if (thrown instanceof StackOverflowError) {
            return trouble(last, "calls itself too deeply", thrown);
        }
        if (thrown instanceof OutOfMemoryError) {
            return trouble(last, "uses more memory than there is", thrown);
        }
        return trouble(last, String.valueOf(thrown.getMessage()), thrown);
    }

    /**
     * FreeMarker's message without its advice to programmers, on one line and of a length to read.
     */
    private static String plain(String message) {
        String said =
                message.replaceAll("(?s)\\n---- *\\n.*", "")
                        .replaceAll("The name was interpreted by [^\\n]*", "")
                        .replaceAll(" *\\[in template [^\\]]*\\]", "")
                        .replaceAll("\\s+", " ")
                        .strip();
        return PlainText.line(
                said.length() > LONGEST_MESSAGE ? said.substring(0, LONGEST_MESSAGE) + "…" : said);
    }

    private LayoutTrouble trouble(Place place, String said, @Nullable Throwable cause) {
        String template = place.template().isEmpty() ? name : place.template();
        return new LayoutTrouble(template, place.line(), place.column(), said, cause);
    }
}
