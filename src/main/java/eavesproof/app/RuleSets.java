package eavesproof.app;

import eavesproof.check.drools.DroolsEngine;
import eavesproof.check.drools.PlainForm;
import eavesproof.check.drools.PrivateFolder;
import eavesproof.exchange.RuleSetFile;
import eavesproof.rules.Layers;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleProblem;
import eavesproof.rules.RuleSet;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Finds a rule set and what it builds on, and makes it ready for use. */
public final class RuleSets {
    /**
     * The system property that names the folder for what was made of rules. The program sets it
     * where it starts; tests and the build do not, and keep nothing.
     */
    public static final String COMPILED = "eavesproof.compiled";

    /** The system property that names the file with the digest of the program; set likewise. */
    public static final String PROGRAM = "eavesproof.program";

    private static final int LONGEST_DIGEST = 200;

    private final Path shippedRules;
    private final RuleFolder.RuleReader reader;
    private final Map<String, RuleFolder> folders = new LinkedHashMap<>();

    RuleSets(Path shippedRules, RuleFolder.RuleReader reader) {
        this.shippedRules = shippedRules;
        this.reader = reader;
    }

    /**
     * @param nameOrFolder the name of a shipped rule set, or a folder
     * @param shippedRules the folder of the shipped rule sets
     * @throws RefusedRules with everything for which they cannot be taken
     */
    public static LoadedRules load(String nameOrFolder, Path shippedRules)
            throws RefusedRules, IOException {
        return new RuleSets(shippedRules, RuleSets::rules).load(nameOrFolder);
    }

    /**
     * What is in force, for who only reads it: nothing is compiled for that.
     *
     * @throws RefusedRules with everything for which they cannot be taken
     */
    public static RuleBook book(String nameOrFolder, Path shippedRules)
            throws RefusedRules, IOException {
        return new RuleSets(shippedRules, RuleSets::rules).book(nameOrFolder);
    }

    /** The names of the rule sets in a folder, sorted. */
    public static List<String> names(Path rules) throws IOException {
        if (!Files.isDirectory(rules)) {
            return List.of();
        }
        try (Stream<Path> folders = Files.list(rules)) {
            return folders.filter(folder -> Files.exists(folder.resolve("rule-set.json")))
                    .map(folder -> String.valueOf(folder.getFileName()))
                    .sorted()
                    .toList();
        }
    }

    /** Whether every rule set of a folder is, byte for byte, one that came with the program. */
    public static boolean areAsShipped(Path rules) throws IOException {
        Map<String, SortedMap<String, String>> shipped = Shipped.files();
        for (String name : names(rules)) {
            try {
                RuleFolder read = RuleFolder.read(rules.resolve(name), RuleSets::rules);
                if (!read.files().equals(shipped.get(name))) {
                    return false;
                }
            } catch (RefusedRules e) {
                return false;
            }
        }
        return true;
    }

    /**
     * From its sheet where the file was read before: when the program was built, or by this user.
     */
    private static List<Rule> rules(String file, byte[] bytes) throws RefusedRules {
        Optional<List<Rule>> known = Shipped.rules(file, bytes);
        if (known.isPresent()) {
            return known.get();
        }
        Optional<String> program = program();
        return program.isPresent()
                ? new KeptSheets(keptIn(), program.get()).rules(file, bytes, PlainForm::read)
                : PlainForm.read(file, bytes);
    }

    /** Which program this is, where it was unpacked from a distribution. */
    private static Optional<String> program() {
        String file = System.getProperty(PROGRAM, "");
        try (InputStream digest = Files.newInputStream(Path.of(file))) {
            byte[] read = digest.readNBytes(LONGEST_DIGEST);
            return Optional.of(new String(read, StandardCharsets.US_ASCII).strip())
                    .filter(it -> !it.isEmpty());
        } catch (IOException notToldWhich) {
            return Optional.empty();
        }
    }

    LoadedRules load(String nameOrFolder) throws RefusedRules, IOException {
        return loaded(book(nameOrFolder));
    }

    private static Optional<PrivateFolder> keptIn() {
        String folder = System.getProperty(COMPILED, "");
        return folder.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new PrivateFolder(Path.of(folder), System.getProperty("user.name", "")));
    }

    /** The layers found and laid over one another. */
    RuleBook book(String nameOrFolder) throws RefusedRules, IOException {
        Path top = folder(nameOrFolder);
        try {
            return RuleBook.of(Layers.under(read(top), name -> beside(top, name)));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private Path folder(String nameOrFolder) throws RefusedRules, IOException {
        return folder(nameOrFolder, shippedRules);
    }

    /** Where a rule set lies. */
    static Path folder(String nameOrFolder, Path shippedRules) throws RefusedRules, IOException {
        if (RuleSetFile.NAME.matcher(nameOrFolder).matches()
                && Files.isDirectory(shippedRules.resolve(nameOrFolder))) {
            return shippedRules.resolve(nameOrFolder);
        }
        try {
            Path folder = Path.of(nameOrFolder);
            if (!nameOrFolder.isEmpty() && Files.isDirectory(folder)) {
                return folder;
            }
        } catch (InvalidPathException e) {
            // Then it is no folder either.
        }
        String expected = "a folder, or one of " + names(shippedRules);
        throw new RefusedRules(List.of(new RuleProblem("rule set", nameOrFolder, expected)));
    }

    private RuleSet read(Path folder) throws RefusedRules, IOException {
        RuleFolder read = RuleFolder.read(folder, reader);
        folders.put(read.ruleSet().name(), read);
        return read.ruleSet();
    }

    private Optional<RuleSet> beside(Path top, String name) throws RefusedRules {
        Path parent = top.toAbsolutePath().normalize().getParent();
        try {
            for (Path place :
                    parent == null ? List.of(shippedRules) : List.of(parent, shippedRules)) {
                if (Files.exists(place.resolve(name).resolve("rule-set.json"))) {
                    return Optional.of(read(place.resolve(name)));
                }
            }
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private boolean asShipped() {
        Map<String, SortedMap<String, String>> shipped = Shipped.files();
        return folders.entrySet().stream()
                .allMatch(one -> one.getValue().files().equals(shipped.get(one.getKey())));
    }

    /** The nearest layer that is, or was made from, one that came with the program. */
    private LoadedRules loaded(RuleBook book) throws RefusedRules {
        if (asShipped()) {
            return loaded(book, true, Optional.empty(), false);
        }
        Map<String, SortedMap<String, String>> shipped = Shipped.files();
        int top = book.layers().size() - 1;
        for (int i = top; i >= 0; i--) {
            Optional<String> original = Original.of(book.layers().get(i), shipped);
            if (original.isPresent()) {
                RuleBook was = Shipped.book(original.get(), shipped);
                return loaded(book, false, Optional.of(was), i == top);
            }
        }
        return loaded(book, false, Optional.empty(), false);
    }

    private LoadedRules loaded(
            RuleBook book, boolean asShipped, Optional<RuleBook> original, boolean isCopy) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        for (RuleSet layer : book.layers()) {
            RuleFolder folder = Objects.requireNonNull(folders.get(layer.name()), layer.name());
            folder.contents()
                    .forEach((name, content) -> files.put(layer.name() + "/" + name, content));
        }
        return new LoadedRules(
                book, DroolsEngine.of(book, keptIn()), asShipped, original, isCopy, files);
    }
}
