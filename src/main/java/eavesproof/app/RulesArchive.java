package eavesproof.app;

import eavesproof.exchange.RuleSetFile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Rule sets packed to travel inside a report: a folder for each layer, as they lie beside each
 * other on disk. The same files give the same bytes on every machine.
 */
final class RulesArchive {
    static final String NAME = "rules.zip";

    private static final int LARGEST = 8_000_000;
    private static final int MOST_FILES = 1000;

    /** The first day of 1980 itself would be written again in the zone of the machine. */
    private static final LocalDateTime NO_DAY = LocalDateTime.of(1980, 1, 2, 0, 0);

    private static final Pattern FILE =
            Pattern.compile(
                    RuleSetFile.NAME.pattern()
                            + "/(rule-set\\.json|tables/[a-z0-9-]{1,80}\\.csv"
                            + "|[^/\\\\:*?\"<>|\\p{Cntrl}]{1,100}\\.drl)");

    private RulesArchive() {}

    /** What was taken for an archive of rules is none. */
    static final class NoRules extends IOException {
        private static final long serialVersionUID = 1L;

        NoRules(String why) {
            super(why);
        }
    }

    /**
     * @param files name of the layer, a slash, and the name of the file within it
     * @return empty where they are too large to travel
     */
    static Optional<byte[]> pack(SortedMap<String, byte[]> files) {
        if (files.values().stream().mapToLong(file -> file.length).sum() > LARGEST) {
            return Optional.empty();
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(entry(file.getKey(), file.getValue()));
                zip.write(file.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("memory could not be written to", e);
        }
        return Optional.of(bytes.toByteArray());
    }

    /** Not compressed, which is done by what it travels in; how well is no two libraries' way. */
    private static ZipEntry entry(String name, byte[] content) {
        CRC32 sum = new CRC32();
        sum.update(content);
        ZipEntry entry = new ZipEntry(name);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(content.length);
        entry.setCrc(sum.getValue());
        entry.setTimeLocal(NO_DAY);
        return entry;
    }

    /**
     * @throws NoRules if it is no archive of rules, or a larger one than is ever written
     */
    static void unpack(byte[] archive, Path folder) throws IOException {
        for (Map.Entry<String, byte[]> file : files(archive).entrySet()) {
            Path target = folder.resolve(file.getKey());
            Files.createDirectories(Objects.requireNonNull(target.getParent()));
            Files.write(target, file.getValue());
        }
    }

    private static SortedMap<String, byte[]> files(byte[] archive) throws IOException {
        SortedMap<String, byte[]> files = new TreeMap<>();
        int left = LARGEST;
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                byte[] content = zip.readNBytes(left + 1);
                left -= content.length;
                if (left < 0
                        || files.size() == MOST_FILES
                        || !FILE.matcher(entry.getName()).matches()) {
                    throw new NoRules("more, or something else, than rules");
                }
                files.put(entry.getName(), content);
            }
        } catch (ZipException | IllegalArgumentException e) {
            throw new NoRules("no archive: " + e.getMessage());
        }
        return files;
    }
}
