package eavesproof.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.exchange.BadRecord;
import eavesproof.exchange.JobFile;
import eavesproof.job.Job;
import eavesproof.survey.Basis;
import eavesproof.survey.Surveyor;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PassageTest {
    private static final String JOB =
            """
            {"id": "j", "runs": [{"id": "a", "straights": [{"id": "a1"}]}],
             "way": [{"kind": "outlet", "id": "o1", "on": "a1", "to": "x1"SPOUT},
                     {"kind": "discharge", "id": "x1"}]}
            """;

    private static List<Passage.Part> parts(String spout) throws BadRecord {
        Job job = JobFile.read(JOB.replace("SPOUT", spout).getBytes(StandardCharsets.UTF_8));
        return Passage.of(job, job.runs().get(0), Surveyor.survey(job, Basis.NOTHING)).parts();
    }

    @Test
    void whatMayLieBetweenAnOutletAndADischargeIsShownAsNotKnown() throws BadRecord {
        Passage.Part between = parts("").get(3);
        assertEquals("what lies between", between.name());
        assertEquals(
                Optional.of("how the water gets from o1 down to x1 is not recorded"),
                between.why());
    }

    @Test
    void belowAFreeSpoutNothingIsMissing() throws BadRecord {
        assertEquals(
                List.of("roof", "gutter", "outlet o1", "discharge x1"),
                parts(", \"spout\": \"yes\"").stream().map(Passage.Part::name).toList());
    }
}
