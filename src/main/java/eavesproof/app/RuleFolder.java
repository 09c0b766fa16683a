package eavesproof.app;

import eavesproof.check.BasisOf;
import eavesproof.check.RainPlaces;
import eavesproof.check.TablesFit;
import eavesproof.exchange.RuleSetFile;
import eavesproof.exchange.TableFile;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleProblem;
import eavesproof.rules.RuleSet;
import eavesproof.rules.Sha256;
import eavesproof.rules.Table;
import eavesproof.rules.Tables;
import eavesproof.survey.Basis;
import eavesproof.survey.Vocabulary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * One rule set as its folder has it.
 *
 * @param files name to SHA-256 of every file that can move a verdict
 * @param contents name to what is in it, of the same files
 */
record RuleFolder(
        RuleSet ruleSet, SortedMap<String, String> files, SortedMap<String, byte[]> contents) {
    static final String RULE_SET = "rule-set.json";
    private static final String RULES = ".drl";
    private static final String TABLES = "tables";
    private static final String TABLE = ".csv";
    private static final int MOST_FILES = 100;

    /** How the rules of a file are come by. */
    interface RuleReader {
        List<Rule> read(String file, byte[] bytes) throws RefusedRules;
    }

    /**
     * @throws RefusedRules with everything that is wrong in any of its files
     */
    static RuleFolder read(Path folder, RuleReader reader) throws RefusedRules, IOException {
        String label = folder.toAbsolutePath().normalize().getFileName() + "/";
        List<RuleProblem> problems = new ArrayList<>();
        TreeMap<String, String> files = new TreeMap<>();
        TreeMap<String, byte[]> contents = new TreeMap<>();
        List<Rule> rules = new ArrayList<>();
        Map<String, Table> tables = new TreeMap<>();
        RuleSet ruleSet = null;
        for (String name : names(folder, folder + folder.getFileSystem().getSeparator())) {
            byte[] bytes = bytes(folder.resolve(name), folder, label + name);
            files.put(name, Sha256.of(bytes));
            contents.put(name, bytes);
            try {
                if (name.equals(RULE_SET)) {
                    ruleSet = RuleSetFile.read(label + name, bytes);
                } else if (name.endsWith(TABLE)) {
                    String table = tableName(name);
                    tables.put(table, TableFile.read(label + name, table, bytes));
                } else {
                    rules.addAll(reader.read(label + name, bytes));
                }
            } catch (RefusedRules refused) {
                problems.addAll(refused.problems());
            }
        }
        if (ruleSet == null || !problems.isEmpty()) {
            throw new RefusedRules(problems);
        }
        RuleSet whole = known(label + RULE_SET, RainPlaces.in(ruleSet, tables, label + RULE_SET));
        return new RuleFolder(whole.with(filled(rules, tables)), files, contents);
    }

    /** Of its file, tables/NAME.csv. */
    static String tableName(String file) {
        return file.substring(TABLES.length() + 1, file.length() - TABLE.length());
    }

    static boolean isTable(String file) {
        return file.startsWith(TABLES + "/");
    }

    private static List<Rule> filled(List<Rule> rules, Map<String, Table> tables)
            throws RefusedRules {
        List<Rule> filled = Tables.fill(rules, tables);
        List<RuleProblem> misfits = TablesFit.problems(filled);
        if (!misfits.isEmpty()) {
            throw new RefusedRules(misfits);
        }
        return filled;
    }

    /** A file that only looks like a rule file would be left out in silence. */
    private static List<String> names(Path folder, String label) throws RefusedRules, IOException {
        List<String> names = new ArrayList<>();
        try (Stream<Path> paths = Files.list(folder)) {
            for (Path path : paths.sorted().toList()) {
                String name = String.valueOf(path.getFileName());
                if (name.equals(RULE_SET) || name.endsWith(RULES)) {
                    names.add(name);
                } else if (name.toLowerCase(Locale.ROOT).endsWith(RULES)) {
                    throw refused(label + name, "this ending", RULES);
                }
            }
        }
        if (Files.isDirectory(folder.resolve(TABLES))) {
            names.addAll(tables(folder.resolve(TABLES), label));
        }
        if (!names.contains(RULE_SET)) {
            throw refused(label + RULE_SET, "no such file", "what the rule set is");
        }
        if (names.size() > MOST_FILES) {
            throw refused(label, names.size() + " files", "at most " + MOST_FILES);
        }
        return names;
    }

    private static List<String> tables(Path folder, String label) throws RefusedRules, IOException {
        List<String> names = new ArrayList<>();
        try (Stream<Path> paths = Files.list(folder)) {
            for (Path path : paths.sorted().toList()) {
                String name = TABLES + "/" + path.getFileName();
                if (!name.endsWith(TABLE) || !TableFile.NAME.matcher(tableName(name)).matches()) {
                    throw refused(
                            label + name, "this name", "small letters, digits and - and .csv");
                }
                names.add(name);
            }
        }
        return names;
    }

    private static byte[] bytes(Path path, Path folder, String label)
            throws RefusedRules, IOException {
        Optional<String> trouble = FileOfRules.trouble(path, folder);
        if (trouble.isPresent()) {
            throw refused(label, trouble.get(), FileOfRules.EXPECTED);
        }
        return Files.readAllBytes(path);
    }

    private static RuleSet known(String file, RuleSet ruleSet) throws RefusedRules {
        List<RuleProblem> unknown = new ArrayList<>();
        for (String kind : ruleSet.mustJudge()) {
            if (Vocabulary.kind(kind).isEmpty()) {
                unknown.add(new RuleProblem(file, "must_judge " + kind, "a fact kind"));
            }
        }
        ruleSet.basis()
                .forEach(
                        (key, stated) ->
                                Basis.problem(key, BasisOf.entry(stated, ""))
                                        .map(
                                                expected ->
                                                        new RuleProblem(
                                                                file,
                                                                "basis "
                                                                        + key
                                                                        + " "
                                                                        + stated.text(),
                                                                expected))
                                        .ifPresent(unknown::add));
        if (!unknown.isEmpty()) {
            throw new RefusedRules(unknown);
        }
        return ruleSet;
    }

    private static RefusedRules refused(String where, String found, String expected) {
        return new RefusedRules(List.of(new RuleProblem(where, found, expected)));
    }
}
