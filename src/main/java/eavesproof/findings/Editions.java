package eavesproof.findings;

import eavesproof.job.Job;
import eavesproof.judge.Verdict;
import eavesproof.rules.RuleSet;
import eavesproof.survey.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Whether the editions that a job was held against were in force on the day that decides: that of
 * its consent, else that on which the work ended. An edition that was not in force shows nothing,
 * so that the job is then not shown to comply.
 */
final class Editions {
    private static final String TOPIC = "editions";
    private static final String SAYS =
            "The edition that the job is held against was in force on the day that decides.";

    private Editions() {}

    /**
     * @param cited keys of the documents that some verdict rests on
     */
    static List<Finding> findings(
            Job job, Map<String, RuleSet.Document> documents, Set<String> cited) {
        Optional<Day> day = dayOf(job);
        List<Finding> findings = new ArrayList<>();
        for (String key : new TreeSet<>(cited)) {
            RuleSet.Document document = documents.get(key);
            if (document != null) {
                trouble(document, day).ifPresent(why -> findings.add(finding(document, day, why)));
            }
        }
        return findings;
    }

    private record Day(String date, String of) {
        String text() {
            return of + ", " + date;
        }
    }

    private static Optional<Day> dayOf(Job job) {
        Job.Consent consent = job.consent();
        if (consent != null && consent.date() != null) {
            return Optional.of(new Day(consent.date(), "the day of the consent"));
        }
        Job.Dates dates = job.dates();
        return dates == null || dates.workEnded() == null
                ? Optional.empty()
                : Optional.of(new Day(dates.workEnded(), "the day on which the work ended"));
    }

    /** Days are written so that their order is that of their text. */
    private static Optional<String> trouble(RuleSet.Document document, Optional<Day> day) {
        Optional<String> from = document.validFrom();
        Optional<String> to = document.validTo();
        if (from.isEmpty() && to.isEmpty()) {
            return Optional.empty();
        }
        if (day.isEmpty()) {
            return Optional.of(
                    "neither the day of the consent nor that on which the work ended is recorded");
        }
        String date = day.get().date();
        if (from.isPresent() && date.compareTo(from.get()) < 0) {
            return Optional.of(
                    "not yet valid on " + day.get().text() + ": it is valid from " + from.get());
        }
        if (to.isPresent() && date.compareTo(to.get()) > 0) {
            return Optional.of(
                    "superseded on " + day.get().text() + ": it was valid to " + to.get());
        }
        return Optional.empty();
    }

    private static Finding finding(RuleSet.Document document, Optional<Day> day, String why) {
        return new Finding(
                "edition of " + document.key(),
                TOPIC,
                SAYS,
                Verdict.NOT_RECORDED,
                "edition",
                "the day of the consent, else that on which the work ended",
                Place.of(),
                day.map(Day::date).map(Finding.MeasuredWord::new),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "simple",
                List.of(document.title() + ", " + document.edition() + ": " + why),
                new Finding.Source(document.title(), document.edition(), "", document.standing()),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                List.of());
    }
}
