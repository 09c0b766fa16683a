package eavesproof.app.cli;

import eavesproof.app.cli.Page.Look;
import eavesproof.findings.Digest;
import eavesproof.findings.Findings;
import eavesproof.findings.Outcome;
import eavesproof.findings.OutcomeSentence;
import java.util.List;

/** Findings for somebody at a terminal: the outcome, what needs action, what is settled. */
final class FindingsText {
    private static final int TEXT = 2;

    private FindingsText() {}

    static String of(Findings findings, boolean colour) {
        Digest digest = Digest.of(findings);
        Page page = new Page(colour);
        page.say(0, Look.STRONG, "Job " + findings.job()).gap();
        outcome(page, findings);
        OpenText.write(page, digest, findings.uncovered());
        SettledText.write(page, digest, findings);
        RulesText.write(page, findings);
        page.gap();
        outcome(page, findings);
        page.gap()
                .say(
                        TEXT,
                        "Eavesproof records and computes; it approves nothing. Local codes and"
                                + " licensed practice decide.");
        return page.text();
    }

    private static void outcome(Page page, Findings findings) {
        Look look = findings.outcome() == Outcome.DOES_NOT_COMPLY ? Look.ALARM : Look.STRONG;
        page.say(TEXT, look, OutcomeSentence.outcome(findings));
        List<String> restsOn = OutcomeSentence.restsOn(findings);
        if (!restsOn.isEmpty()) {
            page.say(TEXT, String.join(" ", restsOn));
        }
    }
}
