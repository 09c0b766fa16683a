package eavesproof.app;

import eavesproof.findings.Findings;
import eavesproof.job.Job;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleProblem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Which rules a job is held against, and how that is said afterwards. */
final class RulesOfJob {
    private RulesOfJob() {}

    /**
     * The rules asked for, else those that the record names. A record names shipped rules only:
     * what lies in some folder must be asked for, or a result would depend on where it was made.
     */
    static LoadedRules choose(Job job, Optional<String> asked, Path shippedRules)
            throws RefusedRules, IOException {
        if (asked.isPresent()) {
            return RuleSets.load(asked.get(), shippedRules);
        }
        List<String> shipped = RuleSets.names(shippedRules);
        String named = job.ruleSet();
        if (named == null || !shipped.contains(named)) {
            throw new RefusedRules(
                    List.of(
                            new RuleProblem(
                                    "the rule_set of the record",
                                    named == null ? "nothing" : named,
                                    "one of "
                                            + String.join(", ", shipped)
                                            + ", unless --rules names another")));
        }
        return RuleSets.load(named, shippedRules);
    }

    static Findings.RulesUsed inWords(LoadedRules rules) {
        RuleBook book = rules.book();
        return new Findings.RulesUsed(
                book.name(),
                book.title(),
                book.jurisdiction(),
                book.sha256(),
                book.wordsSha256(),
                rules.asShipped(),
                changes(rules),
                book.citedDocuments(),
                book.clausesNotChecked());
    }

    private static List<String> changes(LoadedRules rules) {
        if (rules.asShipped()) {
            return List.of();
        }
        if (rules.original().isEmpty()) {
            return List.of("All of it: nothing that came with the program is below these rules.");
        }
        RuleBook original = rules.original().get();
        List<String> changes =
                ChangesInWords.all(original, rules.book(), !rules.isCopyOfOriginal());
        return changes.isEmpty()
                ? List.of("Nothing that decides or is printed: comments and layout alone.")
                : changes;
    }
}
