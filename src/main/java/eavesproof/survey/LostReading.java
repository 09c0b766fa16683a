package eavesproof.survey;

import eavesproof.survey.Trough.Position;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A reading that was taken and cannot be used. What it would have shown nobody knows, so that it
 * leaves its place unread instead of vanishing.
 *
 * @param at where it was taken; nothing where that is not recorded
 * @param surface that was read; null where that is not recorded
 * @param why it cannot be used
 */
record LostReading(int straight, Optional<Position> at, @Nullable String surface, String why) {

    boolean mayBeOf(String other) {
        return surface == null || surface.equals(other);
    }
}
