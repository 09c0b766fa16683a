package eavesproof.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** One small change of a record at a random place. */
final class Mutation {
    /** Escapes, since half a surrogate pair cannot be written in UTF-8. */
    private static final ObjectMapper JSON =
            new ObjectMapper(
                    JsonFactory.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build());

    /** Values that are right in some places of a record and wrong in most. */
    private static final List<String> VALUES =
            List.of(
                    "null",
                    "true",
                    "0",
                    "-0.0",
                    "-1",
                    "1",
                    "4.0",
                    "3.5",
                    "90",
                    "100",
                    "101",
                    "180.5",
                    "1000000",
                    "1000000.5",
                    "-1000000",
                    "1e7",
                    "1e300",
                    "\"\"",
                    "\" \"",
                    "\"\u00a0\"",
                    "\"x\"",
                    "\"yes\"",
                    "\"unknown\"",
                    "\"told\"",
                    "\"II\"",
                    "\"tape\"",
                    "\"sole\"",
                    "\"PVC-U\"",
                    "\"outlet\"",
                    "\"drain\"",
                    "\"discharge\"",
                    "\"soakaway\"",
                    "\"2026-03-10\"",
                    "\"2026-02-29\"",
                    "\"2026-13-01\"",
                    "\"10.3.2026\"",
                    "\"a b\"",
                    "\".a\"",
                    "\"a/b.jpg\"",
                    "\"a/../b.jpg\"",
                    "\"a\\nb\"",
                    "\"\\u0085\"",
                    "\"\\u202e\"",
                    "\"\\ud83d\\ude00\"",
                    "\"\\ud83d\"",
                    "\"\\uffff\"",
                    "\"a\\n\"",
                    "[]",
                    "{}",
                    "[null]",
                    "[\"x\"]",
                    "[{}]",
                    "{\"id\": \"q\"}",
                    "{\"g2\": {}}",
                    "{\"is\": \"yes\"}",
                    "{\"is\": 1}",
                    "[{\"id\": \"q\", \"kind\": \"tank\"}]");

    private Mutation() {}

    static String of(String record, Random random) {
        try {
            JsonNode root = JSON.readTree(record);
            List<ContainerNode<?>> places = new ArrayList<>();
            collect(root, places);
            ContainerNode<?> place = places.get(random.nextInt(places.size()));
            JsonNode value = value(random);
            if (place instanceof ObjectNode object) {
                change(object, value, random);
            } else if (place instanceof ArrayNode array) {
                change(array, value, random);
            }
            return JSON.writeValueAsString(root);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static JsonNode value(Random random) throws JsonProcessingException {
        if (random.nextInt(50) == 0) {
            return JSON.getNodeFactory().textNode("x".repeat(999 + random.nextInt(4)));
        }
        return JSON.readTree(VALUES.get(random.nextInt(VALUES.size())));
    }

    private static void collect(JsonNode node, List<ContainerNode<?>> places) {
        if (node instanceof ContainerNode<?> place) {
            places.add(place);
            node.forEach(child -> collect(child, places));
        }
    }

    private static void change(ObjectNode object, JsonNode value, Random random) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        String key = keys.isEmpty() ? "id" : keys.get(random.nextInt(keys.size()));
        switch (random.nextInt(5)) {
            case 0 -> object.remove(key);
            case 1 -> object.set(key + "x", value);
            default -> object.set(key, value);
        }
    }

    private static void change(ArrayNode array, JsonNode value, Random random) {
        if (array.isEmpty() || random.nextInt(4) == 0) {
            array.add(value);
        } else if (random.nextInt(4) == 0) {
            array.remove(random.nextInt(array.size()));
        } else {
            array.set(random.nextInt(array.size()), value);
        }
    }
}
