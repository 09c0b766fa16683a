package eavesproof.survey;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Where an answer belongs: the ids that are known of it, by key name, and for display the stretch
 * of a straight that it covers.
 *
 * @param keys key name to id, in the order of the fact's components; a gap may lack some
 */
public record Place(Map<String, String> keys, Optional<Stretch> stretch) {

    /** From one station of a straight to another (the same for a point), mm. */
    public record Stretch(String straight, double fromMm, double toMm) {}

    public Place {
        keys = Collections.unmodifiableMap(new LinkedHashMap<>(keys));
    }

    /** A place of key, id, key, id, … without a stretch. */
    public static Place of(String... keysAndIds) {
        Map<String, String> keys = new LinkedHashMap<>();
        for (int i = 0; i < keysAndIds.length; i += 2) {
            keys.put(keysAndIds[i], keysAndIds[i + 1]);
        }
        return new Place(keys, Optional.empty());
    }

    public Place at(String straight, double fromMm, double toMm) {
        return new Place(keys, Optional.of(new Stretch(straight, fromMm, toMm)));
    }

    /** The id of a key, where it is known. */
    public Optional<String> key(String name) {
        return Optional.ofNullable(keys.get(name));
    }
}
