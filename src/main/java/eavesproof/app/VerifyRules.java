package eavesproof.app;

import eavesproof.exchange.BadRecord;
import eavesproof.exchange.ExampleFile;
import eavesproof.exchange.RecordProblem;
import eavesproof.findings.Expectation;
import eavesproof.findings.Findings;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleChange;
import eavesproof.rules.RuleSet;
import eavesproof.rules.Sha256;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What can be said of a rule set without a job: that it can be taken at all, that it says where its
 * requirements come from, and that its worked examples come out as somebody reckoned by hand.
 *
 * @param rules how many are in force
 * @param examples how many were held against it
 * @param expectations how many verdicts they expect
 * @param wrong what is not well, each in words
 * @param withoutExample names of its own rules of which no example speaks
 * @param lookAgain what is well as it stands and yet is often a slip, each in words
 */
public record VerifyRules(
        int rules,
        int examples,
        int expectations,
        List<String> wrong,
        List<String> withoutExample,
        List<String> lookAgain) {
    private static final int MOST_EXAMPLES = 200;

    /** Of one example; who has more begins with these. */
    private static final int MOST_PROBLEMS = 20;

    public VerifyRules {
        wrong = List.copyOf(wrong);
        withoutExample = List.copyOf(withoutExample);
        lookAgain = List.copyOf(lookAgain);
    }

    /**
     * @throws RefusedRules if it cannot be taken
     */
    public static VerifyRules of(String nameOrFolder, Path shippedRules)
            throws RefusedRules, IOException {
        LoadedRules loaded = RuleSets.load(nameOrFolder, shippedRules);
        List<String> wrong = new ArrayList<>(sources(loaded.book()));
        Set<String> covered = new TreeSet<>();
        int expectations = 0;
        Path folder = RuleSets.folder(nameOrFolder, shippedRules);
        List<Path> files = examples(folder);
        for (Path file : files.subList(0, Math.min(files.size(), MOST_EXAMPLES))) {
            List<Expectation> expected = hold(file, folder, loaded, wrong);
            expected.forEach(one -> covered.add(one.rule()));
            expectations += expected.size();
        }
        if (files.size() > MOST_EXAMPLES) {
            wrong.add("examples/: " + files.size() + " files; at most " + MOST_EXAMPLES);
        }
        List<RuleSet> layers = loaded.book().layers();
        return new VerifyRules(
                loaded.book().rules().size(),
                files.size(),
                expectations,
                wrong,
                layers.get(layers.size() - 1).rules().stream()
                        .map(Rule::name)
                        .filter(name -> !covered.contains(name))
                        .sorted()
                        .toList(),
                loaded.book().changesBy(layers.size() - 1).stream()
                        .flatMap(change -> leftAsItWas(change).stream())
                        .toList());
    }

    /** A limit that was changed where the words or the source for it were not. */
    private static List<String> leftAsItWas(RuleChange change) {
        if (change.before().isEmpty() || change.after().isEmpty()) {
            return List.of();
        }
        Rule was = change.before().get();
        Rule now = change.after().get();
        List<String> left = new ArrayList<>();
        if (!was.demand().equals(now.demand())) {
            String changed = change.inWords() + "; it still ";
            if (was.says().equals(now.says())) {
                left.add(changed + "says: " + now.says());
            }
            if (was.source().equals(now.source())) {
                left.add(changed + "cites: " + now.source().text());
            }
        }
        return left;
    }

    public boolean isWell() {
        return wrong.isEmpty();
    }

    private static List<Path> examples(Path folder) throws IOException {
        Path examples = folder.resolve("examples");
        if (!Files.isDirectory(examples)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(examples)) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        }
    }

    private static List<Expectation> hold(
            Path file, Path folder, LoadedRules loaded, List<String> wrong) throws IOException {
        String name = "examples/" + file.getFileName();
        Optional<String> trouble = FileOfRules.trouble(file, folder);
        if (trouble.isPresent()) {
            wrong.add(name + ": found " + trouble.get() + "; expected " + FileOfRules.EXPECTED);
            return List.of();
        }
        byte[] bytes = Files.readAllBytes(file);
        try {
            ExampleFile.Example example = ExampleFile.read(bytes);
            Findings findings = CheckJob.check(example.job(), Sha256.of(bytes), loaded).findings();
            for (Expectation expectation : example.expect()) {
                expectation.disagreement(findings).ifPresent(said -> wrong.add(name + ": " + said));
            }
            if (example.expect().isEmpty()) {
                wrong.add(name + ": expects nothing");
            }
            return example.expect();
        } catch (BadRecord bad) {
            List<RecordProblem> problems = bad.problems();
            for (RecordProblem problem :
                    problems.subList(0, Math.min(problems.size(), MOST_PROBLEMS))) {
                wrong.add(name + ":" + problem.text());
            }
            if (problems.size() > MOST_PROBLEMS) {
                wrong.add(name + ": and " + (problems.size() - MOST_PROBLEMS) + " more");
            }
            return List.of();
        }
    }

    /** Somebody else must be able to look up what is required, and to see how old it is. */
    private static List<String> sources(RuleBook book) {
        List<String> wrong = new ArrayList<>();
        for (RuleSet.Document document : book.documents().values()) {
            if (document.checked().isEmpty()) {
                wrong.add("document " + document.key() + ": no date_checked");
            }
        }
        for (Rule rule : book.rules()) {
            RuleSet.Document document = book.document(rule);
            if (!document.edition().isEmpty() && rule.source().clause().isEmpty()) {
                wrong.add(
                        rule.file()
                                + ":"
                                + rule.line()
                                + ": @source "
                                + rule.source().text()
                                + " names no clause of a document that has an edition");
            }
        }
        return wrong;
    }
}
