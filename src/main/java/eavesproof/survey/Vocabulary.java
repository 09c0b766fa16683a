package eavesproof.survey;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The closed list of fact kinds: what rules may speak of, and what the survey must answer. */
public final class Vocabulary {
    private static final Map<String, FactKind> BY_NAME = index();

    private Vocabulary() {}

    public static List<FactKind> kinds() {
        return List.copyOf(BY_NAME.values());
    }

    /** The kind of the name that rule files use. */
    public static Optional<FactKind> kind(String name) {
        return Optional.ofNullable(BY_NAME.get(name));
    }

    public static FactKind kind(Class<? extends Facts.Fact> type) {
        return kind(type.getSimpleName()).orElseThrow();
    }

    private static Map<String, FactKind> index() {
        Map<String, FactKind> kinds = new LinkedHashMap<>();
        KindsOfGutter.ALL.forEach(kind -> kinds.put(kind.name(), kind));
        KindsOfWater.ALL.forEach(kind -> kinds.put(kind.name(), kind));
        return kinds;
    }
}
