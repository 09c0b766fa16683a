package eavesproof.app.cli;

import eavesproof.app.Proof;
import eavesproof.app.ProveReport;
import eavesproof.report.pdf.NotAReport;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.RuleProblem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Says whether a report says what its data give. */
final class ProveCommand implements Command {
    private static final int MOST_BYTES = 200_000_000;
    private static final int WORDS = 13;

    private static final Flag SIGNED_BY =
            new Flag(
                    "",
                    "signed-by",
                    "FINGERPRINT",
                    "the SHA-256 of the certificate that it must be signed with");

    private static final Flag ATTACHED_RULES =
            new Flag(
                    "",
                    "attached-rules",
                    "",
                    "check with the rules inside the report, whoever wrote them");

    @Override
    public String name() {
        return "prove";
    }

    @Override
    public String takes() {
        return "REPORT.pdf";
    }

    @Override
    public String does() {
        return "says whether a report says what its data give";
    }

    @Override
    public List<String> more() {
        return List.of(
                "It checks the signature, takes the record out of the report and checks it again,"
                        + " prints the report again and compares the two byte for byte. Another"
                        + " version of the program compares data and verdicts only.",
                "The rules that it was made with are inside it too, and are taken only with"
                        + " --attached-rules: whoever made the report may have changed them.",
                "It ends with 0 if all is well, 1 if something is not, 2 if what could be checked is"
                        + " well and not everything could be, 65 if the file is no report of this"
                        + " program.",
                "Without a signature nobody can tell a report from one that somebody has made anew"
                        + " from other data. With one, compare the fingerprint of its certificate"
                        + " with one that the signer gave you in another way.");
    }

    @Override
    public List<Flag> flags() {
        return List.of(Flag.RULES, ATTACHED_RULES, Flag.TEMPLATE, SIGNED_BY);
    }

    @Override
    public int run(Asked asked, Surroundings here) throws WrongUse, BadInput, IOException {
        String name = asked.one("REPORT.pdf");
        if (asked.has(ATTACHED_RULES) && asked.value(Flag.RULES).isPresent()) {
            throw new WrongUse("--rules or --attached-rules, and not both");
        }
        Optional<String> signedBy = fingerprint(asked);
        Optional<Path> template = Optional.empty();
        if (asked.value(Flag.TEMPLATE).isPresent()) {
            template = Optional.of(here.template(asked.value(Flag.TEMPLATE).get()));
        }
        ProveReport prove =
                new ProveReport(
                        asked.value(Flag.RULES),
                        asked.has(ATTACHED_RULES),
                        here.shippedRules(),
                        template,
                        here.shippedTemplates(),
                        signedBy);
        try {
            Proof proof = prove.prove(read(Asked.path(name)));
            show(proof, here);
            return proof.exitCode();
        } catch (NotAReport e) {
            throw new BadInput(name, List.of(name + ": " + e.getMessage()));
        } catch (RefusedRules e) {
            throw new BadInput("the rules", e.problems().stream().map(RuleProblem::text).toList());
        }
    }

    private static void show(Proof proof, Surroundings here) throws IOException {
        Page page = new Page(here.colour());
        for (Proof.Line line : proof.lines()) {
            page.pair(0, WORDS, line.stands().word(), line.says());
        }
        here.show(page.gap().say(0, proof.outcome()).text());
    }

    private static byte[] read(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new FileSystemException(file.toString(), null, "is a folder, and no report");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(MOST_BYTES);
        }
    }

    private static Optional<String> fingerprint(Asked asked) throws WrongUse {
        Optional<String> typed = asked.value(SIGNED_BY);
        if (typed.isEmpty()) {
            return typed;
        }
        String plain = typed.get().replaceAll("[: ]", "").toLowerCase(Locale.ROOT);
        if (!plain.matches("[0-9a-f]{64}")) {
            throw new WrongUse(
                    "a fingerprint has 64 hexadecimal digits, and not as in " + typed.get());
        }
        return Optional.of(plain);
    }
}
