package eavesproof.app.cli;

import eavesproof.app.cli.Page.Look;
import eavesproof.findings.Findings;
import eavesproof.findings.InWords;
import eavesproof.report.RequirementInWords;
import eavesproof.report.RulesInWords;
import java.util.List;
import java.util.Locale;

/** The sheet of a rule set on a terminal. */
final class RulesSheetText {
    private static final int TEXT = 2;
    private static final int UNDER = 4;
    private static final int FURTHER = 6;

    private RulesSheetText() {}

    /**
     * @param brief only names and limits
     */
    static String of(RulesInWords rules, Findings.RulesUsed used, boolean brief, boolean colour) {
        Page page = new Page(colour);
        page.say(0, Look.STRONG, rules.title() + " (" + rules.name() + ")");
        page.say(TEXT, "for " + rules.jurisdiction());
        page.say(
                TEXT,
                InWords.count(rules.count(), "requirement")
                        + ", laid as "
                        + String.join(", then ", rules.layers()));
        if (!rules.always().isEmpty()) {
            page.say(TEXT, "each where " + InWords.list(rules.always()));
        }
        for (RulesInWords.Topic topic : rules.topics()) {
            page.gap().say(0, Look.STRONG, topic.name().toUpperCase(Locale.ROOT));
            for (RequirementInWords one : topic.requirements()) {
                if (brief) {
                    page.lead(TEXT, UNDER, Look.PLAIN, one.name(), one.demand());
                } else {
                    requirement(page, one);
                }
            }
        }
        for (RulesInWords.Laid laid : rules.laid()) {
            String title = "WHAT " + laid.layer() + " CHANGES OF " + laid.over();
            listed(page, title, laid.changes().isEmpty() ? List.of("nothing") : laid.changes());
        }
        if (!brief) {
            listed(page, "STATED FOR THE ENGINEERING", rules.stated());
            listed(page, "NOT SHOWN TO COMPLY WHERE NO RULE SPEAKS OF", rules.mustJudge());
            listed(page, "NOT CHECKED", rules.notChecked());
            RulesText.held(page, "THESE RULES", used);
        }
        page.gap()
                .say(
                        TEXT,
                        "Eavesproof records and computes; it approves nothing. Local codes and"
                                + " licensed practice decide.");
        return page.text();
    }

    private static void requirement(Page page, RequirementInWords one) {
        page.gap().say(TEXT, UNDER, Look.STRONG, one.name());
        page.say(UNDER, one.says());
        page.say(UNDER, FURTHER, Look.PLAIN, one.measured() + ": " + one.demand());
        one.where().forEach(line -> page.say(FURTHER, FURTHER + 2, Look.PLAIN, line));
        if (!one.when().isEmpty()) {
            page.say(UNDER, FURTHER, Look.PLAIN, "where " + InWords.list(one.when()));
        }
        page.say(UNDER, FURTHER, Look.FAINT, one.source());
        page.say(UNDER, FURTHER, Look.FAINT, "decided " + one.decision());
    }

    private static void listed(Page page, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            page.gap().say(0, Look.STRONG, title);
            lines.forEach(line -> page.say(TEXT, UNDER, Look.PLAIN, line));
        }
    }
}
