package eavesproof.report;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.regex.Pattern;

/**
 * What a document says about itself to those who catalogue it.
 *
 * @param language of the text, as a BCP 47 tag
 * @param program the name and version of what made the document
 * @param issued the moment printed on the document, never the machine's own clock
 */
public record About(
        String title,
        String author,
        String subject,
        String language,
        String program,
        Instant issued) {
    private static final Pattern LANGUAGE = Pattern.compile("[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*");

    public About {
        title = PlainText.line(title);
        author = PlainText.line(author);
        subject = PlainText.line(subject);
        program = PlainText.line(program);
        issued = issued.truncatedTo(ChronoUnit.SECONDS);
        if (title.isBlank()) {
            throw new IllegalArgumentException("a document needs a title");
        }
        if (!LANGUAGE.matcher(language).matches()) {
            throw new IllegalArgumentException("not a language tag: " + PlainText.line(language));
        }
    }
}
