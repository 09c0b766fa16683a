package eavesproof.app;

import eavesproof.exchange.Made;
import eavesproof.report.Allowance;
import eavesproof.report.LayoutTrouble;
import eavesproof.report.Paper;
import eavesproof.report.SignedBy;
import eavesproof.report.TemplateIdentity;
import eavesproof.report.Typesetting;
import eavesproof.report.pdf.PdfWriter;
import eavesproof.report.pdf.SigningKey;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Makes the report of a job that was checked.
 *
 * @param template folder of the templates
 * @param issued the date on the paper
 * @param replaces the number of the report that it replaces; empty where it replaces none
 */
public record ReportJob(Path template, Paper paper, LocalDate issued, String replaces) {

    public ReportJob(Path template, Paper paper, LocalDate issued) {
        this(template, paper, issued, "");
    }

    /**
     * @param record the bytes that the job was read from
     */
    public byte[] pdf(CheckedJob checked, byte[] record, Photographs photographs)
            throws LayoutTrouble {
        return written(new PdfWriter(), checked, record, photographs, Optional.empty());
    }

    /**
     * @param when the moment that the signature names
     */
    public byte[] signed(
            CheckedJob checked,
            byte[] record,
            Photographs photographs,
            SigningKey key,
            Instant when)
            throws LayoutTrouble {
        PdfWriter writer = new PdfWriter();
        byte[] written = written(writer, checked, record, photographs, Optional.of(key.signedBy()));
        return writer.sign(written, key, when);
    }

    /** One page that stands alone. */
    public byte[] html(CheckedJob checked, byte[] record, Photographs photographs)
            throws LayoutTrouble {
        return typesetting()
                .forScreen(
                        edition(photographs, Optional.empty()).issue(checked, record, photographs))
                .getBytes(StandardCharsets.UTF_8);
    }

    private byte[] written(
            PdfWriter writer,
            CheckedJob checked,
            byte[] record,
            Photographs photographs,
            Optional<SignedBy> signer)
            throws LayoutTrouble {
        return writer.write(
                typesetting()
                        .forPaper(
                                edition(photographs, signer).issue(checked, record, photographs)));
    }

    private Typesetting typesetting() throws LayoutTrouble {
        return new Typesetting(template, Allowance.USUAL);
    }

    private Edition edition(Photographs photographs, Optional<SignedBy> signer)
            throws LayoutTrouble {
        return Edition.of(
                issued,
                paper,
                new Made(
                        Program.nameAndVersion(),
                        String.valueOf(template.toAbsolutePath().normalize().getFileName()),
                        TemplateIdentity.sha256(template),
                        issued.toString(),
                        paper.name(),
                        replaces,
                        signer.map(
                                by -> new Made.Signer(by.name(), by.fingerprint(), by.selfMade())),
                        photographs.made(),
                        photographs.madeSignatures()));
    }
}
