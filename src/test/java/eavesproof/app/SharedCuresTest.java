package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.JobFile;
import eavesproof.job.Job;
import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import eavesproof.setout.Checked;
import eavesproof.setout.Remedies;
import eavesproof.setout.Remedy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A change that mends several findings is offered for each of them. */
class SharedCuresTest {
    private static Job sample(String name) throws Exception {
        return JobFile.read(Files.readAllBytes(Path.of("samples", name + ".json")));
    }

    private static Object place(Ruling ruling) {
        return java.util.List.of(ruling.rule(), ruling.subject().place().keys());
    }

    @ParameterizedTest
    @ValueSource(strings = {"carport-several-faults", "porch-existing-downpipe", "shed-too-close"})
    void nothingThatAnOfferedChangeMendsIsLeftWithoutIt(String name) throws Exception {
        Checked before = WholeCheck.check(sample(name));
        Remedies remedies = Remedies.of(sample(name), before, WholeCheck::check);
        Map<String, Job> changes = new LinkedHashMap<>();
        for (Ruling ruling : before.rulings()) {
            if (remedies.of(ruling).orElse(null) instanceof Remedy.Change change) {
                changes.put(change.words(), change.edited());
            }
        }
        for (Map.Entry<String, Job> change : changes.entrySet()) {
            Set<Object> met = new LinkedHashSet<>();
            for (Ruling after : WholeCheck.check(change.getValue()).rulings()) {
                if (after.verdict() == Verdict.COMPLIES) {
                    met.add(place(after));
                }
            }
            for (Ruling ruling : before.rulings()) {
                if (ruling.verdict() == Verdict.DOES_NOT_COMPLY && met.contains(place(ruling))) {
                    assertInstanceOf(
                            Remedy.Change.class,
                            remedies.of(ruling).orElseThrow(),
                            ruling.rule() + " is mended by: " + change.getKey());
                }
            }
        }
    }

    @Test
    void whatOneChangeOfTheSoleMendsIsOfferedForFallHollowAndSag() throws Exception {
        Checked before = WholeCheck.check(sample("carport-several-faults"));
        Remedies remedies =
                Remedies.of(sample("carport-several-faults"), before, WholeCheck::check);
        Set<String> words = new LinkedHashSet<>();
        for (Ruling ruling : before.rulings()) {
            if (Set.of("fall all the way", "no sag between the ends", "standing water in PVC-U")
                            .contains(ruling.rule())
                    && ruling.verdict() == Verdict.DOES_NOT_COMPLY) {
                words.add(remedies.of(ruling).orElseThrow().words());
            }
        }
        assertTrue(words.size() == 1, words::toString);
    }
}
