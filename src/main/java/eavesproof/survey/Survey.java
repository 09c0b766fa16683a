package eavesproof.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All answers about one job, by kind in the order of the vocabulary. For each kind there is at
 * least one answer: a kind that was never asked would read as a pass.
 */
public final class Survey {
    private final Map<FactKind, List<Answer>> byKind;
    private final Map<String, WaterLine> waters;

    /** The same where no water was worked out. */
    public Survey(List<Answer> answers) {
        this(answers, Map.of());
    }

    /**
     * @param waters by run, where the water in it is known
     * @throws IllegalStateException if some kind of the vocabulary has no answer: a fault of the
     *     program
     */
    Survey(List<Answer> answers, Map<String, WaterLine> waters) {
        Map<FactKind, List<Answer>> sorted = new LinkedHashMap<>();
        Vocabulary.kinds().forEach(kind -> sorted.put(kind, new ArrayList<>()));
        for (Answer answer : answers) {
            List<Answer> ofKind = sorted.get(answer.kind());
            if (ofKind == null) {
                throw new IllegalStateException(
                        "the vocabulary has no kind " + answer.kind().name());
            }
            ofKind.add(answer);
        }
        sorted.forEach(
                (kind, list) -> {
                    if (list.isEmpty()) {
                        throw new IllegalStateException(
                                "the survey has no answer for " + kind.name());
                    }
                });
        sorted.replaceAll((kind, list) -> List.copyOf(list));
        byKind = sorted;
        this.waters = Map.copyOf(waters);
    }

    /**
     * The water in a run in the design rain; where it is absent, the gap of its freeboard says why.
     */
    public Optional<WaterLine> water(String run) {
        return Optional.ofNullable(waters.get(run));
    }

    public List<Answer> of(FactKind kind) {
        return byKind.getOrDefault(kind, List.of());
    }

    public List<Answer.Known> known() {
        return byKind.values().stream()
                .flatMap(List::stream)
                .filter(Answer.Known.class::isInstance)
                .map(Answer.Known.class::cast)
                .toList();
    }
}
