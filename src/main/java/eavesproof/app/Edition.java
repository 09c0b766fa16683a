package eavesproof.app;

import eavesproof.exchange.FindingsFile;
import eavesproof.exchange.Made;
import eavesproof.exchange.MadeFile;
import eavesproof.report.Attachment;
import eavesproof.report.Issue;
import eavesproof.report.Paper;
import eavesproof.report.SignedBy;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts together what a report is made of: once when it is made, again when it is proved. */
final class Edition {
    private final LocalDate issued;
    private final Paper paper;
    private final Made made;

    private Edition(LocalDate issued, Paper paper, Made made) {
        this.issued = issued;
        this.paper = paper;
        this.made = made;
    }

    static Edition of(LocalDate issued, Paper paper, Made made) {
        return new Edition(issued, paper, made);
    }

    /** Empty where the words of the file are none that a report is made with. */
    static Optional<Edition> again(Made made) {
        try {
            return Optional.of(
                    new Edition(LocalDate.parse(made.issued()), Paper.valueOf(made.paper()), made));
        } catch (DateTimeException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    Issue issue(CheckedJob checked, byte[] record, Photographs photographs) {
        return issue(checked, record, photographs, RulesArchive.pack(checked.rulesFiles()));
    }

    /**
     * @param rules the archive of the rules that travels with it, if any
     */
    Issue issue(CheckedJob found, byte[] record, Photographs photographs, Optional<byte[]> rules) {
        CheckedJob checked = found.issuedOn(issued.toString());
        List<Attachment> more = new ArrayList<>();
        more.add(
                new Attachment(
                        MadeFile.NAME,
                        "application/json",
                        "How this report was made, to make it again",
                        MadeFile.write(made)));
        rules.ifPresent(
                archive ->
                        more.add(
                                new Attachment(
                                        RulesArchive.NAME,
                                        "application/zip",
                                        "The rules that the job was held against",
                                        archive)));
        return Issue.of(
                        checked.job(),
                        checked.survey(),
                        checked.findings(),
                        record,
                        FindingsFile.write(checked.findings()),
                        issued,
                        paper,
                        Program.nameAndVersion())
                .with(
                        photographs.byId(),
                        photographs.signatures(),
                        made.signer().map(Edition::signedBy),
                        made.replaces(),
                        more);
    }

    private static SignedBy signedBy(Made.Signer signer) {
        return new SignedBy(signer.name(), signer.fingerprint(), signer.selfMade());
    }
}
