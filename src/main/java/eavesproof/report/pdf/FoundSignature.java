package eavesproof.report.pdf;

import eavesproof.report.SignedBy;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A signature as it stands in a file.
 *
 * @param by whose certificate it names; empty where that cannot be read
 * @param when the moment that the file names; nobody has looked whether that is true
 * @param problems everything for which it does not hold; empty where it holds
 */
public record FoundSignature(Optional<SignedBy> by, Instant when, List<String> problems) {
    public FoundSignature {
        problems = List.copyOf(problems);
    }
}
