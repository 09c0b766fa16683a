package eavesproof.survey;

import eavesproof.job.Job;
import eavesproof.job.Job.Rainfall;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The rain that a gutter is reckoned for: of those recorded the one with the duration and the
 * yearly chance that the rule set states. One that is shorter and rarer is at least as strong, and
 * serves where that is missing. Where the rule set has the rain of the place that the record names,
 * the stronger of the two counts, so that nobody records a rain away.
 *
 * @param mmPerH its intensity
 */
record DesignRain(double mmPerH, List<Working> workings) {

    private record Kind(double minutes, double aepPercent) {
        boolean servesFor(Kind asked) {
            return minutes <= asked.minutes && aepPercent <= asked.aepPercent;
        }

        String text() {
            return Decimals.plain(minutes, 1)
                    + " minutes and a yearly chance of "
                    + Decimals.plain(aepPercent, 2)
                    + " %";
        }
    }

    static Found<DesignRain> of(Job job, Basis basis) {
        return Found.by(() -> chosen(job, basis));
    }

    private static DesignRain chosen(Job job, Basis basis) throws Lacking {
        Basis.Amount minutes = basis.amount(BasisKey.RAIN_DURATION_MIN).need();
        Basis.Amount chance = basis.amount(BasisKey.RAIN_AEP_PERCENT).need();
        Kind asked = new Kind(minutes.value(), chance.value());
        Optional<String> place = RainOfPlace.named(job);
        DesignRain here =
                place.flatMap(basis::rainAt)
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
        DesignRain said = least(recorded == null ? List.of() : recorded, asked, minutes.source());
        if (said == null || (here != null && here.mmPerH() > said.mmPerH())) {
            String unlisted = place.map(one -> ", and " + RainOfPlace.notThere(one)).orElse("");
            return Found.orElse(
                            here, "a rainfall of " + asked.text() + " is not recorded" + unlisted)
                    .need();
        }
        return said;
    }

    /** Of those recorded that serve the weakest: each of them is at least as strong as asked. */
    private static @Nullable DesignRain least(List<Rainfall> recorded, Kind asked, String askedBy) {
        DesignRain least = null;
        for (Rainfall one : recorded) {
            Double intensity = one.intensityMmH();
            Double lasts = one.durationMin();
            Double yearly = one.aepPercent();
            if (intensity == null || lasts == null || yearly == null) {
                continue;
            }
            Kind kind = new Kind(lasts, yearly);
            if (kind.servesFor(asked) && (least == null || intensity < least.mmPerH())) {
                String source = one.source();
                String from = source == null ? "its source is not recorded" : source;
                least = of(asked, askedBy, kind, intensity, from);
            }
        }
        return least;
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
