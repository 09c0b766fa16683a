package eavesproof.report.pdf;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import eavesproof.report.PlainText;
import java.util.HashSet;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Keeps the layout from reading anything but the text it is given, and notes what it asked for.
 * Addresses of links are looked at too, but only written into the file for the reader to follow.
 */
final class Gate {
    private final NavigableSet<String> refused = new TreeSet<>();
    private final Set<String> links = new HashSet<>();

    Gate(Document text) {
        NodeList anchors = text.getElementsByTagName("a");
        for (int i = 0; i < anchors.getLength(); i++) {
            links.add(((Element) anchors.item(i)).getAttribute("href"));
        }
    }

    void close(PdfRendererBuilder builder) {
        builder.useExternalResourceAccessControl(
                (uri, type) -> refuse(uri),
                ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl(
                (uri, type) -> refuse(uri),
                ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
        builder.useUriResolver((base, uri) -> resolve(uri));
        builder.useProtocolsStreamImplementation(
                uri -> {
                    refuse(uri);
                    throw new IllegalStateException("refused " + uri);
                },
                "http",
                "https",
                "file",
                "jar",
                "ftp",
                "data",
                "classpath");
    }

    /** What the document asked for and did not get. */
    NavigableSet<String> refused() {
        return refused;
    }

    private @Nullable String resolve(@Nullable String uri) {
        if (uri == null || uri.startsWith("#")) {
            return uri;
        }
        if (!links.contains(uri)) {
            refuse(uri);
        }
        return null;
    }

    private boolean refuse(String uri) {
        // The layout also asks for "", meaning the document itself.
        if (!uri.isEmpty()) {
            refused.add(PlainText.line(uri));
        }
        return false;
    }
}
