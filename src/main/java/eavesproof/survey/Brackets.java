package eavesproof.survey;

import eavesproof.job.Run.Bracket;
import eavesproof.job.Run.Straight;
import eavesproof.survey.Trough.Spot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the brackets of a straight are. A fitting that carries the gutter and is screwed on is one
 * too, by whatever name it was recorded.
 */
final class Brackets {
    private Brackets() {}

    /** From left to right, or the reason why they cannot be sorted. */
    static Found<List<Spot>> sorted(Trough trough, int index) {
        return of(trough, index).then(brackets -> sorted(trough, index, brackets));
    }

    private static Found<List<Spot>> sorted(Trough trough, int index, List<Holder> brackets) {
        List<Spot> spots = new ArrayList<>();
        for (Holder bracket : brackets) {
            if (!bracket.isBracket() && bracket.holds() instanceof Found.Missing<Boolean> open) {
                return Found.missing(open.why());
            }
            Found<Spot> spot =
                    trough.spot(index, bracket.id(), bracket.name(), bracket.stationMm());
            if (spot instanceof Found.Missing<Spot> missing) {
                return Found.missing(missing.why());
            }
            spot.map(spots::add);
        }
        Collections.sort(spots);
        return Found.of(spots);
    }

    private static Found<List<Holder>> of(Trough trough, int index) {
        Straight straight = trough.straight(index);
        if (straight.brackets() == null) {
            return Found.missing(notRecorded(straight));
        } else if (straight.fittings() == null) {
            return Found.missing(Holders.fittingsNotRecorded(straight));
        }
        return Found.of(
                Holders.on(trough, index).all().stream()
                        .filter(it -> it.isBracket() || it.sort() == Holder.Sort.FITTING)
                        .toList());
    }

    /**
     * The outermost of those that hold: a bracket without a screw is only hung there, and one of
     * which nobody counted them may be.
     */
    static Found<Spot> outermost(Trough trough, int index, boolean left) {
        return of(trough, index).then(all -> outermost(trough, index, all, left));
    }

    private static Found<Spot> outermost(
            Trough trough, int index, List<Holder> brackets, boolean left) {
        Map<String, Holder> byId = new HashMap<>();
        brackets.forEach(it -> byId.put(it.id(), it));
        return sorted(trough, index, brackets)
                .then(
                        spots -> {
                            List<Spot> inwards = new ArrayList<>(spots);
                            if (!left) {
                                Collections.reverse(inwards);
                            }
                            for (Spot spot : inwards) {
                                Holder bracket = byId.get(spot.id());
                                if (bracket != null
                                        && bracket.holds() instanceof Found.Missing<Boolean> open) {
                                    return Found.missing(open.why());
                                } else if (bracket != null && bracket.holdsForSure()) {
                                    return Found.of(spot);
                                }
                            }
                            return Found.missing(noneScrewed(trough.straight(index)));
                        });
    }

    /** Whether it is known that no bracket of a straight is screwed on. */
    static boolean noneHolds(Trough trough, int index) {
        return of(trough, index) instanceof Found.Value<List<Holder>> known
                && known.value().stream().allMatch(Holder::holdsNothing);
    }

    static String screwsNotRecorded(Bracket bracket) {
        return "the screws of bracket " + bracket.id() + " are not recorded";
    }

    static String noneScrewed(Straight straight) {
        List<Bracket> all = straight.brackets();
        return none(straight) + (all == null || all.isEmpty() ? "" : " that is screwed on");
    }

    static String none(Straight straight) {
        return "straight " + straight.id() + " has no bracket";
    }

    static String notRecorded(Straight straight) {
        return "the brackets of straight " + straight.id() + " are not recorded";
    }
}
