package eavesproof.app;

import static eavesproof.app.WholeCheck.check;
import static eavesproof.app.WholeCheck.complies;
import static eavesproof.app.WholeCheck.rank;
import static eavesproof.app.WholeCheck.verdicts;
import static eavesproof.app.WholeCheck.worst;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.app.WholeCheck.Key;
import eavesproof.job.Job;
import eavesproof.job.Run.Straight;
import eavesproof.judge.Demanded;
import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import eavesproof.quantity.Uncertain;
import eavesproof.setout.Checked;
import eavesproof.survey.Answer;
import eavesproof.survey.Facts;
import eavesproof.survey.Measure;
import eavesproof.survey.Survey;
import eavesproof.survey.Vocabulary;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** What holds of every job, held against the rules of the trade as they are shipped. */
class LawsTest {
    @Test
    void theJobsOfTheseLawsAreGoodAndBadOnes() {
        int good = 0;
        Set<String> broken = new LinkedHashSet<>();
        for (long seed = 0; seed < 60; seed++) {
            Checked checked = check(LikelyJob.of(seed));
            good += complies(checked) ? 1 : 0;
            checked.rulings().stream()
                    .filter(it -> it.verdict() == Verdict.DOES_NOT_COMPLY)
                    .forEach(it -> broken.add(it.rule()));
        }
        assertTrue(good > 15 && good < 50, "good ones: " + good);
        assertTrue(broken.size() > 10, broken::toString);
    }

    /** In the direction of each rule, by any amount, through the judge and the conditions. */
    @Property(tries = 100)
    void aWorseMeasureNeverHasABetterVerdict(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Survey survey = check(LikelyJob.of(seed)).survey();
        Random random = new Random(seed);
        List<Ruling> numbers =
                check(survey).rulings().stream()
                        .filter(it -> it.margin().isPresent())
                        .filter(it -> it.verdict() != Verdict.NOT_APPLICABLE)
                        .toList();
        for (int i = 0; i < 3; i++) {
            Ruling ruling = numbers.get(random.nextInt(numbers.size()));
            double by = StrictMath.pow(10, random.nextInt(5) - 2) * random.nextDouble();
            double worse = ruling.demanded() instanceof Demanded.AtMost ? by : -by;
            Verdict after =
                    verdicts(check(moved(survey, ruling.subject(), worse))).get(Key.of(ruling));
            assertTrue(rank(after) <= rank(ruling.verdict()), () -> ruling + " by " + worse);
        }
    }

    private static Survey moved(Survey survey, Answer subject, double by) {
        List<Answer> answers = new ArrayList<>();
        for (var kind : Vocabulary.kinds()) {
            for (Answer answer : survey.of(kind)) {
                answers.add(answer == subject ? moved((Answer.Known) answer, by) : answer);
            }
        }
        return new Survey(answers);
    }

    private static Answer moved(Answer.Known known, double by) {
        Measure.Number number = (Measure.Number) known.measure();
        Uncertain moved = number.value().plus(Uncertain.exact(by));
        Facts.Fact fact =
                (Facts.Fact)
                        RecordTree.with(
                                (Record) known.fact(),
                                List.of(known.kind().measure()),
                                it -> moved.value());
        return new Answer.Known(
                known.kind(),
                known.place(),
                fact,
                new Measure.Number(moved, number.unit()),
                known.provenance(),
                known.workings());
    }

    @Property(tries = 150)
    void aRunSeenFromBehindHasTheSameVerdicts(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Job job = LikelyJob.exact(seed);
        Map<Key, Verdict> seen = new HashMap<>();
        verdicts(check(job)).forEach((key, verdict) -> worst(seen, mirrored(key), verdict));
        Map<Key, Verdict> mirrored = new HashMap<>();
        verdicts(check(Mirror.of(job)))
                .forEach((key, verdict) -> worst(mirrored, withoutBracket(key), verdict));
        assertEquals(seen, mirrored);
    }

    /**
     * The exception: a bracket under the very centre of an outlet counts as the one to its left, so
     * that seen from behind the next one to the other side is named. It fails either way.
     */
    private static Key withoutBracket(Key key) {
        Map<String, String> place = new TreeMap<>(key.place());
        if (place.containsKey("outlet")) {
            place.remove("bracket");
        }
        return new Key(key.rule(), place);
    }

    private static Key mirrored(Key key) {
        Map<String, String> place = new TreeMap<>();
        boolean turns = !key.place().containsKey("downpipe");
        key.place()
                .forEach(
                        (name, id) ->
                                place.put(
                                        turns && name.equals("from")
                                                ? "to"
                                                : turns && name.equals("to") ? "from" : name,
                                        Mirror.id(id)));
        return withoutBracket(new Key(key.rule(), place));
    }

    /** But for straights, which are recorded from left to right: their order is their place. */
    @Property(tries = 150)
    void theOrderOfListsChangesNothing(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Job job = LikelyJob.of(seed);
        Random random = new Random(seed);
        Job other = (Job) RecordTree.everywhere(job, it -> shuffled(it, random));
        assertEquals(verdicts(check(job)), verdicts(check(other)));
    }

    private static Object shuffled(Object node, Random random) {
        if (node instanceof List<?> list && !(!list.isEmpty() && list.get(0) instanceof Straight)) {
            List<Object> copy = new ArrayList<>(list);
            Collections.shuffle(copy, random);
            return copy;
        }
        if (node instanceof Map<?, ?> map) {
            List<Object> keys = new ArrayList<>(map.keySet());
            Collections.shuffle(keys, random);
            Map<Object, Object> copy = new LinkedHashMap<>();
            keys.forEach(key -> copy.put(key, map.get(key)));
            return copy;
        }
        return node;
    }
}
