package eavesproof.report;

import eavesproof.findings.Findings;
import eavesproof.job.Job;
import eavesproof.rules.Sha256;
import eavesproof.survey.Survey;
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
 * @param survey what the job was found to be; drawings show it
 * @param attachments the data that travels inside the report
 * @param issued the date on the paper
 * @param program name and version
 * @param photographs what came of those that were looked for, by id
 * @param signaturePictures of somebody's hand, by the person in the record; that of whoever signs
 *     first may stand under no name
 * @param signedBy who will sign it digitally, if anybody
 * @param replaces the number of the report that it replaces; empty where it replaces none
 */
public record Issue(
        Job job,
        Survey survey,
        Findings findings,
        List<Attachment> attachments,
        LocalDate issued,
        Paper paper,
        String program,
        Map<String, Photo> photographs,
        Map<String, Photo.Print> signaturePictures,
        Optional<SignedBy> signedBy,
        String replaces) {
    private static final int ENOUGH = 8;
    private static final String JSON = "application/json";

    public Issue {
        attachments = List.copyOf(attachments);
        photographs = Collections.unmodifiableMap(new LinkedHashMap<>(photographs));
        signaturePictures = Collections.unmodifiableMap(new LinkedHashMap<>(signaturePictures));
    }

    /** Without photographs, and for nobody to sign digitally. */
    public Issue(
            Job job,
            Survey survey,
            Findings findings,
            List<Attachment> attachments,
            LocalDate issued,
            Paper paper,
            String program) {
        this(
                job,
                survey,
                findings,
                attachments,
                issued,
                paper,
                program,
                Map.of(),
                Map.of(),
                Optional.empty(),
                "");
    }

    /**
     * With what else goes onto the paper and into the file.
     *
     * @param read what came of each photograph, by its id in the record
     * @param signatures the pictures of signatures that are to be shown, by person
     */
    public Issue with(
            Map<String, Photo> read,
            Map<String, Photo.Print> signatures,
            Optional<SignedBy> signer,
            String another,
            List<Attachment> more) {
        List<Attachment> all = new ArrayList<>(attachments);
        all.addAll(more);
        return new Issue(
                job,
                survey,
                findings,
                all,
                issued,
                paper,
                program,
                read,
                signatures,
                signer,
                another);
    }

    /**
     * @param record the bytes of the job record as it was read
     * @param findingsJson the findings as the program gives them to other programs
     */
    public static Issue of(
            Job job,
            Survey survey,
            Findings findings,
            byte[] record,
            byte[] findingsJson,
            LocalDate issued,
            Paper paper,
            String program) {
        return new Issue(
                job,
                survey,
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

    /**
     * Two papers that say different things have different numbers: it changes with everything that
     * a paper is made of.
     */
    public String number() {
        return number(madeFromSha256());
    }

    /**
     * @param digest of all that it is made from, which takes a while for a long report
     */
    String number(String digest) {
        return job.id()
                + "/"
                + issued
                + "/"
                + digest.substring(0, ENOUGH)
                + "-"
                + digest.substring(ENOUGH, 2 * ENOUGH);
    }

    /** Over the record, the rules with their words, the program, and all that is attached. */
    String madeFromSha256() {
        StringBuilder all = new StringBuilder();
        for (String part :
                List.of(
                        job.id(),
                        issued.toString(),
                        paper.name(),
                        program,
                        findings.jobSha256(),
                        findings.rules().sha256(),
                        findings.rules().wordsSha256())) {
            all.append(part.length()).append(' ').append(part).append('\n');
        }
        attachments.forEach(
                one ->
                        all.append(one.name())
                                .append(' ')
                                .append(Sha256.of(one.content()))
                                .append('\n'));
        signedBy.ifPresent(by -> all.append(by.fingerprint()).append('\n'));
        return Sha256.of(all.toString());
    }
}
