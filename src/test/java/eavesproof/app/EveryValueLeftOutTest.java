package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.fail;

import eavesproof.exchange.JobFile;
import eavesproof.job.Job;
import eavesproof.job.Said;
import eavesproof.job.WayPart;
import eavesproof.setout.Checked;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Of every sample every sort of value is left out in turn: the check never breaks down over it, and
 * never comes to a better end.
 */
class EveryValueLeftOutTest {
    private static Job sample(String name) throws Exception {
        return JobFile.read(Files.readAllBytes(Path.of("samples", name + ".json")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "verandah-pvc",
                "carport-several-faults",
                "shed-too-close",
                "lean-to-not-recorded",
                "cottage-copper",
                "hut-in-the-snow",
                "porch-existing-downpipe"
            })
    void neverBreaksTheCheckNorBettersIt(String name) throws Exception {
        Job job = sample(name);
        boolean complied = WholeCheck.complies(WholeCheck.check(job));
        for (List<Object> path : oneOfEachSort(job)) {
            Checked without = checked(RecordTree.without(job, path), path);
            assertFalse(!complied && WholeCheck.complies(without), () -> "better without " + path);
        }
    }

    /** One that is not there is a gap; so is where it is of one that is there. */
    @ParameterizedTest
    @ValueSource(strings = {"verandah-pvc", "cottage-copper"})
    void anotherOutletOfWhichNextToNothingIsRecordedIsNotShownToComply(String name)
            throws Exception {
        Job job = sample(name);
        for (WayPart more : List.of(bare(), cemented())) {
            List<WayPart> way = new ArrayList<>(job.way());
            way.add(more);
            Job another = RecordTree.with(job, List.of("way"), it -> way);
            assertFalse(WholeCheck.complies(checked(another, List.of("way"))));
        }
    }

    private static WayPart bare() {
        return new WayPart.Outlet(
                "o9", null, null, null, null, null, null, nothing(), nothing(), null, null, null,
                null, null, null, null, null, null);
    }

    private static WayPart cemented() {
        return new WayPart.Outlet(
                "o9", null, null, null, 500.0, 100.0, "sliding", nothing(), nothing(), null, null,
                "no", null, 76.0, "tapered", 0.0, "no", null);
    }

    private static Said<String> nothing() {
        return Said.nothing();
    }

    private static Checked checked(Job job, List<Object> path) {
        try {
            return WholeCheck.check(job);
        } catch (RuntimeException broken) {
            return fail("without " + path, broken);
        }
    }

    private static List<List<Object>> oneOfEachSort(Job job) {
        Map<List<String>, List<Object>> sorts = new LinkedHashMap<>();
        for (List<Object> path : RecordTree.paths(job)) {
            List<String> sort =
                    path.stream()
                            .map(it -> it instanceof Integer ? "each" : it.toString())
                            .toList();
            sorts.put(sort, path);
        }
        return List.copyOf(sorts.values());
    }
}
