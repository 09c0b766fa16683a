package eavesproof.report.pdf;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import eavesproof.drawing.Drawing;
import eavesproof.drawing.Java2DPen;
import eavesproof.report.Markup;
import java.awt.Shape;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/** Paints each drawing where the text has its place for it. */
final class DrawingPlaces implements FSObjectDrawerFactory {
    private final Map<String, Drawing> drawings;

    DrawingPlaces(Map<String, Drawing> drawings) {
        this.drawings = drawings;
    }

    @Override
    public boolean isReplacedObject(Element element) {
        return isPlace(element);
    }

    @Override
    public @Nullable FSObjectDrawer createDrawer(Element element) {
        return isPlace(element) ? this::paint : null;
    }

    static boolean isPlace(Element element) {
        return element.getAttribute("type").equals(Markup.DRAWING_TYPE);
    }

    private @Nullable Map<Shape, String> paint(
            Element element,
            double x,
            double y,
            double width,
            double height,
            OutputDevice device,
            RenderingContext context,
            int dotsPerPixel) {
        Drawing drawing = drawings.get(element.getAttribute("data-drawing"));
        if (drawing == null) {
            throw new IllegalStateException("a place without its drawing got past the reader");
        }
        double widthPx = width / dotsPerPixel;
        double heightPx = height / dotsPerPixel;
        double pxPerMm = Math.min(widthPx / drawing.widthMm(), heightPx / drawing.heightMm());
        device.drawWithGraphics(
                (float) x,
                (float) y,
                (float) widthPx,
                (float) heightPx,
                graphics -> {
                    graphics.scale(pxPerMm, pxPerMm);
                    Java2DPen.paint(drawing, graphics);
                });
        return null;
    }
}
