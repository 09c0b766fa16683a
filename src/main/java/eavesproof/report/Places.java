package eavesproof.report;

import eavesproof.findings.InWords;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.survey.Place;
import java.util.List;
import java.util.Objects;

/** Places in words; where a job has but one run, or one straight, that is not said each time. */
final class Places {
    private final List<String> understood;

    Places(Job job) {
        List<Run> runs = Objects.requireNonNullElse(job.runs(), List.<Run>of());
        List<Run.Straight> straights =
                runs.stream()
                        .flatMap(
                                run ->
                                        Objects.requireNonNullElse(
                                                run.straights(), List.<Run.Straight>of())
                                                .stream())
                        .toList();
        if (runs.size() != 1) {
            understood = List.of();
        } else if (straights.size() != 1) {
            understood = List.of("run " + runs.get(0).id());
        } else {
            understood = List.of("run " + runs.get(0).id(), "straight " + straights.get(0).id());
        }
    }

    String words(Place place) {
        String words = InWords.place(place);
        for (String part : understood) {
            if (words.startsWith(part + ", ")) {
                words = words.substring(part.length() + 2);
            }
        }
        return Verdicts.capital(words);
    }
}
