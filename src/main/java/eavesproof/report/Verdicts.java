package eavesproof.report;

import eavesproof.findings.Digest;
import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.findings.InWords;
import eavesproof.judge.Verdict;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The findings in words: what needs a decision, what complies, what does not apply, silence. */
final class Verdicts {
    private final Findings findings;
    private final Digest digest;
    private final Listed listed;
    private final Rows rows;

    Verdicts(Findings findings, Places places) {
        this.findings = findings;
        digest = Digest.of(findings);
        listed = Listed.of(digest);
        rows = new Rows(places, listed.labels());
    }

    Front front() {
        return new Front(findings, listed, rows);
    }

    Listed listed() {
        return listed;
    }

    String introduced() {
        int places = listed.entries().stream().mapToInt(Listed.Entry::places).sum();
        if (places == 0) {
            return "Nothing that was checked is left open.";
        }
        List<String> parts = new ArrayList<>();
        for (Verdict verdict :
                List.of(Verdict.DOES_NOT_COMPLY, Verdict.TOO_CLOSE, Verdict.NOT_RECORDED)) {
            int of = findings.of(verdict).size();
            if (of > 0) {
                parts.add(of + (of == 1 ? one(verdict) : many(verdict)));
            }
        }
        return (places == 1 ? "One check is" : places + " checks are")
                + " left open: "
                + InWords.list(parts)
                + ". The numbers are those on the drawings"
                + elsewhere()
                + ".";
    }

    private static String one(Verdict verdict) {
        return (verdict == Verdict.DOES_NOT_COMPLY ? " " : " is ") + verdict.words();
    }

    private static String many(Verdict verdict) {
        return verdict == Verdict.DOES_NOT_COMPLY ? " do not comply" : " are " + verdict.words();
    }

    private String elsewhere() {
        List<String> numbers = listed.onNoStraight();
        return numbers.isEmpty()
                ? ""
                : "; "
                        + InWords.list(numbers)
                        + (numbers.size() == 1 ? " lies" : " lie")
                        + " on no straight and so on none of them";
    }

    /** Document, edition, clause; and what weight it has, unless its name says so. */
    private static String source(Finding.Source source) {
        String words = InWords.source(source);
        String standing = ", " + source.standing().words();
        boolean twice =
                words.endsWith(standing)
                        && source.document()
                                .toLowerCase(Locale.ROOT)
                                .contains(source.standing().words());
        return twice ? words.substring(0, words.length() - standing.length()) : words;
    }

    List<Report.Open> open() {
        Map<Verdict, List<Report.Action>> byVerdict = new LinkedHashMap<>();
        Map<String, Integer> remedies = new HashMap<>();
        for (Listed.Entry entry : listed.entries()) {
            byVerdict
                    .computeIfAbsent(entry.verdict(), v -> new ArrayList<>())
                    .add(action(entry, remedies));
        }
        return byVerdict.entrySet().stream()
                .map(
                        of ->
                                new Report.Open(
                                        capital(of.getKey().words()),
                                        of.getKey().id(),
                                        of.getValue()))
                .toList();
    }

    /**
     * @param remedies under which number each was said first, so that it is said once
     */
    private Report.Action action(Listed.Entry entry, Map<String, Integer> remedies) {
        List<Finding> all =
                entry.requirements().stream().flatMap(h -> h.findings().stream()).toList();
        Set<String> because = new LinkedHashSet<>(all.get(0).because());
        Set<String> remedy = new LinkedHashSet<>(all.get(0).remedy().stream().toList());
        for (Finding finding : all) {
            because.retainAll(finding.because());
            remedy.retainAll(finding.remedy().stream().toList());
        }
        Set<String> said = new LinkedHashSet<>(because);
        said.addAll(remedy);
        return new Report.Action(
                "" + entry.number(),
                entry.requirements().size() > 1,
                because.stream().map(Verdicts::sentence).toList(),
                remedy.stream().map(one -> again(one, entry.number(), remedies)).toList(),
                entry.requirements().stream().map(held -> need(held, said)).toList());
    }

    private static String again(String remedy, int number, Map<String, Integer> remedies) {
        Integer first = remedies.putIfAbsent(remedy, number);
        return first == null ? sentence(remedy) : "The same change as for " + first + ".";
    }

    private Report.Need need(Digest.Held held, Set<String> saidAlready) {
        return new Report.Need(
                sentence(held.says()),
                held.rule(),
                sentence(source(held.source())),
                held.findings().size() > 1,
                rows.folded(held.findings(), saidAlready));
    }

    List<Report.Topic> complies() {
        Map<String, List<Report.Met>> topics = new LinkedHashMap<>();
        for (Digest.Held held : digest.complies()) {
            topics.computeIfAbsent(held.topic(), t -> new ArrayList<>())
                    .add(
                            new Report.Met(
                                    sentence(held.says()),
                                    held.rule(),
                                    RulesHeld.cited(findings.rules(), held.source()),
                                    "" + held.findings().size(),
                                    rows.row(List.of(held.tightest()), Set.of())));
        }
        return topics.entrySet().stream()
                .map(topic -> new Report.Topic(capital(topic.getKey()), topic.getValue()))
                .toList();
    }

