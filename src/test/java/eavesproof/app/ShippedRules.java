package eavesproof.app;

import eavesproof.check.Coverage;
import eavesproof.check.Engine;
import eavesproof.exchange.BadRecord;
import eavesproof.exchange.JobFile;
import eavesproof.findings.Assembly;
import eavesproof.findings.Findings;
import eavesproof.job.Job;
import eavesproof.judge.Judge;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.RuleBook;
import eavesproof.survey.Surveyor;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** A rule set as the program loads it, for tests of what its rules say. */
record ShippedRules(LoadedRules loaded) {
    private static final Path SHIPPED = Path.of("rules");

    /**
     * @param name of a shipped rule set, or a folder
     */
    static ShippedRules named(String name) {
        try {
            return new ShippedRules(RuleSets.load(name, SHIPPED));
        } catch (RefusedRules refused) {
            throw new IllegalStateException(refused);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    RuleBook book() {
        return loaded.book();
    }

    Engine engine() {
        return loaded.engine();
    }

    Findings check(byte[] record) {
        try {
            return check(JobFile.read(record));
        } catch (BadRecord refused) {
            throw new IllegalStateException(refused);
        }
    }

    /** From the survey to the findings, as the program does it. */
    Findings check(Job job) {
        RuleBook book = book();
        Coverage coverage =
                Coverage.of(book.rules(), book.mustJudge(), Surveyor.survey(job), engine());
        return Assembly.of(
                job.id(),
                "",
                new Findings.RulesUsed(
                        book.name(),
                        book.title(),
                        book.jurisdiction(),
                        book.sha256(),
                        loaded.asShipped(),
                        List.of(),
                        book.documents(),
                        book.clausesNotChecked()),
                "",
                new Judge(book.decision()).judge(coverage.requirements()),
                coverage.uncovered());
    }
}
