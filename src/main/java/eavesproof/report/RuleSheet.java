package eavesproof.report;

import eavesproof.findings.Findings;
import eavesproof.rules.RuleBook;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The sheet of a rule set, laid out by the template of a folder: every requirement, before anybody
 * has measured anything.
 *
 * @param issued the date on the paper
 * @param program name and version
 */
public record RuleSheet(
        RuleBook book, Findings.RulesUsed used, LocalDate issued, Paper paper, String program) {
    /** The template that such a folder must have. */
    public static final String TEMPLATE = "rules.ftlh";

    private static final String LANGUAGE = "en";

    public Manuscript forPaper(Path folder, Allowance allowance) throws LayoutTrouble {
        SheetOfRules sheet = sheet();
        String once = fill(folder, allowance, sheet, false);
        Unprintable unprintable = Unprintable.in(once);
        String page =
                unprintable.isEmpty()
                        ? once
                        : fill(folder, allowance, sheet.saying(said(unprintable)), false);
        return new Manuscript(
                page,
                Map.of(),
                Map.of(),
                List.of(),
                about(),
                paper,
                StrangeTemplate.lines(folder),
                Optional.empty());
    }

    /** One page that stands alone. */
    public String forScreen(Path folder, Allowance allowance) throws LayoutTrouble {
        return "<!DOCTYPE html>\n"
                + StrangeTemplate.onScreen(
                        fill(folder, allowance, sheet(), true), StrangeTemplate.lines(folder));
    }

    private static String fill(Path folder, Allowance allowance, SheetOfRules sheet, boolean screen)
            throws LayoutTrouble {
        return new Templates(folder, Set.of(RuleSheet.class.getPackageName()), allowance)
                .fill(TEMPLATE, Map.of("sheet", sheet, "screen", screen));
    }

    private SheetOfRules sheet() {
        return new SheetOfRules(
                issued.toString(),
                RulesInWords.of(book),
                RulesHeld.of(used, issued),
                TablesInWords.of(book),
                List.of(
                        new Report.Entry("Rule set, SHA-256", used.sha256()),
                        new Report.Entry("Program", program)),
                "");
    }

    private static String said(Unprintable unprintable) {
        return "These rules hold characters that the fonts of this paper lack or print in the wrong"
                + " order"
                + (unprintable.missing().isEmpty() ? "" : ": " + unprintable.missingNames())
                + ". The rule files have them as they were written.";
    }

    private About about() {
        return new About(
                used.title() + ": rule sheet",
                program,
                "What rule set " + used.name() + " requires of a gutter job",
                LANGUAGE,
                program,
                issued.atStartOfDay(ZoneOffset.UTC).toInstant());
    }
}
