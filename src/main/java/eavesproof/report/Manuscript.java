package eavesproof.report;

import eavesproof.drawing.Drawing;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * All that a document is made from.
 *
 * @param xhtml the filled template
 * @param drawings by the id under which the text places them, see {@link Markup#place}
 */
public record Manuscript(
        String xhtml,
        Map<String, Drawing> drawings,
        List<Attachment> attachments,
        About about,
        Paper paper) {
    public Manuscript {
        drawings = Collections.unmodifiableMap(new TreeMap<>(drawings));
        attachments = List.copyOf(attachments);
        long names = attachments.stream().map(Attachment::name).distinct().count();
        if (names != attachments.size()) {
            throw new IllegalArgumentException("two attachments have the same name");
        }
    }
}
