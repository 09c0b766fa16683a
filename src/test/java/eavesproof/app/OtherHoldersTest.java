package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.exchange.JobFile;
import eavesproof.findings.Findings;
import eavesproof.findings.Outcome;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Run.Bracket;
import eavesproof.job.Run.Fitting;
import eavesproof.job.Run.Fixing;
import eavesproof.job.Said;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * A good job, all of whose brackets were written down as fittings that are screwed to the fascia.
 */
class OtherHoldersTest {
    private static final ShippedRules RULES = ShippedRules.named("trade-practice");

    private static Outcome outcome(Function<Bracket, Fixing> fixing) throws Exception {
        Job job = JobFile.read(Files.readAllBytes(Path.of("samples/verandah-pvc.json")));
        List<Object> straight = List.of("runs", 0, "straights", 0);
        Run.Straight was = job.runs().get(0).straights().get(0);
        List<Fitting> fittings =
                was.brackets().stream()
                        .map(
                                it ->
                                        new Fitting(
                                                it.id(),
                                                "strap",
                                                it.stationMm(),
                                                "yes",
                                                "yes",
                                                "yes",
                                                fixing.apply(it)))
                        .toList();
        Run.Straight now = RecordTree.with(was, List.of("brackets"), it -> List.of());
        Run.Straight other = RecordTree.with(now, List.of("fittings"), it -> fittings);
        Findings findings = RULES.check(RecordTree.with(job, straight, it -> other));
        return findings.outcome();
    }

    private static Fixing like(Bracket bracket, double newton) {
        return new Fixing(
                bracket.screwsFitted(),
                bracket.holesProvided(),
                bracket.screwMetal(),
                bracket.screwDiameterMm(),
                bracket.biteMm(),
                new Said<>(newton, "told", "the maker", "data sheet"));
    }

    @Test
    void withAllThatABracketIsAskedItComplies() throws Exception {
        assertEquals(Outcome.COMPLIES, outcome(it -> like(it, 400)));
    }

    @Test
    void withNothingOfItRecordedItIsNotShown() throws Exception {
        assertEquals(Outcome.NOT_SHOWN, outcome(it -> null));
    }

    @Test
    void withTooWeakOnesItDoesNotComply() throws Exception {
        assertEquals(Outcome.DOES_NOT_COMPLY, outcome(it -> like(it, 11)));
    }
}
