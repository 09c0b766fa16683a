package eavesproof.app.cli;

import eavesproof.app.RequirementInWords;
import eavesproof.app.RulesInWords;
import eavesproof.app.cli.Page.Look;
import eavesproof.findings.InWords;
import java.util.List;
import java.util.Locale;

/** The sheet of a rule set on a terminal. */
final class RulesSheetText {
    private static final int TEXT = 2;
    private static final int UNDER = 4;
    private static final int FURTHER = 6;

    private RulesSheetText() {}

    static String of(RulesInWords rules, boolean colour) {
        Page page = new Page(colour);
        page.say(0, Look.STRONG, rules.used().title() + " (" + rules.used().name() + ")");
        page.say(TEXT, "for " + rules.used().jurisdiction());
        page.say(
                TEXT,
                InWords.count(rules.requirements().size(), "requirement")
                        + ", laid as "
                        + String.join(", then ", rules.layers()));
        String topic = "";
        for (RequirementInWords one : rules.requirements()) {
            if (!one.topic().equals(topic)) {
                topic = one.topic();
                page.gap().say(0, Look.STRONG, topic.toUpperCase(Locale.ROOT));
            }
            requirement(page, one);
        }
        listed(page, "STATED FOR THE ENGINEERING", rules.stated());
        listed(page, "NOT SHOWN TO COMPLY WHERE NO RULE SPEAKS OF", rules.mustJudge());
        listed(page, "NOT CHECKED", rules.used().clausesNotChecked());
        RulesText.held(page, "THESE RULES", rules.used());
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
        page.say(UNDER, FURTHER, Look.FAINT, one.source() + "; decided " + one.decision());
    }

    private static void listed(Page page, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            page.gap().say(0, Look.STRONG, title);
            lines.forEach(line -> page.say(TEXT, UNDER, Look.PLAIN, line));
        }
    }
}
