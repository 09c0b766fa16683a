package eavesproof.exchange;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.Optional;

/** Reads back what this program wrote; somebody else may have changed it since. */
final class OwnJson {
    private static final JsonMapper JSON =
            JsonMapper.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .build();

    private OwnJson() {}

    /** The object in the file; empty where there is none. */
    static Optional<JsonNode> read(byte[] file) {
        try {
            JsonNode all = JSON.readTree(file);
            return all.isObject() ? Optional.of(all) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
