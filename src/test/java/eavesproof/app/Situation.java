package eavesproof.app;

import eavesproof.check.Coverage;
import eavesproof.judge.Judge;
import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Answer;
import eavesproof.survey.FactKind;
import eavesproof.survey.Facts;
import eavesproof.survey.Measure;
import eavesproof.survey.Place;
import eavesproof.survey.Provenance;
import eavesproof.survey.Survey;
import eavesproof.survey.Vocabulary;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Facts of one run, exact to the last digit, held against a rule set: what a record with an
 * instrument that never errs would come to. Kinds that no fact was given of are not here.
 */
final class Situation {
    private final List<Answer> answers = new ArrayList<>();
    private final ShippedRules rules;

    Situation(ShippedRules rules, String gutterKind, String material, String jointing) {
        this.rules = rules;
        with(new Facts.GutterKind("a", gutterKind));
        with(new Facts.GutterMaterial("a", material));
        with(new Facts.MaterialFamily("a", material.equals("PVC-U") ? "plastic" : "metal"));
        with(new Facts.Jointing("a", jointing));
    }

    Situation with(Facts.Fact fact) {
        FactKind kind = Vocabulary.kind(fact.getClass());
        answers.add(
                new Answer.Known(
                        kind,
                        place(fact, kind),
                        fact,
                        measure(fact, kind),
                        Provenance.MEASURED,
                        List.of()));
        return this;
    }

    static Facts.Fact spacing(double mm) {
        return new Facts.BracketSpacing("a", "b1", "b2", mm);
    }

    /** The fall of a reach of 10 m that drops so many millimetres. */
    static Facts.Fact dropOver10M(double mm) {
        return new Facts.ReachFall("a", "o1", "left", mm / 10);
    }

    /** What the rule comes to in a situation to which one more fact is added. */
    static Verdict at(Situation situation, Facts.Fact fact, String rule) {
        return situation.with(fact).verdict(rule);
    }

    /** What the rule comes to at the one place that it was laid against. */
    Verdict verdict(String rule) {
        Coverage coverage = coverage();
        List<Ruling> rulings =
                new Judge(rules.book().decision())
                        .judge(coverage.requirements()).stream()
                                .filter(it -> it.requirement().rule().name().equals(rule))
                                .toList();
        if (rulings.size() != 1) {
            throw new IllegalArgumentException(rulings.size() + " rulings of " + rule);
        }
        return rulings.get(0).verdict();
    }

    /** Names of the fact kinds that ought to be judged and that no rule speaks of. */
    List<String> uncovered() {
        return coverage().uncovered().stream().map(it -> it.kind().name()).toList();
    }

    private Coverage coverage() {
        List<Answer> all = new ArrayList<>(answers);
        for (FactKind kind : Vocabulary.kinds()) {
            if (answers.stream().noneMatch(answer -> answer.kind().equals(kind))) {
                all.add(new Answer.NoneHere(kind, Place.of("run", "a"), "none here"));
            }
        }
        return Coverage.of(
                rules.book().rules(), rules.book().mustJudge(), new Survey(all), rules.engine());
    }

    private static Place place(Facts.Fact fact, FactKind kind) {
        Map<String, String> keys = new LinkedHashMap<>();
        kind.keys().forEach(key -> keys.put(key, (String) component(fact, key)));
        return new Place(keys, Optional.empty());
    }

    private static Measure measure(Facts.Fact fact, FactKind kind) {
        Object value = component(fact, kind.measure());
        Optional<Unit> unit = kind.unit();
        return unit.isPresent()
                ? new Measure.Number(Uncertain.exact((Double) value), unit.get())
                : new Measure.Word((String) value);
    }

    private static Object component(Facts.Fact fact, String name) {
        for (RecordComponent component : fact.getClass().getRecordComponents()) {
            if (component.getName().equals(name)) {
                try {
                    return component.getAccessor().invoke(fact);
                } catch (ReflectiveOperationException e) {
                    throw new IllegalStateException(e);
                }
            }
        }
        throw new IllegalArgumentException(name);
    }
}
