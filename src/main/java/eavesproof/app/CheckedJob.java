package eavesproof.app;

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
        Job job, Survey survey, Findings findings, SortedMap<String, byte[]> rulesFiles) {}
