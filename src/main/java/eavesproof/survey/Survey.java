package eavesproof.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All answers about one job, by kind in the order of the vocabulary. For each kind there is at
 * least one answer: a kind that was never asked would read as a pass.
 */
public final class Survey {
    private final Map<FactKind, List<Answer>> byKind;

    /**
     * @throws IllegalStateException if some kind of the vocabulary has no answer: a fault of the
     *     program
     */
    public Survey(List<Answer> answers) {
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
