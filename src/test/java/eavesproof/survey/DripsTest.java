package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.job.Job;
import java.util.List;
import org.junit.jupiter.api.Test;

class DripsTest {
    private final AJob job = new AJob();

    private Seen with(String kind, String drips) {
        job.tests =
                List.of(new Job.WaterTest("t1", kind, "a", null, 10.0, 40.0, drips, null, null));
        return job.survey();
    }

    @Test
    void whatWasSeenOfDripsIsAFactOfTheTest() {
        assertEquals(
                new Facts.TestDrips("a", "t1", "yes"),
                with("outlet plugged", "yes").fact(Facts.TestDrips.class));
        assertEquals(
                new Facts.TestDrips("a", "t1", "yes"),
                with(null, "yes").fact(Facts.TestDrips.class));
    }

    @Test
    void anOutletThatWasPluggedWithoutAWordOfDripsIsAGap() {
        assertEquals(
                List.of("a t1: whether the gutter dripped in test t1 is not recorded"),
                with("outlet plugged", null).gaps(Facts.TestDrips.class));
        assertEquals(1, with("outlet plugged", "unknown").gaps(Facts.TestDrips.class).size());
    }

    @Test
    void aTestOfAnotherKindNeedNotSayIt() {
        String none = "a: no test of run a says whether it drips";
        assertEquals(List.of(none), with("water poured in", null).none(Facts.TestDrips.class));
        job.tests = null;
        assertEquals(List.of(none), job.survey().none(Facts.TestDrips.class));
    }
}
