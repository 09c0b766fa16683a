package eavesproof.app;

import eavesproof.exchange.FindingsFile;
import eavesproof.report.Allowance;
import eavesproof.report.Issue;
import eavesproof.report.LayoutTrouble;
import eavesproof.report.Paper;
import eavesproof.report.Typesetting;
import eavesproof.report.pdf.PdfWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;

/**
 * Makes the report of a job that was checked.
 *
 * @param template folder of the templates
 * @param issued the date on the paper
 */
public record ReportJob(Path template, Paper paper, LocalDate issued) {

    /**
     * @param record the bytes that the job was read from
     */
    public byte[] pdf(CheckedJob checked, byte[] record) throws LayoutTrouble {
        return new PdfWriter().write(typesetting().forPaper(issue(checked, record)));
    }

    /** One page that stands alone. */
    public byte[] html(CheckedJob checked, byte[] record) throws LayoutTrouble {
        return typesetting().forScreen(issue(checked, record)).getBytes(StandardCharsets.UTF_8);
    }

    private Typesetting typesetting() throws LayoutTrouble {
        return new Typesetting(template, Allowance.USUAL);
    }

    private Issue issue(CheckedJob checked, byte[] record) {
        return Issue.of(
                checked.job(),
                checked.findings(),
                record,
                FindingsFile.write(checked.findings()),
                issued,
                paper,
                Program.nameAndVersion());
    }
}
