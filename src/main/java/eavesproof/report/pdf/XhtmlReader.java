package eavesproof.report.pdf;

import eavesproof.drawing.Drawing;
import eavesproof.report.LayoutTrouble;
import eavesproof.report.Manuscript;
import eavesproof.report.PlainText;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Reads the text of a manuscript, and refuses what the layout would get wrong in silence: what a
 * validator of PDF/UA cannot see, such as a table without a head, and what it would only see later.
 */
final class XhtmlReader {
    static final String PAGE = "the page made from the template";

    private static final int DEEPEST = 100;
    private static final Set<String> CONTROLS =
            Set.of("input", "select", "textarea", "button", "form", "iframe", "embed", "script");

    private final Map<String, Drawing> drawings;
    private final List<String> problems = new ArrayList<>();
    private int heading;

    private XhtmlReader(Map<String, Drawing> drawings) {
        this.drawings = drawings;
    }

    static Document read(Manuscript manuscript) throws LayoutTrouble {
        Document document = parse(manuscript.xhtml());
        XhtmlReader reader = new XhtmlReader(manuscript.drawings());
        Element root = document.getDocumentElement();
        if (!root.getNodeName().equals("html")) {
            reader.problems.add(
                    "expected html as the outermost element, found " + root.getNodeName());
        }
        root.setAttribute("lang", manuscript.about().language());
        reader.walk(root);
        if (!reader.problems.isEmpty()) {
            throw new LayoutTrouble(PAGE, String.join("; ", reader.problems));
        }
        return document;
    }

    private static Document parse(String xhtml) throws LayoutTrouble {
        try {
            // The JDK's own, whatever else lies on the class path.
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setExpandEntityReferences(false);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new Strict());
            return builder.parse(new InputSource(new StringReader(xhtml)));
        } catch (SAXParseException e) {
            throw new LayoutTrouble(
                    PAGE,
                    e.getLineNumber(),
                    e.getColumnNumber(),
                    String.valueOf(e.getMessage()),
                    e);
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new LayoutTrouble(PAGE, 0, 0, "cannot be read as XHTML", e);
        }
    }

    /** In document order and without recursion, since the depth is somebody else's choice. */
    private void walk(Element root) {
        Node node = root;
        int depth = 1;
        while (node != null) {
            if (node instanceof Element element) {
                look(element, depth);
            }
            Node next = node.getFirstChild();
            if (next != null) {
                depth++;
            } else {
                while (node != root && node.getNextSibling() == null) {
                    node = node.getParentNode();
                    depth--;
                }
                next = node == root ? null : node.getNextSibling();
            }
            node = next;
        }
    }

    private void look(Element element, int depth) {
        String name = element.getNodeName();
        if (depth == DEEPEST + 1) {
            problems.add("elements lie more than " + DEEPEST + " deep");
        } else if (CONTROLS.contains(name)) {
            problems.add("the element " + name + " has no place on paper");
        } else if (name.matches("h[1-6]")) {
            heading(name.charAt(1) - '0');
        } else if (name.equals("table") && element.getElementsByTagName("th").getLength() == 0) {
            problems.add("a table has no head: it needs at least one th");
        } else if (name.equals("td") || name.equals("th")) {
            span(element, "colspan");
            span(element, "rowspan");
        } else if (name.equals("img") && element.getAttribute("alt").isBlank()) {
            problems.add("a picture has no alt: it needs words for those who cannot see it");
        } else if (name.equals("object")) {
            place(element);
        }
    }

    private void heading(int level) {
        if (level > heading + 1) {
            problems.add(
                    "a heading h"
                            + level
                            + " follows h"
                            + heading
                            + ", expected h"
                            + (heading + 1));
        }
        heading = level;
    }

    private void span(Element cell, String attribute) {
        String span = cell.getAttribute(attribute);
        if (!span.isEmpty() && !span.matches("[1-9][0-9]?")) {
            problems.add(
                    "a cell has "
                            + attribute
                            + "=\""
                            + PlainText.line(span)
                            + "\", expected 1 to 99");
        }
    }

    private void place(Element element) {
        String id = element.getAttribute("data-drawing");
        Drawing drawing = drawings.get(id);
        if (!DrawingPlaces.isPlace(element)) {
            problems.add(
                    "an object is of type \""
                            + element.getAttribute("type")
                            + "\", expected a drawing");
        } else if (drawing == null) {
            problems.add("there is no drawing \"" + id + "\"");
        } else {
            element.setAttribute("alt", drawing.alt());
            if (!element.getAttribute("style").contains("width")) {
                element.setAttribute(
                        "style",
                        element.getAttribute("style")
                                + ";width:"
                                + mm(drawing.widthMm())
                                + ";height:"
                                + mm(drawing.heightMm()));
            }
        }
    }

    private static String mm(double value) {
        return new BigDecimal(value).setScale(3, RoundingMode.HALF_EVEN).toPlainString() + "mm";
    }

    /** Says nothing on the standard error stream, which the parser does when left alone. */
    private static final class Strict implements ErrorHandler {
        @Override
        public void warning(SAXParseException e) {
            // A warning is no reason to refuse.
        }

        @Override
        public void error(SAXParseException e) throws SAXParseException {
            throw e;
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXParseException {
            throw e;
        }
    }
}
