package eavesproof.app;

import eavesproof.exchange.NewRuleSet;
import eavesproof.exchange.RuleSetFile;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleProblem;
import eavesproof.rules.RuleText;
import eavesproof.rules.Tables;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/** Begins a rule set of somebody's own, laid over a shipped one. */
public final class AdaptRules {
    private static final String OWN =
            """
            // Rules of this rule set. What stands here comes on top of the rule set named by builds_on
            // in rule-set.json; whatever is not here follows that one.
            //
            // To change a rule: have it here under the same name, and the name in "replaces".
            // To leave one out: its name in "drops", with the reason.
            // To add one: a new name, and its document in "documents".
            // Then: eavesproof rules verify FOLDER, and eavesproof rules show FOLDER.

            """;

    private AdaptRules() {}

    /**
     * @param base the name of a shipped rule set
     * @param folder that is to be made; its name is the name of the new rule set
     * @param replaced names of rules to have in it, as they are now
     * @throws RefusedRules if there is no such rule set or rule, or the folder has no fitting name
     */
    public static void begin(String base, Path folder, List<String> replaced, Path shippedRules)
            throws RefusedRules, IOException {
        String name = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
        List<String> shipped = RuleSets.names(shippedRules);
        if (!shipped.contains(base)) {
            throw refused("rule set", base, "one of " + shipped);
        }
        if (!RuleSetFile.NAME.matcher(name).matches() || shipped.contains(name)) {
            throw refused(
                    "the new folder",
                    name,
                    "a name of its own in small letters, digits and hyphens, and none of "
                            + shipped);
        }
        if (Files.exists(folder)) {
            throw new FileAlreadyExistsException(folder.toString());
        }
        RuleBook book = RuleSets.load(base, shippedRules).book();
        Map<String, String> files = new TreeMap<>();
        files.put(
                "rule-set.json",
                NewRuleSet.on(
                        name, book.title() + ", adapted", book.jurisdiction(), base, replaced));
        List<Rule> rules = rules(book, replaced);
        files.put("own.drl", OWN + RuleText.of(rules));
        for (Rule rule : rules) {
            String from = rule.file().substring(0, rule.file().indexOf('/'));
            for (Rule.Lookup lookup : Tables.in(rule)) {
                String table = "tables/" + lookup.table() + ".csv";
                files.put(table, Files.readString(shippedRules.resolve(from).resolve(table)));
            }
        }
        write(folder, files);
    }

    private static List<Rule> rules(RuleBook book, List<String> names) throws RefusedRules {
        List<Rule> rules = new ArrayList<>();
        List<RuleProblem> problems = new ArrayList<>();
        for (String name : names) {
            if (book.rule(name).isPresent()) {
                rules.add(book.rule(name).get());
            } else {
                problems.add(
                        new RuleProblem(
                                "the rules to replace",
                                name,
                                "a rule of " + book.name() + "; rules show lists them"));
            }
        }
        if (!problems.isEmpty()) {
            throw new RefusedRules(problems);
        }
        return rules;
    }

    /** Under another name first, so that half a rule set is never mistaken for a whole one. */
    private static void write(Path folder, Map<String, String> files) throws IOException {
        Path place = folder.toAbsolutePath().normalize();
        Path part = place.resolveSibling("." + place.getFileName() + ".part");
        Files.createDirectory(part);
        try {
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path path = part.resolve(file.getKey());
                Files.createDirectories(Objects.requireNonNull(path.getParent()));
                Files.writeString(path, file.getValue());
            }
            Files.move(part, place);
        } finally {
            for (String name : files.keySet()) {
                Files.deleteIfExists(part.resolve(name));
            }
            Files.deleteIfExists(part.resolve("tables"));
            Files.deleteIfExists(part);
        }
    }

    private static RefusedRules refused(String where, String found, String expected) {
        return new RefusedRules(List.of(new RuleProblem(where, found, expected)));
    }
}
