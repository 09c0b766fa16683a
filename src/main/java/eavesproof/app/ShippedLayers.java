package eavesproof.app;

import eavesproof.check.drools.LayerFiles;
import eavesproof.check.drools.PlainForm;
import eavesproof.exchange.RuleSheet;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A step of the build: reads the rule sets that are shipped, and leaves beside the program's
 * classes what spares it the parser and the compiler, and what tells shipped rules from changed
 * ones.
 */
public final class ShippedLayers {
    private final Path classes;
    private final TreeSet<Path> kept = new TreeSet<>();
    private final StringBuilder list = new StringBuilder();

    private ShippedLayers(Path classes) {
        this.classes = classes;
    }

    /**
     * @param arguments the folder of the rule sets, the folder of classes, and the file for the
     *     digest of all that is then in that
     * @throws RefusedRules if a rule set that should be shipped is no good, which ends the build
     */
    public static void main(String[] arguments) throws RefusedRules, IOException {
        Path rules = Path.of(arguments[0]);
        ShippedLayers layers = new ShippedLayers(Path.of(arguments[1]));
        for (String name : RuleSets.names(rules)) {
            new RuleSets(rules, PlainForm::read).book(name);
            layers.add(rules.resolve(name), name);
        }
        layers.write(Shipped.list(), layers.list.toString().getBytes(StandardCharsets.UTF_8));
        layers.sweep();
        Files.writeString(Path.of(arguments[2]), ProgramDigest.of(Path.of(arguments[1])) + "\n");
    }

    private void add(Path folder, String name) throws RefusedRules, IOException {
        RuleFolder read = RuleFolder.read(folder, PlainForm::read);
        for (Map.Entry<String, String> file : read.files().entrySet()) {
            list.append(Shipped.line(name, file.getKey(), file.getValue()));
            if (file.getKey().equals(RuleFolder.RULE_SET)) {
                byte[] said = Files.readAllBytes(folder.resolve(file.getKey()));
                write(Shipped.ruleSet(file.getValue()), said);
            }
            if (RuleFolder.isTable(file.getKey())) {
                byte[] table = Files.readAllBytes(folder.resolve(file.getKey()));
                write(Shipped.table(file.getValue()), table);
            }
            String label = folder.getFileName() + "/" + file.getKey();
            List<Rule> rules =
                    read.ruleSet().rules().stream()
                            .filter(rule -> rule.file().equals(label))
                            .toList();
            if (!rules.isEmpty()) {
                write(Shipped.sheet(file.getValue()), RuleSheet.write(rules));
            }
        }
        if (!read.ruleSet().rules().isEmpty()) {
            kept.add(LayerFiles.writeTo(classes, read.ruleSet().rules()));
        }
    }

    private void write(String name, byte[] bytes) throws IOException {
        Path path = classes.resolve(name);
        Files.createDirectories(Objects.requireNonNull(path.getParent()));
        Files.write(path, bytes);
        kept.add(path);
    }

    /** Layers and sheets of rules that are no longer there. */
    private void sweep() throws IOException {
        try (Stream<Path> paths = Files.walk(classes.resolve(Shipped.FOLDER))) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                boolean needed =
                        kept.stream().anyMatch(one -> path.startsWith(one) || one.startsWith(path));
                if (!needed) {
                    Files.delete(path);
                }
            }
        }
    }
}
