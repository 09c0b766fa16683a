package eavesproof.app;

import eavesproof.check.Engine;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleChange;
import java.util.List;

/**
 * A rule set ready for use.
 *
 * @param asShipped whether every layer is, byte for byte, one that came with the program
 * @param changes what became of shipped rules, where it is not: a changed copy against what it was
 *     copied from, and a layer of its own against what it is laid over
 */
public record LoadedRules(
        RuleBook book, Engine engine, boolean asShipped, List<RuleChange> changes) {
    public LoadedRules {
        changes = List.copyOf(changes);
    }
}
