package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.app.Launcher.Answer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script in front of the program: what it finds, what it refuses, what it lets through. */
class LauncherIT {

    @TempDir Path elsewhere;
    private Launcher eavesproof;

    @BeforeEach
    void callItFromAFolderOfItsOwn() {
        eavesproof = Launcher.from(elsewhere);
    }

    /** Else the removal of the folder warns of links that lead out of it. */
    @AfterEach
    void takeTheLinksAway() throws IOException {
        try (Stream<Path> left = Files.list(elsewhere)) {
            for (Path link : left.filter(Files::isSymbolicLink).toList()) {
                Files.delete(link);
            }
        }
    }

    @Test
    void theVersionIsAllThatStandardOutputCarries() throws Exception {
        Answer answer = eavesproof.ask("--version");

        assertEquals(0, answer.exit(), answer::err);
        assertTrue(answer.out().matches("eavesproof \\d+\\.\\d+\\.\\d+\\S*\n"), answer::out);
    }

    @Test
    void anUnknownCommandIsWrongUseAndNoResult() throws Exception {
        Answer answer = eavesproof.ask("fitt");

        assertEquals(64, answer.exit(), answer::err);
        assertEquals("", answer.out());
        assertTrue(answer.err().contains("fitt"), answer::err);
    }

    @Test
    void symbolicLinksLeadHome() throws Exception {
        Path absolute = elsewhere.resolve("absolute");
        Files.createSymbolicLink(absolute, eavesproof.command());
        Path relative = elsewhere.resolve("relative");
        Files.createSymbolicLink(relative, Path.of("absolute"));

        assertEquals(0, eavesproof.calledAs(relative).ask("--version").exit());
    }

    @Test
    void theSearchPathLeadsHome() throws Exception {
        String path = eavesproof.command().getParent() + ":" + System.getenv("PATH");
        Launcher shell = eavesproof.with("PATH", path).calledAs(Path.of("/bin/sh"));

        assertEquals(0, shell.ask("-c", "eavesproof --version").exit());
    }

    @Test
    void aFolderWithSpacesAndAccentsIsNoTrouble() throws Exception {
        Path folder = elsewhere.resolve("Trauf- und Dachrinne (neu)");
        Files.createSymbolicLink(folder, Launcher.distribution());

        Answer answer = eavesproof.calledAs(folder.resolve("bin/eavesproof")).ask("--version");

        assertEquals(0, answer.exit(), answer::err);
    }

    @Test
    void lettersOfAnyLanguageArriveWhateverTheLocale() throws Exception {
        Answer answer = eavesproof.with("LC_ALL", "C").ask("wāhi");

        assertTrue(answer.err().contains("wāhi"), answer::err);
    }

    @Test
    void aJavaThatIsTooOldIsRefused() throws Exception {
        Path old = javaThatSays("1.8.0_402");

        Answer answer = eavesproof.with("JAVA_HOME", old.toString()).ask("--version");

        assertEquals(70, answer.exit());
        assertEquals("", answer.out());
        assertTrue(answer.err().contains("Java 17 or newer"), answer::err);
        assertTrue(answer.err().contains("1.8.0_402"), answer::err);
    }

    @Test
    void aJavaHomeWithoutJavaIsNamed() throws Exception {
        Answer answer = eavesproof.with("JAVA_HOME", elsewhere.toString()).ask("--version");

        assertEquals(70, answer.exit());
        assertTrue(answer.err().contains(elsewhere.toString()), answer::err);
    }

    @Test
    void noJavaAnywhereIsSaid() throws Exception {
        Answer answer =
                eavesproof
                        .with("JAVA_HOME", "")
                        .with("PATH", elsewhere.toString())
                        .ask("--version");

        assertEquals(70, answer.exit());
        assertTrue(answer.err().contains("no Java found"), answer::err);
    }

    @Test
    void withoutJavaHomeTheOneOnThePathIsTaken() throws Exception {
        Path old = javaThatSays("11.0.2");

        Answer answer =
                eavesproof
                        .with("JAVA_HOME", "")
                        .with("PATH", old.resolve("bin") + ":" + System.getenv("PATH"))
                        .ask("--version");

        assertEquals(70, answer.exit());
        assertTrue(answer.err().contains("11.0.2"), answer::err);
    }

    /** A Java without a release file, which has to be asked. */
    private Path javaThatSays(String version) throws Exception {
        Path java = elsewhere.resolve("old/bin/java");
        Files.createDirectories(java.getParent());
        Files.writeString(java, "#!/bin/sh\necho 'openjdk version \"" + version + "\"' >&2\n");
        Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
        return elsewhere.resolve("old");
    }
}
