package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    private static final byte[] NEW = {1, 2, 3};
    private static final byte[] OLD = {9};

    @TempDir Path folder;
    private Path target;

    @BeforeEach
    void choose() {
        target = folder.resolve("report.pdf");
    }

    @Test
    void aNewFileIsWrittenAndNothingElseIsLeft() throws IOException {
        new WholeFile(target, false).write(NEW);

        assertArrayEquals(NEW, Files.readAllBytes(target));
        assertEquals(List.of(target), contents());
    }

    @Test
    void anExistingFileStaysUnlessItMayGo() throws IOException {
        Files.write(target, OLD);

        assertThrows(
                FileAlreadyExistsException.class, () -> new WholeFile(target, false).write(NEW));
        assertThrows(FileAlreadyExistsException.class, () -> new WholeFile(target, false).check());
        assertArrayEquals(OLD, Files.readAllBytes(target));
        assertEquals(List.of(target), contents());
    }

    @Test
    void anExistingFileThatMayGoIsReplaced() throws IOException {
        Files.write(target, OLD);

        new WholeFile(target, true).write(NEW);

        assertArrayEquals(NEW, Files.readAllBytes(target));
        assertEquals(List.of(target), contents());
    }

    @Test
    void whatALinkPointsAtIsReplacedAndNotTheLink() throws IOException {
        Path real = Files.write(folder.resolve("real.pdf"), OLD);
        Files.createSymbolicLink(target, real);

        new WholeFile(target, true).write(NEW);

        assertTrue(Files.isSymbolicLink(target));
        assertArrayEquals(NEW, Files.readAllBytes(real));
        Files.delete(target);
    }

    @Test
    void aFolderIsNeverReplaced() {
        FileSystemException refused =
                assertThrows(
                        FileSystemException.class, () -> new WholeFile(folder, true).write(NEW));

        assertEquals("is no file that can be replaced", refused.getReason());
        assertTrue(Files.isDirectory(folder));
    }

    @Test
    void aFolderThatIsNotThereIsNotMade() {
        Path nowhere = folder.resolve("missing/report.pdf");

        NoSuchFileException refused =
                assertThrows(
                        NoSuchFileException.class, () -> new WholeFile(nowhere, false).write(NEW));
        assertEquals(folder.resolve("missing").toString(), refused.getFile());
        assertTrue(Files.notExists(nowhere.getParent()));
    }

    private List<Path> contents() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
