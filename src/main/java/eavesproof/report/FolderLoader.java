package eavesproof.report;

import freemarker.cache.TemplateLoader;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Templates from one folder, and from nowhere else, whatever a name or a link says. */
final class FolderLoader implements TemplateLoader {
    private static final long LARGEST_BYTES = 1_000_000;

    private final Path folder;

    FolderLoader(Path folder) throws IOException {
        this.folder = folder.toRealPath();
    }

    @Override
    public @Nullable Object findTemplateSource(String name) throws IOException {
        try {
            Path file = folder.resolve(name).normalize();
            if (!file.startsWith(folder) || !Files.isRegularFile(file)) {
                return null;
            }
            // A link inside the folder must not lead out of it.
            Path real = file.toRealPath();
            return real.startsWith(folder) ? real : null;
        } catch (InvalidPathException e) {
            return null;
        }
    }

    @Override
    public long getLastModified(Object source) {
        // Read once; a file that changes while a report is made is not looked at again.
        return 0;
    }

    @Override
    public Reader getReader(Object source, String encoding) throws IOException {
        Path file = (Path) source;
        long size = Files.size(file);
        if (size > LARGEST_BYTES) {
            throw new IOException(
                    "the file has " + size + " bytes, expected at most " + LARGEST_BYTES);
        }
        try {
            return new StringReader(
                    StandardCharsets.UTF_8
                            .newDecoder()
                            .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
                            .toString());
        } catch (CharacterCodingException e) {
            throw new IOException("the file is not UTF-8 text", e);
        }
    }

    @Override
    public void closeTemplateSource(Object source) {
        // Nothing stays open.
    }
}
