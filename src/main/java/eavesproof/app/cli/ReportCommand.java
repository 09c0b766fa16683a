package eavesproof.app.cli;

import eavesproof.app.CheckedJob;
import eavesproof.app.ReportJob;
import eavesproof.app.WholeFile;
import eavesproof.findings.OutcomeSentence;
import eavesproof.report.LayoutTrouble;
import eavesproof.report.Paper;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes the report of a job. */
final class ReportCommand implements Command {
    private static final Flag TO =
            new Flag("o", "out", "F.pdf", "the file to write; its ending says whether PDF or HTML");
    private static final Flag PAPER =
            new Flag("", "paper", "a4|letter", "the sheet it is for; a4 if nothing is said");
    private static final Flag TEMPLATE =
            new Flag("", "template", "FOLDER", "a folder of templates in place of the usual ones");
    private static final Flag DATE =
            new Flag("", "date", "YYYY-MM-DD", "the date on the report; today if nothing is said");

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
                        + " the outcome is; the outcome is also shown here.");
    }

    @Override
    public List<Flag> flags() {
        return List.of(TO, Flag.RULES, PAPER, TEMPLATE, DATE, Flag.FORCE);
    }

    @Override
    public int run(Asked asked, Surroundings here) throws WrongUse, BadInput, IOException {
        WholeFile target = new WholeFile(asked.file(TO), asked.has(Flag.FORCE));
        boolean html = isHtml(target.target());
        ReportJob report = report(asked, here);
        target.check();
        RecordOnDisk record = RecordOnDisk.read(asked);
        CheckedJob checked = record.check(asked.value(Flag.RULES), here);
        target.write(laidOut(report, html, checked, record.bytes()));
        here.messages().println("written: " + target.target());
        here.show(new Page(here.colour()).say(0, OutcomeSentence.of(checked.findings())).text());
        return checked.findings().outcome().exitCode();
    }

    private static byte[] laidOut(ReportJob report, boolean html, CheckedJob checked, byte[] record)
            throws BadInput {
        try {
            return html ? report.html(checked, record) : report.pdf(checked, record);
        } catch (LayoutTrouble e) {
            throw new BadInput("the template", List.of(String.valueOf(e.getMessage())));
        }
    }

    private static ReportJob report(Asked asked, Surroundings here) throws WrongUse {
        Optional<String> template = asked.value(TEMPLATE);
        Path folder = template.isPresent() ? Asked.path(template.get()) : here.shippedTemplate();
        return new ReportJob(folder, paper(asked), issued(asked));
    }

    private static boolean isHtml(Path target) throws WrongUse {
        String name = target.toString().toLowerCase(Locale.ROOT);
        if (!name.endsWith(".pdf") && !name.endsWith(".html")) {
            throw new WrongUse("a report is a .pdf or a .html, and not " + target);
        }
        return name.endsWith(".html");
    }

    private static Paper paper(Asked asked) throws WrongUse {
        String paper = asked.value(PAPER).orElse("a4");
        return switch (paper) {
            case "a4" -> Paper.A4;
            case "letter" -> Paper.LETTER;
            default -> throw new WrongUse("--paper is a4 or letter, and not " + paper);
        };
    }

    /** The one place that asks what day it is. */
    private static LocalDate issued(Asked asked) throws WrongUse {
        Optional<String> date = asked.value(DATE);
        if (date.isEmpty()) {
            return LocalDate.now(ZoneId.systemDefault());
        }
        try {
            return LocalDate.parse(date.get());
        } catch (DateTimeParseException e) {
            throw new WrongUse("--date is a day such as 2026-05-31, and not " + date.get());
        }
    }
}
