package eavesproof.app;

import eavesproof.job.Job;
import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import eavesproof.setout.Checked;
import eavesproof.survey.Survey;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** The whole check against the rules of the trade as they are shipped, for laws to speak of. */
final class WholeCheck {
    private static final LoadedRules RULES = load();

    private WholeCheck() {}

    private static LoadedRules load() {
        try {
            return RuleSets.load("trade-practice", Path.of("rules"));
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    static Checked check(Job job) {
        return CheckJob.checked(job, RULES);
    }

    static Checked check(Survey survey) {
        return CheckJob.checked(survey, CheckJob.coverage(survey, RULES), RULES);
    }

    static boolean complies(Checked checked) {
        return checked.uncovered().isEmpty()
                && checked.rulings().stream().noneMatch(it -> it.verdict().needsAction())
                && checked.rulings().stream().anyMatch(it -> it.verdict() == Verdict.COMPLIES);
    }

    /** The higher the better. */
    static int rank(Verdict verdict) {
        return switch (verdict) {
            case DOES_NOT_COMPLY -> 0;
            case NOT_RECORDED, TOO_CLOSE -> 1;
            case COMPLIES, NOT_APPLICABLE -> 2;
        };
    }

    record Key(String rule, Map<String, String> place) {
        static Key of(Ruling ruling) {
            return new Key(ruling.rule(), ruling.subject().place().keys());
        }
    }

    /** Several gaps can share what is known of their place; the worst stands for them. */
    static Map<Key, Verdict> verdicts(Checked checked) {
        Map<Key, Verdict> verdicts = new LinkedHashMap<>();
        checked.rulings().forEach(it -> worst(verdicts, Key.of(it), it.verdict()));
        return verdicts;
    }

    static void worst(Map<Key, Verdict> verdicts, Key key, Verdict verdict) {
        verdicts.merge(key, verdict, (one, other) -> rank(one) <= rank(other) ? one : other);
    }
}
