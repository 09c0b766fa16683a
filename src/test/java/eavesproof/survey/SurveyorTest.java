package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Run;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SurveyorTest {
    @Test
    void absentRunsAreOneGapOfEachKindWithoutAPlace() {
        Survey survey = Surveyor.survey(new AJob().of(null, Map.of()));
        for (FactKind kind : Vocabulary.kinds()) {
            assertEquals(
                    List.of(new Answer.Gap(kind, Place.of(), "the runs are not recorded")),
                    survey.of(kind));
        }
    }

    @Test
    void anEmptyListOfRunsIsNoneOfEachKind() {
        Survey survey = Surveyor.survey(new AJob().of(List.of(), Map.of()));
        for (FactKind kind : Vocabulary.kinds()) {
            assertEquals(
                    List.of(new Answer.NoneHere(kind, Place.of(), "the job has no run")),
                    survey.of(kind));
        }
    }

    @Test
    void aRunWithoutStraightsRecordedIsAGapOfAllThatLiesAlongIt() {
        AJob job = new AJob();
        job.held = "fixed through";
        job.straights = null;
        Seen seen = job.survey();
        for (FactKind kind : Vocabulary.kinds()) {
            if (Circumstances.KINDS.contains(kind.type())) {
                int told = seen.facts(kind.type()).size() + seen.none(kind.type()).size();
                assertEquals(1, told + seen.gaps(kind.type()).size(), kind::name);
                assertFalse(
                        seen.gaps(kind.type())
                                .contains("a: the straights of run a are not recorded"));
            } else {
                assertEquals(
                        List.of("a: the straights of run a are not recorded"),
                        seen.gaps(kind.type()));
            }
        }
    }

    @Test
    void aRunWithNoStraightIsAGapAndNotNothing() {
        AJob job = new AJob();
        job.straights = List.of();
        assertEquals(
                List.of("a: run a is recorded without a straight"),
                job.survey().gaps(Facts.SupportCount.class));
    }

    @Test
    void eachRunIsAnsweredForByItself() {
        AJob job = new AJob();
        Run bare = new Run("b", null, null, null, null, null, null);
        Run built = job.build().runs().get(0);
        Survey survey = Surveyor.survey(job.of(List.of(built, bare), Map.of("g", job.gutter)));
        for (FactKind kind : Vocabulary.kinds()) {
            for (String run : List.of("a", "b")) {
                assertTrue(
                        survey.of(kind).stream()
                                .anyMatch(it -> it.place().key("run").orElse("").equals(run)),
                        () -> kind.name() + " of " + run);
            }
        }
    }

    /** A loop within a loop over so many would take minutes. */
    @Test
    void aHundredThousandBracketsAreSurveyedInSeconds() {
        AJob job = new AJob().outlet("o1", "a1", 99_000_000.0);
        job.a1.lengthMm = 100_000_000.0;
        for (int i = 99_999; i >= 0; i--) {
            job.a1.bracket("b" + i, i * 1000.0);
            job.a1.joint("j" + i, "cemented", i * 1000.0 + 500, "no");
            job.a1.reading(i * 1000.0, i);
        }
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long begun = clock.getCurrentThreadCpuTime();
        Seen seen = job.survey();
        long seconds = (clock.getCurrentThreadCpuTime() - begun) / 1_000_000_000;
        assertTrue(seconds < 20, () -> "took " + seconds + " s");
        assertEquals(99_999, seen.facts(Facts.BracketSpacing.class).size());
        assertEquals(100_000, seen.facts(Facts.JointSupport.class).size());
    }
}
