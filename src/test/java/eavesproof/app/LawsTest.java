package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.JobFile;
import eavesproof.job.Job;
import eavesproof.job.Run.Straight;
import eavesproof.judge.Demanded;
import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import eavesproof.quantity.Uncertain;
import eavesproof.setout.Checked;
import eavesproof.setout.Remedies;
import eavesproof.setout.Remedy;
import eavesproof.survey.Answer;
import eavesproof.survey.Facts;
import eavesproof.survey.Measure;
import eavesproof.survey.Survey;
import eavesproof.survey.Vocabulary;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of every job, held against the rules of the trade as they are shipped. */
class LawsTest {
    private static final LoadedRules RULES = load();

    private static final Set<String> TOPICS = Set.of("support", "fall", "movement", "joints");

    private static LoadedRules load() {
        try {
            return RuleSets.load("trade-practice", Path.of("rules"));
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static Checked check(Job job) {
        return CheckJob.checked(job, RULES);
    }

    private static Checked check(Survey survey) {
        return CheckJob.checked(survey, CheckJob.coverage(survey, RULES), RULES);
    }

    private static boolean complies(Checked checked) {
        return checked.uncovered().isEmpty()
                && checked.rulings().stream().noneMatch(it -> it.verdict().needsAction())
                && checked.rulings().stream().anyMatch(it -> it.verdict() == Verdict.COMPLIES);
    }

    /** The higher the better. */
    private static int rank(Verdict verdict) {
        return switch (verdict) {
            case DOES_NOT_COMPLY -> 0;
            case NOT_RECORDED, TOO_CLOSE -> 1;
            case COMPLIES, NOT_APPLICABLE -> 2;
        };
    }

    private record Key(String rule, Map<String, String> place) {
        static Key of(Ruling ruling) {
            return new Key(ruling.rule(), ruling.subject().place().keys());
        }
    }

    /** Several gaps can share what is known of their place; the worst stands for them. */
    private static Map<Key, Verdict> verdicts(Checked checked) {
        Map<Key, Verdict> verdicts = new LinkedHashMap<>();
        checked.rulings().forEach(it -> worst(verdicts, Key.of(it), it.verdict()));
        return verdicts;
    }

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
        assertTrue(good > 20 && good < 50, "good ones: " + good);
        assertTrue(broken.size() > 10, broken::toString);
    }

    /** Of each sort of part one is left out, so that a rare one counts as much as a bracket. */
    @Property(tries = 80)
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

    /** The fullest of the samples, with one thing made bad at a time, each sort of part left out. */
    @ParameterizedTest
    @MethodSource("spoilt")
    void leavingOutEverySortOfPartNeverMakesAJobComply(List<Object> path, Object bad)
            throws Exception {
        Job good = JobFile.read(Files.readAllBytes(Path.of("samples", "verandah-pvc.json")));
        assertTrue(complies(check(good)));
        Job job = RecordTree.with(good, path, it -> bad);
        assertFalse(complies(check(job)));
        sorts(job).values().forEach(sort -> assertStillFails(job, sort.get(sort.size() / 2)));
    }

    static Stream<Arguments> spoilt() {
        List<Object> straight = List.of("runs", 0, "straights", 0);
        return Stream.of(
                Arguments.of(
                        List.of("tests", 0, "stood"),
                        List.of(new Job.Stood("a1", 1000.0, 2000.0, 9.0))),
                Arguments.of(
                        List.of("circumstances", "rainfall", 0, "intensityMmH"), (Object) 400.0),
                Arguments.of(
                        List.of("way", 2, "alsoCarries", 0, "planAreaM2", "is"), (Object) 900.0),
                Arguments.of(
                        RecordTree.and(straight, "crossTilt", 0, "frontLowerMm"), (Object) (-20.0)),
                Arguments.of(List.of("instruments", "rule", "resolutionMm"), (Object) 40.0),
                Arguments.of(List.of("gutters", "g", "profile", "frontHeightMm"), (Object) 10.0),
                Arguments.of(List.of("way", 3, "traced", "is"), (Object) "not traced"));
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
     * the smallest step and the accuracy of an instrument beside its class or each other; and the
     * heights of a profile beside its depth.
     */
    private static final Set<String> EXCEPTIONS =
            Set.of(
                    "tests",
                    "stood",
                    "crossTilt",
                    "frontLowerMm",
                    "resolutionMm",
                    "accuracyMm",
                    "depthMm",
                    "backHeightMm",
                    "frontHeightMm");

    private static void assertStillFails(Job job, List<Object> path) {
        if (!EXCEPTIONS.contains(path.get(path.size() - 1).toString())) {
            assertFalse(complies(check(RecordTree.without(job, path))), path::toString);
        }
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

    private static void worst(Map<Key, Verdict> verdicts, Key key, Verdict verdict) {
        verdicts.merge(key, verdict, (one, other) -> rank(one) <= rank(other) ? one : other);
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

    @Property(tries = 120)
    void everyChangeOfferedMendsItsFindingsAndMakesNoneWorse(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Job job = LikelyJob.of(seed);
        Checked before = check(job);
        Remedies remedies = Remedies.of(job, before, LawsTest::check);
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
        for (long seed = 0; seed < 60; seed++) {
            Job job = LikelyJob.of(seed);
            Checked before = check(job);
            Remedies remedies = Remedies.of(job, before, LawsTest::check);
            for (Ruling ruling : before.rulings()) {
                if (ruling.verdict() == Verdict.DOES_NOT_COMPLY
                        && TOPICS.contains(ruling.requirement().rule().topic())) {
                    faults++;
                    Remedy remedy = remedies.of(ruling).orElseThrow();
                    changes += remedy instanceof Remedy.Change ? 1 : 0;
                    if (remedy instanceof Remedy.Advice)
                        System.err.println(seed + " " + ruling.rule() + ": " + remedy.words());
                }
            }
        }
        assertTrue(changes > 0.8 * faults, changes + " of " + faults);
    }
}
