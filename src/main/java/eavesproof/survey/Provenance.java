package eavesproof.survey;

import java.util.Optional;

/**
 * Who says so, and how they know.
 *
 * @param how one of the record's words measured, seen, told, assumed
 */
public record Provenance(String how, Optional<String> by, Optional<String> reference) {
    public static final Provenance MEASURED =
            new Provenance("measured", Optional.empty(), Optional.empty());

    public boolean isAssumed() {
        return how.equals("assumed");
    }
}
