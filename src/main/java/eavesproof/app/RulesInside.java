package eavesproof.app;

import eavesproof.exchange.BadRecord;
import eavesproof.exchange.WrittenFindings;
import eavesproof.findings.Findings;
import eavesproof.report.pdf.ReportFile;
import eavesproof.rules.RefusedRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The rules that travel inside a report, once they turned out to be those that it names. Whoever
 * made the report may have written them: they serve only whoever asks for them.
 */
@SuppressWarnings("ArrayRecordComponent") // an archive is bytes; nobody else sees it
record RulesInside(byte[] archive) {

    /** What is done with them while they lie in a folder. */
    private interface Deed<T> {
        T with(Path folder) throws BadRecord, RefusedRules, IOException;
    }

    /** Empty where there are none, or others than the report names, which is told. */
    static Optional<RulesInside> of(ReportFile report, WrittenFindings written, Proof proof)
            throws IOException {
        Optional<byte[]> archive = report.attachment(RulesArchive.NAME);
        if (archive.isEmpty()) {
            return Optional.empty();
        }
        RulesInside inside = new RulesInside(archive.get());
        Optional<String> sha256 = inside.sha256(written.rules());
        if (sha256.equals(Optional.of(written.rulesSha256()))) {
            return Optional.of(inside);
        }
        proof.add(
                Proof.Stands.NOT_WELL,
                sha256.map(it -> "The rules inside have SHA-256 " + it + ", and the paper names ")
                                .orElse("The rules inside are none, and the paper names ")
                        + written.rulesSha256()
                        + ".");
        return Optional.empty();
    }

    private Optional<String> sha256(String name) throws IOException {
        try {
            return Optional.of(laidOut(folder -> RuleSets.book(name, folder).sha256()));
        } catch (BadRecord | RefusedRules | RulesArchive.NoRules e) {
            return Optional.empty();
        }
    }

    CheckedJob check(byte[] record, String name, Proof proof)
            throws BadRecord, RefusedRules, IOException {
        CheckedJob checked = laidOut(folder -> CheckJob.check(record, Optional.of(name), folder));
        Findings.RulesUsed used = checked.findings().rules();
        proof.add(
                Proof.Stands.NOTE,
                "The verdicts were looked at with the rules inside the report, which "
                        + (used.asShipped()
                                ? "are those that came with this program."
                                : "are not those that came with this program."));
        used.changes().forEach(change -> proof.add(Proof.Stands.NOTE, "Changed: " + change));
        return checked;
    }

    private <T> T laidOut(Deed<T> deed) throws BadRecord, RefusedRules, IOException {
        Path folder = Files.createTempDirectory("eavesproof-rules");
        try {
            RulesArchive.unpack(archive, folder);
            return deed.with(folder);
        } finally {
            remove(folder);
        }
    }

    private static void remove(Path folder) throws IOException {
        List<Path> all;
        try (Stream<Path> files = Files.walk(folder)) {
            all = files.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path file : all) {
            Files.delete(file);
        }
    }
}
