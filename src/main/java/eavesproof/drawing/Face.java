package eavesproof.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The faces that travel with the program; a report is set in these and in nothing else. */
public enum Face {
    REGULAR("SourceSans3-Regular.ttf"),
    STRONG("SourceSans3-SemiBold.ttf"),
    ITALIC("SourceSans3-Italic.ttf"),
    /** For the characters that the others lack. */
    FALLBACK("DejaVuSans.ttf");

    private final String file;

    Face(String file) {
        this.file = file;
    }

    /** The TrueType file, whole. */
    public byte[] bytes() {
        try (InputStream in = Face.class.getResourceAsStream("/eavesproof/fonts/" + file)) {
            if (in == null) {
                throw new IllegalStateException("the font " + file + " is not in the program");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
