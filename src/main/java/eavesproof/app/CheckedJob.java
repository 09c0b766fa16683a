package eavesproof.app;

import eavesproof.findings.Assembly;
import eavesproof.findings.Findings;
import eavesproof.job.Job;
import eavesproof.survey.Survey;
import java.util.SortedMap;

/**
 * A job with all that came of holding it against the rules.
 *
 * @param rulesFiles the files that the rules were read from, by layer and name
 */
public record CheckedJob(
        Job job, Survey survey, Findings findings, SortedMap<String, byte[]> rulesFiles) {

    /**
     * As it stands on a paper of that day.
     *
     * @param date YYYY-MM-DD
     */
    public CheckedJob issuedOn(String date) {
        return new CheckedJob(job, survey, Assembly.issuedOn(findings, job, date), rulesFiles);
    }
}
