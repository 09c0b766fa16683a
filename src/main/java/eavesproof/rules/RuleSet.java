package eavesproof.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One layer as its folder has it: what {@code rule-set.json} says, and its own rules.
 *
 * @param buildsOn the name of the rule set that it is laid over
 * @param replaces names of rules below for which it has its own
 * @param drops names of rules below that it leaves out, each with the reason
 * @param documents by key
 * @param clausesNotChecked what of its documents it does not check, in words
 * @param mustJudge names of the fact kinds on which silence is no answer
 * @param decision null where it leaves that to the rule set below
 * @param basis what it states for the engineering, by key
 * @param rules sorted by file, then line
 */
public record RuleSet(
        String name,
        String title,
        String jurisdiction,
        Optional<String> buildsOn,
        List<String> replaces,
        Map<String, String> drops,
        Map<String, Document> documents,
        List<String> clausesNotChecked,
        List<String> mustJudge,
        Optional<Decision> decision,
        Map<String, Stated> basis,
        List<Rule> rules) {

    public RuleSet {
        replaces = List.copyOf(replaces);
        drops = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(drops));
        documents = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(documents));
        clausesNotChecked = List.copyOf(clausesNotChecked);
        mustJudge = List.copyOf(mustJudge);
        basis = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(basis));
        rules = List.copyOf(rules);
    }

    /** The same layer with these rules. */
    public RuleSet with(List<Rule> its) {
        return new RuleSet(
                name,
                title,
                jurisdiction,
                buildsOn,
                replaces,
                drops,
                documents,
                clausesNotChecked,
                mustJudge,
                decision,
                basis,
                its);
    }

    /** The same layer stating this for the engineering. */
    public RuleSet stating(Map<String, Stated> its) {
        return new RuleSet(
                name,
                title,
                jurisdiction,
                buildsOn,
                replaces,
                drops,
                documents,
                clausesNotChecked,
                mustJudge,
                decision,
                its,
                rules);
    }

    /**
     * A document that rules cite.
     *
     * @param edition empty where it has none (common practice)
     * @param validFrom date, YYYY-MM-DD; as are validTo and checked
     */
    public record Document(
            String key,
            String title,
            String edition,
            Optional<String> validFrom,
            Optional<String> validTo,
            Optional<String> checked,
            Standing standing) {}

    /** What weight a document has, and how its figures are known. */
    public enum Standing {
        LAW("law"),
        ACCEPTABLE_SOLUTION("acceptable solution"),
        GUIDANCE("guidance"),
        COMMON_PRACTICE("common practice"),
        SECOND_HAND("second hand"),
        FROM_MEMORY("from memory");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** Whether nobody here has seen the figures in the document itself. */
        public boolean isUnconfirmed() {
            return this == SECOND_HAND || this == FROM_MEMORY;
        }
    }
}
