package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.JobFile;
import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.job.Job;
import eavesproof.judge.Verdict;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the samples are told to do, against the rules of the trade as they are shipped. */
class RemediesOfJobsTest {
    private static final Path SHIPPED = Path.of("rules");

    private static Findings check(String sample) throws Exception {
        byte[] record = Files.readAllBytes(Path.of("samples", sample));
        return CheckJob.check(record, Optional.empty(), SHIPPED).findings();
    }

    private static List<String> remedies(Findings findings, String rule) {
        return findings.findings().stream()
                .filter(it -> it.rule().equals(rule) && it.verdict().needsAction())
                .map(it -> it.remedy().orElseThrow())
                .distinct()
                .toList();
    }

    private static void assertSays(Findings findings, String rule, String... parts) {
        String remedy = String.join("\n", remedies(findings, rule));
        for (String part : parts) {
            assertTrue(remedy.contains(part), remedy);
        }
    }

    /** 620 mm at most 500: one bracket in the middle between 1490 and 2110. */
    @Test
    void aSpanTooWideGetsOneBracketMore() throws Exception {
        assertEquals(
                List.of("add a bracket on straight a1 at 1800 mm"),
                remedies(check("carport-several-faults.json"), "bracket centres"));
    }

    /** 5700 mm less half of 120 less 50 less an uncertainty of 2.6 mm is 5587.4. */
    @Test
    void aBracketTooNearAnOutletIsMovedToWholeFiveMillimetresOnTheSafeSide() throws Exception {
        assertSays(
                check("carport-several-faults.json"),
                "brackets clear of a sliding outlet",
                "move bracket b13 to 5585 mm");
    }

    @Test
    void emptyHolesGetTheirScrews() throws Exception {
        Findings findings = check("carport-several-faults.json");
        assertSays(findings, "no empty screw holes", "2 more in bracket b7");
        assertSays(findings, "stainless screws", "bracket b2 with stainless steel");
    }

    @Test
    void whereOnlyAnAuthorityCanHelpItIsToBeAsked() throws Exception {
        assertSays(check("carport-several-faults.json"), "discharge approved", "ask whoever");
    }

    /** A margin of 1 mm, guarded with r = 1, bears an expanded uncertainty of 1 mm. */
    @Test
    void tooCloseSaysHowSureTheNextReadingMustBeAndWhatWouldSettleIt() throws Exception {
        Findings findings = check("shed-too-close.json");
        assertSays(
                findings,
                "bracket centres",
                "expanded uncertainty of at most 1 mm",
                "would settle it with a tape of class I");
        assertSays(findings, "fall", "level line right of set-up s1");
    }

    @Test
    void whatIsNotRecordedIsToBeRecorded() throws Exception {
        Findings findings = check("lean-to-not-recorded.json");
        for (Finding finding : findings.findings()) {
            if (finding.verdict() == Verdict.NOT_RECORDED) {
                String remedy = finding.remedy().orElseThrow();
                assertTrue(remedy.startsWith("find out and record "), remedy);
            }
        }
    }

    /**
     * 0.176 mm/m to spare over 4.4 m bears a standard uncertainty of the drop of 0.39 mm. The two
     * readings make 0.17 of it; a line of 0.16 mm/m makes 0.41 from one end and 0.29 from the
     * middle, where the errors to the left and to the right are two.
     */
    @Test
    void aLevelLineReadFromOneEndIsToBeReadFromTheMiddle() throws Exception {
        Job job = JobFile.read(Files.readAllBytes(Path.of("samples", "shed-too-close.json")));
        Job fine =
                RecordTree.with(job, List.of("instruments", "laser", "accuracyMmPerM"), it -> 0.16);
        fine = RecordTree.with(fine, List.of("instruments", "rule", "accuracyMm"), it -> 0.2);
        fine = RecordTree.with(fine, List.of("instruments", "rule", "resolutionMm"), it -> 0.1);
        Findings findings =
                CheckJob.check(fine, "", RuleSets.load("trade-practice", SHIPPED)).findings();
        assertSays(findings, "fall", "the instrument in the middle of its readings");
    }

    @Test
    void aJobThatCompliesIsToldNothing() throws Exception {
        assertTrue(
                check("verandah-pvc.json").findings().stream()
                        .allMatch(it -> it.remedy().isEmpty()));
    }
}
