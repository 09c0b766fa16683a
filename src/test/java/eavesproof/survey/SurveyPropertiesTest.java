package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Run.Bracket;
import eavesproof.job.Run.Straight;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What holds of every job, however little of it was recorded. */
class SurveyPropertiesTest {
    @Property(tries = 500)
    void everyKindIsAnsweredForEveryRun(@ForAll long seed) {
        Job job = new SparseJob(seed).build();
        Survey survey = Surveyor.survey(job);
        for (FactKind kind : Vocabulary.kinds()) {
            for (Run run : job.runs()) {
                assertTrue(
                        survey.of(kind).stream()
                                .anyMatch(it -> it.place().keys().containsValue(run.id())),
                        () -> kind.name() + " of " + run.id());
            }
        }
    }

    @Property(tries = 500)
    void whatIsKnownIsWholeAndHasItsWorkings(@ForAll long seed) throws Exception {
        for (Answer.Known known : Surveyor.survey(new SparseJob(seed).build()).known()) {
            var components = known.fact().getClass().getRecordComponents();
            Object last = components[components.length - 1].getAccessor().invoke(known.fact());
            if (known.measure() instanceof Measure.Number number) {
                assertEquals(last, number.value().value());
                assertTrue(Double.isFinite(number.value().standardUncertainty()));
            } else {
                assertEquals(last, known.measure().text());
                assertTrue(known.kind().words().contains(known.measure().text()));
            }
            assertEquals(known.kind().keys(), List.copyOf(known.place().keys().keySet()));
            assertFalse(known.workings().isEmpty(), known::toString);
        }
    }

    @Property(tries = 300)
    void theSameJobGivesTheSameAnswers(@ForAll long seed) {
        assertEquals(answers(new SparseJob(seed).build()), answers(new SparseJob(seed).build()));
    }

    @Property(tries = 300)
    void theOrderOfBracketsDoesNotMatter(@ForAll long seed) {
        Job job = new SparseJob(seed).build();
        Job shuffled =
                withBrackets(
                        job,
                        brackets -> {
                            List<Bracket> other = new ArrayList<>(brackets);
                            Collections.shuffle(other, new Random(seed));
                            return other;
                        });
        for (var type :
                List.of(
                        Facts.SupportCount.class,
                        Facts.BracketSpacing.class,
                        Facts.EndSupport.class,
                        Facts.TimberEndBracket.class,
                        Facts.JointSupport.class,
                        Facts.OutletClearance.class)) {
            assertEquals(known(job, type), known(shuffled, type));
        }
    }

    @Property(tries = 300)
    void losingTheStationOfABracketNeverMakesASpacingKnown(@ForAll long seed) {
        Job job = new SparseJob(seed).build();
        List<? extends Facts.Fact> before = known(job, Facts.BracketSpacing.class);
        Job lost =
                withBrackets(
                        job,
                        brackets -> {
                            List<Bracket> other = new ArrayList<>(brackets);
                            if (!other.isEmpty()) {
                                int one = new Random(seed).nextInt(other.size());
                                other.set(one, withoutStation(other.get(one)));
                            }
                            return other;
                        });
        assertTrue(before.containsAll(known(lost, Facts.BracketSpacing.class)));
    }

    private static Bracket withoutStation(Bracket it) {
        return new Bracket(
                it.id(),
                null,
                it.screwsFitted(),
                it.holesProvided(),
                it.screwMetal(),
                it.screwDiameterMm(),
                it.biteMm());
    }

    private static List<? extends Facts.Fact> known(Job job, Class<? extends Facts.Fact> type) {
        return new Seen(Surveyor.survey(job)).facts(type);
    }

    private static String answers(Job job) {
        Survey survey = Surveyor.survey(job);
        return Vocabulary.kinds().stream().map(survey::of).toList().toString();
    }

    private static Job withBrackets(Job job, UnaryOperator<List<Bracket>> change) {
        List<Run> runs = job.runs().stream().map(run -> withBrackets(run, change)).toList();
        return new Job(
                job.id(),
                null,
                null,
                null,
                null,
                null,
                null,
                job.circumstances(),
                job.instruments(),
                job.measuredWith(),
                job.setUps(),
                job.gutters(),
                runs,
                null,
                job.way(),
                null,
                null,
                null,
                null);
    }

    private static Run withBrackets(Run run, UnaryOperator<List<Bracket>> change) {
        if (run.straights() == null) {
            return run;
        }
        List<Straight> straights =
                run.straights().stream()
                        .map(
                                it ->
                                        it.brackets() == null
                                                ? it
                                                : with(it, change.apply(it.brackets())))
                        .toList();
        return new Run(run.id(), null, run.gutter(), straights, null, null, null);
    }

    private static Straight with(Straight it, List<Bracket> brackets) {
        return new Straight(
                it.id(),
                it.lengthMm(),
                it.measuredWith(),
                it.leftEnd(),
                it.rightEnd(),
                it.readings(),
                brackets,
                it.fittings(),
                it.joints(),
                it.keepClear(),
                it.crossTilt(),
                it.fascia(),
                it.roofEdge());
    }
}
