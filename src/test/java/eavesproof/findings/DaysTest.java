package eavesproof.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.JobFile;
import eavesproof.job.Job;
import eavesproof.judge.Verdict;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class DaysTest {
    private static final String WORK =
            "\"dates\": {\"work_began\": \"2026-03-09\", \"work_ended\": \"2026-03-12\","
                    + " \"measured\": \"2026-03-13\"}";

    private static Job job(String keys) throws Exception {
        return JobFile.read(("{\"id\": \"j\", " + keys + "}").getBytes(StandardCharsets.UTF_8));
    }

    private static Job fitted(String day) throws Exception {
        return job(WORK + ", \"runs\": [{\"id\": \"a\", \"fitted\": {\"date\": \"" + day + "\"}}]");
    }

    private static List<String> because(List<Finding> findings) {
        return findings.stream().flatMap(one -> one.because().stream()).toList();
    }

    @Test
    void daysThatCanFollowEachOtherRaiseNothing() throws Exception {
        assertEquals(List.of(), Days.inRecord(fitted("2026-03-12")));
        assertEquals(List.of(), Days.onIssue(fitted("2026-03-12"), "2026-03-13"));
    }

    @Test
    void aRecordWithoutDaysRaisesNothing() throws Exception {
        assertEquals(List.of(), Days.inRecord(job("\"title\": \"x\"")));
        assertEquals(List.of(), Days.onIssue(job("\"title\": \"x\""), "2026-03-13"));
    }

    @Test
    void whatWasMeasuredBeforeTheWorkBeganIsNotThisWork() throws Exception {
        Job job = job(WORK.replace("2026-03-13", "2026-03-08"));
        assertEquals(
                List.of(
                        "it was measured on 2026-03-08, before the beginning of the work,"
                                + " 2026-03-09"),
                because(Days.inRecord(job)));
        assertEquals(Verdict.NOT_RECORDED, Days.inRecord(job).get(0).verdict());
    }

    @Test
    void aRunIsFittedDuringTheWorkAndBeforeTheMeasuring() throws Exception {
        assertEquals(
                List.of(
                        "run a was fitted on 2026-03-08, before the beginning of the work, 2026-03-09"),
                because(Days.inRecord(fitted("2026-03-08"))));
        assertEquals(
                List.of(
                        "run a was fitted on 2027-01-01, after the end of the work, 2026-03-12",
                        "run a was fitted on 2027-01-01, after the measuring, 2026-03-13"),
                because(Days.inRecord(fitted("2027-01-01"))));
    }

    @Test
    void aPaperCannotBeIssuedBeforeWhatItReports() throws Exception {
        Job job =
                job(
                        WORK
                                + ", \"photographs\": [{\"id\": \"p1\", \"taken\": \"2026-03-14\"}],"
                                + " \"instruments\": {\"t\": {\"last_checked\": \"2026-03-15\"}}");
        assertEquals(List.of(), Days.onIssue(job, "2026-03-15"));
        assertEquals(
                List.of(
                        "it was measured on 2026-03-13, after the issue of this paper, 2026-03-12",
                        "photograph p1 was taken on 2026-03-14, after the issue of this paper,"
                                + " 2026-03-12",
                        "instrument t was checked on 2026-03-15, after the issue of this paper,"
                                + " 2026-03-12"),
                because(Days.onIssue(job, "2026-03-12")));
    }

    @Test
    void aJobThatCompliesDoesNotOnAPaperThatIsOlderThanItsMeasuring() throws Exception {
        Findings found = Examples.all(Outcome.COMPLIES, Examples.spacing("b1", "b2", 50, 400));
        Job job = job(WORK);
        assertEquals(Outcome.COMPLIES, Assembly.issuedOn(found, job, "2026-03-13").outcome());
        Findings early = Assembly.issuedOn(found, job, "2026-03-01");
        assertEquals(Outcome.NOT_SHOWN, early.outcome());
        assertEquals(2, early.findings().size());
        Findings again = Assembly.issuedOn(early, job, "2026-03-01");
        assertEquals(early, again);
        assertEquals(found, Assembly.issuedOn(early, job, "2026-03-13"));
        assertTrue(OutcomeSentence.outcome(early).startsWith("Not shown to comply"));
    }
}
