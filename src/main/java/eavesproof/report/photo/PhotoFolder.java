package eavesproof.report.photo;

import eavesproof.report.Photo;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The photographs beside a job record and in the folders below it, and nothing else. */
public final class PhotoFolder {
    /** More than any telephone makes. */
    static final int LARGEST_BYTES = 40_000_000;

    private final Path folder;
    private final boolean withPlaces;

    /**
     * @param folder where the job record lies
     * @param withPlaces whether to look where each was taken
     */
    public PhotoFolder(Path folder, boolean withPlaces) throws IOException {
        this.folder = folder.toRealPath();
        this.withPlaces = withPlaces;
    }

    /** The picture in a file that somebody named, wherever it lies. */
    public static Photo readFile(Path file) throws IOException {
        Path real = file.toRealPath();
        Path parent = real.getParent();
        return parent == null
                ? new Photo.Missing("is no file", Optional.empty())
                : new PhotoFolder(parent, false).read(String.valueOf(real.getFileName()));
    }

    /** The picture in the file of that name, or why there is none. */
    public Photo read(@Nullable String name) {
        byte[] bytes;
        try {
            bytes = bytes(name);
        } catch (Unreadable e) {
            return new Photo.Missing(String.valueOf(e.getMessage()), Optional.empty());
        }
        String sha256 = sha256(bytes);
        try {
            Photo.Print print = Picture.of(bytes).print(sha256);
            return withPlaces ? print.at(Optional.of(Whereabouts.of(bytes).orElse(""))) : print;
        } catch (Unreadable e) {
            return new Photo.Missing(String.valueOf(e.getMessage()), Optional.of(sha256));
        }
    }

    private byte[] bytes(@Nullable String name) throws Unreadable {
        if (name == null || name.isBlank()) {
            throw new Unreadable("is not named in the record");
        }
        try {
            Path file = folder.resolve(name).normalize();
            if (!file.startsWith(folder)) {
                throw new Unreadable("lies outside the folder of the job record");
            }
            // A link inside the folder must not lead out of it.
            Path real = file.toRealPath();
            if (!real.startsWith(folder)) {
                throw new Unreadable("leads out of the folder of the job record");
            }
            if (!Files.isRegularFile(real)) {
                throw new Unreadable("is no file");
            }
            return bounded(real);
        } catch (InvalidPathException e) {
            throw new Unreadable("is no name of a file");
        } catch (NoSuchFileException e) {
            throw new Unreadable("is not there");
        } catch (IOException e) {
            throw new Unreadable("cannot be read");
        }
    }

    private static byte[] bounded(Path file) throws IOException, Unreadable {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LARGEST_BYTES + 1);
            if (bytes.length > LARGEST_BYTES) {
                throw new Unreadable("is larger than " + LARGEST_BYTES / 1_000_000 + " MB");
            }
            return bytes;
        }
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
