package eavesproof.app;

import eavesproof.check.BasisOf;
import eavesproof.check.Coverage;
import eavesproof.exchange.BadRecord;
import eavesproof.exchange.JobFile;
import eavesproof.findings.Assembly;
import eavesproof.findings.Findings;
import eavesproof.job.Job;
import eavesproof.judge.Judge;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.RuleBook;
import eavesproof.rules.Sha256;
import eavesproof.setout.Checked;
import eavesproof.setout.Remedies;
import eavesproof.survey.Survey;
import eavesproof.survey.Surveyor;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/** Holds the record of a job against the rules. Start here to see what happens in which order. */
public final class CheckJob {
    private CheckJob() {}

    /**
     * @param record as it was read, from the first byte to the last
     * @param asked name or folder of a rule set, if another one than the record names
     * @param shippedRules the folder of the rule sets that came with the program
     * @throws BadRecord if the record cannot be taken
     * @throws RefusedRules if the rules cannot be taken, or none are named
     */
    public static CheckedJob check(byte[] record, Optional<String> asked, Path shippedRules)
            throws BadRecord, RefusedRules, IOException {
        Job job = JobFile.read(record);
        return check(job, Sha256.of(record), RulesOfJob.choose(job, asked, shippedRules));
    }

    /** The same of a job that was read already, and of rules that were found. */
    static CheckedJob check(Job job, String sha256, LoadedRules loaded) {
        Survey survey = Surveyor.survey(job, BasisOf.book(loaded.book()));
        Coverage coverage = coverage(survey, loaded);
        Checked checked = checked(survey, coverage, loaded);
        Remedies remedies = Remedies.of(job, checked, edited -> checked(edited, loaded));
        Findings findings =
                Assembly.of(
                        job,
                        sha256,
                        RulesOfJob.inWords(loaded),
                        Program.nameAndVersion(),
                        checked.rulings(),
                        coverage.uncovered(),
                        remedies);
        return new CheckedJob(job, survey, findings, loaded.files());
    }

    /** The whole check without words, as the search for remedies runs it on changed jobs. */
    static Checked checked(Job job, LoadedRules loaded) {
        Survey survey = Surveyor.survey(job, BasisOf.book(loaded.book()));
        return checked(survey, coverage(survey, loaded), loaded);
    }

    static Checked checked(Survey survey, Coverage coverage, LoadedRules loaded) {
        Set<String> silent = new LinkedHashSet<>();
        coverage.uncovered().forEach(it -> silent.add(it.kind().name() + " of run " + it.run()));
        Judge judge = new Judge(loaded.book().decision());
        return new Checked(survey, judge.judge(coverage.requirements()), silent);
    }

    static Coverage coverage(Survey survey, LoadedRules loaded) {
        RuleBook rules = loaded.book();
        return Coverage.of(rules.rules(), rules.mustJudge(), survey, loaded.engine());
    }
}
