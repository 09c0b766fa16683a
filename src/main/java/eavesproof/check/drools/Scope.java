package eavesproof.check.drools;

import eavesproof.survey.FactKind;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the variables of one rule stand for, as far as its patterns have been read. */
final class Scope {
    /** A variable stands for one component of a fact kind. */
    record Bound(FactKind kind, String field) {}

    private final Map<String, Bound> variables = new LinkedHashMap<>();
    private @Nullable FactKind subject;
    private String subjectVariable = "";

    void subject(FactKind kind, String variable) {
        subject = kind;
        subjectVariable = variable;
    }

    Optional<FactKind> subject() {
        return Optional.ofNullable(subject);
    }

    String subjectVariable() {
        return subjectVariable;
    }

    /** Whether the variable was free until now. */
    boolean bind(String variable, FactKind kind, String field) {
        return !variable.equals(subjectVariable)
                && variables.putIfAbsent(variable, new Bound(kind, field)) == null;
    }

    Optional<Bound> variable(String name) {
        return Optional.ofNullable(variables.get(name));
    }
}
