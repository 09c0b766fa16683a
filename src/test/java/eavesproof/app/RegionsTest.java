package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.BadRecord;
import eavesproof.exchange.ExampleFile;
import eavesproof.exchange.ExampleFile.Example;
import eavesproof.findings.Expectation;
import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.findings.Outcome;
import eavesproof.judge.Verdict;
import eavesproof.rules.Rule;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The regions against the published answers of their documents, each on a record. */
class RegionsTest {
    private static final List<String> REGIONS =
            List.of("au", "eu", "eu-de", "eu-fr", "gb-eng", "nz", "us", "us-2012", "us-2018");
    private static final Map<String, ShippedRules> LOADED = new HashMap<>();

    static List<Path> examples() throws IOException {
        List<Path> all = new ArrayList<>();
        for (String region : REGIONS) {
            all.addAll(examples(region));
        }
        return all;
    }

    private static List<Path> examples(String region) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("rules", region, "examples"))) {
            return files.sorted().toList();
        }
    }

    private static Example read(Path file) throws IOException {
        try {
            return ExampleFile.read(Files.readAllBytes(file));
        } catch (BadRecord bad) {
            throw new IllegalStateException(file + ":\n" + bad.getMessage(), bad);
        }
    }

    private static Findings check(String region, String example) throws IOException {
        Path file = Path.of("rules", region, "examples", example + ".json");
        return rules(region).check(read(file).job());
    }

    private static ShippedRules rules(String region) {
        return LOADED.computeIfAbsent(region, ShippedRules::named);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theExamplesHaveTheVerdictsOfTheirDocuments(Path file) throws IOException {
        Example example = read(file);
        String region = String.valueOf(file.getName(1));
        Findings findings = rules(region).check(example.job());
        List<String> wrong =
                example.expect().stream()
                        .map(expectation -> expectation.disagreement(findings))
                        .flatMap(Optional::stream)
                        .toList();
        assertTrue(!example.expect().isEmpty());
        assertEquals(List.of(), wrong);
    }

    static List<String> regions() {
        return REGIONS;
    }

    @ParameterizedTest
    @MethodSource("regions")
    void everyRuleOfARegionHasAnExampleKeptBrokenAndNotRecorded(String region) throws IOException {
        Map<String, Set<Verdict>> worked = new HashMap<>();
        for (Path file : examples(region)) {
            for (Expectation one : read(file).expect()) {
                worked.computeIfAbsent(one.rule(), rule -> EnumSet.noneOf(Verdict.class))
                        .add(one.verdict());
            }
        }
        List<String> lacking = new ArrayList<>();
        List<Rule> own =
                rules(region).book().layers().stream()
                        .filter(layer -> layer.name().equals(region))
                        .flatMap(layer -> layer.rules().stream())
                        .toList();
        for (Rule rule : own) {
            Set<Verdict> seen = worked.getOrDefault(rule.name(), Set.of());
            if (!seen.containsAll(
                    Set.of(Verdict.COMPLIES, Verdict.DOES_NOT_COMPLY, Verdict.NOT_RECORDED))) {
                lacking.add(rule.name() + " has only " + seen);
            }
        }
        assertEquals(List.of(), lacking);
    }

    /** NZ E1/AS1 Amendment 11 figure 15 and 5.1.3, graph: 10 450 mm2 within 200. */
    @Test
    void figure15AsksForWhatItsCurveShows() throws IOException {
        Finding.NumberLimit limit =
                limit(
                        check("nz", "figure-15"),
                        "gutter section where rain is above 100 mm an hour");
        assertEquals(10_450, limit.value(), 200);
    }

    /** NZ E1/AS1 5.1.4, published. */
    @Test
    void belowTheCurveTheLeastSectionCounts() throws IOException {
        assertEquals(4000, limit(check("nz", "small-roof"), "gutter section").value());
    }

    /** NZ E1/AS1 appendix A, published, and low beside its neighbours. */
    @Test
    void lytteltonStandsAsPrinted() {
        assertEquals("26", rules("nz").book().basis().get("rain_at Lyttelton").text());
    }

    /** NZ E1/AS1 3.2.2 and figure 3, graph: 100 mm at 1:70 takes 241 m2 in 100 mm/h. */
    @Test
    void figure3TakesWhatItsCurveShows() throws IOException {
        assertEquals(
                241 * 100 / 97.0, limit(check("nz", "drain-100"), "roof on a drain").value(), 3);
    }

    /** Only its size and fall are checked, so that silence on the rest must show. */
    @Test
    void aJobWithAnInternalGutterIsNeverShownToComply() throws IOException {
        Findings internal = check("nz", "internal");
        assertEquals(Outcome.NOT_SHOWN, internal.outcome());
        assertTrue(
                internal.uncovered().stream()
                        .anyMatch(one -> one.kind().name().equals("SupportCount")));
    }

    @Test
    void aSupersededEditionIsNeverABareComplies() throws IOException {
        Findings superseded = check("nz", "superseded");
        assertNotEquals(Outcome.COMPLIES, superseded.outcome());
        Finding edition =
                superseded.findings().stream()
                        .filter(finding -> finding.topic().equals("editions"))
                        .findFirst()
                        .orElseThrow();
        assertTrue(edition.because().get(0).contains("superseded"), edition.because()::toString);
        assertEquals("simple", edition.decision());
        assertTrue(
                check("nz", "small-roof").findings().stream()
                        .noneMatch(finding -> finding.topic().equals("editions")));
    }

    @Test
    void limitsFromMemoryAreNamedWithTheOutcome() throws IOException {
        assertTrue(
                check("gb-eng", "table-2").unconfirmedSources().stream()
                        .anyMatch(source -> source.document().contains("Approved Document H")));
    }

    @Test
    void aHeavierRainThanThatOfTheTableIsNeverShownToComply() throws IOException {
        Findings heavier = check("gb-eng", "heavier-rain-than-the-table");
        assertEquals(
                List.of("reach-roof"),
                heavier.uncovered().stream()
                        .map(one -> one.kind().id())
                        .filter("reach-roof"::equals)
                        .distinct()
                        .toList());
    }

    /** In no country does rain belong into a foul gully or a foul sewer. */
    @ParameterizedTest
    @MethodSource("regions")
    void aFoulGullyIsAlwaysRefused(String region) throws IOException {
        String whole = null;
        for (Path file : examples(region)) {
            String text = Files.readString(file);
            whole = whole == null && text.contains("\"place\": {") ? text : whole;
        }
        for (String foul : List.of("foul gully", "foul sewer")) {
            String now =
                    String.valueOf(whole)
                            .replaceAll("(\"place\": \\{\\s*\"is\": \")[^\"]+", "$1" + foul);
            Findings findings = rules(region).check(read(now).job());
            assertEquals(Outcome.DOES_NOT_COMPLY, findings.outcome(), region);
            assertTrue(
                    findings.findings().stream()
                            .filter(one -> one.kind().equals("discharge-kind"))
                            .anyMatch(one -> one.verdict() == Verdict.DOES_NOT_COMPLY),
                    region);
        }
    }

    private static Example read(String text) throws IOException {
        try {
            return ExampleFile.read(text.getBytes(StandardCharsets.UTF_8));
        } catch (BadRecord bad) {
            throw new IllegalStateException(bad);
        }
    }

    @Test
    void anOutcomeByMethodsFromMemorySaysSo() throws IOException {
        for (String region : List.of("eu", "eu-de")) {
            String example = region.equals("eu") ? "falling" : "80-mm";
            assertTrue(
                    check(region, example).unconfirmedSources().stream()
                            .anyMatch(source -> source.document().contains("EN 12056-3")),
                    region);
        }
    }

    /** NF DTU 60.11 P3, published: 0.05 L/s on each m2 are 180 mm/h. */
    @Test
    void theRainOfFranceIsThatOfItsStandard() throws IOException {
        Finding rain =
                check("eu-fr", "place").findings().stream()
                        .filter(finding -> finding.rule().equals("rain of France"))
                        .findFirst()
                        .orElseThrow();
        Finding.MeasuredNumber measured = (Finding.MeasuredNumber) rain.measured().orElseThrow();
        assertEquals(180, measured.value(), 1e-9);
    }

    private static Finding.NumberLimit limit(Findings findings, String rule) {
        return findings.findings().stream()
                .filter(finding -> finding.rule().equals(rule))
                .flatMap(finding -> finding.limit().stream())
                .map(Finding.NumberLimit.class::cast)
                .findFirst()
                .orElseThrow();
    }
}
