package eavesproof.exchange;

import com.fasterxml.jackson.core.JsonToken;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Takes the keys of one JSON object one after the other. What is missing or wrong becomes a
 * problem, and something harmless stands in for it until the whole is refused.
 */
final class ObjectReader {
    static final Pattern LINE = Pattern.compile("\\P{C}{1,1000}");
    static final Pattern LINE_OR_EMPTY = Pattern.compile("\\P{C}{0,1000}");

    private static final Leaf.Date DATE = new Leaf.Date();

    private final Found object;
    private final Problems problems;
    private final Set<String> taken = new HashSet<>();

    ObjectReader(Found object, Problems problems) {
        this.object = object;
        this.problems = problems;
        if (!(object.value() instanceof Map<?, ?>)) {
            problems.add(object, "another value", "an object");
        }
    }

    @Nullable Found take(String key) {
        taken.add(key);
        return object.at(key);
    }

    void problem(Found at, String found, String expected) {
        problems.add(at, found, expected);
    }

    String text(String key) {
        return text(key, LINE, "a text on one line");
    }

    String text(String key, Pattern pattern, String expected) {
        return must(key, expected).map(found -> matching(found, pattern, expected)).orElse("");
    }

    /** Nothing where the key is absent or null. */
    Optional<String> mayBe(String key, Pattern pattern, String expected) {
        return may(key).map(found -> matching(found, pattern, expected));
    }

    Optional<String> date(String key) {
        Optional<Found> found = may(key);
        if (found.isPresent()
                && (!(found.get().value() instanceof String text)
                        || DATE.value(JsonToken.VALUE_STRING, text) == null)) {
            problems.add(found.get(), shown(found.get()), DATE.expected() + ", or null");
        }
        return found.map(date -> String.valueOf(date.value()));
    }

    /** What one of the words stands for; the first where it is none of them. */
    <T> T oneOf(String key, Map<String, T> byWord) {
        String expected = "one of " + Shape.oneOf(List.copyOf(byWord.keySet()));
        Optional<Found> found = must(key, expected);
        T meant = found.map(one -> byWord.get(one.value())).orElse(null);
        if (meant == null) {
            found.ifPresent(one -> problems.add(one, shown(one), expected));
            return byWord.values().iterator().next();
        }
        return meant;
    }

    /** Different texts. */
    List<String> texts(String key, Pattern pattern, String expected, boolean needed) {
        Optional<Found> list = needed ? must(key, "a list") : may(key);
        if (list.isPresent() && !(list.get().value() instanceof List<?>)) {
            problems.add(list.get(), shown(list.get()), "a list");
        }
        List<String> texts = new ArrayList<>();
        for (Found item : list.map(Found::items).orElse(List.of())) {
            String text = matching(item, pattern, expected);
            if (texts.contains(text)) {
                problems.add(item, shown(item) + " again", "it once");
            }
            texts.add(text);
        }
        return texts;
    }

    Map<String, String> textByKey(String key, Pattern pattern, String expected) {
        Map<String, String> texts = new LinkedHashMap<>();
        entries(key, pattern, expected)
                .forEach((name, found) -> texts.put(name, matching(found, LINE, "a text")));
        return texts;
    }

    Map<String, ObjectReader> objects(String key, Pattern pattern, String expected) {
        Map<String, ObjectReader> objects = new LinkedHashMap<>();
        entries(key, pattern, expected)
                .forEach((name, found) -> objects.put(name, new ObjectReader(found, problems)));
        return objects;
    }

    /** Every key that nobody took is one that nobody knows. */
    void nothingElse() {
        object.keys()
                .forEach(
                        (key, found) -> {
                            if (!taken.contains(key)) {
                                String known = "one of " + taken.stream().sorted().toList();
                                problems.add(found, "the key " + Shown.quoted(key), known);
                            }
                        });
    }

    private Map<String, Found> entries(String key, Pattern pattern, String expected) {
        Optional<Found> map = may(key);
        if (map.isPresent() && !(map.get().value() instanceof Map<?, ?>)) {
            problems.add(map.get(), shown(map.get()), "an object");
        }
        Map<String, Found> entries = map.map(Found::keys).orElse(Map.of());
        entries.forEach(
                (name, found) -> {
                    if (!pattern.matcher(name).matches()) {
                        problems.add(found, Shown.quoted(name), expected);
                    }
                });
        return entries;
    }

    private Optional<Found> may(String key) {
        return Optional.ofNullable(take(key))
                .filter(found -> found.value() != LocatedJson.Nothing.NULL);
    }

    private Optional<Found> must(String key, String expected) {
        Optional<Found> found = may(key);
        if (found.isEmpty()) {
            problems.add(object, "no `" + key + "`", expected);
        }
        return found;
    }

    private String matching(Found found, Pattern pattern, String expected) {
        if (found.value() instanceof String text && pattern.matcher(text).matches()) {
            return text;
        }
        problems.add(found, shown(found), expected);
        return "";
    }

    private static String shown(Found found) {
        return found.value() instanceof String text ? Shown.quoted(text) : "another value";
    }
}
