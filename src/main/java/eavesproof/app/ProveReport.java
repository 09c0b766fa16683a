package eavesproof.app;

import eavesproof.exchange.BadRecord;
import eavesproof.exchange.FindingsFile;
import eavesproof.exchange.Made;
import eavesproof.exchange.MadeFile;
import eavesproof.exchange.WrittenFindings;
import eavesproof.findings.Findings;
import eavesproof.report.Allowance;
import eavesproof.report.Issue;
import eavesproof.report.LayoutTrouble;
import eavesproof.report.ShippedTemplates;
import eavesproof.report.TemplateIdentity;
import eavesproof.report.Typesetting;
import eavesproof.report.pdf.NotAReport;
import eavesproof.report.pdf.ReportFile;
import eavesproof.rules.RefusedRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Says whether a report says what its data give: looks at the signature, checks the record inside
 * once more, and prints the report again.
 *
 * @param rules name or folder, in place of the rule set that the report names
 * @param withRulesInside whether to check with the rules that are inside the report
 * @param template in place of the shipped one that the report names
 * @param signedBy the fingerprint that the certificate must have
 */
public record ProveReport(
        Optional<String> rules,
        boolean withRulesInside,
        Path shippedRules,
        Optional<Path> template,
        Path shippedTemplates,
        Optional<String> signedBy) {

    private static final int MOST_DIFFERENCES = 40;

    /** What a report carries, taken out of it. */
    @SuppressWarnings("ArrayRecordComponent") // files are bytes; nobody else sees them
    private record Carried(
            ReportFile file,
            byte[] record,
            byte[] findings,
            WrittenFindings written,
            Made made,
            Edition edition) {}

    /**
     * @throws NotAReport if this program did not make it
     * @throws RefusedRules if the rules that were asked for cannot be taken
     */
    public Proof prove(byte[] bytes) throws NotAReport, RefusedRules, IOException {
        Carried report = takeOut(ReportFile.open(bytes));
        Proof proof = new Proof();
        SignatureProof.add(proof, report.file().signatures(), report.made().signer(), signedBy);
        Optional<RulesInside> inside = RulesInside.of(report.file(), report.written(), proof);
        Optional<CheckedJob> checked = checkAgain(proof, report, inside);
        if (checked.isPresent()) {
            compareVerdicts(proof, report, checked.get());
            compareWords(
                    proof,
                    report,
                    checked.get(),
                    inside.map(RulesInside::archive)
                            .or(() -> RulesArchive.pack(checked.get().rulesFiles())));
        } else {
            proof.add(Proof.Stands.NOT_CHECKED, "The words of the paper: its verdicts come first.");
        }
        return proof;
    }

    private static Carried takeOut(ReportFile file) throws NotAReport {
        byte[] record = part(file, "job.json");
        byte[] findings = part(file, "findings.json");
        WrittenFindings written =
                WrittenFindings.read(findings).orElseThrow(() -> unreadable("findings.json"));
        Made made =
                MadeFile.read(part(file, MadeFile.NAME))
                        .orElseThrow(() -> unreadable(MadeFile.NAME));
        Edition edition = Edition.again(made).orElseThrow(() -> unreadable(MadeFile.NAME));
        return new Carried(file, record, findings, written, made, edition);
    }

    private static byte[] part(ReportFile file, String name) throws NotAReport {
        return file.attachment(name).orElseThrow(() -> new NotAReport("carries no " + name));
    }

    private static NotAReport unreadable(String name) {
        return new NotAReport("carries a " + name + " that this program did not write");
    }

    private Optional<CheckedJob> checkAgain(
            Proof proof, Carried report, Optional<RulesInside> inside)
            throws RefusedRules, IOException {
        WrittenFindings written = report.written();
        String wanted = written.rules() + " with SHA-256 " + written.rulesSha256();
        CheckedJob checked;
        try {
            String named = rules.orElse(written.rules());
            checked =
                    withRulesInside && inside.isPresent()
                            ? inside.get().check(report.record(), written.rules(), proof)
                            : CheckJob.check(report.record(), Optional.of(named), shippedRules);
            checked = checked.issuedOn(report.made().issued());
        } catch (BadRecord e) {
            proof.add(
                    Proof.Stands.NOT_WELL,
                    "The record inside cannot be taken: " + e.problems().get(0).text());
            return Optional.empty();
        } catch (RefusedRules e) {
            if (rules.isPresent()) {
                throw e;
            }
            proof.add(
                    Proof.Stands.NOT_CHECKED,
                    "The verdicts: the rule set "
                            + wanted
                            + " is not here; --rules names its folder"
                            + orInside(inside)
                            + ".");
            return Optional.empty();
        }
        String here = checked.findings().rules().sha256();
        if (here.equals(written.rulesSha256())) {
            return Optional.of(checked);
        }
        proof.add(
                Proof.Stands.NOT_CHECKED,
                "The verdicts: they were reached with the rule set "
                        + wanted
                        + ", which is not here; the one at hand has "
                        + here
                        + " and gives the outcome "
                        + checked.findings().outcome().id()
                        + " where the paper says "
                        + written.outcome()
                        + ". --rules names another"
                        + orInside(inside)
                        + ".");
        otherwise(proof, written, checked.findings());
        if (written.asShipped() && checked.findings().rules().asShipped() && sameProgram(report)) {
            proof.add(
                    Proof.Stands.NOT_WELL,
                    "The paper calls its rules those that came with this program, and they are not.");
        }
        return Optional.empty();
    }

    private static String orInside(Optional<RulesInside> inside) {
        return inside.isPresent() ? ", and --attached-rules takes those inside the report" : "";
    }

    /** What the rules at hand make of it: neither well nor not, since they are others. */
    private static void otherwise(Proof proof, WrittenFindings written, Findings atHand) {
        List<String> differences =
                written.differences(WrittenFindings.read(FindingsFile.write(atHand)).orElseThrow());
        differences.stream()
                .limit(MOST_DIFFERENCES)
                .forEach(it -> proof.add(Proof.Stands.NOTE, "With the rules at hand: " + it));
        int more = differences.size() - MOST_DIFFERENCES;
        if (more > 0) {
            proof.add(Proof.Stands.NOTE, "And " + more + " verdicts more differ.");
        }
    }

    private static void compareVerdicts(Proof proof, Carried report, CheckedJob checked) {
        byte[] again = FindingsFile.write(checked.findings());
        List<String> differences =
                report.written().differences(WrittenFindings.read(again).orElseThrow());
        differences.forEach(difference -> proof.add(Proof.Stands.NOT_WELL, difference));
        if (!differences.isEmpty()) {
            return;
        }
        if (sameProgram(report) && !Arrays.equals(again, report.findings())) {
            proof.add(
                    Proof.Stands.NOT_WELL,
                    "The findings inside have the right verdicts and differ in something else.");
        } else {
            proof.add(
                    Proof.Stands.WELL,
                    "The verdicts are what the data give: "
                            + report.written().verdicts().size()
                            + " of them, with the rule set "
                            + report.written().rules()
                            + ".");
        }
    }

    private void compareWords(
            Proof proof, Carried report, CheckedJob checked, Optional<byte[]> archive)
            throws IOException {
        if (!sameProgram(report)) {
            proof.add(
                    Proof.Stands.NOT_CHECKED,
                    "The words of the paper: it was made by "
                            + report.made().program()
                            + ", and this is "
                            + Program.nameAndVersion()
                            + ". Data and verdicts only were compared.");
            return;
        }
        try {
            Optional<Path> folder = templates(report.made());
            if (folder.isEmpty()) {
                proof.add(
                        Proof.Stands.NOT_CHECKED,
                        "The words of the paper: its templates, "
                                + report.made().template()
                                + " with SHA-256 "
                                + report.made().templateSha256()
                                + ", are not here; --template names their folder.");
                return;
            }
            List<String> differences =
                    report.file()
                            .differences(
                                    new Typesetting(folder.get(), Allowance.USUAL)
                                            .forPaper(again(report, checked, archive)));
            differences.forEach(difference -> proof.add(Proof.Stands.NOT_WELL, difference));
            if (!differences.isEmpty()) {
                Photographs.lost(report.file(), report.made())
                        .forEach(lost -> proof.add(Proof.Stands.NOT_WELL, lost));
            } else {
                proof.add(
                        Proof.Stands.WELL,
                        "The paper is, byte for byte, what the program prints from this data.");
                if (!ShippedTemplates.are(folder.get())) {
                    proof.add(
                            Proof.Stands.NOT_CHECKED,
                            "What the paper says besides: its templates did not come with this"
                                    + " program, and their words are those of whoever wrote them.");
                }
            }
        } catch (LayoutTrouble | IllegalArgumentException e) {
            // What the report says of how it was made may be somebody else's words.
            proof.add(
                    Proof.Stands.NOT_WELL, "The report cannot be printed again: " + e.getMessage());
        }
    }

    private static Issue again(Carried report, CheckedJob checked, Optional<byte[]> archive) {
        return report.edition()
                .issue(
                        checked,
                        report.record(),
                        Photographs.from(report.file(), report.made()),
                        archive);
    }

    /** The folder whose files are those that the report was set by. */
    private Optional<Path> templates(Made made) throws IOException, LayoutTrouble {
        Path folder = template.orElse(shipped(made));
        return isOf(folder, made) ? Optional.of(folder) : Optional.empty();
    }

    private Path shipped(Made made) {
        boolean plain = made.template().matches("[a-z0-9-]+");
        return shippedTemplates.resolve(plain ? made.template() : "installer-record");
    }

    private static boolean isOf(Path folder, Made made) throws IOException, LayoutTrouble {
        return Files.isDirectory(folder)
                && TemplateIdentity.sha256(folder).equals(made.templateSha256());
    }

    private static boolean sameProgram(Carried report) {
        return report.made().program().equals(Program.nameAndVersion());
    }
}
