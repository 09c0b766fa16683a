package eavesproof.check;

import eavesproof.survey.Facts;
import java.util.List;
import java.util.Map;

/**
 * What the rule engine observes: which rule's conditions hold for which subject. It judges nothing.
 */
public interface Engine {
    /**
     * Every rule that met a subject, in no particular order.
     *
     * @throws EngineFault if anything at all went wrong in the session; no part of it can be relied
     *     on then
     */
    List<Match> matches(List<Facts.Fact> facts);

    /**
     * @param rule the name of the rule
     * @param subject the very fact that was inserted
     * @param bound variable of the rule ("$width") to its number, string or fact
     */
    record Match(String rule, Facts.Fact subject, Map<String, Object> bound) {}

    /** A session that crashed, ran over its limits, or disagreed with the coverage. */
    final class EngineFault extends RuntimeException {
        private static final long serialVersionUID = 1L;

        public EngineFault(String message) {
            super(message);
        }

        public EngineFault(String message, Throwable cause) {
            super(message, cause);
        }
    }
}