    List<Report.Apart> notApplicable() {
        return digest.notApplicable().stream()
                .map(
                        apart ->
                                new Report.Apart(
                                        sentence(String.join("; ", apart.because())),
                                        InWords.list(
                                                apart.requirements().stream()
                                                        .map(Digest.Held::rule)
                                                        .toList()),
                                        "" + apart.places()))
                .toList();
    }

    List<Report.Silence> silent() {
        return findings.uncovered().stream()
                .map(
                        silence ->
                                new Report.Silence(
                                        capital(silence.kind().title()),
                                        InWords.place(silence),
                                        silence.why().isEmpty()
                                                ? "No rule of this rule set is about it."
                                                : sentence(String.join("; ", silence.why()))))
                .toList();
    }

    /** Every place of what is not met or too close, and the tightest of what complies. */
    List<Report.Reckoning> workings() {
        List<Report.Reckoning> workings = new ArrayList<>();
        for (Listed.Entry entry : listed.entries()) {
            for (Digest.Held held : entry.requirements()) {
                workings.add(reckoning(List.of(held.tightest()), true));
                if (entry.verdict() != Verdict.NOT_RECORDED) {
                    others(held).forEach(alike -> workings.add(reckoning(alike, false)));
                }
            }
        }
        digest.complies().stream()
                .map(Digest.Held::tightest)
                .filter(Verdicts::isMeasured)
                .forEach(finding -> workings.add(reckoning(List.of(finding), true)));
        workings.removeIf(it -> it.steps().isEmpty() && it.decision().isEmpty());
        return workings;
    }

    /** But for the tightest: those that were decided on the same numbers, together. */
    private static List<List<Finding>> others(Digest.Held held) {
        Map<String, List<Finding>> alike = new LinkedHashMap<>();
        // Asked for once: it looks through all of them, and there may be thousands.
        Finding tightest = held.tightest();
        held.findings().stream()
                .filter(finding -> !finding.equals(tightest))
                .forEach(
                        finding ->
                                alike.computeIfAbsent(decision(finding), d -> new ArrayList<>())
                                        .add(finding));
        return alike.values().stream().flatMap(group -> Rows.parts(group).stream()).toList();
    }

    private Report.Reckoning reckoning(List<Finding> alike, boolean withSteps) {
        Finding first = alike.get(0);
        return new Report.Reckoning(
                rows.numbers(alike),
                capital(first.rule()),
                rows.where(alike),
                decision(first),
                withSteps
                        ? first.workings().stream()
                                .map(
                                        step ->
                                                new Report.Step(
                                                        step.name(), step.value(), step.from()))
                                .toList()
                        : List.of());
    }

    /** Not counted and not seen, so that how sure it is matters. */
    private static boolean isMeasured(Finding finding) {
        return finding.measured().orElse(null) instanceof Finding.MeasuredNumber number
                && number.expandedUncertainty().filter(u -> u == 0).isEmpty();
    }

    private static String decision(Finding finding) {
        if (finding.measured().isEmpty() || finding.limit().isEmpty()) {
            return "";
        }
        List<String> parts = new ArrayList<>();
        String measured = InWords.measured(finding).orElseThrow();
        String limit = InWords.limit(finding).orElseThrow();
        boolean numbers = finding.limit().get() instanceof Finding.NumberLimit;
        parts.add(measured + (numbers ? " against " : ", ") + limit);
        InWords.margin(finding).ifPresent(parts::add);
        if (isMeasured(finding)) {
            finding.probability().ifPresent(p -> parts.add("P " + Amounts.probability(p)));
        }
        parts.add(decisionRule(finding));
        return sentence(String.join("; ", parts));
    }

    /** The guard is a share of the expanded uncertainty that is kept inside the limit. */
    private static String decisionRule(Finding finding) {
        if (!finding.decision().equals("simple")) {
            return finding.decision().replace("r=", "acceptance, r = ");
        }
        boolean unstated =
                finding.measured().orElse(null) instanceof Finding.MeasuredNumber number
                        && number.expandedUncertainty().isEmpty();
        return "simple acceptance"
                + (unstated ? " of the plain figure, since nobody stated how sure it is" : "");
    }

    /** With a capital and a full stop. */
    static String sentence(String words) {
        String capital = capital(words);
        return capital.isEmpty() || capital.endsWith(".") ? capital : capital + ".";
    }

    /** As it goes on within a sentence. */
    static String small(String words) {
        return words.isEmpty()
                ? words
                : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    static String capital(String words) {
        if (words.isEmpty()) {
            return words;
        }
        int first = words.codePointAt(0);
        return Character.toString(Character.toUpperCase(first))
                + words.substring(Character.charCount(first));
    }
}
