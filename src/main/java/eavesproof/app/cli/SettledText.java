package eavesproof.app.cli;

import eavesproof.app.cli.Page.Look;
import eavesproof.findings.Digest;
import eavesproof.findings.Digest.Held;
import eavesproof.findings.Digest.Shared;
import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.findings.InWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What needs nobody's action: what complies, what does not apply, what all of it rests on. */
final class SettledText {
    private static final int TEXT = 2;
    private static final int UNDER = 4;
    private static final int DEEP = 6;

    /** More requirements than these that one reason keeps away are counted and not named. */
    private static final int FEW = 4;

    private final Page page;

    private SettledText(Page page) {
        this.page = page;
    }

    static void write(Page page, Digest digest, Findings findings) {
        SettledText text = new SettledText(page);
        text.complies(digest.complies());
        text.notApplicable(digest.notApplicable());
        text.listed("ASSUMED", findings.restsOnAssumed());
        text.listed("CLAUSES NOT CHECKED", findings.rules().clausesNotChecked());
    }

    private void complies(List<Held> requirements) {
        heading("COMPLIES", requirements.isEmpty());
        String topic = "";
        for (Held held : requirements) {
            if (!held.topic().equals(topic)) {
                topic = held.topic();
                page.say(TEXT, Look.STRONG, topic);
            }
            page.say(UNDER, held.says());
            tightest(held);
            conditions(held.findings()).forEach((because, places) -> condition(because, places));
        }
    }

    private void tightest(Held held) {
        Finding tightest = held.tightest();
        String place = InWords.place(tightest.place());
        int places = held.findings().size();
        page.lead(
                DEEP,
                DEEP + 2,
                Look.PLAIN,
                places == 1 ? place : places + " places, tightest " + place,
                Values.verdictIn(tightest));
        if (tightest.margin().isPresent()) {
            page.say(DEEP + 2, Values.behind(tightest));
        }
    }

    /** What complies on a condition says so, with how many places do. */
    private static Map<List<String>, Integer> conditions(List<Finding> findings) {
        Map<List<String>, Integer> places = new LinkedHashMap<>();
        for (Finding finding : findings) {
            if (!finding.because().isEmpty()) {
                places.merge(finding.because(), 1, Integer::sum);
            }
        }
        return places;
    }

    private void condition(List<String> because, int places) {
        page.say(
                DEEP,
                DEEP + 2,
                Look.PLAIN,
                "at " + InWords.count(places, "place") + ": " + String.join("; ", because));
    }

    private void notApplicable(List<Shared> reasons) {
        heading("NOT APPLICABLE", reasons.isEmpty());
        for (Shared apart : reasons) {
            page.say(
                    TEXT,
                    UNDER,
                    Look.PLAIN,
                    String.join("; ", apart.because()) + ": " + Values.requirements(apart, FEW));
        }
    }

    private void listed(String title, List<String> lines) {
        heading(title, lines.isEmpty());
        lines.forEach(line -> page.say(TEXT, UNDER, Look.PLAIN, line));
    }

    private void heading(String title, boolean nothing) {
        if (!nothing) {
            page.gap().say(0, Look.STRONG, title);
        }
    }
}
