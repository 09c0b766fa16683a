package eavesproof.survey;

import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Something that was looked for in the record: its value, or why it cannot be told. */
sealed interface Found<T> {

    record Value<T>(T value) implements Found<T> {}

    record Missing<T>(String why) implements Found<T> {}

    static <T> Found<T> of(T value) {
        return new Value<>(value);
    }

    static <T> Found<T> missing(String why) {
        return new Missing<>(why);
    }

    /** What was recorded, or that it was not: "the length of straight a1 is not recorded". */
    static <T> Found<T> recorded(@Nullable T value, String what) {
        return orElse(value, what + " is not recorded");
    }

    static <T> Found<T> orElse(@Nullable T value, String why) {
        return value == null ? missing(why) : of(value);
    }

    static <A, B, T> Found<T> both(Found<A> a, Found<B> b, BiFunction<A, B, T> join) {
        return a.then(one -> b.map(other -> join.apply(one, other)));
    }

    default <U> Found<U> map(Function<T, U> change) {
        return then(value -> of(change.apply(value)));
    }

    default <U> Found<U> then(Function<T, Found<U>> next) {
        if (this instanceof Value<T> known) {
            return next.apply(known.value());
        }
        return missing(((Missing<T>) this).why());
    }

    default void either(Consumer<T> known, Consumer<String> missing) {
        if (this instanceof Value<T> value) {
            known.accept(value.value());
        } else {
            missing.accept(((Missing<T>) this).why());
        }
    }
}
