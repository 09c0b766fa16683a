package eavesproof.survey;

import eavesproof.job.Job;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import java.util.Optional;

/** The rain that the rule set has for the place which the record names. */
final class RainOfPlace {
    private RainOfPlace() {}

    /**
     * A place that the rule set does not have is none of its places, and is not looked for near.
     */
    static void answer(Job job, String run, Basis basis, Answers answers) {
        Optional<String> place = named(job);
        Optional<Basis.Amount> rain = place.flatMap(basis::rainAt);
        if (place.isEmpty()) {
            answers.gap(Facts.PlaceRain.class, "the place of the site is not recorded", run);
        } else if (rain.isEmpty()) {
            answers.none(Facts.PlaceRain.class, notThere(place.get()), run);
        } else {
            double mmPerH = rain.get().value();
            Uncertain exact = Uncertain.exact(mmPerH);
            answers.known(
                    new Facts.PlaceRain(run, mmPerH),
                    exact,
                    Answers.working(
                            "rain at " + place.get(), exact, Unit.MM_PER_H, rain.get().source()));
        }
    }

    /** As the record names it. */
    static Optional<String> named(Job job) {
        Job.Site site = job.site();
        return Optional.ofNullable(site == null ? null : site.place());
    }

    static String notThere(String place) {
        return place + " is no place whose rain the rule set states";
    }
}
