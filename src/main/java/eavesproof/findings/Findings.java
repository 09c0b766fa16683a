package eavesproof.findings;

import eavesproof.check.Coverage;
import eavesproof.judge.Verdict;
import eavesproof.rules.RuleSet;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The finished result of one check, in an order that depends on nothing but the job and the rules.
 *
 * @param job the id of the job
 * @param jobSha256 of the record as it was read
 * @param engine name and version of the program
 * @param findings by topic, rule and place
 * @param restsOnAssumed circumstances that were assumed and that some verdict rests on
 * @param restsOnWord what others say that some verdict rests on, each as the end of a sentence that
 *     begins with "Rests on"
 * @param notices what a reader of the record would wonder about, in sentences
 */
public record Findings(
        String job,
        String jobSha256,
        Outcome outcome,
        RulesUsed rules,
        String engine,
        List<Finding> findings,
        List<Coverage.Uncovered> uncovered,
        List<String> restsOnAssumed,
        List<String> restsOnWord,
        List<String> notices) {

    public Findings {
        findings = List.copyOf(findings);
        uncovered = List.copyOf(uncovered);
        restsOnAssumed = List.copyOf(restsOnAssumed);
        restsOnWord = List.copyOf(restsOnWord);
        notices = List.copyOf(notices);
    }

    /**
     * The rules that the job was held against.
     *
     * @param sha256 over everything in them that can move a verdict
     * @param wordsSha256 over what of them is only printed: titles, words, clauses not checked
     * @param asShipped whether every layer is what came with the program
     * @param changes what differs from what was shipped or from what it builds on, in words, with
     *     old and new limits
     * @param clausesNotChecked what of its documents the rule set does not check
     */
    public record RulesUsed(
            String name,
            String title,
            String jurisdiction,
            String sha256,
            String wordsSha256,
            boolean asShipped,
            List<String> changes,
            Map<String, RuleSet.Document> documents,
            List<String> clausesNotChecked) {
        public RulesUsed {
            changes = List.copyOf(changes);
            documents = Collections.unmodifiableMap(new LinkedHashMap<>(documents));
            clausesNotChecked = List.copyOf(clausesNotChecked);
        }
    }

    public List<Finding> of(Verdict verdict) {
        return findings.stream().filter(f -> f.verdict() == verdict).toList();
    }

    /** Sources that nobody here has seen in the document itself, and that a verdict rests on. */
    public List<Finding.Source> unconfirmedSources() {
        return findings.stream()
                .filter(f -> f.verdict() != Verdict.NOT_APPLICABLE)
                .map(Finding::source)
                .filter(source -> source.standing().isUnconfirmed())
                .distinct()
                .toList();
    }

    /**
     * In words, the documents that nobody here has seen themselves and that a verdict rests on: by
     * its rule, or by a number that was reckoned with what they state.
     */
    List<String> unconfirmed() {
        Set<String> words = new LinkedHashSet<>();
        unconfirmedSources()
                .forEach(it -> words.add(it.document() + " (" + it.standing().words() + ")"));
        for (RuleSet.Document document : rules.documents().values()) {
            if (document.standing().isUnconfirmed() && isReckonedWith(document)) {
                words.add(document.title() + " (" + document.standing().words() + ")");
            }
        }
        return List.copyOf(words);
    }

    private boolean isReckonedWith(RuleSet.Document document) {
        return findings.stream()
                .filter(finding -> finding.verdict() != Verdict.NOT_APPLICABLE)
                .flatMap(finding -> finding.workings().stream())
                .anyMatch(working -> working.from().contains(document.title()));
    }
}
