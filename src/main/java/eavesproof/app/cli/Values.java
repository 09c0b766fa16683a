package eavesproof.app.cli;

import eavesproof.findings.Digest;
import eavesproof.findings.Finding;
import eavesproof.findings.InWords;
import eavesproof.quantity.Unit;
import java.util.Optional;
import java.util.stream.Collectors;

/** The numbers and words of a finding, cut up for lines of text. */
final class Values {
    private Values() {}

    /** What decides: the margin; of what was counted or said, that itself. */
    static String verdictIn(Finding finding) {
        Optional<String> itself = InWords.measured(finding);
        return (isAmount(finding) ? InWords.margin(finding).or(() -> itself) : itself).orElse("");
    }

    /** What stands behind it. */
    static String behind(Finding finding) {
        String limit = InWords.limit(finding).orElse("no limit");
        return isAmount(finding)
                ? InWords.measured(finding).map(found -> found + ", ").orElse("") + limit
                : finding.measures() + ": " + limit;
    }

    private static boolean isAmount(Finding finding) {
        return finding.measured().orElse(null) instanceof Finding.MeasuredNumber number
                && number.unit() != Unit.COUNT
                && finding.margin().isPresent();
    }

    /** The requirements that share a reason: by name where they are few. */
    static String requirements(Digest.Shared shared, int few) {
        int count = shared.requirements().size();
        return count > few
                ? InWords.count(count, "requirement")
                : shared.requirements().stream()
                        .map(Digest.Held::rule)
                        .collect(Collectors.joining(", "));
    }
}
