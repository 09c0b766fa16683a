package eavesproof.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The published schema and the reader take and refuse the same records. */
class SchemaAgreesTest {
    private static final Schema SCHEMA =
            SchemaRegistry.withDefaultDialect(
                            SpecificationVersion.DRAFT_2020_12,
                            registry ->
                                    registry.schemaRegistryConfig(
                                            SchemaRegistryConfig.builder()
                                                    .formatAssertionsEnabled(true)
                                                    .build()))
                    .getSchema(JobSchema.text());

    /**
     * What the reader refuses and a schema cannot: ids and keys only once, references that lead
     * somewhere, a way without circles, what JSON libraries read on their own terms (byte order
     * mark, UTF-16, letters in too many bytes, a second text after the first), numbers that have
     * too many digits or are too small for a double, and what two values contradict each other in.
     */
    private static final Set<String> BEYOND_A_SCHEMA =
            Set.of(
                    "a-bracket-twice-in-one-run",
                    "a-byte-order-mark",
                    "a-spout-into-a-pipe",
                    "a-stop-end-between-two-straights",
                    "a-corner-that-leads-nowhere",
                    "a-fixed-outlet-with-room-to-slide",
                    "a-gasket-in-a-cemented-gutter",
                    "a-tape-better-than-any",
                    "an-outlet-below-what-it-leads-to",
                    "a-distance-too-small-for-a-double",
                    "a-joint-by-the-name-of-a-bracket",
                    "a-key-twice",
                    "a-key-twice-once-in-escapes",
                    "a-number-of-many-digits",
                    "a-part-of-the-way-twice",
                    "a-part-that-leads-to-itself",
                    "a-slash-in-two-bytes",
                    "a-straight-twice-in-two-runs",
                    "a-way-in-a-circle",
                    "a-way-onto-a-straight",
                    "a-way-up-into-an-outlet",
                    "an-instrument-twice",
                    "an-outlet-by-the-name-of-a-bracket",
                    "more-after-the-end",
                    "references-to-nothing",
                    "two-records",
                    "utf-16",
                    "utf-16-without-a-mark");

    private static boolean schemaTakes(String json) {
        return SCHEMA.validate(json, InputFormat.JSON).isEmpty();
    }

    /** By its shape alone, before values are held against each other. */
    private static boolean readerTakes(String json) {
        Problems problems = new Problems();
        JobFile.shaped(json.getBytes(UTF_8), problems, new Names());
        return problems.none();
    }

    static Stream<Path> samples() throws IOException {
        try (Stream<Path> all = Files.list(Path.of("samples"))) {
            return all.filter(file -> file.toString().endsWith(".json")).sorted().toList().stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("samples")
    void bothTakeEverySample(Path sample) throws Exception {
        JobFile.read(Files.readAllBytes(sample));
        assertTrue(schemaTakes(Files.readString(sample)));
    }

    @Test
    void bothTakeTheBlankRecord() {
        assertTrue(schemaTakes(JobFile.blank("nz")));
        assertTrue(readerTakes(JobFile.blank("nz")));
    }

    @Test
    void theSchemaRefusesEveryHostileRecordButThoseBeyondIt() throws IOException {
        Set<String> taken = new TreeSet<>();
        for (Path file : HostileRecordsTest.files().toList()) {
            if (hostileIsTaken(Files.readAllBytes(file))) {
                taken.add(file.getFileName().toString().replace(".json", ""));
            }
        }
        assertEquals(new TreeSet<>(BEYOND_A_SCHEMA), taken);
    }

    private static boolean hostileIsTaken(byte[] bytes) throws IOException {
        try {
            return SCHEMA.validate(new ObjectMapper().readTree(bytes)).isEmpty();
        } catch (JsonProcessingException noJson) {
            return false;
        }
    }

    @Property(tries = 1000, seed = "20261125")
    void bothGiveTheSameAnswerOnAChangedRecord(@ForAll("changed") String json) {
        assertEquals(schemaTakes(json), readerTakes(json), json);
    }

    @Provide
    Arbitrary<String> changed() throws IOException {
        String sample = Files.readString(Path.of("samples/verandah-pvc.json"));
        return Arbitraries.of(sample, JobFile.blank("nz"))
                .flatMap(record -> Arbitraries.randomValue(random -> Mutation.of(record, random)));
    }

    @Test
    void someChangesAreTakenAndSomeRefused() throws IOException {
        List<String> changed = changed().list().ofSize(200).sample();
        assertTrue(changed.stream().anyMatch(SchemaAgreesTest::readerTakes));
        assertFalse(changed.stream().allMatch(SchemaAgreesTest::readerTakes));
    }
}
