package eavesproof.survey;

import eavesproof.quantity.Uncertain;
import eavesproof.survey.Trough.Spot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How much of a run moves towards each of its breaks: from what holds it still, or, where nothing
 * does, all of it up to the next break, since nobody knows which way it then goes.
 */
final class Moving {
    private final Trough trough;
    private final List<Marks> stills = new ArrayList<>();
    private final List<List<Spot>> sorted = new ArrayList<>();
    private final Map<String, Found<Uncertain>> onTheLeft = new HashMap<>();
    private final Map<String, Found<Uncertain>> onTheRight = new HashMap<>();

    Moving(Trough trough, Basis basis) {
        this.trough = trough;
        for (int i = 0; i < trough.straights().size(); i++) {
            Marks marks = Stills.of(trough, i, basis);
            stills.add(marks);
            sorted.add(List.copyOf(marks.sorted()));
        }
    }

    /** Takes in what lies between two breaks. */
    void between(Spot from, Spot to, Found<Uncertain> length) {
        onTheRight.put(from.id(), length.then(mm -> fromLeft(from, to)));
        onTheLeft.put(to.id(), length.then(mm -> fromRight(from, to)));
    }

    /** Takes in that it is not known what lies between two breaks. */
    void unknown(String from, String to, String why) {
        onTheRight.put(from, Found.missing(why));
        onTheLeft.put(to, Found.missing(why));
    }

    /** What moves towards a break from its left side; at the left end of a run nothing does. */
    Found<Uncertain> fromTheLeft(String id) {
        return onTheLeft.getOrDefault(id, Found.missing("where " + id + " is, is not recorded"));
    }

    Found<Uncertain> fromTheRight(String id) {
        return onTheRight.getOrDefault(id, Found.missing("where " + id + " is, is not recorded"));
    }

    private Found<Uncertain> fromLeft(Spot from, Spot to) {
        Spot still = null;
        for (int i = from.straight(); i <= to.straight() && still == null; i++) {
            List<Spot> here = sorted.get(i);
            still =
                    i == from.straight()
                            ? Nearest.rightOf(from, here)
                            : here.isEmpty() ? null : here.get(0);
        }
        Spot end = within(from, to, still) && still != null ? still : to;
        return length(from, end);
    }

    private Found<Uncertain> fromRight(Spot from, Spot to) {
        Spot still = null;
        for (int i = to.straight(); i >= from.straight() && still == null; i--) {
            List<Spot> here = sorted.get(i);
            still =
                    i == to.straight()
                            ? Nearest.leftOf(to, here)
                            : here.isEmpty() ? null : here.get(here.size() - 1);
        }
        Spot begin = within(from, to, still) && still != null ? still : from;
        return length(begin, to);
    }

    private static boolean within(Spot from, Spot to, @Nullable Spot still) {
        return still != null
                && still.position().compareTo(from.position()) > 0
                && still.position().compareTo(to.position()) < 0;
    }

    private Found<Uncertain> length(Spot from, Spot to) {
        Optional<String> doubt = Marks.perhapsBetween(stills, from, to);
        return doubt.<Found<Uncertain>>map(Found::missing)
                .orElseGet(() -> trough.distance(from, to));
    }
}
