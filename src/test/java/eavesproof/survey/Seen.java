package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.exchange.BadRecord;
import eavesproof.exchange.JobFile;
import eavesproof.quantity.Uncertain;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** A survey as a test looks at it. */
record Seen(Survey survey) {

    static Seen of(String record) {
        return of(record, Basis.NOTHING);
    }

    static Seen of(String record, Basis basis) {
        try {
            byte[] bytes = record.getBytes(StandardCharsets.UTF_8);
            return new Seen(Surveyor.survey(JobFile.read(bytes), basis));
        } catch (BadRecord bad) {
            throw new AssertionError(bad);
        }
    }

    <F extends Facts.Fact> List<F> facts(Class<F> type) {
        return known(type).map(known -> type.cast(known.fact())).toList();
    }

    <F extends Facts.Fact> F fact(Class<F> type) {
        List<F> facts = facts(type);
        assertEquals(1, facts.size(), () -> facts + " " + survey.of(Vocabulary.kind(type)));
        return facts.get(0);
    }

    Answer.Known known(Facts.Fact fact) {
        return known(fact.getClass())
                .filter(known -> known.fact().equals(fact))
                .findFirst()
                .orElseThrow();
    }

    Uncertain value(Facts.Fact fact) {
        return ((Measure.Number) known(fact).measure()).value();
    }

    /** "a o1: why", the ids of the place first. */
    List<String> gaps(Class<? extends Facts.Fact> type) {
        return answers(type)
                .filter(Answer.Gap.class::isInstance)
                .map(Answer.Gap.class::cast)
                .map(gap -> text(gap.place(), gap.why()))
                .toList();
    }

    List<String> none(Class<? extends Facts.Fact> type) {
        return answers(type)
                .filter(Answer.NoneHere.class::isInstance)
                .map(Answer.NoneHere.class::cast)
                .map(none -> text(none.place(), none.why()))
                .toList();
    }

    private static String text(Place place, String why) {
        return String.join(" ", place.keys().values()) + ": " + why;
    }

    private Stream<Answer.Known> known(Class<? extends Facts.Fact> type) {
        return answers(type).filter(Answer.Known.class::isInstance).map(Answer.Known.class::cast);
    }

    private Stream<Answer> answers(Class<? extends Facts.Fact> type) {
        return survey.of(Vocabulary.kind(type)).stream();
    }
}
