package eavesproof.app;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A sample with something in it written otherwise, or taken out. Places are JSON pointers. */
final class EditedRecord {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final JsonNode record;

    private EditedRecord(JsonNode record) {
        this.record = record;
    }

    static EditedRecord ofSample(String name) {
        try {
            return new EditedRecord(
                    JSON.readTree(Files.readAllBytes(Path.of("samples", name + ".json"))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    EditedRecord without(String pointer) {
        if (holder(pointer).remove(key(pointer)) == null) {
            throw new IllegalArgumentException("nothing to take out at " + pointer);
        }
        return this;
    }

    EditedRecord with(String pointer, String json) {
        try {
            if (holder(pointer).set(key(pointer), JSON.readTree(json)) == null) {
                throw new IllegalArgumentException("nothing to put at " + pointer);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    byte[] bytes() {
        try {
            return JSON.writeValueAsBytes(record);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private ObjectNode holder(String pointer) {
        JsonNode holder = record.at(pointer.substring(0, pointer.lastIndexOf('/')));
        if (holder instanceof ObjectNode object) {
            return object;
        }
        throw new IllegalArgumentException("no object holds " + pointer);
    }

    private static String key(String pointer) {
        return pointer.substring(pointer.lastIndexOf('/') + 1);
    }
}
