package eavesproof.judge;

import eavesproof.check.Requirement;
import eavesproof.check.Requirement.NoLimit;
import eavesproof.check.Requirement.NumberLimit;
import eavesproof.check.Requirement.WordLimit;
import eavesproof.quantity.Normal;
import eavesproof.quantity.Uncertain;
import eavesproof.rules.Decision;
import eavesproof.rules.Rule;
import eavesproof.survey.Answer;
import eavesproof.survey.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Decides every verdict of a job.
 *
 * <p>A measured value complies only when that is shown: the margin, reduced by the guard factor
 * times the expanded uncertainty, must not be negative (JCGM 106:2012 8.3.2, guarded acceptance).
 * It does not comply only when that is shown likewise (8.3.3, guarded rejection). What was counted
 * or seen is decided by simple acceptance (8.2).
 */
public final class Judge {
    private final Decision usual;

    /**
     * @param usual the decision rule of the rule set, for rules that state none of their own
     */
    public Judge(Decision usual) {
        this.usual = usual;
    }

    public List<Ruling> judge(List<Requirement> requirements) {
        return requirements.stream().map(this::judge).toList();
    }

    Ruling judge(Requirement requirement) {
        return switch (requirement.state()) {
            case OFF -> without(requirement, Verdict.NOT_APPLICABLE, requirement.because());
            case NO_SUBJECT -> without(requirement, Verdict.NOT_RECORDED, requirement.because());
            case ON -> onLimit(requirement);
            case BORDERLINE -> whetherOrNot(requirement, Verdict.TOO_CLOSE);
            case IN_THE_DARK -> whetherOrNot(requirement, Verdict.NOT_RECORDED);
        };
    }

    /** Nobody can tell whether the rule applies; that does not matter while its limit is met. */
    private Ruling whetherOrNot(Requirement requirement, Verdict otherwise) {
        Ruling met = onLimit(requirement);
        List<String> because = new ArrayList<>();
        if (met.verdict() == Verdict.COMPLIES) {
            because.add("complies whether or not the rule applies");
        }
        because.addAll(requirement.because());
        Verdict verdict = met.verdict() == Verdict.COMPLIES ? Verdict.COMPLIES : otherwise;
        return new Ruling(
                requirement, verdict, met.margin(), met.probability(), met.decision(), because);
    }

    private Ruling onLimit(Requirement requirement) {
        if (!(requirement.subject() instanceof Answer.Known subject)) {
            throw new IllegalStateException("a limit was laid against a gap");
        }
        Requirement.Limit limit = requirement.limit();
        if (limit instanceof NoLimit none) {
            return without(requirement, Verdict.NOT_RECORDED, List.of(none.why()));
        }
        if (limit instanceof WordLimit words) {
            return onWords(requirement, subject, words);
        }
        return onNumber(requirement, subject, (NumberLimit) limit);
    }

    private static Ruling onWords(Requirement requirement, Answer.Known subject, WordLimit limit) {
        boolean met = limit.words().contains(((Measure.Word) subject.measure()).word());
        return new Ruling(
                requirement,
                met ? Verdict.COMPLIES : Verdict.DOES_NOT_COMPLY,
                Optional.empty(),
                Optional.empty(),
                Decision.SIMPLE,
                List.of());
    }

    private Ruling onNumber(Requirement requirement, Answer.Known subject, NumberLimit limit) {
        Uncertain measured = ((Measure.Number) subject.measure()).value();
        boolean atMost = requirement.rule().demand() instanceof Rule.AtMost;
        Uncertain margin = atMost ? limit.value().minus(measured) : measured.minus(limit.value());
        Decision decision = decisionFor(requirement, subject);
        if (!margin.isStated()) {
            return unstated(requirement, margin, decision);
        }
        double kept = decision.guard() * margin.expandedUncertainty();
        Verdict verdict;
        if (margin.value() - kept >= 0) {
            verdict = Verdict.COMPLIES;
        } else if (margin.value() + kept < 0) {
            verdict = Verdict.DOES_NOT_COMPLY;
        } else {
            verdict = Verdict.TOO_CLOSE;
        }
        List<String> because = new ArrayList<>();
        if (verdict == Verdict.TOO_CLOSE) {
            because.add(
                    margin.value() >= 0
                            ? "the reading itself meets the limit, by less than its uncertainty"
                            : "the reading itself misses the limit, by less than its uncertainty");
        }
        return new Ruling(
                requirement,
                verdict,
                Optional.of(margin),
                Optional.of(conformity(margin)),
                decision,
                because);
    }

    /** How sure a value is decides whether it complies, so not knowing that is not knowing. */
    private static Ruling unstated(Requirement requirement, Uncertain margin, Decision decision) {
        if (decision.guard() == 0) {
            return new Ruling(
                    requirement,
                    margin.value() >= 0 ? Verdict.COMPLIES : Verdict.DOES_NOT_COMPLY,
                    Optional.of(margin),
                    Optional.empty(),
                    decision,
                    List.of());
        }
        List<String> because = new ArrayList<>();
        because.add(
                margin.value() >= 0
                        ? "the reading itself meets the limit, but how sure it is was not recorded"
                        : "the reading itself misses the limit, but how sure it is was not recorded");
        because.addAll(margin.unstated());
        return new Ruling(
                requirement,
                Verdict.NOT_RECORDED,
                Optional.of(margin),
                Optional.empty(),
                decision,
                because);
    }

    private Decision decisionFor(Requirement requirement, Answer.Known subject) {
        if (subject.kind().observed()) {
            return Decision.SIMPLE;
        }
        return requirement.rule().decision().orElse(usual);
    }

    /** JCGM 106:2012 7.3, one-sided: the part of the normal distribution on the right side. */
    private static double conformity(Uncertain margin) {
        double u = margin.standardUncertainty();
        if (u == 0) {
            return margin.value() >= 0 ? 1 : 0;
        }
        return Normal.below(margin.value() / u);
    }

    private Ruling without(Requirement requirement, Verdict verdict, List<String> because) {
        return new Ruling(
                requirement,
                verdict,
                Optional.empty(),
                Optional.empty(),
                requirement.rule().decision().orElse(usual),
                because);
    }
}
