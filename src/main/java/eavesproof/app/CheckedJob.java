package eavesproof.app;

import eavesproof.findings.Findings;
import eavesproof.job.Job;
import eavesproof.survey.Survey;

/** A job with all that came of holding it against the rules. */
public record CheckedJob(Job job, Survey survey, Findings findings) {}
