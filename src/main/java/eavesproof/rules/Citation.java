package eavesproof.rules;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;

/** Takes {@code @source} apart: the key of a document, which may be two words, then the clause. */
final class Citation {
    private Citation() {}

    /** The longest key that the source begins with; empty where there is none. */
    static Optional<Rule.Cited> in(String source, Set<String> documents) {
        return documents.stream()
                .filter(key -> source.equals(key) || source.startsWith(key + " "))
                .max(Comparator.comparingInt(String::length))
                .map(key -> new Rule.Cited(key, source.substring(key.length()).strip()));
    }
}
