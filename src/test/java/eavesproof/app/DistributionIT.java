package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What lies in the folder that people unpack. */
class DistributionIT {

    private static final Path HOME = Launcher.distribution();

    @Test
    void everyLibraryBringsItsLicence() throws IOException {
        List<Path> libraries = libraries();
        assertTrue(libraries.size() > 40, () -> "only " + libraries);

        List<Path> bare = libraries.stream().filter(jar -> !hasALicence(jar)).toList();

        assertEquals(List.of(), bare);
    }

    @Test
    void theLibraryUnderTheLgplBringsItsText() throws IOException {
        Path text = HOME.resolve("licences/openhtmltopdf-core/META-INF/LICENSE-LGPL-2.1.txt");

        assertTrue(Files.readString(text).contains("Version 2.1, February 1999"));
    }

    @Test
    void noLibraryIsMixedIntoAnother() throws IOException {
        try (FileSystem own = FileSystems.newFileSystem(HOME.resolve("lib/eavesproof.jar"));
                Stream<Path> top = Files.list(own.getPath("/"))) {
            assertEquals(
                    Set.of("META-INF", "eavesproof"),
                    new TreeSet<>(top.map(path -> path.getFileName().toString()).toList()));
        }
    }

    @Test
    void theArchiveHoldsTheSameAsTheFolder() throws IOException {
        List<Path> zips;
        try (Stream<Path> built = Files.list(HOME.resolveSibling(""))) {
            zips = built.filter(path -> path.toString().endsWith(".zip")).toList();
        }
        assertEquals(1, zips.size(), zips::toString);

        try (FileSystem zip = FileSystems.newFileSystem(zips.get(0));
                Stream<Path> roots = Files.list(zip.getPath("/"))) {
            Map<String, Long> unpacked = sizes(HOME);
            assertTrue(
                    unpacked.keySet().removeIf(name -> name.startsWith("start/")),
                    "the folder has an archive of classes, which fits no other");
            assertEquals(unpacked, sizes(roots.toList().get(0)));
        }
    }

    private static List<Path> libraries() throws IOException {
        try (Stream<Path> jars = Files.list(HOME.resolve("lib"))) {
            return jars.filter(jar -> jar.toString().endsWith(".jar"))
                    .filter(jar -> !jar.endsWith("eavesproof.jar"))
                    .sorted()
                    .toList();
        }
    }

    private static boolean hasALicence(Path jar) {
        String library = jar.getFileName().toString().replaceFirst("-\\d.*", "");
        try (Stream<Path> texts = Files.walk(HOME.resolve("licences").resolve(library))) {
            return texts.anyMatch(text -> text.getFileName().toString().matches("(LICENSE|EPL).*"));
        } catch (IOException none) {
            return false;
        }
    }

    private static Map<String, Long> sizes(Path root) throws IOException {
        Map<String, Long> sizes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                sizes.put(root.relativize(file).toString(), Files.size(file));
            }
        }
        return sizes;
    }
}
