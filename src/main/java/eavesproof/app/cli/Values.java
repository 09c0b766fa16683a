package eavesproof.app.cli;

import eavesproof.findings.Digest;
import eavesproof.findings.Finding;
import eavesproof.findings.InWords;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The numbers and words of a finding, cut up for lines of text. */
final class Values {
    private Values() {}

    /** What decides: the margin, or the word that was found where there is none. */
    static String verdictIn(Finding finding) {
        return InWords.margin(finding)
                .or(() -> finding.measured().map(InWords::measured))
                .orElse("");
    }

    /** What the margin or the word stands for. */
    static String behind(Finding finding) {
        Optional<String> measured =
                InWords.margin(finding).flatMap(m -> finding.measured().map(InWords::measured));
        return joined(List.of(measured, finding.limit().map(InWords::limit)));
    }

    /** What was measured, what was required, and how far apart they are. */
    static String all(Finding finding) {
        return joined(
                List.of(
                        finding.measured().map(InWords::measured),
                        finding.limit().map(InWords::limit),
                        InWords.margin(finding)));
    }

    /** The names of the requirements that share a reason. */
    static String names(Digest.Shared shared) {
        return shared.requirements().stream()
                .map(Digest.Held::rule)
                .collect(Collectors.joining(", "));
    }

    private static String joined(List<Optional<String>> parts) {
        return parts.stream().flatMap(Optional::stream).collect(Collectors.joining(", "));
    }
}
