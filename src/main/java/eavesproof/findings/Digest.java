package eavesproof.findings;

import eavesproof.judge.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The findings as a reader needs them: first what somebody must do something about, then what
 * complies with its tightest case, then what does not apply and why. Every output shows this order.
 *
 * @param notRecorded by what is missing, what leaves most open first
 * @param notApplicable by the circumstance that keeps the requirements away
 */
public record Digest(
        List<Held> doesNotComply,
        List<Held> tooClose,
        List<Shared> notRecorded,
        List<Held> complies,
        List<Shared> notApplicable) {

    public Digest {
        doesNotComply = List.copyOf(doesNotComply);
        tooClose = List.copyOf(tooClose);
        notRecorded = List.copyOf(notRecorded);
        complies = List.copyOf(complies);
        notApplicable = List.copyOf(notApplicable);
    }

    /**
     * One requirement with the findings that it gave.
     *
     * @param findings at least one, all of this rule, from place to place along the gutter
     */
    public record Held(
            String topic, String rule, String says, Finding.Source source, List<Finding> findings) {
        public Held {
            findings = List.copyOf(findings);
            if (findings.isEmpty()) {
                throw new IllegalArgumentException("rule " + rule + " was held against nothing");
            }
        }

        /**
         * The finding whose margin leaves least beyond its expanded uncertainty; the first one
         * where margins are no numbers.
         */
        public Finding tightest() {
            return findings.stream()
                    .filter(finding -> finding.margin().isPresent())
                    .min(Comparator.comparingDouble(Held::left))
                    .orElse(findings.get(0));
        }

        private static double left(Finding finding) {
            double expanded =
                    finding.measured().orElse(null) instanceof Finding.MeasuredNumber number
                            ? number.expandedUncertainty().orElse(0.0)
                            : 0;
            return finding.margin().orElseThrow() - expanded;
        }
    }

    /** What shares one reason, so that the reason is read once. */
    public record Shared(List<String> because, List<Held> requirements) {
        public Shared {
            because = List.copyOf(because);
            requirements = List.copyOf(requirements);
        }

        public int places() {
            return requirements.stream().mapToInt(held -> held.findings().size()).sum();
        }
    }

    public static Digest of(Findings findings) {
        List<Shared> missing = new ArrayList<>();
        byReason(findings.of(Verdict.NOT_RECORDED), Integer.MAX_VALUE)
                .forEach((because, open) -> missing.add(new Shared(because, byRule(open))));
        missing.sort(Comparator.comparingInt(Shared::places).reversed());
        List<Shared> apart = new ArrayList<>();
        // One condition that does not hold is enough to keep a requirement away.
        byReason(findings.of(Verdict.NOT_APPLICABLE), 1)
                .forEach((because, spared) -> apart.add(new Shared(because, byRule(spared))));
        return new Digest(
                byRule(findings.of(Verdict.DOES_NOT_COMPLY)),
                byRule(findings.of(Verdict.TOO_CLOSE)),
                missing,
                byRule(findings.of(Verdict.COMPLIES)),
                apart);
    }

    /** Whether there is anything that somebody must do something about. */
    public boolean needsAction() {
        return !doesNotComply.isEmpty() || !tooClose.isEmpty() || !notRecorded.isEmpty();
    }

    private static List<Held> byRule(List<Finding> findings) {
        Map<String, List<Finding>> grouped = new LinkedHashMap<>();
        for (Finding finding : findings) {
            grouped.computeIfAbsent(finding.rule(), none -> new ArrayList<>()).add(finding);
        }
        return grouped.values().stream()
                .map(
                        all -> {
                            Finding first = all.get(0);
                            return new Held(
                                    first.topic(), first.rule(), first.says(), first.source(), all);
                        })
                .toList();
    }

    private static Map<List<String>, List<Finding>> byReason(List<Finding> findings, int reasons) {
        Map<List<String>, List<Finding>> grouped = new LinkedHashMap<>();
        for (Finding finding : findings) {
            List<String> because = finding.because();
            grouped.computeIfAbsent(
                            because.subList(0, Math.min(reasons, because.size())),
                            none -> new ArrayList<>())
                    .add(finding);
        }
        return grouped;
    }
}
