package eavesproof.report;

import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.rules.RuleSet;
import java.time.LocalDate;
import java.util.List;

/** What the job was held against, in words. */
final class RulesHeld {
    /** It has no clauses; what stands in their place says what is common. */
    private static final String NO_DOCUMENT = "common practice";

    private static final int LONGEST_CLAUSE = 40;

    private RulesHeld() {}

    static Report.Rules of(Findings.RulesUsed rules, LocalDate issued) {
        Grids documents =
                new Grids("Documents that the rules cite", "No document is cited.")
                        .name("Called", 18)
                        .words("Document", 38)
                        .words("Edition", 14)
                        .words("Standing", 16)
                        .name("In force", 15)
                        .name("Checked", 12);
        for (RuleSet.Document document : rules.documents().values()) {
            documents.row(
                    document.key(),
                    document.title(),
                    document.edition().isEmpty() ? "—" : document.edition(),
                    document.standing().words(),
                    inForce(document, issued),
                    document.checked().orElse(null));
        }
        return new Report.Rules(
                rules.title() + " (" + rules.name() + ")",
                rules.jurisdiction(),
                shipped(rules),
                rules.changes(),
                documents.grid(),
                rules.clausesNotChecked());
    }

    /** What a document is called in the table of documents, and the clause in it. */
    static String cited(Findings.RulesUsed rules, Finding.Source source) {
        return (called(rules, source) + " " + source.clause()).strip();
    }

    /** The same for a narrow column: without what the rule set says of the clause. */
    static String clause(Findings.RulesUsed rules, Finding.Source source) {
        String called = called(rules, source);
        if (called.equals(NO_DOCUMENT)) {
            return called;
        }
        String clause = source.clause().split(";|, which|, for the", 2)[0].strip();
        if (clause.length() > LONGEST_CLAUSE) {
            String first = clause.split("[,:]", 2)[0].strip();
            clause = first.length() > LONGEST_CLAUSE ? "" : first;
        }
        return (called + " " + clause).strip();
    }

    private static String called(Findings.RulesUsed rules, Finding.Source source) {
        return rules.documents().values().stream()
                .filter(document -> document.title().equals(source.document()))
                .filter(document -> document.edition().equals(source.edition()))
                .map(RuleSet.Document::key)
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalStateException(
                                        "no document is called " + source.document()));
    }

    private static String shipped(Findings.RulesUsed rules) {
        if (rules.asShipped()) {
            return "The rules are as shipped with the program.";
        }
        return rules.changes().isEmpty()
                ? "The rules are not as shipped with the program."
                : "The rules are not as shipped with the program. What was changed:";
    }

    /** Dates are written year first, so that they sort as text. */
    private static String inForce(RuleSet.Document document, LocalDate issued) {
        String from = document.validFrom().orElse("");
        String to = document.validTo().orElse("");
        if (from.isEmpty() && to.isEmpty()) {
            return "—";
        }
        boolean superseded = !to.isEmpty() && to.compareTo(issued.toString()) < 0;
        return (from.isEmpty() ? "" : "from " + from)
                + (to.isEmpty() ? "" : (from.isEmpty() ? "" : " ") + "to " + to)
                + (superseded ? ", superseded" : "");
    }

    /** Editions that were no longer in force on the day of issue, as sentences. */
    static List<String> superseded(Findings.RulesUsed rules, LocalDate issued) {
        return rules.documents().values().stream()
                .filter(
                        d ->
                                d.validTo()
                                        .filter(to -> to.compareTo(issued.toString()) < 0)
                                        .isPresent())
                .map(
                        d ->
                                d.title()
                                        + ", "
                                        + d.edition()
                                        + ", was superseded on "
                                        + d.validTo().orElseThrow()
                                        + ".")
                .toList();
    }
}
