package eavesproof.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Which templates a folder holds: a digest over the names and the bytes of its files. */
public final class TemplateIdentity {
    private static final int DEEPEST = 3;
    private static final int MOST_FILES = 200;
    private static final long LARGEST_BYTES = 1_000_000;

    private TemplateIdentity() {}

    /** The files of a folder by their names; too many or too large ones are no templates. */
    static Map<String, byte[]> files(Path folder) throws LayoutTrouble {
        try {
            Map<String, byte[]> files = new TreeMap<>();
            try (Stream<Path> all = Files.walk(folder, DEEPEST)) {
                for (Path file :
                        (Iterable<Path>)
                                all.filter(f -> Files.isRegularFile(f, LinkOption.NOFOLLOW_LINKS))
                                        ::iterator) {
                    String name = folder.relativize(file).toString().replace('\\', '/');
                    if (Files.size(file) > LARGEST_BYTES || files.size() == MOST_FILES) {
                        throw new LayoutTrouble(
                                folder.toString(),
                                "expected templates only, and found more or larger files than those"
                                        + " have, such as "
                                        + name);
                    }
                    files.put(name, Files.readAllBytes(file));
                }
            }
            return files;
        } catch (IOException e) {
            throw new LayoutTrouble(folder.toString(), 0, 0, "expected a folder of templates", e);
        }
    }

    public static String sha256(Path folder) throws LayoutTrouble {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (Map.Entry<String, byte[]> file : files(folder).entrySet()) {
                String head = file.getKey() + "\0" + file.getValue().length + "\0";
                digest.update(head.getBytes(StandardCharsets.UTF_8));
                digest.update(file.getValue());
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
