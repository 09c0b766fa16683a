package eavesproof.app.cli;

import eavesproof.report.Paper;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Locale;

/** What is asked of anything that is written as PDF or HTML. */
final class Printed {
    static final Flag PAPER =
            new Flag("", "paper", "a4|letter", "the sheet it is for; a4 if nothing is said");
    static final Flag DATE =
            new Flag("", "date", "YYYY-MM-DD", "the date on it; today if nothing is said");

    private Printed() {}

    /**
     * @param what is written, with its article
     */
    static boolean isHtml(Path target, String what) throws WrongUse {
        String name = target.toString().toLowerCase(Locale.ROOT);
        if (!name.endsWith(".pdf") && !name.endsWith(".html")) {
            throw new WrongUse(what + " is a .pdf or a .html, and not " + target);
        }
        return name.endsWith(".html");
    }

    static Paper paper(Asked asked) throws WrongUse {
        String paper = asked.value(PAPER).orElse("a4");
        return switch (paper) {
            case "a4" -> Paper.A4;
            case "letter" -> Paper.LETTER;
            default -> throw new WrongUse("--paper is a4 or letter, and not " + paper);
        };
    }

    /** The one place that asks what day it is. */
    static LocalDate issued(Asked asked) throws WrongUse {
        if (!asked.has(DATE)) {
            return LocalDate.now(ZoneId.systemDefault());
        }
        String date = asked.value(DATE).orElse("");
        try {
            return LocalDate.parse(date);
        } catch (DateTimeParseException e) {
            throw new WrongUse("--date is a day such as 2026-05-31, and not " + date);
        }
    }
}
