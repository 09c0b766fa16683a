package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.BadRecord;
import eavesproof.exchange.ExampleFile;
import eavesproof.exchange.ExampleFile.Example;
import eavesproof.findings.Expectation;
import eavesproof.findings.Findings;
import eavesproof.judge.Verdict;
import eavesproof.rules.Rule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The worked examples of the shipped rule set: jobs with verdicts that were worked out by hand. */
class WorkedExamplesTest {
    private static final ShippedRules RULES = ShippedRules.named("trade-practice");

    /**
     * Rules whose fact is never known to be bad: the survey knows that an approval names who gave
     * it and where, or it does not know it.
     */
    private static final Set<String> NEVER_BROKEN = Set.of("who approved the discharge");

    static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("rules/trade-practice/examples"))) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        }
    }

    private static Example read(Path file) throws IOException {
        try {
            return ExampleFile.read(Files.readAllBytes(file));
        } catch (BadRecord bad) {
            throw new IllegalStateException(file + ":\n" + bad.getMessage(), bad);
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void theProgramComesToTheVerdictsWorkedOutByHand(Path file) throws IOException {
        Example example = read(file);
        Findings findings = RULES.check(example.job());
        List<String> wrong =
                example.expect().stream()
                        .map(expectation -> expectation.disagreement(findings))
                        .flatMap(Optional::stream)
                        .toList();
        assertTrue(!example.expect().isEmpty());
        assertEquals(List.of(), wrong);
    }

    @Test
    void eachRuleHasAPlaceThatCompliesOneThatDoesNotAndOneNotRecorded() throws IOException {
        Map<String, Set<Verdict>> worked = new LinkedHashMap<>();
        for (Path file : files()) {
            for (Expectation expectation : read(file).expect()) {
                worked.computeIfAbsent(expectation.rule(), rule -> new TreeSet<>())
                        .add(expectation.verdict());
            }
        }
        List<String> missing = new ArrayList<>();
        for (Rule rule : RULES.book().rules()) {
            Set<Verdict> needed =
                    new TreeSet<>(
                            Set.of(
                                    Verdict.COMPLIES,
                                    Verdict.DOES_NOT_COMPLY,
                                    Verdict.NOT_RECORDED));
            if (NEVER_BROKEN.contains(rule.name())) {
                needed.remove(Verdict.DOES_NOT_COMPLY);
            }
            needed.removeAll(worked.getOrDefault(rule.name(), Set.of()));
            needed.forEach(verdict -> missing.add(rule.name() + ": " + verdict.words()));
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void everyExpectationIsOfARuleInForce() throws IOException {
        Set<String> names = new TreeSet<>();
        RULES.book().rules().forEach(rule -> names.add(rule.name()));
        for (Path file : files()) {
            for (Expectation expectation : read(file).expect()) {
                assertTrue(names.contains(expectation.rule()), expectation.rule());
            }
        }
    }
}
