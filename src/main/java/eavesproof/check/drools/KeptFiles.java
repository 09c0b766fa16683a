package eavesproof.check.drools;

import eavesproof.rules.Sha256;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What one run of this user has made and the next need not make again: files in a private folder,
 * each with the digest of what is in it before it. Whatever is wrong with a file or with the
 * folder, there is none.
 */
public final class KeptFiles {
    private static final String FORM = "eavesproof kept 1\n";
    private static final int DIGEST = 64;
    private static final int START = FORM.length() + DIGEST;
    private static final int MOST_BYTES = 8 * 1024 * 1024;
    private static final int MOST_FILES = 80;

    private final Optional<PrivateFolder> folder;
    private final String ending;

    /**
     * @param named where to keep them; nothing is kept where none is named or it will not do
     */
    public KeptFiles(Optional<PrivateFolder> named, String ending) {
        this.folder = named.flatMap(PrivateFolder::ready);
        this.ending = ending;
    }

    /** What was kept under this name, in just the state in which it was written. */
    public Optional<byte[]> find(String name) {
        if (folder.isEmpty()) {
            return Optional.empty();
        }
        Path file = file(folder.get(), name);
        try {
            if (!folder.get().holds(file) || Files.size(file) > MOST_BYTES) {
                return Optional.empty();
            }
            return content(Files.readAllBytes(file));
        } catch (IOException | RuntimeException broken) {
            return Optional.empty();
        }
    }

    /** Whole or not at all. */
    public void keep(String name, byte[] content) {
        if (folder.isEmpty() || content.length > MOST_BYTES - START) {
            return;
        }
        Path path = folder.get().path();
        try {
            makeRoom(path);
            Path part = Files.createTempFile(path, "new", ".part");
            try {
                Files.write(part, whole(content));
                Files.move(part, file(folder.get(), name), StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (IOException | UncheckedIOException cannotBeKept) {
            // Then the next run makes it again.
        }
    }

    private Path file(PrivateFolder in, String name) {
        return in.path().resolve(name + ending);
    }

    /** The oldest go first, and with them what a run left half written. */
    private static void makeRoom(Path folder) throws IOException {
        record Aged(Path file, FileTime written) {}
        List<Aged> files = new ArrayList<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path file : all.toList()) {
                files.add(new Aged(file, Files.getLastModifiedTime(file)));
            }
        }
        files.sort(Comparator.comparing(Aged::written));
        for (Aged one : files.subList(0, Math.max(0, files.size() - MOST_FILES + 1))) {
            Files.deleteIfExists(one.file());
        }
    }

    private static byte[] whole(byte[] content) {
        byte[] start = (FORM + Sha256.of(content)).getBytes(StandardCharsets.US_ASCII);
        byte[] whole = Arrays.copyOf(start, start.length + content.length);
        System.arraycopy(content, 0, whole, start.length, content.length);
        return whole;
    }

    private static Optional<byte[]> content(byte[] whole) {
        if (whole.length < START) {
            return Optional.empty();
        }
        byte[] content = Arrays.copyOfRange(whole, START, whole.length);
        return Arrays.equals(whole, whole(content)) ? Optional.of(content) : Optional.empty();
    }
}
