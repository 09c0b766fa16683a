package eavesproof.app.cli;

import eavesproof.app.CheckedJob;
import eavesproof.app.Photographs;
import eavesproof.app.ReportJob;
import eavesproof.app.WholeFile;
import eavesproof.findings.OutcomeSentence;
import eavesproof.job.Job;
import eavesproof.report.Declarations;
import eavesproof.report.LayoutTrouble;
import eavesproof.report.Photo;
import eavesproof.report.pdf.KeyTrouble;
import eavesproof.report.pdf.SigningKey;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes the report of a job. */
final class ReportCommand implements Command {
    private static final Flag TO =
            new Flag("o", "out", "F.pdf", "the file to write; its ending says whether PDF or HTML");
    private static final Flag SIGN =
            new Flag(
                    "",
                    "sign",
                    "KEY.p12",
                    "sign the PDF digitally with this key; its passphrase is asked for, or taken"
                            + " from "
                            + Passphrase.VARIABLE);
    private static final Flag SIGNATURE_PICTURE =
            new Flag(
                    "",
                    "signature-picture",
                    "[PERSON=]FILE",
                    "print this picture of a handwritten signature, PNG or JPEG, where that person"
                            + " of the record signs, or where the first declaration is signed; may"
                            + " be given once for each who signs",
                    true);
    private static final Flag PLACES =
            new Flag(
                    "",
                    "photograph-places",
                    "",
                    "print where each photograph was taken, as its file says");
    private static final Flag REPLACES =
            new Flag(
                    "",
                    "replaces",
                    "NUMBER",
                    "the number of the earlier report that this replaces");

    /** A file whose name holds a sign of equality can be typed with a folder before it. */
    private static final Pattern OF_PERSON = Pattern.compile("([A-Za-z0-9][A-Za-z0-9._-]*)=(.+)");

    private static final int LONGEST_NUMBER = 200;
    private static final String USUAL_TEMPLATE = "installer-record";

    private final Passphrase passphrase;

    ReportCommand(Passphrase passphrase) {
        this.passphrase = passphrase;
    }

    @Override
    public String name() {
        return "report";
    }

    @Override
    public String takes() {
        return "JOB.json -o F.pdf";
    }

    @Override
    public String does() {
        return "writes the report to sign, as .pdf or .html";
    }

    @Override
    public List<String> more() {
        return List.of(
                "The record travels inside the PDF, so that anybody can check it again. The same"
                        + " record, rules and date give the same bytes. A report is written whatever"
                        + " the outcome is; the outcome is also shown here.",
                "Photographs that the record names are read from its own folder and those below, as"
                        + " JPEG or PNG. Only what is seen goes on the paper, not where it was"
                        + " taken, unless that is asked for.",
                "A self-made certificate shows that the file has not changed since it was signed;"
                        + " it does not show who signed.",
                "The picture of a signature proves nothing about who put it there, and the paper"
                        + " says so.");
    }

    @Override
    public List<Flag> flags() {
        return List.of(
                TO,
                Flag.RULES,
                Printed.PAPER,
                Flag.TEMPLATE,
                Printed.DATE,
                REPLACES,
                SIGN,
                SIGNATURE_PICTURE,
                PLACES,
                Flag.FORCE);
    }

    @Override
    public int run(Asked asked, Surroundings here) throws WrongUse, BadInput, IOException {
        WholeFile target = new WholeFile(asked.file(TO), asked.has(Flag.FORCE));
        boolean html = Printed.isHtml(target.target(), "a report");
        ReportJob report = report(asked, here);
        target.check();
        Optional<SigningKey> key = key(asked, html, report);
        RecordOnDisk record = RecordOnDisk.read(asked);
        CheckedJob checked =
                record.check(asked.value(Flag.RULES), here).issuedOn(report.issued().toString());
        Photographs photographs =
                signed(
                        asked,
                        checked.job(),
                        Photographs.beside(record.folder(), checked.job(), asked.has(PLACES)));
        photographs.troubles(checked.job()).forEach(here.messages()::println);
        try {
            target.write(
                    html
                            ? report.html(checked, record.bytes(), photographs)
                            : key.isPresent()
                                    ? report.signed(
                                            checked,
                                            record.bytes(),
                                            photographs,
                                            key.get(),
                                            moment(asked, report))
                                    : report.pdf(checked, record.bytes(), photographs));
        } catch (LayoutTrouble e) {
            throw new BadInput("the template", List.of(String.valueOf(e.getMessage())));
        }
        here.messages().println("written: " + target.target());
        Page page = new Page(here.colour()).say(0, OutcomeSentence.of(checked.findings()));
        here.show(page.text());
        return checked.findings().outcome().exitCode();
    }

    private static ReportJob report(Asked asked, Surroundings here) throws WrongUse {
        Path folder = here.template(asked.value(Flag.TEMPLATE).orElse(USUAL_TEMPLATE));
        String replaces = asked.value(REPLACES).orElse("").strip();
        if (replaces.length() > LONGEST_NUMBER) {
            throw new WrongUse("--replaces is the number of a report, and not " + replaces);
        }
        return new ReportJob(folder, Printed.paper(asked), Printed.issued(asked), replaces);
    }

    private Optional<SigningKey> key(Asked asked, boolean html, ReportJob report)
            throws WrongUse, BadInput, IOException {
        Optional<String> file = asked.value(SIGN);
        if (file.isEmpty()) {
            return Optional.empty();
        }
        if (html) {
            throw new WrongUse("only a PDF can be signed");
        }
        SigningKey key = passphrase.open(Asked.path(file.get()));
        try {
            key.checkHolds(report.issued());
        } catch (KeyTrouble e) {
            throw Passphrase.refused(file.get(), e);
        }
        return Optional.of(key);
    }

    private static Photographs signed(Asked asked, Job job, Photographs photographs)
            throws WrongUse, BadInput, IOException {
        List<String> signers = Declarations.signers(job);
        Photographs signed = photographs;
        for (String typed : asked.values(SIGNATURE_PICTURE)) {
            Matcher named = OF_PERSON.matcher(typed);
            boolean isNamed = named.matches();
            String first = signers.isEmpty() ? "" : signers.get(0);
            String person = isNamed ? named.group(1) : first;
            String file = isNamed ? named.group(2) : typed;
            if (isNamed && !signers.contains(person)) {
                throw new WrongUse(
                        "nobody signs as "
                                + person
                                + (signers.isEmpty()
                                        ? ": the record names nobody who signs"
                                        : "; it may be " + String.join(", ", signers)));
            }
            if (signed.signatures().containsKey(person)) {
                throw new WrongUse("two pictures of one signature, the second being " + file);
            }
            Photo read = Photographs.signatureIn(Asked.path(file));
            if (read instanceof Photo.Missing missing) {
                throw new BadInput(
                        "the picture of a signature", List.of(file + " " + missing.why()));
            }
            signed = signed.withSignature(person, (Photo.Print) read);
        }
        return signed;
    }

    /** A report of another day is signed as of that day, so that the same call gives the same. */
    private static Instant moment(Asked asked, ReportJob report) {
        return asked.has(Printed.DATE)
                ? report.issued().atStartOfDay(ZoneOffset.UTC).toInstant()
                : Instant.now();
    }
}
