package eavesproof.check;

import eavesproof.check.Requirement.NoLimit;
import eavesproof.check.Requirement.State;
import eavesproof.rules.Rule;
import eavesproof.survey.Answer;
import eavesproof.survey.FactKind;
import eavesproof.survey.Measure;
import eavesproof.survey.Place;
import eavesproof.survey.Vocabulary;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Lays one rule against one subject, comparing every condition, so that nothing is passed over. */
final class RuleOnSubject {
    private final Rule rule;
    private final AnswersByPlace answers;
    private final Set<String> off = new LinkedHashSet<>();
    private final Set<String> near = new LinkedHashSet<>();
    private final Set<String> dark = new LinkedHashSet<>();
    private final Map<String, String> ids = new LinkedHashMap<>();
    private final Map<String, Measure> measures = new LinkedHashMap<>();
    private final List<Answer.Known> relied = new ArrayList<>();
    private boolean holdsByValue = true;

    private RuleOnSubject(Rule rule, AnswersByPlace answers) {
        this.rule = rule;
        this.answers = answers;
    }

    /**
     * The requirement, and whether the conditions hold by the values alone, as an engine sees it.
     */
    record Laid(Requirement requirement, boolean engineShouldMatch) {}

    static Laid lay(Rule rule, Answer subject, AnswersByPlace answers) {
        return new RuleOnSubject(rule, answers).lay(subject);
    }

    private Laid lay(Answer subject) {
        FactKind kind = subject.kind();
        if (subject instanceof Answer.NoneHere none) {
            Requirement notHere =
                    new Requirement(
                            rule,
                            subject,
                            State.OFF,
                            new NoLimit(none.why()),
                            List.of(none.why()),
                            relied);
            return new Laid(notHere, false);
        }
        read(rule.subject(), subject);
        for (Rule.Pattern circumstance : rule.circumstances()) {
            lookAt(circumstance);
        }
        boolean known = subject instanceof Answer.Known;
        LimitEvaluator.Evaluated limit = LimitEvaluator.evaluate(rule.demand(), kind, measures);
        near.addAll(limit.near());
        List<String> because = new ArrayList<>();
        State state;
        if (!off.isEmpty()) {
            state = State.OFF;
            because.addAll(off);
        } else if (subject instanceof Answer.Gap gap) {
            state = State.NO_SUBJECT;
            because.add(gap.why());
        } else if (!dark.isEmpty()) {
            state = State.IN_THE_DARK;
            because.addAll(dark);
        } else if (!near.isEmpty()) {
            state = State.BORDERLINE;
            because.addAll(near);
        } else {
            state = State.ON;
        }
        Requirement requirement =
                new Requirement(rule, subject, state, limit.limit(), because, relied);
        return new Laid(requirement, known && holdsByValue);
    }

    private void lookAt(Rule.Pattern circumstance) {
        FactKind kind = Vocabulary.kind(circumstance.kind()).orElseThrow();
        Map<String, String> joined = new LinkedHashMap<>();
        for (Rule.Condition condition : circumstance.conditions()) {
            if (condition instanceof Rule.Join join && ids.containsKey(join.variable())) {
                joined.put(join.field(), ids.get(join.variable()));
            }
        }
        List<Answer> found = answers.of(kind, joined);
        if (found.isEmpty()) {
            throw new Engine.EngineFault(
                    "the survey has no answer for " + kind.name() + " at " + joined);
        }
        if (found.size() == 1) {
            read(circumstance, found.get(0));
        } else {
            severalPlaces(circumstance, found);
        }
    }

    /**
     * The subject is a gap whose place is known in part only: a condition is known not to hold only
     * if it is so at every place that it could be.
     */
    private void severalPlaces(Rule.Pattern pattern, List<Answer> found) {
        holdsByValue = false;
        Set<String> fails = new LinkedHashSet<>();
        for (Answer answer : found) {
            RuleOnSubject alone = new RuleOnSubject(rule, answers);
            alone.read(pattern, answer);
            if (alone.off.isEmpty()) {
                dark.add("it is not known at which place " + answer.kind().title() + " counts");
                return;
            }
            fails.addAll(alone.off);
        }
        off.addAll(fails);
    }

    /** Takes over what the pattern binds and compares. */
    private void read(Rule.Pattern pattern, Answer answer) {
        Place place = answer.place();
        for (Rule.Condition condition : pattern.conditions()) {
            if (condition instanceof Rule.Bind bind) {
                place.key(bind.field()).ifPresent(id -> ids.put(bind.variable(), id));
            }
        }
        if (answer instanceof Answer.Known known) {
            relied.add(known);
            pattern.conditions().forEach(condition -> compare(known, condition));
        } else if (answer instanceof Answer.Gap gap) {
            holdsByValue = false;
            if (!keyFails(pattern, gap)) {
                dark.add(gap.why());
            }
        } else if (answer instanceof Answer.NoneHere none) {
            holdsByValue = false;
            off.add(none.why());
        }
    }

    private void compare(Answer.Known known, Rule.Condition condition) {
        if (condition instanceof Rule.Bind bind && bind.field().equals(known.kind().measure())) {
            measures.put(bind.variable(), known.measure());
        }
        if (condition instanceof Rule.Compare compare) {
            Circumstance circumstance = Circumstance.of(known, compare);
            holdsByValue &= circumstance.holdsByValue();
            switch (circumstance.is()) {
                case HOLDS -> {}
                case FAILS -> off.add(circumstance.because());
                case NEAR_HOLDS, NEAR_FAILS -> near.add(circumstance.because());
                case UNSURE_HOLDS, UNSURE_FAILS, GAP -> dark.add(circumstance.because());
            }
        }
    }

    /** Whether a gap lies at a place that the pattern's own conditions on keys leave out. */
    private boolean keyFails(Rule.Pattern pattern, Answer.Gap gap) {
        for (Rule.Condition condition : pattern.conditions()) {
            if (condition instanceof Rule.Compare compare
                    && compare.literal() instanceof Rule.Text text
                    && gap.place()
                            .key(compare.field())
                            .filter(id -> !id.equals(text.word()))
                            .isPresent()) {
                off.add(gap.kind().title() + ": " + compare.field() + " is not " + text.word());
                return true;
            }
        }
        return false;
    }
}
