package eavesproof.survey;

import eavesproof.job.Run.Fixing;
import org.jspecify.annotations.Nullable;

/**
 * Something that a straight rests on, or may rest on: a bracket, or what else carries the gutter
 * and is screwed to the fascia. All of them are asked the same.
 *
 * @param name with its word: "bracket b3"
 * @param fixing how it is screwed on, and what it carries
 * @param holds whether it holds, or why nobody knows
 */
record Holder(
        Sort sort,
        String id,
        String name,
        @Nullable Double stationMm,
        Fixing fixing,
        Found<Boolean> holds) {
    enum Sort {
        BRACKET("bracket "),
        JOINT("joint "),
        FITTING("fitting "),
        OUTLET("outlet ");

        private final String word;

        Sort(String word) {
            this.word = word;
        }

        String named(String id) {
            return word + id;
        }
    }

    boolean isBracket() {
        return sort == Sort.BRACKET;
    }

    boolean holdsNothing() {
        return holds instanceof Found.Value<Boolean> known && !known.value();
    }

    boolean holdsForSure() {
        return holds instanceof Found.Value<Boolean> known && known.value();
    }
}
