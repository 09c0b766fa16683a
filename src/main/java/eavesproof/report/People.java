package eavesproof.report;

import eavesproof.job.Job;
import eavesproof.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Who did the work and who it was for, where and when. */
final class People {
    private final Job job;

    People(Job job) {
        this.job = job;
    }

    List<Report.Entry> who() {
        List<Report.Entry> who = new ArrayList<>();
        List<Job.Person> people = Objects.requireNonNullElse(job.people(), List.of());
        for (Job.Person person : people) {
            String role = Objects.requireNonNullElse(person.role(), "");
            who.add(new Report.Entry(heading(role), described(person)));
        }
        for (String role : List.of("installer", "client")) {
            if (people.stream().noneMatch(p -> role.equals(p.role()))) {
                who.add(new Report.Entry(heading(role), Grids.NOT_RECORDED));
            }
        }
        return who;
    }

    private static String heading(String role) {
        return switch (role) {
            case "" -> "Also there";
            case "measured" -> "Measured by";
            default -> Verdicts.capital(role);
        };
    }

    private static String described(Job.Person person) {
        String licence =
                person.licence() == null
                        ? "no licence recorded"
                        : "licence "
                                + person.licence()
                                + (person.licenceCovers() == null
                                        ? ""
                                        : " (" + person.licenceCovers() + ")");
        return joined(
                person.name() == null ? "name not recorded" : person.name(),
                person.company(),
                "client".equals(person.role()) && person.licence() == null ? null : licence,
                person.contact());
    }

    List<Report.Entry> where() {
        List<Report.Entry> where = new ArrayList<>();
        Job.Site site = job.site();
        where.add(
                new Report.Entry(
                        "Site", or(site == null ? null : joined(site.address(), site.place()))));
        where.add(
                new Report.Entry(
                        "Building",
                        or(site == null ? null : joined(site.buildingKind(), site.part()))));
        if (site != null && (site.north() != null || site.boundary() != null)) {
            where.add(
                    new Report.Entry(
                            "Lies",
                            joined(
                                    site.north() == null ? null : "north: " + site.north(),
                                    site.boundary() == null
                                            ? null
                                            : "boundary: " + site.boundary())));
        }
        where.add(new Report.Entry("Consent", or(consent(job.consent()))));
        Job.Dates dates = job.dates();
        where.add(new Report.Entry("Work done", or(dates == null ? null : work(dates))));
        where.add(
                new Report.Entry("Measured", or(dates == null ? null : joined(dates.measured()))));
        where.add(
                new Report.Entry(
                        "Weather",
                        or(
                                dates == null
                                        ? null
                                        : joined(
                                                dates.weather(),
                                                Amounts.with(
                                                        dates.airTemperatureC(), Unit.CELSIUS)))));
        return where;
    }

    private static @Nullable String consent(Job.@Nullable Consent consent) {
        if (consent == null) {
            return null;
        }
        String departures =
                consent.departures() == null
                        ? "departures from the drawings not recorded"
                        : consent.departures().isEmpty()
                                ? "no departures from the drawings"
                                : "departures: " + String.join("; ", consent.departures());
        return joined(
                consent.number() == null ? "number not recorded" : consent.number(),
                consent.date(),
                consent.drawings() == null || consent.drawings().isEmpty()
                        ? null
                        : "drawings " + String.join(", ", consent.drawings()),
                departures);
    }

    private static @Nullable String work(Job.Dates dates) {
        if (dates.workBegan() == null || Objects.equals(dates.workBegan(), dates.workEnded())) {
            return dates.workEnded();
        }
        return dates.workBegan()
                + " to "
                + (dates.workEnded() == null ? "(not recorded)" : dates.workEnded());
    }

    /** For the front of the file. */
    String author() {
        return Objects.requireNonNullElse(job.people(), List.<Job.Person>of()).stream()
                .filter(p -> "installer".equals(p.role()))
                .map(p -> joined(p.name(), p.company()))
                .filter(name -> !name.isBlank())
                .findFirst()
                .orElse("the installer (name not recorded)");
    }

    static String joined(@Nullable String... parts) {
        return Stream.of(parts)
                .filter(part -> part != null && !part.isBlank())
                .collect(Collectors.joining(", "));
    }

    static String or(@Nullable String text) {
        return text == null || text.isBlank() ? Grids.NOT_RECORDED : text;
    }
}
