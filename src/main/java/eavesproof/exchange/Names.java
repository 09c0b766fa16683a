package eavesproof.exchange;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The ids that a record gives and those that it refers to, collected while it is read. */
final class Names {
    private final Map<IdKind, Map<String, Found>> given = new EnumMap<>(IdKind.class);
    private final List<Found> twice = new ArrayList<>();
    private final List<Reference> references = new ArrayList<>();
    private final Set<IdKind> unsure = EnumSet.noneOf(IdKind.class);

    private record Reference(IdKind kind, String id, Found at) {}

    void give(IdKind kind, String id, Found at) {
        Map<String, Found> ofKind = given.computeIfAbsent(kind, none -> new LinkedHashMap<>());
        if (ofKind.putIfAbsent(kind.boundary(at.pointer()) + '\n' + id, at) != null) {
            twice.add(at);
        }
    }

    void refer(IdKind kind, String id, Found at) {
        references.add(new Reference(kind, id, at));
    }

    /** Says that part of the record could not be read, and with it ids of these kinds. */
    void lost(Set<IdKind> kinds) {
        unsure.addAll(kinds);
    }

    /** Adds every id given twice, and every reference to nothing unless its target was lost. */
    void check(Problems problems) {
        twice.forEach(id -> again(id, problems));
        for (Reference reference : references) {
            IdKind kind = reference.kind();
            if (!isGiven(kind, reference.id()) && !unsure.contains(kind)) {
                problems.add(reference.at(), found(reference.id()), expected(reference));
            }
        }
    }

    /** The id, and what else it belongs to: a way that leads onto a straight, say. */
    private String found(String id) {
        return given.keySet().stream()
                .filter(kind -> isGiven(kind, id))
                .findFirst()
                .map(kind -> Shown.quoted(id) + ", which is " + kind.words())
                .orElse(Shown.quoted(id));
    }

    private boolean isGiven(IdKind kind, String id) {
        return given.getOrDefault(kind, Map.of()).containsKey('\n' + id);
    }

    private String expected(Reference reference) {
        IdKind kind = reference.kind();
        List<String> known =
                given.getOrDefault(kind, Map.of()).keySet().stream()
                        .map(key -> key.substring(key.indexOf('\n') + 1))
                        .toList();
        if (known.isEmpty()) {
            return "the id of " + kind.words() + ", and the record has none";
        }
        String some = known.stream().limit(12).collect(Collectors.joining(", "));
        return "the id of " + kind.words() + ": " + some + (known.size() > 12 ? ", …" : "");
    }

    static void again(Found id, Problems problems) {
        problems.add(
                id,
                "the id " + Shown.quoted(id.value().toString()) + " again",
                "each id only once");
    }
}
