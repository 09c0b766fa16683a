package eavesproof.report;

import eavesproof.drawing.Drawing;
import eavesproof.drawing.SvgPen;
import eavesproof.quantity.Decimals;
import freemarker.core.XHTMLOutputFormat;
import java.util.regex.Pattern;

/** A piece of XHTML that a template inserts as it is; everything else it inserts is escaped. */
public final class Markup {
    /** What the address of a photograph begins with; a number follows. */
    public static final String PHOTOGRAPH = "photo:";

    /** The id of the element that a digital signature is laid over. */
    public static final String SIGNATURE_PLACE = "signature-place";

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

    /**
     * The place of a photograph, which the writer of the PDF fills from the manuscript.
     *
     * @param number of the photograph in the record, from 1; pictures of signatures follow
     * @param alt what it shows, for those who cannot see it
     */
    static Markup photograph(int number, String alt, double widthMm, double heightMm) {
        return new Markup(
                "<img src=\""
                        + PHOTOGRAPH
                        + number
                        + "\" alt=\""
                        + XHTMLOutputFormat.INSTANCE.escapePlainText(PlainText.line(alt))
                        + "\" style=\"width:"
                        + Decimals.fixed(widthMm, 1)
                        + "mm;height:"
                        + Decimals.fixed(heightMm, 1)
                        + "mm\"/>");
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
