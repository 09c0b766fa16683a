package eavesproof.findings;

import eavesproof.judge.Verdict;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a worked example expects of one rule at one place, worked out by hand.
 *
 * @param subject names of keys to ids, as many of them as the example gives
 * @param why how the verdict was worked out, in words and figures
 */
public record Expectation(String rule, Map<String, String> subject, Verdict verdict, String why) {

    public Expectation {
        subject = Collections.unmodifiableMap(new LinkedHashMap<>(subject));
    }

    /**
     * What the findings say instead; nothing where they agree. They agree if the rule was laid
     * against such a place at all, and came to this verdict at every one.
     */
    public Optional<String> disagreement(Findings findings) {
        List<Finding> there = findings.findings().stream().filter(this::isMeant).toList();
        if (there.isEmpty()) {
            return Optional.of(text() + ", but the rule was laid against no such place");
        }
        String others =
                there.stream()
                        .filter(finding -> finding.verdict() != verdict)
                        .map(Expectation::text)
                        .collect(Collectors.joining("; "));
        return others.isEmpty() ? Optional.empty() : Optional.of(text() + ", but found " + others);
    }

    private boolean isMeant(Finding finding) {
        return finding.rule().equals(rule)
                && finding.place().keys().entrySet().containsAll(subject.entrySet());
    }

    private String text() {
        return "\"" + rule + "\" at " + subject + " should be \"" + verdict.words() + '"';
    }

    private static String text(Finding finding) {
        String because = finding.because().isEmpty() ? "" : " " + finding.because();
        return finding.place().keys() + " \"" + finding.verdict().words() + '"' + because;
    }
}
