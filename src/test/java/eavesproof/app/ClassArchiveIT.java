package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.app.Launcher.Answer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The archive of classes that the launcher makes: the answers are the same with it and without. */
class ClassArchiveIT {
    private static final String[] QUESTION = {"check", "samples/verandah-pvc.json"};

    @TempDir Path elsewhere;
    private Path home;
    private Launcher moved;

    @BeforeEach
    void moveTheDistribution() throws IOException {
        home = elsewhere.resolve("moved here");
        copy(Launcher.distribution(), home);
        moved = Launcher.from(home).calledAs(home.resolve("bin/eavesproof"));
    }

    @Test
    void aFolderThatMovedGetsItsOwnAtTheFirstCallAndKeepsIt() throws Exception {
        Answer first = moved.ask(QUESTION);

        assertEquals(0, first.exit(), first::err);
        assertEquals("", first.err());
        assertTrue(Files.readString(home.resolve("start/made-for")).contains("moved here"));
        Object made = Files.getLastModifiedTime(home.resolve("start/classes.jsa"));

        assertEquals(first, moved.ask(QUESTION));
        assertEquals(made, Files.getLastModifiedTime(home.resolve("start/classes.jsa")));
    }

    @Test
    void anotherProgramInTheSameFolderGetsANewOne() throws Exception {
        moved.ask(QUESTION);
        String before = Files.readString(home.resolve("start/made-for"));

        Files.writeString(home.resolve("lib/program.sha256"), "another\n");
        moved.ask(QUESTION);

        assertNotEquals(before, Files.readString(home.resolve("start/made-for")));
    }

    @Test
    void whereNoneCanBeMadeTheAnswerIsTheSame() throws Exception {
        Answer with = moved.ask(QUESTION);
        delete(home.resolve("start"));
        Files.writeString(home.resolve("start"), "no folder");

        assertEquals(with, moved.ask(QUESTION));
    }

    @Test
    void aSpoiltOneIsPassedOver() throws Exception {
        Answer with = moved.ask(QUESTION);
        Path archive = home.resolve("start/classes.jsa");
        Files.delete(archive);
        Files.writeString(archive, "no archive");

        assertEquals(with, moved.ask(QUESTION));
    }

    @Test
    void oneThatBelongsToAnotherJarIsPassedOver() throws Exception {
        Answer with = moved.ask(QUESTION);
        Path jar = home.resolve("lib/eavesproof.jar");
        Files.setLastModifiedTime(jar, FileTime.fromMillis(0));

        assertEquals(with, moved.ask(QUESTION));
    }

    @Test
    void rulesThatNeedTheCompilerAreNoTroubleToIt() throws Exception {
        Path rules = home.resolve("rules/trade-practice/support.drl");
        String text = Files.readString(rules);
        Files.writeString(rules, text.replace("named == \"PVC-U\"", "named == \"copper\""));
        assertFalse(text.equals(Files.readString(rules)));

        Answer answer = moved.ask(QUESTION);

        assertTrue(answer.exit() <= 2, answer::err);
        assertTrue(answer.out().contains("rules not as shipped"), answer::out);
        try (Stream<Path> left = Files.list(home)) {
            assertFalse(left.anyMatch(path -> path.toString().contains("hs_err")));
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> paths = Files.walk(from)) {
            for (Path path : paths.toList()) {
                Path place = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(place);
                } else {
                    Files.copy(path, place, StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
