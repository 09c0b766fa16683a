package eavesproof.app;

import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.findings.InWords;
import eavesproof.judge.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which verdicts on one job differ from one rule set to another.
 *
 * @param changed how many; a place that only one of them judges counts, unless that requirement
 *     does not apply there
 * @param lines what then needs action place by place, and before all else; the rest by requirement
 */
public record CompareVerdicts(int changed, List<String> lines) {
    private static final String NOT_JUDGED = "not judged";

    public CompareVerdicts {
        lines = List.copyOf(lines);
    }

    /** What became of one requirement at one place. */
    private record Change(String rule, String place, Optional<Finding> now, Optional<Finding> was) {
        String nowWords() {
            return words(now);
        }

        String wasWords() {
            return words(was);
        }

        private static String words(Optional<Finding> finding) {
            return finding.map(one -> one.verdict().words()).orElse(NOT_JUDGED);
        }

        boolean needsAction() {
            return now.isPresent() && now.get().verdict().needsAction();
        }

        /** A requirement of one rule set alone that has nothing to say about this job. */
        boolean isIdle() {
            return (now.isEmpty() || now.get().verdict() == Verdict.NOT_APPLICABLE)
                    && (was.isEmpty() || was.get().verdict() == Verdict.NOT_APPLICABLE);
        }

        int urgency() {
            List<Verdict> mostUrgentFirst = List.of(Verdict.values());
            return now.map(one -> mostUrgentFirst.indexOf(one.verdict()))
                    .orElse(mostUrgentFirst.size());
        }
    }

    public static CompareVerdicts of(Findings from, Findings to) {
        List<Change> changes = changes(byPlace(from), byPlace(to));
        Map<String, List<Change>> groups = new LinkedHashMap<>();
        Set<String> idle = new LinkedHashSet<>();
        int changed = 0;
        for (Change change : changes) {
            if (change.isIdle()) {
                idle.add(change.rule());
                continue;
            }
            changed++;
            String group = change.rule() + "\n" + change.nowWords() + "\n" + change.wasWords();
            groups.computeIfAbsent(
                            change.needsAction() ? group + "\n" + change.place() : group,
                            none -> new ArrayList<>())
                    .add(change);
        }
        List<String> lines = new ArrayList<>();
        groups.values().forEach(group -> lines.add(line(group)));
        if (!idle.isEmpty()) {
            lines.add(
                    "only in one of them, and not applicable to this job: "
                            + InWords.count(idle.size(), "requirement"));
        }
        return new CompareVerdicts(changed, lines);
    }

    private static List<Change> changes(Map<String, Finding> before, Map<String, Finding> after) {
        Map<String, Finding> all = new LinkedHashMap<>(after);
        before.forEach(all::putIfAbsent);
        List<Change> changes = new ArrayList<>();
        all.forEach(
                (key, finding) -> {
                    Change change =
                            new Change(
                                    finding.rule(),
                                    InWords.place(finding.place()),
                                    Optional.ofNullable(after.get(key)),
                                    Optional.ofNullable(before.get(key)));
                    if (!change.nowWords().equals(change.wasWords())) {
                        changes.add(change);
                    }
                });
        changes.sort(Comparator.comparingInt(Change::urgency));
        return changes;
    }

    private static String line(List<Change> group) {
        Change one = group.get(0);
        String where = group.size() == 1 ? ", " + one.place() : ", " + group.size() + " places";
        return one.rule() + where + ": " + now(one) + ", was " + one.wasWords();
    }

    private static String now(Change change) {
        if (!change.needsAction()) {
            return change.nowWords();
        }
        List<String> why = new ArrayList<>();
        Finding finding = change.now().orElseThrow();
        InWords.margin(finding).ifPresent(why::add);
        why.addAll(finding.because());
        return change.nowWords() + (why.isEmpty() ? "" : " (" + String.join("; ", why) + ")");
    }

    private static Map<String, Finding> byPlace(Findings findings) {
        Map<String, Finding> byPlace = new LinkedHashMap<>();
        findings.findings()
                .forEach(
                        finding ->
                                byPlace.put(
                                        finding.rule() + "\n" + InWords.place(finding.place()),
                                        finding));
        return byPlace;
    }
}
