package eavesproof.app.cli;

import eavesproof.app.CheckJob;
import eavesproof.app.CheckedJob;
import eavesproof.exchange.BadRecord;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.RuleProblem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The record that somebody named. */
final class RecordOnDisk {
    /** More than the reader of records takes, so that it still says what is too much. */
    private static final int MOST_BYTES = 32 * 1024 * 1024;

    private final String name;
    private final byte[] bytes;

    private RecordOnDisk(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes;
    }

    static RecordOnDisk read(Asked asked) throws WrongUse, IOException {
        return read(asked.one("JOB.json"));
    }

    static RecordOnDisk read(String name) throws WrongUse, IOException {
        Path path = Asked.path(name);
        if (Files.isDirectory(path)) {
            throw new FileSystemException(name, null, "is a folder, and no record");
        }
        try (InputStream file = Files.newInputStream(path)) {
            return new RecordOnDisk(name, file.readNBytes(MOST_BYTES));
        }
    }

    /** Where photographs are looked for. */
    Path folder() throws WrongUse {
        Path parent = Asked.path(name).toAbsolutePath().getParent();
        return parent == null ? Path.of("") : parent;
    }

    byte[] bytes() {
        return bytes.clone();
    }

    /** Mistakes are told with the names that were typed, so that an editor finds them. */
    CheckedJob check(Optional<String> rules, Surroundings here) throws BadInput, IOException {
        try {
            return CheckJob.check(bytes, rules, here.shippedRules());
        } catch (BadRecord e) {
            throw new BadInput(
                    name, e.problems().stream().map(p -> name + ":" + p.text()).toList());
        } catch (RefusedRules e) {
            throw new BadInput("the rules", e.problems().stream().map(RuleProblem::text).toList());
        }
    }
}
