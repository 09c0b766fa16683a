package eavesproof.app;

import eavesproof.check.Engine;
import eavesproof.exchange.BadRecord;
import eavesproof.exchange.JobFile;
import eavesproof.findings.Findings;
import eavesproof.job.Job;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.RuleBook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

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

    Findings check(Job job) {
        return CheckJob.check(job, "", loaded).findings();
    }
}
