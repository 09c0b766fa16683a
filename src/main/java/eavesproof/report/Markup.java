package eavesproof.report;

import eavesproof.drawing.Drawing;
import eavesproof.drawing.SvgPen;
import java.util.regex.Pattern;

/** A piece of XHTML that a template inserts as it is; everything else it inserts is escaped. */
public final class Markup {
    /** The type of the object element that stands for a drawing. */
    public static final String DRAWING_TYPE = "application/x-eavesproof-drawing";

    private static final Pattern ID = Pattern.compile("[A-Za-z][A-Za-z0-9_-]{0,63}");

    private final String xhtml;

    private Markup(String xhtml) {
        this.xhtml = xhtml;
    }

    /** For paper: the place of a drawing, which the writer of the PDF fills from the manuscript. */
    public static Markup place(String drawingId) {
        if (!ID.matcher(drawingId).matches()) {
            throw new IllegalArgumentException("not an id: " + PlainText.line(drawingId));
        }
        return new Markup(
                "<object type=\""
                        + DRAWING_TYPE
                        + "\" data-drawing=\""
                        + drawingId
                        + "\"></object>");
    }

    /** For the screen: the drawing itself. */
    public static Markup draw(Drawing drawing) {
        return new Markup(SvgPen.write(drawing));
    }

    String xhtml() {
        return xhtml;
    }

    @Override
    public String toString() {
        return xhtml;
    }
}
