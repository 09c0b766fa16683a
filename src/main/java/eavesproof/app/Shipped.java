package eavesproof.app;

import eavesproof.check.RainPlaces;
import eavesproof.exchange.RuleSetFile;
import eavesproof.exchange.RuleSheet;
import eavesproof.exchange.TableFile;
import eavesproof.rules.Layers;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleSet;
import eavesproof.rules.Sha256;
import eavesproof.rules.Table;
import eavesproof.rules.Tables;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What the build noted of the rule sets that come with the program. */
final class Shipped {
    /** On the class path, beside the compiled layers. */
    static final String FOLDER = "eavesproof/layer/";

    private static final String LIST = FOLDER + "shipped.txt";

    private Shipped() {}

    /** Where the sheet of a rule file lies, by the digest of its bytes. */
    static String sheet(String sha256) {
        return FOLDER + "sheets/" + sha256 + ".json";
    }

    static String list() {
        return LIST;
    }

    /** The rules of a file that was read when the program was built; else nothing. */
    static Optional<List<Rule>> rules(String file, byte[] bytes) {
        return sheetRules(file, Sha256.of(bytes));
    }

    /** One line for each file: the rule set, the file, its digest. */
    static String line(String ruleSet, String file, String sha256) {
        return ruleSet + " " + file + " " + sha256 + "\n";
    }

    /** File to digest, by the name of the rule set. */
    static Map<String, SortedMap<String, String>> files() {
        Map<String, SortedMap<String, String>> files = new LinkedHashMap<>();
        String list =
                resource(LIST).map(bytes -> new String(bytes, StandardCharsets.UTF_8)).orElse("");
        for (String line : list.lines().toList()) {
            List<String> words = List.of(line.split(" ", -1));
            files.computeIfAbsent(words.get(0), name -> new TreeMap<>())
                    .put(words.get(1), words.get(2));
        }
        return files;
    }

    /** Where a table lies as it was shipped. */
    static String table(String sha256) {
        return FOLDER + "sheets/" + sha256 + ".csv";
    }

    /** Where what a rule set says of itself lies as it was shipped. */
    static String ruleSet(String sha256) {
        return FOLDER + "sheets/" + sha256 + ".rule-set";
    }

    /** A rule set and all below it, as they were shipped. */
    static RuleBook book(String name, Map<String, SortedMap<String, String>> files)
            throws RefusedRules {
        return RuleBook.of(
                Layers.under(
                        layer(name, files),
                        below ->
                                files.containsKey(below)
                                        ? Optional.of(layer(below, files))
                                        : Optional.empty()));
    }

    private static RuleSet layer(String name, Map<String, SortedMap<String, String>> files)
            throws RefusedRules {
        Map<String, String> its = Objects.requireNonNull(files.get(name), name);
        String sha256 = Objects.requireNonNull(its.get(RuleFolder.RULE_SET), name);
        byte[] said =
                resource(ruleSet(sha256))
                        .orElseThrow(() -> new IllegalStateException("no rule set " + name));
        String label = name + "/" + RuleFolder.RULE_SET;
        RuleSet ruleSet = RuleSetFile.read(label, said);
        return RainPlaces.in(ruleSet, tablesOf(its), label).with(rulesOf(its));
    }

    /** The rules that a rule set had when it was shipped, with their tables. */
    static List<Rule> rulesOf(Map<String, String> files) {
        List<Rule> rules = new ArrayList<>();
        try {
            for (Map.Entry<String, String> file : files.entrySet()) {
                sheetRules(file.getKey(), file.getValue()).ifPresent(rules::addAll);
            }
            return Tables.fill(rules, tablesOf(files));
        } catch (RefusedRules e) {
            throw new IllegalStateException("the program's own rules are refused", e);
        }
    }

    private static Map<String, Table> tablesOf(Map<String, String> files) throws RefusedRules {
        Map<String, Table> tables = new TreeMap<>();
        for (Map.Entry<String, String> file : files.entrySet()) {
            Optional<byte[]> table = resource(table(file.getValue()));
            if (RuleFolder.isTable(file.getKey()) && table.isPresent()) {
                String name = RuleFolder.tableName(file.getKey());
                tables.put(name, TableFile.read(file.getKey(), name, table.get()));
            }
        }
        return tables;
    }

    private static Optional<List<Rule>> sheetRules(String file, String sha256) {
        return resource(sheet(sha256)).map(bytes -> RuleSheet.read(file, bytes));
    }

    private static Optional<byte[]> resource(String path) {
        try (InputStream in = Shipped.class.getClassLoader().getResourceAsStream(path)) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + path + " of the program", e);
        }
    }
}
