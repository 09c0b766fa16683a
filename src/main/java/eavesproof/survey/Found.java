package eavesproof.survey;

import eavesproof.hydraulics.Refused;
import eavesproof.job.Words;
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

    /** Why a word says nothing: it is not there, or it is that nobody knows. */
    static String open(String what, @Nullable String word) {
        return what + (Words.UNKNOWN.equals(word) ? " is recorded as unknown" : " is not recorded");
    }

    /** What was recorded, or that it was not: "the length of straight a1 is not recorded". */
    static <T> Found<T> recorded(@Nullable T value, String what) {
        return orElse(value, what + " is not recorded");
    }

    static <T> Found<T> orElse(@Nullable T value, String why) {
        return value == null ? missing(why) : of(value);
    }

    /** What is worked out from several things, each of which may be missing. */
    interface Work<T> {
        T out() throws Lacking;
    }

    /** Something that is needed is missing; caught where the work began. */
    final class Lacking extends Exception {
        private static final long serialVersionUID = 1L;

        private final String why;

        private Lacking(String why) {
            super(why);
            this.why = why;
        }
    }

    /** What comes out of the work; missing where it lacks something, or a method refuses it. */
    static <T> Found<T> by(Work<T> work) {
        try {
            return of(work.out());
        } catch (Lacking lacking) {
            return missing(lacking.why);
        } catch (Refused refused) {
            return missing(refused.why());
        }
    }

    static Lacking lacking(String why) {
        return new Lacking(why);
    }

    /** What was recorded; to be called within {@link #by}. */
    static <T> T need(@Nullable T value, String what) throws Lacking {
        return recorded(value, what).need();
    }

    /** Its value; to be called within {@link #by}. */
    default T need() throws Lacking {
        if (this instanceof Value<T> known) {
            return known.value();
        }
        throw new Lacking(((Missing<T>) this).why());
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
