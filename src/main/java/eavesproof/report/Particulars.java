package eavesproof.report;

import eavesproof.findings.InWords;
import eavesproof.job.Job;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a filed paper is told from another by, for the first page: place, day and people, and which
 * of them the record does not hold.
 */
final class Particulars {
    private static final int LONGEST = 160;

    private final Map<String, @Nullable String> missing = new LinkedHashMap<>();
    private final @Nullable String address;
    private final @Nullable String measured;
    private final @Nullable String measurers;
    private final @Nullable String installers;

    Particulars(Job job) {
        Job.Site site = job.site();
        Job.Dates dates = job.dates();
        address = site == null ? null : known(site.address());
        measured = dates == null ? null : known(dates.measured());
        measurers = names(job, "measured");
        installers = names(job, "installer");
        missing.put("address", address);
        missing.put("day of measuring", measured);
        missing.put("who measured", measurers);
        missing.put("who fitted it", installers);
        missing.values().removeIf(Objects::nonNull);
    }

    private static @Nullable String names(Job job, String role) {
        String names =
                Objects.requireNonNullElse(job.people(), List.<Job.Person>of()).stream()
                        .filter(person -> role.equals(person.role()))
                        .map(person -> People.joined(person.name(), person.company()))
                        .filter(name -> !name.isBlank())
                        .distinct()
                        .collect(Collectors.joining("; "));
        return known(names);
    }

    private static @Nullable String known(@Nullable String text) {
        if (text == null || text.isBlank()) {
            return null;
        }
        return text.codePointCount(0, text.length()) <= LONGEST
                ? text
                : text.substring(0, text.offsetByCodePoints(0, LONGEST)).strip() + " …";
    }

    /** What nobody recorded of it, in a sentence; nothing where all is there. */
    List<String> missing() {
        return missing.isEmpty()
                ? List.of()
                : List.of("Not recorded: " + InWords.list(List.copyOf(missing.keySet())) + ".");
    }

    /**
     * @param title as the recorder gave it, whose words they stay
     */
    List<Report.Entry> entries(@Nullable String title, Issue issue, String number) {
        List<Report.Entry> entries = new ArrayList<>();
        entries.add(new Report.Entry("Title given by the recorder", People.or(title)));
        entries.add(new Report.Entry("Address", People.or(address)));
        entries.add(
                new Report.Entry(
                        "Measured",
                        (measured == null ? "on a day not recorded" : measured)
                                + ", by "
                                + (measurers == null ? "whom is not recorded" : measurers)));
        entries.add(new Report.Entry("Fitted by", People.or(installers)));
        entries.add(
                new Report.Entry(
                        "Report number",
                        number
                                + ", issued "
                                + issue.issued()
                                + (issue.replaces().isEmpty()
                                        ? ""
                                        : ". It replaces report number " + issue.replaces())));
        return entries;
    }
}
