package eavesproof.app.cli;

import eavesproof.app.cli.Page.Look;
import eavesproof.check.Coverage;
import eavesproof.findings.Digest;
import eavesproof.findings.Digest.Held;
import eavesproof.findings.Digest.Shared;
import eavesproof.findings.Finding;
import eavesproof.findings.InWords;
import eavesproof.quantity.Decimals;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What somebody must do something about: what is missed, too close, missing or spoken of nowhere.
 */
final class OpenText {
    private static final int TEXT = 2;
    private static final int UNDER = 4;
    private static final int DEEP = 6;
    private static final int DEEPER = 8;

    /** More requirements than these behind one gap are named and not written out. */
    private static final int WRITTEN_OUT = 3;

    private static final int PLACES_SHOWN = 2;

    /** A probability that would be printed as none or as certain says nothing. */
    private static final double SURE = 0.999;

    private final Page page;

    private OpenText(Page page) {
        this.page = page;
    }

    static void write(Page page, Digest digest, List<Coverage.Uncovered> uncovered) {
        OpenText text = new OpenText(page);
        text.againstLimits("DOES NOT COMPLY", Look.ALARM, digest.doesNotComply());
        text.againstLimits("TOO CLOSE TO CALL", Look.STRONG, digest.tooClose());
        text.notRecorded(digest.notRecorded());
        text.silence(uncovered);
    }

    private void againstLimits(String title, Look look, List<Held> requirements) {
        for (Held held : requirements) {
            page.gap();
            if (held.equals(requirements.get(0))) {
                page.say(0, look, title);
            }
            page.say(TEXT, Look.STRONG, held.says());
            page.say(TEXT, Look.FAINT, InWords.source(held.source()));
            alike(held.findings()).forEach(this::againstLimit);
            remedies(held);
        }
    }

    /** What to do, once for all places that it serves. */
    private void remedies(Held held) {
        Map<String, Integer> places = new LinkedHashMap<>();
        for (Finding finding : held.findings()) {
            finding.remedy().ifPresent(it -> places.merge(it, 1, Integer::sum));
        }
        places.forEach(
                (remedy, count) -> {
                    boolean some = count < held.findings().size();
                    String where = some ? " (at " + InWords.count(count, "place") + ")" : "";
                    page.say(UNDER, "to put it right" + where + ": " + remedy);
                });
    }

    /** Places where the same was found for the same reason, together. */
    private static Collection<List<Finding>> alike(List<Finding> findings) {
        Map<List<Object>, List<Finding>> alike = new LinkedHashMap<>();
        for (Finding finding : findings) {
            List<Object> found =
                    List.of(
                            Values.verdictIn(finding),
                            Values.behind(finding),
                            finding.probability(),
                            finding.because());
            alike.computeIfAbsent(found, none -> new ArrayList<>()).add(finding);
        }
        return alike.values();
    }

    private void againstLimit(List<Finding> alike) {
        Finding finding = alike.get(0);
        if (alike.size() == 1) {
            String place = InWords.place(finding.place());
            page.lead(UNDER, DEEP, Look.PLAIN, place, Values.verdictIn(finding));
        } else {
            String count = InWords.count(alike.size(), "place");
            page.lead(UNDER, DEEP, Look.PLAIN, count, Values.verdictIn(finding));
            page.say(
                    DEEP,
                    alike.stream()
                            .map(one -> InWords.place(one.place()))
                            .collect(Collectors.joining("; ")));
        }
        page.say(DEEP, Values.behind(finding));
        finding.probability()
                .filter(p -> p > 1 - SURE && p < SURE)
                .ifPresent(
                        p ->
                                page.say(
                                        DEEP,
                                        "meets the limit with a probability of "
                                                + Decimals.plain(100 * p, 1)
                                                + " %"));
        because(DEEP, finding.because());
    }

    private void notRecorded(List<Shared> gaps) {
        for (Shared gap : gaps) {
            page.gap();
            if (gap.equals(gaps.get(0))) {
                page.say(0, Look.STRONG, "NOT RECORDED");
            }
            page.lead(
                    TEXT,
                    UNDER,
                    Look.STRONG,
                    String.join("; ", gap.because()),
                    "leaves " + InWords.count(gap.places(), "check") + " open");
            if (gap.requirements().size() > WRITTEN_OUT) {
                page.say(UNDER, Values.requirements(gap, Integer.MAX_VALUE));
            } else {
                gap.requirements().forEach(this::leftOpen);
            }
        }
    }

    private void leftOpen(Held held) {
        page.say(UNDER, held.says());
        held.findings().stream().limit(PLACES_SHOWN).forEach(this::openAt);
        int more = held.findings().size() - PLACES_SHOWN;
        if (more > 0) {
            page.say(DEEP, "and " + InWords.count(more, "more place"));
        }
        page.say(DEEP, Look.FAINT, InWords.source(held.source()));
    }

    private void openAt(Finding finding) {
        String place = InWords.place(finding.place());
        if (finding.measured().isEmpty()) {
            page.say(DEEP, place);
        } else {
            page.lead(DEEP, DEEPER, Look.PLAIN, place, Values.verdictIn(finding));
            page.say(DEEPER, Values.behind(finding));
        }
    }

    private void silence(List<Coverage.Uncovered> uncovered) {
        if (!uncovered.isEmpty()) {
            page.gap().say(0, Look.STRONG, "NO RULE SPEAKS OF");
        }
        for (Coverage.Uncovered silent : uncovered) {
            page.say(TEXT, silent.kind().title() + ": " + InWords.place(silent));
            because(UNDER, silent.why());
        }
    }

    private void because(int indent, List<String> because) {
        if (!because.isEmpty()) {
            page.say(indent, "because " + String.join("; ", because));
        }
    }
}
