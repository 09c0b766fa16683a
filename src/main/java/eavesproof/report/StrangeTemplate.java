package eavesproof.report;

import eavesproof.findings.Findings;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * What the program itself says on a page whose template did not come with it. On paper it is
 * painted last, over whatever the template has put there.
 */
final class StrangeTemplate {
    private static final int ENOUGH = 16;

    private static final Set<String> NOT_ON_A_PAGE =
            Set.of("script", "iframe", "object", "embed", "form", "base", "link");

    /** Nothing that a style sheet says can change these. */
    private static final String STYLE =
            "all:initial!important;display:block!important;position:relative!important;"
                    + "z-index:2147483647!important;background:#fff!important;"
                    + "color:#000!important;font:14px sans-serif!important;"
                    + "padding:8px!important;border-bottom:1px solid #000!important";

    private static final Pattern BODY =
            Pattern.compile("<body(\\s+[\\w:-]+\\s*=\\s*(\"[^\"]*\"|'[^']*'))*\\s*>");

    private StrangeTemplate() {}

    /** Empty where the templates came with the program. */
    static List<String> lines(Path folder) throws LayoutTrouble {
        return ShippedTemplates.are(folder)
                ? List.of()
                : List.of(
                        "Set by a template that did not come with the program: its words are those"
                                + " of whoever wrote it. Template SHA-256 "
                                + TemplateIdentity.sha256(folder).substring(0, ENOUGH)
                                + "…");
    }

    /** The same with what came of the check, which no template can word otherwise. */
    static List<String> lines(Path folder, Findings findings) throws LayoutTrouble {
        List<String> lines = lines(folder);
        return lines.isEmpty()
                ? lines
                : List.of(
                        "What the program found: "
                                + findings.outcome().words()
                                + (findings.rules().asShipped()
                                        ? "."
                                        : ", by rules that are not as shipped."),
                        lines.get(0));
    }

    /** A title of a document by such a template. */
    static String title(String title, List<String> lines) {
        return lines.isEmpty() ? title : String.join(" ", lines) + " It calls itself: " + title;
    }

    /** A page for the screen with the lines at its head. */
    static String onScreen(String page, List<String> lines) throws LayoutTrouble {
        if (lines.isEmpty()) {
            return page;
        }
        int body = afterBody(page);
        return page.substring(0, body)
                + "<p style=\""
                + STYLE
                + "\">"
                + String.join(" ", lines)
                + "</p>"
                + page.substring(body);
    }

    /** Where nothing is commented out, and text holds no bracket, there is no other body. */
    private static int afterBody(String page) throws LayoutTrouble {
        if (page.contains("<!") || page.contains("<?")) {
            throw trouble("a comment of the page has no place on the screen", null);
        }
        look(page);
        Matcher body = BODY.matcher(page);
        if (!body.find()) {
            throw trouble("expected a body", null);
        }
        return body.end();
    }

    private static void look(String page) throws LayoutTrouble {
        try {
            XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
            factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
            factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
            XMLStreamReader in = factory.createXMLStreamReader(new StringReader(page));
            while (in.hasNext()) {
                if (in.next() == XMLStreamConstants.START_ELEMENT) {
                    String name = in.getLocalName().toLowerCase(Locale.ROOT);
                    if (NOT_ON_A_PAGE.contains(name)) {
                        throw trouble("the element " + name + " has no place on a page", null);
                    }
                    attributes(in);
                }
            }
        } catch (XMLStreamException e) {
            throw trouble("cannot be read as XHTML", e);
        }
    }

    private static void attributes(XMLStreamReader in) throws LayoutTrouble {
        for (int i = 0; i < in.getAttributeCount(); i++) {
            String name = in.getAttributeLocalName(i).toLowerCase(Locale.ROOT);
            String value = in.getAttributeValue(i).replaceAll("\\s", "").toLowerCase(Locale.ROOT);
            if (name.startsWith("on") || value.startsWith("javascript:")) {
                throw trouble("the attribute " + name + " would run something", null);
            }
        }
    }

    private static LayoutTrouble trouble(String said, @Nullable Exception cause) {
        return new LayoutTrouble("the page made from the template", 0, 0, said, cause);
    }
}
