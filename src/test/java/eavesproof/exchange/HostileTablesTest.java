package eavesproof.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.rules.RefusedRules;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Tables that mean something else than they show, exhaust the machine, or are none. */
class HostileTablesTest {
    private static final Path FOLDER = Path.of("src/test/resources/eavesproof/hostile/tables");

    private static final String PLAIN =
            """
            # A document, edition 1, table 2
            # metal is words; width up mm; centres mm
            metal,width,centres
            copper,150,600
            copper,300,450
            zinc,150,500
            """;

    static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void eachIsRefusedWithFileAndLine(Path path) throws IOException {
        String file = String.valueOf(path.getFileName());
        byte[] bytes = Files.readAllBytes(path);
        RefusedRules refused = refused(file, bytes);
        assertTrue(refused.problems().size() <= 50);
        refused.problems()
                .forEach(
                        problem -> {
                            boolean isWhole = problem.found().endsWith(" lines");
                            assertTrue(
                                    isWhole || problem.where().matches(".*\\.csv:[1-9]\\d*"),
                                    problem::text);
                            assertTrue(problem.found().length() < 400, problem::text);
                            assertFalse(problem.expected().isBlank(), problem::text);
                            assertFalse(problem.text().contains("\u001b"), problem::text);
                        });
    }

    @Test
    void theWholeFolderWasTried() throws Exception {
        assertTrue(files().size() >= 45);
    }

    /** Were the plain table itself refused, all of the above would prove nothing. */
    @Test
    void theTableThatTheyAreMadeFromIsTaken() throws RefusedRules {
        byte[] plain = PLAIN.getBytes(StandardCharsets.UTF_8);
        assertEquals(3, TableFile.read("plain.csv", "plain", plain).rows().size());
    }

    @Test
    void aMillionRowsAreRefusedUnread() {
        byte[] rows = (PLAIN + "zinc,300,1\n".repeat(1_000_000)).getBytes(StandardCharsets.UTF_8);
        assertTrue(refused("t.csv", rows).getMessage().contains("at most 262144"));
    }

    @Test
    void aLineWithoutEndIsShownShortened() {
        byte[] line = (PLAIN + "z,".repeat(100_000)).getBytes(StandardCharsets.UTF_8);
        assertTrue(refused("t.csv", line).problems().get(0).text().length() < 400);
    }

    private static RefusedRules refused(String file, byte[] bytes) {
        return assertTimeout(
                Duration.ofSeconds(10),
                () -> assertThrows(RefusedRules.class, () -> TableFile.read(file, "t", bytes)));
    }
}
