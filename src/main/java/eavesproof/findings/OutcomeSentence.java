package eavesproof.findings;

import eavesproof.check.Coverage;
import eavesproof.judge.Verdict;
import java.util.ArrayList;
import java.util.List;

/**
 * What may be said of the whole job in plain words, together with what it rests on. A check is one
 * requirement held against one place.
 */
public final class OutcomeSentence {
    private OutcomeSentence() {}

    /** The outcome and everything that it rests on, as one short paragraph. */
    public static String of(Findings findings) {
        List<String> sentences = new ArrayList<>();
        sentences.add(outcome(findings));
        sentences.addAll(restsOn(findings));
        return String.join(" ", sentences);
    }

    /** The outcome alone. */
    public static String outcome(Findings findings) {
        String words = findings.outcome().words();
        return Character.toUpperCase(words.charAt(0))
                + words.substring(1)
                + ": "
                + tally(findings)
                + silence(findings.uncovered())
                + ".";
    }

    /**
     * What a reader must know beside the outcome; empty where it rests on nothing in particular.
     */
    public static List<String> restsOn(Findings findings) {
        List<String> sentences = new ArrayList<>();
        int unchecked = findings.rules().clausesNotChecked().size();
        if (unchecked > 0) {
            sentences.add(
                    InWords.count(unchecked, "clause")
                            + (unchecked == 1 ? " is" : " are")
                            + " not checked.");
        }
        if (!findings.restsOnAssumed().isEmpty()) {
            sentences.add(
                    "Rests on "
                            + InWords.count(
                                    findings.restsOnAssumed().size(), "assumed circumstance")
                            + ".");
        }
        findings.restsOnWord().forEach(what -> sentences.add("Rests on " + what + "."));
        if (!findings.unconfirmed().isEmpty()) {
            sentences.add(
                    "Limits and figures not seen in the document itself: "
                            + String.join(", ", findings.unconfirmed())
                            + ".");
        }
        if (!findings.rules().asShipped()) {
            sentences.add("The rules are not as shipped.");
        }
        sentences.addAll(findings.notices());
        return sentences;
    }

    private static String tally(Findings findings) {
        List<Finding> held =
                findings.findings().stream()
                        .filter(finding -> finding.verdict() != Verdict.NOT_APPLICABLE)
                        .toList();
        if (held.isEmpty()) {
            return "no requirement applies to what is recorded";
        }
        long rules = held.stream().map(Finding::rule).distinct().count();
        String checks =
                InWords.count(held.size(), "check")
                        + " of "
                        + InWords.count((int) rules, "requirement");
        int met = findings.of(Verdict.COMPLIES).size();
        if (met == held.size()) {
            return checks + (met == 1 ? ", and it is met" : ", and all are met");
        }
        List<String> parts = new ArrayList<>();
        part(parts, met, "met");
        part(parts, findings.of(Verdict.DOES_NOT_COMPLY).size(), "not met");
        part(parts, findings.of(Verdict.TOO_CLOSE).size(), "too close to call");
        part(parts, findings.of(Verdict.NOT_RECORDED).size(), "not recorded");
        return checks + ", " + InWords.list(parts);
    }

    private static void part(List<String> parts, int count, String words) {
        if (count > 0) {
            parts.add(count + " " + words);
        }
    }

    private static String silence(List<Coverage.Uncovered> uncovered) {
        int places = uncovered.stream().mapToInt(Coverage.Uncovered::places).sum();
        return places == 0 ? "" : "; no rule speaks of " + InWords.count(places, "place");
    }
}
