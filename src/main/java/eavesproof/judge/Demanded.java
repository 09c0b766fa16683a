package eavesproof.judge;

import eavesproof.quantity.Unit;
import java.util.List;

/** What a measure must be for its requirement to be met, in the unit of the measure. */
public sealed interface Demanded {
    record AtLeast(double limit, Unit unit) implements Demanded {}

    record AtMost(double limit, Unit unit) implements Demanded {}

    record OneOf(List<String> words) implements Demanded {
        public OneOf {
            words = List.copyOf(words);
        }
    }

    /** The limit cannot be told, or there is nothing to hold it against. */
    record NotKnown() implements Demanded {}
}
