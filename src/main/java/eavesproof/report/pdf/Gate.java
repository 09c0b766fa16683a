package eavesproof.report.pdf;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceType;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import eavesproof.report.Markup;
import eavesproof.report.Photo;
import eavesproof.report.PlainText;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.Reader;
import java.util.HashSet;
import java.util.Map;
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
    private final Map<String, Photo.Print> photographs;

    /**
     * @param photographs those that the program has made itself, by their addresses: the only bytes
     *     that come in
     */
    Gate(Document text, Map<String, Photo.Print> photographs) {
        this.photographs = photographs;
        NodeList anchors = text.getElementsByTagName("a");
        for (int i = 0; i < anchors.getLength(); i++) {
            links.add(((Element) anchors.item(i)).getAttribute("href"));
        }
    }

    void close(PdfRendererBuilder builder) {
        builder.useExternalResourceAccessControl(
                (uri, type) -> admit(uri, type),
                ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl(
                (uri, type) -> admit(uri, type),
                ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
        builder.useUriResolver((base, uri) -> resolve(uri));
        builder.useProtocolsStreamImplementation(
                this::photograph, Markup.PHOTOGRAPH.replace(":", ""));
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

    private boolean admit(String uri, ExternalResourceType type) {
        return (type == ExternalResourceType.IMAGE_RASTER && photographs.containsKey(uri))
                || refuse(uri);
    }

    private FSStream photograph(String uri) {
        Photo.Print print = photographs.get(uri);
        if (print == null) {
            refuse(uri);
            throw new IllegalStateException("refused " + uri);
        }
        return new FSStream() {
            @Override
            public InputStream getStream() {
                return new ByteArrayInputStream(print.jpeg());
            }

            @Override
            public Reader getReader() {
                throw new IllegalStateException("a photograph is no text");
            }
        };
    }

    private @Nullable String resolve(@Nullable String uri) {
        if (uri == null || uri.startsWith("#") || photographs.containsKey(uri)) {
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
