package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.exchange.JobFile;
import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.job.Job;
import eavesproof.judge.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each sample tells a story, and the check must come to the end of that story. */
class SamplesTest {
    private static final ShippedRules RULES = ShippedRules.named("trade-practice");

    private static Findings check(String sample) throws IOException {
        return RULES.check(Files.readAllBytes(Path.of("samples", sample + ".json")));
    }

    private static Set<String> rules(Findings findings, Verdict verdict) {
        return findings.of(verdict).stream()
                .map(Finding::rule)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @CsvSource({
        "verandah-pvc, complies",
        "carport-several-faults, does-not-comply",
        "shed-too-close, not-shown",
        "lean-to-not-recorded, not-shown",
        "cottage-copper, complies",
        "hut-in-the-snow, complies",
        "porch-existing-downpipe, does-not-comply"
    })
    void theCheckComesToTheEndOfTheStory(String sample, String outcome) throws IOException {
        assertEquals(outcome, check(sample).outcome().id());
    }

    @Test
    void everySampleHasItsStoryHere() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("samples"))) {
            assertEquals(7, files.filter(file -> file.toString().endsWith(".json")).count());
        }
    }

    /**
     * Its sole sags to 27 mm below the datum and rises to 19 at the outlet: 8 mm of water stand.
     */
    @Test
    void theCarportHasEveryFaultThatItsStoryTells() throws IOException {
        assertEquals(
                Set.of(
                        "bracket centres",
                        "brackets clear of a sliding outlet",
                        "discharge approved",
                        "fall",
                        "fall all the way",
                        "no empty screw holes",
                        "no joint where kept clear",
                        "no sag between the ends",
                        "outfall traced",
                        "rainwater goes where rainwater may go",
                        "sliding outlet not cemented",
                        "sliding outlet set for the day",
                        "stainless screws",
                        "standing water in PVC-U"),
                rules(check("carport-several-faults"), Verdict.DOES_NOT_COMPLY));
    }

    @Test
    void theShedIsOnlyTooCloseToCall() throws IOException {
        Findings shed = check("shed-too-close");
        assertEquals(Set.of("bracket centres", "fall"), rules(shed, Verdict.TOO_CLOSE));
        assertEquals(3, shed.of(Verdict.TOO_CLOSE).size());
        assertEquals(List.of(), shed.of(Verdict.NOT_RECORDED));
        assertEquals(List.of(), shed.uncovered());
    }

    @Test
    void theStoryHoldsOnlyAsLongAsSomebodySaysIt() throws Exception {
        Job verandah = JobFile.read(Files.readAllBytes(Path.of("samples", "verandah-pvc.json")));
        assertEquals(List.of(), RULES.check(verandah).restsOnAssumed());
        Job nobody = RecordTree.without(verandah, List.of("circumstances", "snowLies", "how"));
        assertEquals(
                List.of("snow area: no (run a), nobody says how that is known, by Moana Ferreby"),
                RULES.check(nobody).restsOnAssumed());
    }

    /**
     * With the left end unread neither the fall nor standing water is known; with the screws of two
     * brackets uncounted neither are the centres beside them; nobody looked at the timber, at what
     * brackets carry, or at the room that the gutter has to grow.
     */
    @Test
    void theLeanToLacksWhatItsStoryTells() throws IOException {
        Findings leanTo = check("lean-to-not-recorded");
        assertEquals(
                Set.of(
                        "bracket centres",
                        "bracket centres where rain is heavy",
                        "brackets carry a full gutter",
                        "discharge approved",
                        "downpipe carries its roofs",
                        "fall",
                        "fall all the way",
                        "gutter carries its roof",
                        "gutter holds the rain",
                        "half-round carries its roof",
                        "no empty screw holes",
                        "no sag between the ends",
                        "outfall traced",
                        "outlet takes its water",
                        "room to grow at a sliding outlet in PVC-U",
                        "room to shrink at a sliding outlet in PVC-U",
                        "room to grow at a wall in PVC-U",
                        "sliding outlet set for the day",
                        "sound timber behind a bracket",
                        "spilled water falls outside",
                        "standing water in PVC-U",
                        "two supports to a straight",
                        "who approved the discharge"),
                rules(leanTo, Verdict.NOT_RECORDED));
        assertEquals(List.of(), leanTo.of(Verdict.TOO_CLOSE));
    }

    @Test
    void thePorchIsWellFittedAndDrainsWhereItMayNot() throws IOException {
        assertEquals(
                Set.of("discharge approved", "rainwater goes where rainwater may go"),
                rules(check("porch-existing-downpipe"), Verdict.DOES_NOT_COMPLY));
    }
}
