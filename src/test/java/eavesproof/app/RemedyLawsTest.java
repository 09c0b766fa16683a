package eavesproof.app;

import static eavesproof.app.WholeCheck.check;
import static eavesproof.app.WholeCheck.rank;
import static eavesproof.app.WholeCheck.verdicts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.app.WholeCheck.Key;
import eavesproof.job.Job;
import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import eavesproof.setout.Checked;
import eavesproof.setout.Remedies;
import eavesproof.setout.Remedy;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** What holds of every change that is offered as a remedy. */
class RemedyLawsTest {
    private static final Set<String> TOPICS = Set.of("support", "fall", "movement", "joints");

    @Property(tries = 120)
    void everyChangeOfferedMendsItsFindingsAndMakesNoneWorse(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Job job = LikelyJob.of(seed);
        Checked before = check(job);
        Remedies remedies = Remedies.of(job, before, WholeCheck::check);
        Map<Job, Set<Ruling>> mended = new IdentityHashMap<>();
        for (Ruling ruling : before.rulings()) {
            assertEquals(ruling.verdict().needsAction(), remedies.of(ruling).isPresent());
            if (remedies.of(ruling).orElse(null) instanceof Remedy.Change change) {
                mended.computeIfAbsent(change.edited(), it -> new LinkedHashSet<>()).add(ruling);
            }
        }
        mended.forEach((edited, rulings) -> assertMends(before, rulings, check(edited)));
    }

    private static void assertMends(Checked before, Set<Ruling> mended, Checked after) {
        Map<Key, Verdict> was = verdicts(before);
        Map<Key, Verdict> is = verdicts(after);
        for (Ruling ruling : mended) {
            Verdict now = is.get(Key.of(ruling));
            assertTrue(now == null || now == Verdict.COMPLIES, () -> ruling + " is " + now);
        }
        is.forEach(
                (key, now) -> {
                    Verdict then = was.getOrDefault(key, Verdict.COMPLIES);
                    assertTrue(rank(now) >= rank(then), () -> key + " was " + then + " is " + now);
                });
        assertTrue(before.uncovered().containsAll(after.uncovered()));
    }

    /** No change of the record alone mends what an authority or a larger gutter has to. */
    @Test
    void mostFaultsOfTheGutterItselfHaveAChange() {
        int changes = 0;
        int faults = 0;
        List<String> without = new ArrayList<>();
        for (long seed = 0; seed < 60; seed++) {
            Job job = LikelyJob.of(seed);
            Checked before = check(job);
            Remedies remedies = Remedies.of(job, before, WholeCheck::check);
            for (Ruling ruling : before.rulings()) {
                if (ruling.verdict() == Verdict.DOES_NOT_COMPLY
                        && TOPICS.contains(ruling.requirement().rule().topic())) {
                    faults++;
                    Remedy remedy = remedies.of(ruling).orElseThrow();
                    if (remedy instanceof Remedy.Change) {
                        changes++;
                    } else {
                        without.add(ruling.rule() + ": " + remedy);
                    }
                }
            }
        }
        assertTrue(changes > 0.8 * faults, changes + " of " + faults + ", not of " + without);
    }
}
