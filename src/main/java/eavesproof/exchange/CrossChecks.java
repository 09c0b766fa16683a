package eavesproof.exchange;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What two values of a record must agree on. Only what is certainly wrong: whatever is merely bad
 * work is for the rules, and whatever is not known is no contradiction.
 */
final class CrossChecks {
    private final Problems problems;
    private final Map<String, Double> lengthsMm = new HashMap<>();

    private CrossChecks(Problems problems) {
        this.problems = problems;
    }

    static void check(Found job, Problems problems) {
        CrossChecks checks = new CrossChecks(problems);
        List<Found> straights =
                job.items("runs").stream().flatMap(run -> run.items("straights").stream()).toList();
        straights.forEach(checks::keepLength);
        straights.forEach(checks::onStraight);
        job.items("way").forEach(part -> checks.within(part, "station_mm", part.text("on")));
        job.items("way").forEach(checks::fixing);
        job.items("way").forEach(checks::insertion);
        job.items("catchments").forEach(checks::catchment);
        job.items("tests").forEach(test -> test.items("stood").forEach(checks::part));
        Found dates = job.at("dates");
        if (dates != null) {
            checks.order(dates, "work_began", "work_ended");
        }
        job.items("runs").forEach(run -> checks.outletsHaveTheirOwnIds(run, job.items("way")));
        RunChecks.check(job, problems);
        OverlapChecks.check(job, problems);
        InstrumentChecks.check(job, problems);
        WayChecks.check(job, problems);
    }

    private void keepLength(Found straight) {
        String id = straight.text("id");
        Double lengthMm = straight.number("length_mm");
        if (id != null && lengthMm != null) {
            lengthsMm.putIfAbsent(id, lengthMm);
        }
    }

    private void onStraight(Found straight) {
        Double lengthMm = straight.number("length_mm");
        for (String key : List.of("readings", "brackets", "fittings", "joints", "cross_tilt")) {
            straight.items(key).forEach(on -> within(on, "station_mm", lengthMm));
        }
        straight.items("brackets").forEach(this::screws);
        straight.items("joints").forEach(this::fixing);
        straight.items("fittings").forEach(this::fixing);
        for (Found zone : straight.items("keep_clear")) {
            upwards(zone, "from_mm", "to_mm");
            touches(zone, lengthMm);
        }
        Found fascia = straight.at("fascia");
        if (fascia != null) {
            upwards(fascia, "begins_mm", "ends_mm");
        }
    }

    private void insertion(Found outlet) {
        atMost(outlet, "insertion_mm", outlet.number("body_mm"), "body_mm");
        Found gap = outlet.at("gap_mm");
        Double gapMm = outlet.number("gap_mm");
        if (gap != null && gapMm != null && gapMm > 0 && "fixed".equals(outlet.text("hold"))) {
            String found = shown(gap) + " of an outlet that is held fixed";
            problems.add(gap, found, "none, or an outlet that is sliding");
        }
    }

    private void fixing(Found thing) {
        Found fixing = thing.at("fixing");
        if (fixing != null) {
            screws(fixing);
        }
    }

    private void screws(Found fixed) {
        atMost(fixed, "screws_fitted", fixed.number("holes_provided"), "holes_provided");
    }

    /** An outlet may support its run too, and then stands beside brackets under its id. */
    private void outletsHaveTheirOwnIds(Found run, List<Found> way) {
        Set<String> straights = new HashSet<>();
        Set<String> taken = new HashSet<>();
        for (Found straight : run.items("straights")) {
            straights.add(straight.text("id"));
            for (String key : List.of("brackets", "fittings", "joints", "keep_clear")) {
                straight.items(key).forEach(on -> taken.add(on.text("id")));
            }
        }
        for (Found part : way) {
            Found id = part.at("id");
            if (id != null && taken.contains(id.value()) && straights.contains(part.text("on"))) {
                Names.again(id, problems);
            }
        }
    }

    private void catchment(Found catchment) {
        Found inflow = catchment.at("inflow");
        if (inflow != null) {
            within(inflow, "station_mm", inflow.text("on"));
        }
        Found eaves = catchment.at("eaves");
        if (eaves != null) {
            part(eaves);
        }
    }

    private void part(Found part) {
        upwards(part, "from_mm", "to_mm");
        within(part, "from_mm", part.text("on"));
        within(part, "to_mm", part.text("on"));
    }

    private void within(Found thing, String key, @Nullable String straight) {
        within(thing, key, straight == null ? null : lengthsMm.get(straight));
    }

    private void within(Found thing, String key, @Nullable Double lengthMm) {
        Found station = thing.at(key);
        if (station != null && lengthMm != null && number(station) > lengthMm) {
            problems.add(
                    station, shown(station), "a station on its straight, 0 to " + shown(lengthMm));
        }
    }

    /** A zone that only begins or ends beyond the straight is an honest measure of a door. */
    private void touches(Found zone, @Nullable Double lengthMm) {
        Double toMm = zone.number("to_mm");
        Double fromMm = zone.number("from_mm");
        if (toMm != null && toMm < 0) {
            problems.add(zone, "a zone that ends before its straight begins", "one that meets it");
        } else if (fromMm != null && lengthMm != null && fromMm > lengthMm) {
            problems.add(zone, "a zone that begins after its straight ends", "one that meets it");
        }
    }

    private void upwards(Found thing, String from, String to) {
        atMost(thing, from, thing.number(to), to);
    }

    private void atMost(Found thing, String key, @Nullable Double most, String other) {
        Found value = thing.at(key);
        if (value != null && most != null && number(value) > most) {
            problems.add(value, shown(value), "at most `" + other + "`, " + shown(most));
        }
    }

    /** Dates as YYYY-MM-DD sort as texts. */
    private void order(Found thing, String first, String then) {
        Found began = thing.at(first);
        String ended = thing.text(then);
        if (began != null && ended != null && began.value().toString().compareTo(ended) > 0) {
            problems.add(
                    began, began.value().toString(), "a day not after `" + then + "`, " + ended);
        }
    }

    private static double number(Found value) {
        return ((Number) value.value()).doubleValue();
    }

    private static String shown(Found value) {
        return shown(number(value));
    }

    private static String shown(double value) {
        return Amount.plain(value);
    }
}
