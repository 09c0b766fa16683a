package eavesproof.report;

import eavesproof.findings.Findings;
import java.util.List;

/** How far this paper can be relied on, and how to check it again. */
final class Limits {
    private Limits() {}

    static List<String> of(Issue issue) {
        String measured =
                issue.job().dates() == null || issue.job().dates().measured() == null
                        ? "on the day of measuring, which is not recorded"
                        : "on " + issue.job().dates().measured();
        return List.of(
                "This record was made by or for whoever fitted the gutter. It records and computes;"
                        + " it approves nothing, and it does not say that anybody independent has"
                        + " looked at the gutter.",
                "Local codes and licensed practice decide what is required at this address. Where "
                        + "they ask for more than the rules named here, they hold.",
                "The results hold for what was measured "
                        + measured
                        + ", and for nothing that was changed, covered or added since.",
                "Documents are named with the edition that the rules were written from and the date"
                        + " when that edition was last looked up. A newer edition may say otherwise.",
                "Measured lengths, falls and gaps are given with their expanded uncertainty, k = 2"
                        + " (JCGM 100). A verdict on them follows the decision rule printed with its"
                        + " workings (JCGM 106).",
                "The job record and every finding are attached to this file as job.json and "
                        + "findings.json"
                        + again(issue)
                        + " The same record and the same rules give the same findings. To see "
                        + "whether this paper says what they give: eavesproof prove, and the name "
                        + "of this file"
                        + (issue.findings().rules().asShipped() ? "." : " --attached-rules."));
    }

    private static String again(Issue issue) {
        Findings.RulesUsed rules = issue.findings().rules();
        boolean inside =
                issue.attachments().stream().anyMatch(one -> one.name().equals("rules.zip"));
        String travels =
                inside
                        ? ", and the rules as rules.zip. "
                        : ". The rules are too large to travel with it: keep their folder, whose "
                                + "SHA-256 stands below. ";
        if (!rules.asShipped()) {
            return travels
                    + (inside ? "Unpack the rules. " : "")
                    + "To check the job again: eavesproof check job.json --rules ./"
                    + rules.name()
                    + ".";
        }
        return travels
                + "To check the job again: eavesproof check job.json"
                + (rules.name().equals(issue.job().ruleSet()) ? "" : " --rules " + rules.name())
                + ".";
    }

    static List<Report.Entry> identity(Issue issue, String number, String madeFrom) {
        return List.of(
                new Report.Entry("Report", number),
                new Report.Entry("Job record, SHA-256", issue.findings().jobSha256()),
                new Report.Entry("Rule set, SHA-256", issue.findings().rules().sha256()),
                new Report.Entry("Its words, SHA-256", issue.findings().rules().wordsSha256()),
                new Report.Entry("Made from, SHA-256", madeFrom),
                new Report.Entry("Program", issue.program()));
    }
}
