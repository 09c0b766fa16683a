package eavesproof.report;

import eavesproof.findings.Findings;
import eavesproof.job.Job;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a report is made of.
 *
 * @param attachments the data that travels inside the report
 * @param issued the date on the paper
 * @param program name and version
 * @param photographs what came of those that were looked for, by id
 * @param signedBy who will sign it digitally, if anybody
 */
public record Issue(
        Job job,
        Findings findings,
        List<Attachment> attachments,
        LocalDate issued,
        Paper paper,
        String program,
        Map<String, Photo> photographs,
        Optional<SignedBy> signedBy) {
    private static final int ENOUGH = 8;
    private static final String JSON = "application/json";

    public Issue {
        attachments = List.copyOf(attachments);
        photographs = Collections.unmodifiableMap(new LinkedHashMap<>(photographs));
    }

    /** Without photographs, and for nobody to sign digitally. */
    public Issue(
            Job job,
            Findings findings,
            List<Attachment> attachments,
            LocalDate issued,
            Paper paper,
            String program) {
        this(job, findings, attachments, issued, paper, program, Map.of(), Optional.empty());
    }

    /**
     * @param read what came of each photograph, by its id in the record
     */
    public Issue withPhotographs(Map<String, Photo> read) {
        return new Issue(job, findings, attachments, issued, paper, program, read, signedBy);
    }

    public Issue signedBy(Optional<SignedBy> signer) {
        return new Issue(job, findings, attachments, issued, paper, program, photographs, signer);
    }

    public Issue with(Attachment another) {
        List<Attachment> all = new ArrayList<>(attachments);
        all.add(another);
        return new Issue(job, findings, all, issued, paper, program, photographs, signedBy);
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
