package eavesproof.check.drools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.rules.RefusedRules;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rule files that try to run code, exhaust the machine, or mean something else than they show. */
class HostileRulesTest {

    static Stream<Path> files() throws IOException, URISyntaxException {
        URL folder = HostileRulesTest.class.getResource("/eavesproof/hostile/rules");
        try (Stream<Path> files = Files.list(Path.of(Objects.requireNonNull(folder).toURI()))) {
            List<Path> sorted = files.sorted().toList();
            return sorted.stream();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void eachIsRefusedWithFileAndLine(Path path) throws IOException {
        String file = String.valueOf(path.getFileName());
        byte[] bytes = Files.readAllBytes(path);
        RefusedRules refused = assertThrows(RefusedRules.class, () -> PlainForm.read(file, bytes));
        refused.problems()
                .forEach(
                        problem -> {
                            assertTrue(
                                    problem.where().matches(".*\\.drl:[1-9]\\d*"), problem::text);
                            assertTrue(problem.found().length() < 400, problem::text);
                            assertFalse(problem.expected().isBlank(), problem::text);
                        });
        assertFalse(Files.exists(Path.of("taken.txt")), "the file has run code");
    }

    @Test
    void theWholeFolderWasTried() throws Exception {
        assertTrue(files().count() >= 100);
    }

    /** Were the plain rule itself refused, all of the above would prove nothing. */
    @Test
    void theRuleThatTheyAreMadeFromIsTaken() throws RefusedRules {
        assertEquals(
                1,
                PlainForm.read("plain.drl", Plain.RULE.getBytes(StandardCharsets.US_ASCII)).size());
    }

    @Test
    void nothingIsSaidOnTheWay() throws Exception {
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        try (PrintStream ear = new PrintStream(said, true, StandardCharsets.UTF_8)) {
            System.setOut(ear);
            System.setErr(ear);
            for (Path path : files().toList()) {
                assertThrows(
                        RefusedRules.class,
                        () -> PlainForm.read("x.drl", Files.readAllBytes(path)));
            }
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
        assertEquals("", said.toString(StandardCharsets.UTF_8));
    }
}
