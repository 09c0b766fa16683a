package eavesproof.report;

import eavesproof.drawing.Numbered;
import eavesproof.findings.Digest;
import eavesproof.findings.Finding;
import eavesproof.judge.Verdict;
import eavesproof.survey.Place;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/**
 * What needs a decision, in the order of the paper, each entry and each place of it with the number
 * that list, drawings and workings share.
 */
record Listed(List<Entry> entries) {

    /** Requirements that are in question for the same reason. */
    record Entry(
            int number, Verdict verdict, List<String> because, List<Digest.Held> requirements) {
        int places() {
            return requirements.stream().mapToInt(held -> held.findings().size()).sum();
        }
    }

    static Listed of(Digest digest) {
        List<Entry> entries = new ArrayList<>();
        for (Digest.Held held : digest.doesNotComply()) {
            entries.add(entry(entries, Verdict.DOES_NOT_COMPLY, List.of(), List.of(held)));
        }
        for (Digest.Held held : digest.tooClose()) {
            entries.add(entry(entries, Verdict.TOO_CLOSE, List.of(), List.of(held)));
        }
        for (Digest.Shared shared : digest.notRecorded()) {
            entries.add(
                    entry(entries, Verdict.NOT_RECORDED, shared.because(), shared.requirements()));
        }
        return new Listed(List.copyOf(entries));
    }

    private static Entry entry(
            List<Entry> before,
            Verdict verdict,
            List<String> because,
            List<Digest.Held> requirements) {
        return new Entry(before.size() + 1, verdict, because, requirements);
    }

    /** Every finding of the list with its number: 3 where an entry has one place, else 3.1, 3.2. */
    IdentityHashMap<Finding, String> labels() {
        IdentityHashMap<Finding, String> labels = new IdentityHashMap<>();
        for (Entry entry : entries) {
            int row = 0;
            for (Digest.Held held : entry.requirements()) {
                for (Finding finding : held.findings()) {
                    row++;
                    labels.put(
                            finding,
                            entry.places() == 1 ? "" + entry.number() : entry.number() + "." + row);
                }
            }
        }
        return labels;
    }

    /** The findings that lie on a straight, for its drawing. */
    List<Numbered> on(String straight) {
        List<Numbered> found = new ArrayList<>();
        for (Entry entry : entries) {
            int row = 0;
            for (Digest.Held held : entry.requirements()) {
                for (Finding finding : held.findings()) {
                    row++;
                    Optional<Place.Stretch> stretch =
                            finding.place().stretch().filter(s -> s.straight().equals(straight));
                    if (stretch.isPresent()) {
                        found.add(
                                new Numbered(
                                        entry.number(),
                                        entry.places() == 1 ? 0 : row,
                                        entry.verdict(),
                                        Math.min(stretch.get().fromMm(), stretch.get().toMm()),
                                        Math.max(stretch.get().fromMm(), stretch.get().toMm())));
                    }
                }
            }
        }
        return found;
    }

    /** The numbers of entries that lie on no drawing, because they are about a run or the job. */
    List<String> onNoStraight() {
        return entries.stream()
                .filter(
                        entry ->
                                entry.requirements().stream()
                                        .flatMap(held -> held.findings().stream())
                                        .anyMatch(f -> f.place().stretch().isEmpty()))
                .map(entry -> "" + entry.number())
                .toList();
    }
}
