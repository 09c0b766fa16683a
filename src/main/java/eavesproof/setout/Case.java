package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.judge.Demanded;
import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import eavesproof.quantity.Uncertain;
import eavesproof.survey.Answer;
import eavesproof.survey.Facts;
import eavesproof.survey.Measure;
import eavesproof.survey.Place;
import eavesproof.survey.Vocabulary;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A job and what the check said of it: what is asked of the things along its runs. */
record Case(Job job, Checked checked) {
    List<Ruling> rulings() {
        return checked.rulings();
    }

    /** One requirement in numbers, the guard band already taken off. */
    record Limits(double atLeast, double atMost) {
        static final Limits NONE = new Limits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

        Limits and(double least, double most) {
            return new Limits(Math.max(atLeast, least), Math.min(atMost, most));
        }
    }

    /** What a reading must be for all rules on such facts of these keys to be met for sure. */
    Limits limits(Class<? extends Facts.Fact> kind, Map<String, String> keys) {
        Limits limits = Limits.NONE;
        for (Ruling ruling : rulings()) {
            if (ruling.subject().kind().type() == kind
                    && ruling.verdict() != Verdict.NOT_APPLICABLE
                    && ruling.subject().place().keys().entrySet().containsAll(keys.entrySet())) {
                double kept = kept(ruling);
                if (ruling.demanded() instanceof Demanded.AtMost most) {
                    limits = limits.and(Double.NEGATIVE_INFINITY, most.limit() - kept);
                } else if (ruling.demanded() instanceof Demanded.AtLeast least) {
                    limits = limits.and(least.limit() + kept, Double.POSITIVE_INFINITY);
                }
            }
        }
        return limits;
    }

    Limits limits(Class<? extends Facts.Fact> kind, String run) {
        return limits(kind, Map.of("run", run));
    }

    /** The first of the words that is allowed, where a rule asks for some. */
    Optional<String> word(Class<? extends Facts.Fact> kind, String run) {
        return rulings().stream()
                .filter(it -> it.subject().kind().type() == kind)
                .filter(it -> it.verdict() != Verdict.NOT_APPLICABLE)
                .filter(it -> it.subject().place().key("run").equals(Optional.of(run)))
                .map(Ruling::demanded)
                .filter(Demanded.OneOf.class::isInstance)
                .map(it -> ((Demanded.OneOf) it).words().get(0))
                .findFirst();
    }

    /** A fact that is a number, at one place. */
    Optional<Double> number(Class<? extends Facts.Fact> kind, Map<String, String> keys) {
        return checked.survey().of(Vocabulary.kind(kind)).stream()
                .filter(it -> it.place().keys().equals(keys))
                .filter(Answer.Known.class::isInstance)
                .map(it -> ((Measure.Number) ((Answer.Known) it).measure()).value().value())
                .findFirst();
    }

    /** How much of the uncertainty is kept inside the limit. */
    static double kept(Ruling ruling) {
        return ruling.guard() * ruling.margin().map(Uncertain::expandedUncertainty).orElse(0.0);
    }

    static String key(Ruling ruling, String name) {
        return ruling.subject().place().key(name).orElse("");
    }

    static String run(Ruling ruling) {
        return key(ruling, "run");
    }

    /** The straight that it lies on, if it lies on one. */
    static String straight(Ruling ruling) {
        return ruling.subject()
                .place()
                .stretch()
                .map(Place.Stretch::straight)
                .orElseGet(() -> key(ruling, "straight"));
    }

    static double measured(Ruling ruling) {
        return ruling.subject() instanceof Answer.Known known
                        && known.measure() instanceof Measure.Number number
                ? number.value().value()
                : Double.NaN;
    }
}
