package eavesproof.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class JobSchemaTest {

    @Test
    void theFileBesideTheClassesIsThisSchema() throws IOException {
        Path written = Path.of("target", "job.schema.json");
        Files.writeString(written, JobSchema.text());
        try (InputStream file =
                JobSchema.class.getResourceAsStream("/eavesproof/job.schema.json")) {
            assertNotNull(file, "no job.schema.json");
            assertEquals(
                    new String(file.readAllBytes(), UTF_8),
                    JobSchema.text(),
                    () -> "the shape has changed; the schema that belongs to it is in " + written);
        }
    }

    @Test
    void theSchemaKeepsToTheSchemaOfSchemas() {
        SchemaRegistry registry =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
        List<Error> errors =
                registry.getSchema(
                                com.networknt.schema.SchemaLocation.of(
                                        "https://json-schema.org/draft/2020-12/schema"))
                        .validate(JobSchema.text(), InputFormat.JSON);
        assertEquals(List.of(), errors);
    }
}
