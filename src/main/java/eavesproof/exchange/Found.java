package eavesproof.exchange;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A value of the record and where it stood. What was null, left out or wrong is not there.
 *
 * @param value a text, a Double, an Integer, a list of Found, or Found by key
 */
record Found(String pointer, int line, int column, Object value) {

    /** What stands under the keys of an object, or by id; nothing for any other value. */
    Map<String, Found> keys() {
        return value instanceof Map<?, ?> map ? located(map) : Map.of();
    }

    @Nullable Found at(String key) {
        return keys().get(key);
    }

    /** The elements of the list under a key; none where there is no list. */
    List<Found> items(String key) {
        Found list = at(key);
        return list == null ? List.of() : list.items();
    }

    List<Found> items() {
        return value instanceof List<?> list ? located(list) : List.of();
    }

    @Nullable String text(String key) {
        Found text = at(key);
        return text != null && text.value instanceof String known ? known : null;
    }

    @Nullable Double number(String key) {
        Found number = at(key);
        return number != null && number.value instanceof Number known ? known.doubleValue() : null;
    }

    @SuppressWarnings("unchecked") // the reader makes no other map
    private static Map<String, Found> located(Map<?, ?> map) {
        return (Map<String, Found>) map;
    }

    @SuppressWarnings("unchecked") // the reader makes no other list
    private static List<Found> located(List<?> list) {
        return (List<Found>) list;
    }
}
