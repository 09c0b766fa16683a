package eavesproof.survey;

import eavesproof.job.Said;
import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The answers as they are found, in the order in which they are found. The place of a fact is taken
 * from the fact itself, so that the two never disagree.
 */
final class Answers {
    /** How the keys of each kind of fact are read: all its components but the last. */
    private static final ClassValue<List<Method>> KEYS =
            new ClassValue<>() {
                @Override
                protected List<Method> computeValue(Class<?> type) {
                    RecordComponent[] components = type.getRecordComponents();
                    return Arrays.stream(components)
                            .limit(components.length - 1)
                            .map(RecordComponent::getAccessor)
                            .toList();
                }
            };

    private final List<Answer> all;
    private final Map<String, Index> indices;
    private final Map<String, WaterLine> waters;
    private final Optional<Place.Stretch> stretch;

    /** Answers of one kind by what is under one key, as far as they were looked through. */
    private static final class Index {
        private final Map<String, List<Answer>> byId = new HashMap<>();
        private int seen;
    }

    Answers() {
        this(new ArrayList<>(), new HashMap<>(), new LinkedHashMap<>(), Optional.empty());
    }

    private Answers(
            List<Answer> all,
            Map<String, Index> indices,
            Map<String, WaterLine> waters,
            Optional<Place.Stretch> stretch) {
        this.all = all;
        this.indices = indices;
        this.waters = waters;
        this.stretch = stretch;
    }

    /** The same answers, to be shown from one station of a straight to another. */
    Answers on(String straight, double fromMm, double toMm) {
        return new Answers(
                all, indices, waters, Optional.of(new Place.Stretch(straight, fromMm, toMm)));
    }

    /** The water in a run, beside the facts that were found of it. */
    void water(String run, WaterLine line) {
        waters.put(run, line);
    }

    Survey asSurvey() {
        return new Survey(all, waters);
    }

    /** A number that was measured or counted. */
    void known(Facts.Fact fact, Uncertain value, Working... workings) {
        FactKind kind = Vocabulary.kind(fact.getClass());
        Unit unit = kind.unit().orElseThrow();
        Measure measure = new Measure.Number(value, unit);
        known(kind, fact, measure, Provenance.MEASURED, List.of(workings));
    }

    /** A word that follows from what was measured. */
    void concluded(Facts.Fact fact, String word, Working... workings) {
        FactKind kind = Vocabulary.kind(fact.getClass());
        Measure measure = new Measure.Word(word);
        known(kind, fact, measure, Provenance.MEASURED, List.of(workings));
    }

    /** A number that somebody states, or that rests on one. */
    void stated(Facts.Fact fact, Uncertain value, Provenance provenance, Working... workings) {
        FactKind kind = Vocabulary.kind(fact.getClass());
        Measure measure = new Measure.Number(value, kind.unit().orElseThrow());
        known(kind, fact, measure, provenance, List.of(workings));
    }

    /** What was answered so far about a kind of fact, at the places with this id under a key. */
    List<Answer> of(Class<? extends Facts.Fact> type, String key, String id) {
        FactKind kind = Vocabulary.kind(type);
        Index index = indices.computeIfAbsent(kind.name() + " " + key, none -> new Index());
        for (; index.seen < all.size(); index.seen++) {
            Answer answer = all.get(index.seen);
            if (answer.kind().equals(kind)) {
                answer.place()
                        .key(key)
                        .ifPresent(
                                it ->
                                        index.byId
                                                .computeIfAbsent(it, none -> new ArrayList<>())
                                                .add(answer));
            }
        }
        return List.copyOf(index.byId.getOrDefault(id, List.of()));
    }

    /**
     * A word of the record, or a gap where it is missing, unknown or no word for this kind of fact.
     *
     * @param what the thing that is said: "the material of gutter g"
     */
    void word(
            Class<? extends Facts.Fact> type,
            @Nullable String word,
            Function<String, Facts.Fact> fact,
            String what,
            String... ids) {
        word(type, word, fact, Provenance.RECORDED, what, ids);
    }

    /** A word with who says so. */
    void said(
            Class<? extends Facts.Fact> type,
            Said<String> said,
            Function<String, Facts.Fact> fact,
            String what,
            String... ids) {
        word(type, said.is(), fact, Provenance.of(said), what, ids);
    }

    private void word(
            Class<? extends Facts.Fact> type,
            @Nullable String word,
            Function<String, Facts.Fact> fact,
            Provenance provenance,
            String what,
            String... ids) {
        FactKind kind = Vocabulary.kind(type);
        if (word == null) {
            gap(type, Found.open(what, null), ids);
        } else if (word.equals(Words.UNKNOWN)) {
            gap(type, Found.open(what, word), ids);
        } else if (!kind.words().contains(word)) {
            gap(type, what + " is recorded as " + word + ", which is no word for it", ids);
        } else {
            Working working = new Working(what, word, provenance.text());
            Measure measure = new Measure.Word(word);
            known(kind, fact.apply(word), measure, provenance, List.of(working));
        }
    }

    /**
     * @param ids of the places as far as they are known, outermost first
     */
    void gap(Class<? extends Facts.Fact> type, String why, String... ids) {
        FactKind kind = Vocabulary.kind(type);
        all.add(new Answer.Gap(kind, place(kind, ids), why));
    }

    void none(Class<? extends Facts.Fact> type, String why, String... ids) {
        FactKind kind = Vocabulary.kind(type);
        all.add(new Answer.NoneHere(kind, place(kind, ids), why));
    }

    static Working working(String name, Uncertain value, Unit unit, String from) {
        return new Working(name, Decimals.with(value.value(), unit), from);
    }

    /** As people read it: "5900 mm2". */
    static String text(double value, Unit unit) {
        return Decimals.with(value, unit);
    }

    private void known(
            FactKind kind,
            Facts.Fact fact,
            Measure measure,
            Provenance provenance,
            List<Working> workings) {
        all.add(
                new Answer.Known(
                        kind, place(kind, keysOf(fact)), fact, measure, provenance, workings));
    }

    private Place place(FactKind kind, String... ids) {
        Map<String, String> keys = new LinkedHashMap<>();
        for (int i = 0; i < ids.length; i++) {
            keys.put(kind.keys().get(i), ids[i]);
        }
        return new Place(keys, stretch);
    }

    private static String[] keysOf(Facts.Fact fact) {
        List<Method> keys = KEYS.get(fact.getClass());
        String[] ids = new String[keys.size()];
        try {
            for (int i = 0; i < ids.length; i++) {
                ids[i] = (String) keys.get(i).invoke(fact);
            }
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a fact whose keys cannot be read: " + fact, e);
        }
        return ids;
    }
}
