package eavesproof.app;

import eavesproof.check.Engine;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleChange;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * A rule set ready for use.
 *
 * @param asShipped whether every layer is, byte for byte, one that came with the program
 * @param original where it is not: the shipped rule set that it is a changed copy of, or that lies
 *     below it; empty where there is none
 * @param isCopyOfOriginal whether it is a changed copy, and not a layer of its own over it
 * @param files what was read, by the name of the layer, a slash and the name of the file
 */
public record LoadedRules(
        RuleBook book,
        Engine engine,
        boolean asShipped,
        Optional<RuleBook> original,
        boolean isCopyOfOriginal,
        SortedMap<String, byte[]> files) {

    /** What became of the shipped rules. */
    List<RuleChange> changes() {
        return original.map(was -> RuleChange.between(was.rules(), book.rules())).orElse(List.of());
    }
}
