package eavesproof.report;

import eavesproof.findings.Finding;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Findings as rows of a table. Places that differ in nothing but where they are share a row. */
final class Rows {
    /** A row must fit on a page. */
    private static final int MOST = 40;

    private static final int FEW = 4;

    private final Places places;
    private final IdentityHashMap<Finding, String> labels;

    Rows(Places places, IdentityHashMap<Finding, String> labels) {
        this.places = places;
        this.labels = labels;
    }

    String number(Finding finding) {
        return Objects.requireNonNullElse(labels.get(finding), "");
    }

    /** Findings of one requirement; what was said of all of them is not said again. */
    List<Report.Held> folded(List<Finding> findings, Set<String> saidAlready) {
        Map<List<Object>, List<Finding>> alike = new LinkedHashMap<>();
        findings.forEach(one -> alike.computeIfAbsent(key(one), k -> new ArrayList<>()).add(one));
        List<Report.Held> rows = new ArrayList<>();
        for (List<Finding> group : alike.values()) {
            for (List<Finding> part : parts(group)) {
                rows.add(row(part, saidAlready));
            }
        }
        return rows;
    }

    /** In short: by what was measured alone, with the first places and how many more there are. */
    List<Report.Held> brief(List<Finding> findings) {
        Map<List<Object>, List<Finding>> alike = new LinkedHashMap<>();
        for (Finding one : findings) {
            List<Object> found =
                    List.of(Amounts.measured(one), Amounts.sure(one), Amounts.limit(one));
            alike.computeIfAbsent(found, none -> new ArrayList<>()).add(one);
        }
        return alike.values().stream().map(this::inShort).toList();
    }

    private Report.Held inShort(List<Finding> all) {
        Finding first = all.get(0);
        int more = all.size() - FEW;
        return new Report.Held(
                shortened(numbers(all)),
                where(all.subList(0, Math.min(FEW, all.size())))
                        + (more > 0 ? "; and " + more + " more" : ""),
                Amounts.measured(first),
                Amounts.sure(first),
                Amounts.limit(first),
                Amounts.spare(first),
                List.of());
    }

    private static String shortened(String numbers) {
        String[] all = numbers.split(", ", -1);
        return all.length <= FEW ? numbers : all[0] + ", " + all[1] + " …";
    }

    static List<List<Finding>> parts(List<Finding> group) {
        List<List<Finding>> parts = new ArrayList<>();
        for (int from = 0; from < group.size(); from += MOST) {
            parts.add(group.subList(from, Math.min(group.size(), from + MOST)));
        }
        return parts;
    }

    Report.Held row(List<Finding> group, Set<String> saidAlready) {
        Finding first = group.get(0);
        return new Report.Held(
                numbers(group),
                where(group),
                Amounts.measured(first),
                Amounts.sure(first),
                Amounts.limit(first),
                Amounts.spare(first),
                notes(group, saidAlready));
    }

    private static List<Object> key(Finding finding) {
        return List.of(
                Amounts.measured(finding),
                Amounts.sure(finding),
                Amounts.limit(finding),
                Amounts.spare(finding),
                finding.because(),
                finding.assumed(),
                remedyAnywhere(finding));
    }

    /** The remedy with the ids of its place taken out: what would be done at any such place. */
    private static String remedyAnywhere(Finding finding) {
        String remedy = finding.remedy().orElse("");
        for (String id : finding.place().keys().values()) {
            remedy =
                    Pattern.compile("(?<![\\w-])" + Pattern.quote(id) + "(?![\\w-])")
                            .matcher(remedy)
                            .replaceAll(Matcher.quoteReplacement("\u0000"));
        }
        return remedy;
    }

    private static List<String> notes(List<Finding> group, Set<String> saidAlready) {
        Finding first = group.get(0);
        List<String> notes = new ArrayList<>();
        Amounts.allowed(first).ifPresent(all -> notes.add("Allowed: " + all + "."));
        first.because().stream()
                .filter(why -> !saidAlready.contains(why))
                .forEach(why -> notes.add(Verdicts.sentence(why)));
        first.assumed().forEach(what -> notes.add("Assumed: " + what + "."));
        boolean same = group.stream().allMatch(one -> one.remedy().equals(first.remedy()));
        first.remedy()
                .filter(remedy -> !saidAlready.contains(remedy))
                .ifPresent(
                        remedy ->
                                notes.add(
                                        Verdicts.sentence("To put it right: " + remedy)
                                                + (same ? "" : " The same at each other place.")));
        return notes;
    }

    /** 3.1 to 3.8, or 3.1, 3.4 where something lies between. */
    String numbers(List<Finding> group) {
        List<String> numbers = group.stream().map(this::number).distinct().toList();
        int last = numbers.size() - 1;
        if (last > 1 && row(numbers.get(last)) - row(numbers.get(0)) == last) {
            return numbers.get(0) + " to " + numbers.get(last);
        }
        return String.join(", ", numbers);
    }

    private static int row(String number) {
        String row = number.substring(number.indexOf('.') + 1);
        return row.matches("[0-9]{1,9}") ? Integer.parseInt(row) : 0;
    }

    String where(List<Finding> group) {
        StringBuilder where = new StringBuilder();
        for (Finding finding : group) {
            String place = places.words(finding.place());
            where.append(where.isEmpty() ? place : "; " + Verdicts.small(place));
        }
        return where.toString();
    }
}
