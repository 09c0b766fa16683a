package eavesproof.check;

import eavesproof.quantity.Uncertain;
import eavesproof.rules.Rule;
import eavesproof.survey.Answer;
import eavesproof.survey.FactKind;
import eavesproof.survey.Facts;
import eavesproof.survey.Measure;
import eavesproof.survey.Place;
import eavesproof.survey.Provenance;
import eavesproof.survey.Survey;
import eavesproof.survey.Vocabulary;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One bracket spacing of run "a" under circumstances, against the rule of 300 mm where snow lies;
 * answers are added one by one, and every other kind of fact is not here.
 */
public final class Case {
    private final List<Answer> answers = new ArrayList<>();
    private final Set<String> matched = new HashSet<>();

    public static final Rule SNOW_RULE =
            rule(
                    "centres where snow lies",
                    new Rule.Pattern("SnowArea", "$snow", List.of(join(), is("said", "yes"))));

    static Rule rule(String name, Rule.Pattern... circumstances) {
        return new Rule(
                name,
                "support",
                "Where snow lies, brackets are close enough to carry it.",
                new Rule.Cited("practice", ""),
                Optional.empty(),
                new Rule.Pattern(
                        "BracketSpacing", "$spacing", List.of(new Rule.Bind("$run", "run"))),
                List.of(circumstances),
                new Rule.AtMost(new Rule.Constant(new Rule.Num(300, "300")), "mm"),
                "support.drl",
                1);
    }

    static Rule.Condition join() {
        return new Rule.Join("run", "$run");
    }

    static Rule.Condition is(String field, String word) {
        return new Rule.Compare(field, Rule.Operator.EQUAL, new Rule.Text(word));
    }

    public Case spacing(Uncertain mm) {
        Facts.Fact fact = new Facts.BracketSpacing("a", "b1", "b2", mm.value());
        answers.add(
                known(
                        fact,
                        Place.of("run", "a", "from", "b1", "to", "b2"),
                        new Measure.Number(
                                mm, Vocabulary.kind(fact.getClass()).unit().orElseThrow())));
        return this;
    }

    public Case snow(String said) {
        answers.add(
                known(new Facts.SnowArea("a", said), Place.of("run", "a"), new Measure.Word(said)));
        return this;
    }

    public Case width(Uncertain mm) {
        Facts.Fact fact = new Facts.GutterWidth("a", mm.value());
        answers.add(
                known(
                        fact,
                        Place.of("run", "a"),
                        new Measure.Number(
                                mm, Vocabulary.kind(fact.getClass()).unit().orElseThrow())));
        return this;
    }

    public Case gap(Class<? extends Facts.Fact> type, String why) {
        answers.add(new Answer.Gap(Vocabulary.kind(type), Place.of("run", "a"), why));
        return this;
    }

    /** The engine will report that this rule met the spacing. */
    public Case engineMatches(String rule) {
        matched.add(rule);
        return this;
    }

    public Coverage coverage(Rule... rules) {
        List<Answer> all = new ArrayList<>(answers);
        for (FactKind kind : Vocabulary.kinds()) {
            if (answers.stream().noneMatch(a -> a.kind().equals(kind))) {
                all.add(new Answer.NoneHere(kind, Place.of("run", "a"), "none here"));
            }
        }
        Engine engine =
                facts ->
                        facts.stream()
                                .filter(Facts.BracketSpacing.class::isInstance)
                                .flatMap(
                                        fact ->
                                                matched.stream()
                                                        .map(
                                                                r ->
                                                                        new Engine.Match(
                                                                                r, fact, Map.of())))
                                .toList();
        return Coverage.of(List.of(rules), List.of("BracketSpacing"), new Survey(all), engine);
    }

    public Requirement requirement(Rule rule) {
        return coverage(rule).requirements().get(0);
    }

    private static Answer.Known known(Facts.Fact fact, Place place, Measure measure) {
        return new Answer.Known(
                Vocabulary.kind(fact.getClass()),
                place,
                fact,
                measure,
                Provenance.MEASURED,
                List.of());
    }
}
