package eavesproof.check.drools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.check.Engine.Match;
import eavesproof.rules.RefusedRules;
import eavesproof.survey.FactKind;
import eavesproof.survey.Facts;
import eavesproof.survey.Vocabulary;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Some names cannot be a component of a fact: Drools stumbles over them. None of ours is one. */
class VocabularyInRulesTest {
    private static final FactKind GUTTER_KIND = Vocabulary.kind(Facts.GutterKind.class);
    private static final FactKind SNOW = Vocabulary.kind(Facts.SnowArea.class);

    /** Each kind judged once, and each that can be a circumstance of another is one. */
    @Test
    void everyKindAndComponentWorksInARule() throws RefusedRules {
        List<String> texts = new ArrayList<>();
        TreeSet<String> circumstances = new TreeSet<>();
        for (FactKind subject : Vocabulary.kinds()) {
            for (FactKind other : Vocabulary.kinds()) {
                boolean fits = !subject.equals(other) && subject.keys().containsAll(other.keys());
                if (fits && circumstances.add(other.name())) {
                    texts.add(rule(subject, other));
                }
            }
            FactKind always = subject.equals(GUTTER_KIND) ? SNOW : GUTTER_KIND;
            texts.add(rule(subject, always).replace("\"\n@", " too\"\n@"));
        }
        assertTrue(circumstances.size() > Vocabulary.kinds().size() / 2);
        List<Facts.Fact> facts =
                Vocabulary.kinds().stream().map(VocabularyInRulesTest::fact).toList();
        List<Match> matches =
                DroolsEngine.of(Books.of(texts.toArray(String[]::new))).matches(facts);
        TreeSet<String> judged =
                matches.stream()
                        .map(match -> match.subject().getClass().getSimpleName())
                        .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(texts.size(), matches.size());
        assertEquals(
                Vocabulary.kinds().stream()
                        .map(FactKind::name)
                        .collect(Collectors.toCollection(TreeSet::new)),
                judged);
    }

    private static String rule(FactKind subject, FactKind circumstance) {
        String keys =
                subject.keys().stream()
                        .map(key -> "$" + key + " : " + key)
                        .collect(Collectors.joining(", "));
        String joins =
                circumstance.keys().stream()
                        .map(key -> key + " == $" + key)
                        .collect(Collectors.joining(", "));
        String condition =
                circumstance.isNumber()
                        ? "$n : "
                                + circumstance.measure()
                                + ", "
                                + circumstance.measure()
                                + " >= 1, "
                                + circumstance.measure()
                                + " < 1.5"
                        : circumstance.measure() + " == \"" + circumstance.words().get(0) + "\"";
        String kind =
                circumstance.name().equals("GutterKind") || subject.name().equals("GutterKind")
                        ? ""
                        : "  GutterKind(run == $run, named == \"eaves\")\n";
        String demand =
                subject.isNumber()
                        ? "atMost($it, 5, \"" + subject.unit().orElseThrow().symbol() + "\")"
                        : "oneOf($it, \"" + subject.words().get(0) + "\")";
        return "rule \"%s with %s\"\n@topic(\"a\") @says(\"b\") @source(\"practice\")\nwhen\n  $it : %s(%s)\n%s  %s(%s, %s)\nthen\n  require.%s;\nend\n"
                .formatted(
                        subject.name(),
                        circumstance.name(),
                        subject.name(),
                        keys,
                        kind,
                        circumstance.name(),
                        joins,
                        condition,
                        demand);
    }

    private static Facts.Fact fact(FactKind kind) {
        Object[] values =
                Arrays.stream(kind.type().getRecordComponents())
                        .map(
                                component ->
                                        component.getType() == double.class
                                                ? (Object) 1.25
                                                : component.getName().equals(kind.measure())
                                                        ? kind.words().get(0)
                                                        : "id of " + component.getName())
                        .toArray();
        Class<?>[] types =
                Arrays.stream(kind.type().getRecordComponents())
                        .map(RecordComponent::getType)
                        .toArray(Class<?>[]::new);
        try {
            return kind.type().getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError("a fact that cannot be made", e);
        }
    }
}
