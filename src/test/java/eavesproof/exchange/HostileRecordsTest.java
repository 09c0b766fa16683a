package eavesproof.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each file of a folder of hostile records ends in the problems that its table lists. */
class HostileRecordsTest {
    static final Path FOLDER = Path.of("src/test/resources/eavesproof/hostile/records");

    static Stream<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.filter(file -> file.toString().endsWith(".json")).sorted().toList().stream();
        }
    }

    /** The rows of the table by file, without the name of the file. */
    private static Map<String, List<String>> expected() throws IOException {
        Map<String, List<String>> rows = new TreeMap<>();
        for (String line : Files.readAllLines(FOLDER.resolve("expected.txt"), UTF_8)) {
            if (!line.startsWith("#")) {
                String[] cells = line.split(" \\| ", 2);
                rows.computeIfAbsent(cells[0] + ".json", file -> new ArrayList<>()).add(cells[1]);
            }
        }
        return rows;
    }

    static List<RecordProblem> problems(byte[] bytes) {
        return assertTimeout(
                Duration.ofSeconds(30),
                () -> assertThrows(BadRecord.class, () -> JobFile.read(bytes)).problems());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void aHostileRecordEndsInItsProblems(Path file) throws IOException {
        List<RecordProblem> problems = problems(Files.readAllBytes(file));
        assertEquals(
                expected().get(file.getFileName().toString()),
                problems.stream().map(HostileRecordsTest::row).toList());
        assertFalse(problems.stream().anyMatch(problem -> problem.expected().isBlank()));
    }

    private static String row(RecordProblem problem) {
        return problem.line()
                + ":"
                + problem.column()
                + " | "
                + problem.pointer()
                + " | "
                + problem.found();
    }

    @Test
    void theTableListsNoOtherFiles() throws IOException {
        List<String> names = files().map(file -> file.getFileName().toString()).toList();
        assertEquals(names, List.copyOf(expected().keySet()));
    }

    private static List<RecordProblem> problems(String text) {
        return problems(text.getBytes(UTF_8));
    }

    private static RecordProblem only(List<RecordProblem> problems) {
        assertEquals(1, problems.size(), problems::toString);
        return problems.get(0);
    }

    private static String many(int count, String between, IntFunction<String> each) {
        return IntStream.range(0, count).mapToObj(each).collect(Collectors.joining(between));
    }

    @Test
    void aFileOfSixteenMebibytesIsTheLargest() {
        byte[] spaces = " ".repeat(FileText.MOST_BYTES + 1).getBytes(UTF_8);
        assertEquals("16777217 bytes", only(problems(spaces)).found());
    }

    @Test
    void aGiantTextIsShownShortened() {
        String giant = "{\"id\": \"j\", \"title\": \"" + "x".repeat(10_000_000) + "\"}";
        assertTrue(only(problems(giant)).text().length() < 300);
    }

    @Test
    void aGiantKeyIsShownShortened() {
        String giant = "{\"id\": \"j\", \"" + "x".repeat(10_000_000) + "\": 1}";
        assertTrue(only(problems(giant)).text().length() < 700);
    }

    @Test
    void aGiantNumberIsRefused() {
        String giant = "{\"id\": \"j\", \"circumstances\": {\"salt_water_km\": {\"is\": %s}}}";
        only(problems(giant.formatted("1" + "0".repeat(5_000_000))));
        only(problems(giant.formatted("0." + "0".repeat(5_000_000) + "1")));
    }

    @Test
    void aMillionListsWithinEachOtherAreRefused() {
        for (String start :
                List.of("", "{\"id\": \"j\", \"remarks\": ", "{\"id\": \"j\", \"x\": ")) {
            List<RecordProblem> problems = problems(start + "[".repeat(1_000_000));
            assertEquals(2, problems.size());
            assertEquals("a text nested too deep", problems.get(1).found());
        }
    }

    @Test
    void aMillionBracketsAreTooMany() {
        String brackets = many(1_000_000, ",", i -> "{}");
        List<RecordProblem> problems =
                problems(
                        "{\"id\": \"j\", \"runs\": [{\"id\": \"a\", \"straights\": [{\"id\": \"s\","
                                + " \"brackets\": ["
                                + brackets
                                + "]}]}]}");
        assertEquals(1000, problems.size());
    }

    @Test
    void aMillionUnknownKeysEndInAThousandProblems() {
        String keys = many(1_000_000, ",", i -> "\"k" + i + "\":1");
        assertEquals(1000, problems("{\"id\": \"j\"," + keys + "}").size());
    }

    @Test
    void theSameKeyAMillionTimesEndsInAThousandProblems() {
        String keys = many(1_000_000, ",", i -> "\"title\":1");
        assertEquals(1000, problems("{\"id\": \"j\"," + keys + "}").size());
    }

    @Test
    void tooManyGuttersAreOneProblem() {
        String gutters = many(100_000, ",", i -> "\"g" + i + "\":{}");
        assertEquals(
                "an object of more entries",
                only(problems("{\"id\": \"j\", \"gutters\": {" + gutters + "}}")).found());
    }

    @Test
    void aCircleOfAThousandPartsIsOneProblem() {
        String way =
                many(
                        1000,
                        ",",
                        i ->
                                "{\"id\":\"d%d\",\"kind\":\"drain\",\"to\":\"d%d\"}"
                                        .formatted(i, (i + 1) % 1000));
        assertEquals(
                "/way/999/to", only(problems("{\"id\": \"j\", \"way\": [" + way + "]}")).pointer());
    }
}
