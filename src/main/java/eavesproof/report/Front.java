package eavesproof.report;

import eavesproof.findings.Digest;
import eavesproof.findings.Findings;
import eavesproof.findings.InWords;
import eavesproof.judge.Verdict;
import java.util.ArrayList;
import java.util.List;

/** What somebody must do something about, for the first page: short, and before all detail. */
final class Front {
    /** As many as leave room on the first page for what the job was held against. */
    private static final int ROWS = 24;

    private static final int REASONS = 8;

    private final Findings findings;
    private final Listed listed;
    private final Rows rows;

    Front(Findings findings, Listed listed, Rows rows) {
        this.findings = findings;
        this.listed = listed;
        this.rows = rows;
    }

    /** What does not comply, then what is too close to call. */
    List<Report.Urgent> urgent() {
        List<Report.Urgent> all = all();
        return all.subList(0, Math.min(ROWS, all.size()));
    }

    private List<Report.Urgent> all() {
        List<Report.Urgent> urgent = new ArrayList<>();
        for (Listed.Entry entry : listed.entries()) {
            if (entry.verdict() != Verdict.NOT_RECORDED) {
                entry.requirements().forEach(held -> add(urgent, entry, held));
            }
        }
        return urgent;
    }

    private void add(List<Report.Urgent> urgent, Listed.Entry entry, Digest.Held held) {
        for (Report.Held row : rows.brief(held.findings())) {
            urgent.add(
                    new Report.Urgent(
                            row.number(),
                            entry.verdict().id(),
                            Verdicts.capital(held.rule()),
                            row.place(),
                            row.measured() + (row.sure().isEmpty() ? "" : " " + row.sure()),
                            row.limit(),
                            RulesHeld.clause(findings.rules(), held.source())));
        }
    }

    /** What the rows leave out, in sentences. */
    List<String> alsoOpen() {
        List<String> also = new ArrayList<>();
        int more = all().size() - ROWS;
        if (more > 0) {
            also.add("And " + more + " more, all of them in section 5.");
        }
        int missing = findings.of(Verdict.NOT_RECORDED).size();
        if (missing > 0) {
            also.add(
                    "Not recorded: "
                            + InWords.count(missing, "check")
                            + (missing == 1 ? " shows" : " show")
                            + " nothing for want of what is missing: "
                            + missing()
                            + ".");
        }
        return also;
    }

    private String missing() {
        List<String> reasons = new ArrayList<>();
        for (Listed.Entry entry : listed.entries()) {
            if (entry.verdict() == Verdict.NOT_RECORDED) {
                reasons.add(
                        String.join("; ", entry.because())
                                + " ("
                                + entry.number()
                                + (entry.places() == 1
                                        ? ""
                                        : ", " + InWords.count(entry.places(), "check"))
                                + ")");
            }
        }
        int more = reasons.size() - REASONS;
        return String.join("; ", reasons.subList(0, Math.min(REASONS, reasons.size())))
                + (more > 0 ? "; and " + more + " more, in section 5" : "");
    }
}
