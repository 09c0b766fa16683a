package eavesproof.app.cli;

import eavesproof.app.cli.Page.Look;
import eavesproof.findings.Findings;
import eavesproof.rules.RuleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a job was held against, so that a reader can find the same rules again. */
final class RulesText {
    private static final int TEXT = 2;
    private static final int UNDER = 4;

    private RulesText() {}

    static void write(Page page, Findings findings) {
        held(page, "HELD AGAINST", findings.rules());
        page.say(TEXT, Look.FAINT, "record " + findings.jobSha256());
        page.say(TEXT, Look.FAINT, findings.engine());
    }

    /** The rules alone. */
    static void held(Page page, String title, Findings.RulesUsed rules) {
        page.gap().say(0, Look.STRONG, title);
        page.say(
                TEXT,
                UNDER,
                Look.PLAIN,
                rules.title() + " (" + rules.name() + "), " + rules.jurisdiction());
        page.say(TEXT, rules.asShipped() ? "rules as shipped" : "rules not as shipped");
        rules.changes().forEach(change -> page.say(UNDER, UNDER + 2, Look.PLAIN, change));
        rules.documents()
                .values()
                .forEach(document -> page.say(TEXT, UNDER, Look.PLAIN, text(document)));
        page.say(TEXT, Look.FAINT, "rules  " + rules.sha256());
    }

    private static String text(RuleSet.Document document) {
        List<String> parts = new ArrayList<>(List.of(document.title()));
        if (!document.edition().isEmpty()) {
            parts.add(document.edition());
        }
        String standing = document.standing().words();
        if (!document.title().toLowerCase(Locale.ROOT).contains(standing)) {
            parts.add(standing);
        }
        document.validFrom().ifPresent(day -> parts.add("valid from " + day));
        document.validTo().ifPresent(day -> parts.add("valid to " + day));
        document.checked().ifPresent(day -> parts.add("figures checked " + day));
        return String.join(", ", parts);
    }
}
