package eavesproof.report.pdf;

import com.openhtmltopdf.pdfboxout.PagePosition;
import com.openhtmltopdf.render.Box;
import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import org.apache.pdfbox.pdmodel.PDDocument;

/** What is still to be done to the open document when all pages are painted. */
@FunctionalInterface
interface LastTouch {
    LastTouch NONE = (document, places) -> {};

    /**
     * @param places where on which page the element of an id has come to lie, in points from the
     *     page's lower left corner
     */
    void apply(PDDocument document, Function<String, List<PagePosition<Box>>> places)
            throws IOException;
}
