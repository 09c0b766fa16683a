package eavesproof.report;

import eavesproof.findings.Findings;
import eavesproof.job.Job;
import java.time.LocalDate;
import java.util.List;

/**
 * What a report is made of.
 *
 * @param attachments the data that travels inside the report
 * @param issued the date on the paper
 * @param program name and version
 */
public record Issue(
        Job job,
        Findings findings,
        List<Attachment> attachments,
        LocalDate issued,
        Paper paper,
        String program) {
    private static final int ENOUGH = 8;
    private static final String JSON = "application/json";

    public Issue {
        attachments = List.copyOf(attachments);
    }

    /**
     * @param record the bytes of the job record as it was read
     * @param findingsJson the findings as the program gives them to other programs
     */
    public static Issue of(
            Job job,
            Findings findings,
            byte[] record,
            byte[] findingsJson,
            LocalDate issued,
            Paper paper,
            String program) {
        return new Issue(
                job,
                findings,
                List.of(
                        new Attachment("job.json", JSON, "The job record as it was read", record),
                        new Attachment(
                                "findings.json",
                                JSON,
                                "Every finding, for other programs",
                                findingsJson)),
                issued,
                paper,
                program);
    }

    /** Changes with the record, with the rules and with the date, and with nothing else. */
    public String number() {
        return job.id()
                + "/"
                + issued
                + "/"
                + findings.jobSha256().substring(0, ENOUGH)
                + "-"
                + findings.rules().sha256().substring(0, ENOUGH);
    }
}
