package eavesproof.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.JobFile;
import eavesproof.job.Job;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class NoticesTest {
    private static Job job(String keys) throws Exception {
        return JobFile.read(("{\"id\": \"j\", " + keys + "}").getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void daysInTheirOrderAreNoticedByNobody() throws Exception {
        Job job =
                job(
                        "\"consent\": {\"date\": \"2026-03-01\"}, \"dates\": {\"work_began\":"
                                + " \"2026-03-09\", \"work_ended\": \"2026-03-10\", \"measured\":"
                                + " \"2026-03-10\"}");
        assertEquals(List.of(), Notices.of(job));
    }

    @Test
    void workBeforeItsConsentIsNoticed() throws Exception {
        Job job =
                job(
                        "\"consent\": {\"date\": \"2026-04-01\"}, \"dates\": {\"work_began\":"
                                + " \"2026-03-09\"}");
        assertEquals(
                List.of(
                        "The work began on 2026-03-09, before the day of its consent,"
                                + " 2026-04-01."),
                Notices.of(job));
    }

    @Test
    void whatWasMeasuredBeforeTheWorkEndedMayHaveChanged() throws Exception {
        Job job =
                job(
                        "\"dates\": {\"work_began\": \"2026-03-09\", \"work_ended\":"
                                + " \"2026-03-11\", \"measured\": \"2026-03-10\"}");
        assertEquals(
                List.of("It was measured on 2026-03-10, before the end of the work, 2026-03-11."),
                Notices.of(job));
    }

    @Test
    void aNewDrainWantsAPhotographFromBeforeItWasCovered() throws Exception {
        String drain = "\"way\": [{\"id\": \"g1\", \"kind\": \"drain\", \"new_or_existing\": ";
        assertEquals(
                List.of(
                        "Drain g1 is buried, and no photograph of it from before it was covered is"
                                + " recorded."),
                Notices.of(job(drain + "\"new\"}]")));
        assertEquals(List.of(), Notices.of(job(drain + "\"existing\"}]")));
        assertEquals(
                List.of(),
                Notices.of(
                        job(
                                drain
                                        + "\"new\"}], \"photographs\": [{\"id\": \"p1\","
                                        + " \"before_covering\": \"yes\"}]")));
    }

    @Test
    void aConcealedGutterWantsAPhotographOfItsOwn() throws Exception {
        String run =
                "\"gutters\": {\"g\": {\"kind\": \"concealed\"}}, \"runs\": [{\"id\": \"a\","
                        + " \"gutter\": \"g\"}], \"photographs\": [{\"id\": \"p1\","
                        + " \"before_covering\": \"yes\", \"run\": ";
        List<String> without = Notices.of(job(run.replace(", \"run\": ", "") + "}]"));
        assertTrue(without.get(0).startsWith("Run a is concealed, and no photograph"));
        assertEquals(List.of(), Notices.of(job(run + "\"a\"}]")));
    }
}
