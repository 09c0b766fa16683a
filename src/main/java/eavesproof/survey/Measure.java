package eavesproof.survey;

import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;

/** What was found at a place: a number with its uncertainty, or a word. */
public sealed interface Measure {
    /** As people read it. */
    String text();

    record Number(Uncertain value, Unit unit) implements Measure {
        @Override
        public String text() {
            return Decimals.with(value.value(), unit);
        }
    }

    record Word(String word) implements Measure {
        @Override
        public String text() {
            return word;
        }
    }
}
