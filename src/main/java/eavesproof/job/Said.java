package eavesproof.job;

import org.jspecify.annotations.Nullable;

/**
 * A circumstance or an approval, and who says so. Whatever is not said stays null: a gap, never a
 * default.
 *
 * @param is what is said: a word of the record's vocabulary ("yes", "no", "unknown"), or a number
 * @param how {@link Words#HOW}: measured, seen, told or assumed
 * @param by who measured, saw, told or assumed it
 * @param reference a letter, permit, drawing or table that it can be found in
 */
public record Said<T>(
        @Nullable T is, @Nullable String how, @Nullable String by, @Nullable String reference) {

    public static <T> Said<T> nothing() {
        return new Said<>(null, null, null, null);
    }
}
