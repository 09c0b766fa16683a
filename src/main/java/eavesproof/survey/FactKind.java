package eavesproof.survey;

import eavesproof.quantity.Unit;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What one kind of fact is called and what may be asked of it.
 *
 * @param type the record of {@link Facts}
 * @param keys names of its key components, outermost first
 * @param measure name of its last component
 * @param unit of a measure that is a number
 * @param words that a measure which is a word may take; empty where it is a number
 * @param observed whether it is counted or seen rather than measured, so that no guard band applies
 * @param says what the measure is, in words for people
 */
public record FactKind(
        Class<? extends Facts.Fact> type,
        List<String> keys,
        String measure,
        Optional<Unit> unit,
        List<String> words,
        boolean observed,
        String says) {

    public FactKind {
        keys = List.copyOf(keys);
        words = List.copyOf(words);
        if (unit.isPresent() != words.isEmpty()) {
            throw new IllegalArgumentException(
                    type.getSimpleName() + " needs a unit or words, not both");
        }
    }

    static FactKind number(Class<? extends Facts.Fact> type, Unit unit, String says) {
        return of(type, Optional.of(unit), List.of(), unit == Unit.COUNT, says);
    }

    static FactKind word(Class<? extends Facts.Fact> type, List<String> words, String says) {
        return of(type, Optional.empty(), words, true, says);
    }

    private static FactKind of(
            Class<? extends Facts.Fact> type,
            Optional<Unit> unit,
            List<String> words,
            boolean observed,
            String says) {
        List<String> names =
                Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName).toList();
        int last = names.size() - 1;
        return new FactKind(
                type, names.subList(0, last), names.get(last), unit, words, observed, says);
    }

    /** As rule files write it: BracketSpacing. */
    public String name() {
        return type.getSimpleName();
    }

    /** As results write it: bracket-spacing. */
    public String id() {
        StringBuilder id = new StringBuilder();
        for (char letter : name().toCharArray()) {
            if (Character.isUpperCase(letter) && !id.isEmpty()) {
                id.append('-');
            }
            id.append(Character.toLowerCase(letter));
        }
        return id.toString();
    }

    /** As people read it: bracket spacing. */
    public String title() {
        return id().replace('-', ' ');
    }

    public boolean isNumber() {
        return unit.isPresent();
    }

    /** There is one kind for each record type, so that it alone says which kind this is. */
    @Override
    public boolean equals(Object other) {
        return other instanceof FactKind kind && kind.type == type;
    }

    @Override
    public int hashCode() {
        return type.getName().hashCode();
    }
}
