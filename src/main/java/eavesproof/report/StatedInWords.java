package eavesproof.report;

import eavesproof.findings.Finding;
import eavesproof.findings.InWords;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleSet;
import eavesproof.rules.Stated;
import eavesproof.survey.BasisKey;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a rule set states for the engineering: a line for each key and source, not for each entry.
 */
final class StatedInWords {
    /** Of what it is, and how much. */
    private record Entry(String of, String is) {}

    private final BasisKey key;
    private final List<Entry> entries = new ArrayList<>();

    private StatedInWords(BasisKey key) {
        this.key = key;
    }

    static List<String> of(RuleBook book) {
        Map<String, Map<String, StatedInWords>> byKey = new LinkedHashMap<>();
        book.basis()
                .forEach(
                        (written, stated) -> {
                            String[] parts = written.split(" ", 2);
                            BasisKey key = BasisKey.of(parts[0]).orElseThrow();
                            byKey.computeIfAbsent(key.key(), none -> new LinkedHashMap<>())
                                    .computeIfAbsent(
                                            source(stated, book), none -> new StatedInWords(key))
                                    .entries
                                    .add(
                                            new Entry(
                                                    parts.length < 2 ? "" : parts[1],
                                                    stated.text()));
                        });
        List<String> lines = new ArrayList<>();
        byKey.values()
                .forEach(
                        bySource ->
                                bySource.forEach(
                                        (source, one) -> lines.add(one.words() + "; " + source)));
        return lines;
    }

    /** The places of rain would fill pages: their number is said. */
    private String words() {
        if (key.isByPlace()) {
            return key.says() + ": " + InWords.count(entries.size(), "place");
        }
        if (key == BasisKey.LENGTH_FACTOR) {
            entries.sort((a, b) -> Integer.compare(Integer.parseInt(a.of), Integer.parseInt(b.of)));
        }
        Map<String, List<String>> byAmount = new LinkedHashMap<>();
        for (Entry entry : entries) {
            byAmount.computeIfAbsent(entry.is, none -> new ArrayList<>()).add(entry.of);
        }
        List<String> amounts = new ArrayList<>();
        byAmount.forEach(
                (is, of) -> {
                    String unit = key.unit().isEmpty() ? "" : " " + key.unit();
                    String things = InWords.list(of);
                    amounts.add(is + unit + (things.isEmpty() ? "" : " for " + things));
                });
        return key.says() + ": " + String.join("; ", amounts);
    }

    private static String source(Stated stated, RuleBook book) {
        RuleSet.Document document = book.document(stated);
        return InWords.source(
                new Finding.Source(
                        document.title(),
                        document.edition(),
                        stated.source().clause(),
                        document.standing()));
    }
}
