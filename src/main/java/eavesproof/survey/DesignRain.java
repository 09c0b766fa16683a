package eavesproof.survey;

import eavesproof.job.Job;
import eavesproof.job.Job.Rainfall;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The rain that a gutter is reckoned for: of those recorded the one with the duration and the
 * yearly chance that the rule set states. One that is shorter and rarer is at least as strong, and
 * serves where that is missing; but one that is longer and more frequent is at most as strong, and
 * where it says more than the other, the record contradicts itself and the stronger counts. Where
 * the rule set has the rain of the place that the record names, that counts, or what the record
 * says of it if that is stronger, so that nobody records a rain away.
 *
 * @param mmPerH its intensity
 */
record DesignRain(double mmPerH, List<Working> workings) {

    private record Kind(double minutes, double aepPercent) {
        boolean servesFor(Kind asked) {
            return minutes <= asked.minutes && aepPercent <= asked.aepPercent;
        }

        boolean isNoStrongerThan(Kind asked) {
            return asked.servesFor(this);
        }

        String text() {
            return Decimals.plain(minutes, 1)
                    + " minutes and a yearly chance of "
                    + Decimals.plain(aepPercent, 2)
                    + " %";
        }
    }

    static Found<DesignRain> of(Job job, Basis basis) {
        return Found.by(
                () ->
                        chosen(
                                job,
                                basis,
                                basis.amount(BasisKey.RAIN_DURATION_MIN).need(),
                                basis.amount(BasisKey.RAIN_AEP_PERCENT).need(),
                                BasisKey.RAIN_AT));
    }

    /** The rarer one that what overflows is reckoned for. */
    static Found<DesignRain> ofOverflows(Job job, Basis basis) {
        return Found.by(
                () ->
                        chosen(
                                job,
                                basis,
                                basis.amount(BasisKey.OVERFLOW_RAIN_DURATION_MIN).need(),
                                basis.amount(BasisKey.OVERFLOW_RAIN_AEP_PERCENT).need(),
                                BasisKey.OVERFLOW_RAIN_AT));
    }

    private static DesignRain chosen(
            Job job, Basis basis, Basis.Amount minutes, Basis.Amount chance, BasisKey at)
            throws Lacking {
        Kind asked = new Kind(minutes.value(), chance.value());
        Optional<String> place = RainOfPlace.named(job);
        DesignRain here =
                place.flatMap(one -> basis.rainAt(at, one))
                        .map(
                                rain ->
                                        of(
                                                asked,
                                                minutes.source(),
                                                asked,
                                                rain.value(),
                                                place.get() + "; " + rain.source()))
                        .orElse(null);
        Job.Circumstances circumstances = job.circumstances();
        List<Rainfall> recorded = circumstances == null ? null : circumstances.rainfall();
        if (here == null) {
            Found.need(recorded, "the rainfall");
        }
        if (here != null) {
            return stronger(here, rains(recorded), asked, minutes.source());
        }
        String unlisted = place.map(one -> ", and " + RainOfPlace.notThere(one)).orElse("");
        return Found.orElse(
                        strongEnough(rains(recorded), asked, minutes.source()),
                        "a rainfall of " + asked.text() + " is not recorded" + unlisted)
                .need();
    }

    /** That of the place, or a recorded one that should be no stronger and says more. */
    private static DesignRain stronger(
            DesignRain here, List<Rain> rains, Kind asked, String askedBy) {
        return rains.stream()
                .filter(it -> it.kind().isNoStrongerThan(asked))
                .max(Comparator.comparingDouble(Rain::mmPerH))
                .filter(it -> it.mmPerH() > here.mmPerH())
                .map(it -> of(asked, askedBy, it.kind(), it.mmPerH(), it.source()))
                .orElse(here);
    }

    /** A rainfall of the record that says all of what it is. */
    private record Rain(Kind kind, double mmPerH, String source) {}

    private static List<Rain> rains(@Nullable List<Rainfall> recorded) {
        List<Rain> rains = new ArrayList<>();
        for (Rainfall one : recorded == null ? List.<Rainfall>of() : recorded) {
            Double intensity = one.intensityMmH();
            Double lasts = one.durationMin();
            Double yearly = one.aepPercent();
            if (intensity != null && lasts != null && yearly != null) {
                String source = one.source();
                rains.add(
                        new Rain(
                                new Kind(lasts, yearly),
                                intensity,
                                source == null ? "its source is not recorded" : source));
            }
        }
        return rains;
    }

    /** The weakest of those that are at least as strong as asked, if none at most so says more. */
    private static @Nullable DesignRain strongEnough(List<Rain> rains, Kind asked, String askedBy) {
        Comparator<Rain> byStrength = Comparator.comparingDouble(Rain::mmPerH);
        Optional<Rain> most =
                rains.stream().filter(it -> it.kind().servesFor(asked)).min(byStrength);
        Optional<Rain> least =
                rains.stream().filter(it -> it.kind().isNoStrongerThan(asked)).max(byStrength);
        return most.map(one -> least.filter(it -> it.mmPerH() > one.mmPerH()).orElse(one))
                .map(it -> of(asked, askedBy, it.kind(), it.mmPerH(), it.source()))
                .orElse(null);
    }

    private static DesignRain of(
            Kind asked, String askedBy, Kind kind, double mmPerH, String source) {
        return new DesignRain(
                mmPerH,
                List.of(
                        new Working("design rain", asked.text(), askedBy),
                        new Working(
                                "rain intensity",
                                Decimals.with(mmPerH, Unit.MM_PER_H),
                                kind.equals(asked) ? source : kind.text() + "; " + source)));
    }
}
