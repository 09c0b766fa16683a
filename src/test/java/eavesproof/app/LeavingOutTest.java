package eavesproof.app;

import static eavesproof.app.WholeCheck.check;
import static eavesproof.app.WholeCheck.complies;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.JobFile;
import eavesproof.job.Job;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Leaving out never helps: what is not recorded is never a pass. */
class LeavingOutTest {
    /** Seven faults, and of each every fourth sort: every sort once or twice. */
    private static final int EVERY = 4;

    /** Of each sort of part one is left out, so that a rare one counts as much as a bracket. */
    @Property(tries = 40)
    void leavingOutAValueOrAListNeverMakesAJobComply(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Job job = anyThatFails(seed);
        List<List<List<Object>>> sorts = List.copyOf(sorts(job).values());
        Random random = new Random(seed);
        for (int i = 0; i < 3; i++) {
            List<List<Object>> sort = sorts.get(random.nextInt(sorts.size()));
            assertStillFails(job, sort.get(random.nextInt(sort.size())));
        }
    }

    /**
     * The fullest of the samples, with one thing made bad at a time, each sort of part left out.
     */
    @ParameterizedTest
    @MethodSource("spoilt")
    void leavingOutEverySortOfPartNeverMakesAJobComply(int nth, List<Object> path, Object bad)
            throws Exception {
        Job good = JobFile.read(Files.readAllBytes(Path.of("samples", "verandah-pvc.json")));
        assertTrue(complies(check(good)));
        Job job = RecordTree.with(good, path, it -> bad);
        assertFalse(complies(check(job)));
        List<List<List<Object>>> sorts = List.copyOf(sorts(job).values());
        for (int i = nth % EVERY; i < sorts.size(); i += EVERY) {
            List<List<Object>> sort = sorts.get(i);
            assertStillFails(job, sort.get(sort.size() / 2));
        }
    }

    static Stream<Arguments> spoilt() {
        List<Object> straight = List.of("runs", 0, "straights", 0);
        return Stream.of(
                Arguments.of(
                        0,
                        List.of("tests", 0, "stood"),
                        List.of(new Job.Stood("a1", 1000.0, 2000.0, 9.0))),
                Arguments.of(
                        1, List.of("circumstances", "rainfall", 0, "intensityMmH"), (Object) 400.0),
                Arguments.of(
                        2, List.of("way", 2, "alsoCarries", 0, "planAreaM2", "is"), (Object) 900.0),
                Arguments.of(
                        3,
                        RecordTree.and(straight, "crossTilt", 0, "frontLowerMm"),
                        (Object) (-20.0)),
                Arguments.of(4, List.of("instruments", "rule", "resolutionMm"), (Object) 40.0),
                Arguments.of(5, List.of("gutters", "g", "profile", "frontHeightMm"), (Object) 10.0),
                Arguments.of(6, List.of("way", 3, "traced", "is"), (Object) "not traced"));
    }

    private static Job anyThatFails(long seed) {
        for (long next = seed; ; next++) {
            Job job = LikelyJob.of(next);
            if (!complies(check(job))) {
                return job;
            }
        }
    }

    /** Paths without the numbers and ids of the things on the way to the paths. */
    private static Map<List<Object>, List<List<Object>>> sorts(Job job) {
        Map<List<Object>, List<List<Object>>> sorts = new LinkedHashMap<>();
        for (List<Object> path : RecordTree.paths(job)) {
            List<Object> sort =
                    path.stream()
                            .map(it -> it instanceof Integer ? "each" : it)
                            .map(it -> it.toString().matches("s[01]") ? "each" : it)
                            .toList();
            sorts.computeIfAbsent(sort, none -> new ArrayList<>()).add(path);
        }
        return sorts;
    }

    /**
     * The exceptions: where two statements speak of one thing the worse counts, so that without it
     * the other stands alone.
     *
     * <p>A test with water is evidence beside the readings, and the tilt beside the eaves section;
     * the accuracy of an instrument beside its class; and the heights of a profile beside its
     * depth.
     */
    private static final Set<String> EXCEPTIONS =
            Set.of(
                    "tests",
                    "stood",
                    "crossTilt",
                    "frontLowerMm",
                    "accuracyMm",
                    "depthMm",
                    "backHeightMm",
                    "frontHeightMm",
                    "tie");

    private static void assertStillFails(Job job, List<Object> path) {
        if (!EXCEPTIONS.contains(path.get(path.size() - 1).toString())) {
            assertFalse(complies(check(RecordTree.without(job, path))), path::toString);
        }
    }
}
