package eavesproof.report;

import eavesproof.drawing.Drawing;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * All that a document is made from.
 *
 * @param xhtml the filled template
 * @param drawings by the id under which the text places them, see {@link Markup#place}
 * @param photographs by the address under which the text places them, see {@link Markup#photograph}
 * @param band what the program itself says on every page, over whatever else lies there; nothing
 *     where the text is its own
 * @param signedBy who will sign the document, if anybody; it then has a place for that
 */
public record Manuscript(
        String xhtml,
        Map<String, Drawing> drawings,
        Map<String, Photo.Print> photographs,
        List<Attachment> attachments,
        About about,
        Paper paper,
        List<String> band,
        Optional<SignedBy> signedBy) {
    public Manuscript {
        drawings = Collections.unmodifiableMap(new TreeMap<>(drawings));
        photographs = Collections.unmodifiableMap(new TreeMap<>(photographs));
        attachments = List.copyOf(attachments);
        band = List.copyOf(band);
        long names = attachments.stream().map(Attachment::name).distinct().count();
        if (names != attachments.size()) {
            throw new IllegalArgumentException("two attachments have the same name");
        }
    }

    /** Of words that are the program's own. */
    public Manuscript(
            String xhtml,
            Map<String, Drawing> drawings,
            Map<String, Photo.Print> photographs,
            List<Attachment> attachments,
            About about,
            Paper paper,
            Optional<SignedBy> signedBy) {
        this(xhtml, drawings, photographs, attachments, about, paper, List.of(), signedBy);
    }

    /** Without photographs, and for nobody to sign. */
    public Manuscript(
            String xhtml,
            Map<String, Drawing> drawings,
            List<Attachment> attachments,
            About about,
            Paper paper) {
        this(xhtml, drawings, Map.of(), attachments, about, paper, Optional.empty());
    }
}
