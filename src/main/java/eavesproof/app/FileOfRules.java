package eavesproof.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A file of a rule set, which may come from anybody. */
final class FileOfRules {
    /** Far more than any file of a rule set holds. */
    private static final int MOST_BYTES = 1024 * 1024;

    static final String EXPECTED = "a file of this folder, of at most " + MOST_BYTES + " bytes";

    private FileOfRules() {}

    /**
     * What is there in place of a file that may be read; nothing where it may. A link must not lead
     * out of the folder: what a message quotes of a file would be told of another.
     */
    static Optional<String> trouble(Path file, Path folder) throws IOException {
        if (!Files.exists(file)) {
            return Optional.of("a link to nothing");
        }
        if (!file.toRealPath().startsWith(folder.toRealPath())) {
            return Optional.of("a link to elsewhere");
        }
        if (!Files.isRegularFile(file)) {
            return Optional.of("no plain file");
        }
        long size = Files.size(file);
        return size > MOST_BYTES ? Optional.of(size + " bytes") : Optional.empty();
    }
}
