package eavesproof.app;

import eavesproof.findings.Findings;
import eavesproof.report.Allowance;
import eavesproof.report.LayoutTrouble;
import eavesproof.report.Paper;
import eavesproof.report.RuleSheet;
import eavesproof.report.RulesInWords;
import eavesproof.report.pdf.PdfWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;

/** A rule set in words, for a terminal or on paper. */
public record RuleSheetJob(LoadedRules rules) {

    public RulesInWords inWords() {
        return RulesInWords.of(rules.book());
    }

    /** Which rules these are. */
    public Findings.RulesUsed used() {
        return RulesOfJob.inWords(rules);
    }

    /**
     * @param template folder of the template
     * @param issued the date on the paper
     */
    public byte[] pdf(Path template, Paper paper, LocalDate issued) throws LayoutTrouble {
        return new PdfWriter().write(sheet(paper, issued).forPaper(template, Allowance.USUAL));
    }

    /** One page that stands alone. */
    public byte[] html(Path template, LocalDate issued) throws LayoutTrouble {
        return sheet(Paper.A4, issued)
                .forScreen(template, Allowance.USUAL)
                .getBytes(StandardCharsets.UTF_8);
    }

    private RuleSheet sheet(Paper paper, LocalDate issued) {
        return new RuleSheet(rules.book(), used(), issued, paper, Program.nameAndVersion());
    }
}
