package eavesproof.survey;

import eavesproof.job.Run;
import eavesproof.job.Run.Bracket;
import eavesproof.job.Run.Straight;
import eavesproof.job.Said;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Trough.Spot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How each bracket is fixed. */
final class Brackets {
    private final String run;
    private final Straight straight;
    private final Instruments instruments;
    private final Answers answers;

    private Brackets(Trough trough, Straight straight, Answers answers) {
        this.run = trough.id();
        this.straight = straight;
        this.instruments = trough.instruments();
        this.answers = answers;
    }

    static void answer(Trough trough, Answers answers) {
        trough.straights().forEach(straight -> new Brackets(trough, straight, answers).fixings());
    }

    /** The brackets of a straight from left to right, or the reason why they cannot be sorted. */
    static Found<List<Spot>> sorted(Trough trough, int index) {
        Straight straight = trough.straight(index);
        List<Bracket> brackets = straight.brackets();
        if (brackets == null) {
            return Found.missing(notRecorded(straight));
        }
        List<Spot> spots = new ArrayList<>();
        for (Bracket bracket : brackets) {
            String name = "bracket " + bracket.id();
            Found<Spot> spot = trough.spot(index, bracket.id(), name, bracket.stationMm());
            if (spot instanceof Found.Missing<Spot> missing) {
                return Found.missing(missing.why());
            }
            spot.map(spots::add);
        }
        Collections.sort(spots);
        return Found.of(spots);
    }

    /**
     * The outermost of those that hold: a bracket without a screw is only hung there, and one of
     * which nobody counted them may be.
     */
    static Found<Spot> outermost(Trough trough, int index, boolean left) {
        Straight straight = trough.straight(index);
        Map<String, Bracket> byId = new HashMap<>();
        List<Bracket> all = straight.brackets();
        (all == null ? List.<Bracket>of() : all).forEach(it -> byId.put(it.id(), it));
        return sorted(trough, index)
                .then(
                        spots -> {
                            List<Spot> inwards = new ArrayList<>(spots);
                            if (!left) {
                                Collections.reverse(inwards);
                            }
                            for (Spot spot : inwards) {
                                Bracket bracket = byId.get(spot.id());
                                Integer screws = bracket == null ? null : bracket.screwsFitted();
                                if (bracket != null && screws == null) {
                                    return Found.missing(screwsNotRecorded(bracket));
                                } else if (screws != null && screws > 0) {
                                    return Found.of(spot);
                                }
                            }
                            return Found.missing(noneScrewed(straight));
                        });
    }

    /** Whether it is known that no bracket of a straight is screwed on. */
    static boolean noneHolds(Straight straight) {
        List<Bracket> all = straight.brackets();
        return all != null
                && all.stream().allMatch(it -> it.screwsFitted() != null && it.screwsFitted() == 0);
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

    private void fixings() {
        List<Bracket> brackets = straight.brackets();
        if (brackets == null) {
            answers.gap(Facts.BracketHoles.class, notRecorded(straight), run);
            answers.gap(Facts.EmptyHoles.class, notRecorded(straight), run);
            answers.gap(Facts.ScrewMetal.class, notRecorded(straight), run);
            answers.gap(Facts.ScrewBite.class, notRecorded(straight), run);
            answers.gap(Facts.TimberSound.class, notRecorded(straight), run);
            answers.gap(Facts.TimberTreatment.class, notRecorded(straight), run);
        } else if (brackets.isEmpty()) {
            answers.none(Facts.BracketHoles.class, none(straight), run);
            answers.none(Facts.EmptyHoles.class, none(straight), run);
            answers.none(Facts.ScrewMetal.class, none(straight), run);
            answers.none(Facts.ScrewBite.class, none(straight), run);
            answers.none(Facts.TimberSound.class, none(straight), run);
            answers.none(Facts.TimberTreatment.class, none(straight), run);
        } else {
            brackets.forEach(this::fixing);
        }
    }

    private void fixing(Bracket bracket) {
        String id = bracket.id();
        Double at = bracket.stationMm();
        Answers here = at == null ? answers : answers.on(straight.id(), at, at);
        Found<Integer> holes =
                Found.orElse(
                        bracket.holesProvided(),
                        "the holes of bracket " + id + " are not recorded");
        Found<Integer> screws = Found.orElse(bracket.screwsFitted(), screwsNotRecorded(bracket));
        holes.either(
                count -> holes(id, count, here),
                why -> here.gap(Facts.BracketHoles.class, why, run, id));
        screws.then(fitted -> holes.then(provided -> empty(id, fitted, provided)))
                .either(
                        empty -> emptyHoles(id, empty, here),
                        why -> here.gap(Facts.EmptyHoles.class, why, run, id));
        metal(bracket, here);
        bite(bracket, here);
        timber(id, here);
    }

    private void bite(Bracket bracket, Answers here) {
        String id = bracket.id();
        Double mm = bracket.biteMm();
        Integer screws = bracket.screwsFitted();
        if (screws != null && screws == 0 && mm == null) {
            here.none(Facts.ScrewBite.class, "bracket " + id + " has no screw", run, id);
        } else if (mm == null) {
            String why = "how deep the screws of bracket " + id + " sit is not recorded";
            here.gap(Facts.ScrewBite.class, why, run, id);
        } else {
            String with = instruments.named(straight.measuredWith());
            Uncertain bite =
                    instruments.read(
                            mm,
                            "bite of the screws of bracket " + id,
                            straight.measuredWith(),
                            "straight " + straight.id());
            here.known(
                    new Facts.ScrewBite(run, id, mm),
                    bite,
                    Answers.working("bite", bite, Unit.MM, with));
        }
    }

    /** A bracket is no better than the timber that it is screwed to: asked of each by itself. */
    private void timber(String bracket, Answers here) {
        Run.Fascia fascia = straight.fascia();
        here.said(
                Facts.TimberSound.class,
                fascia == null ? Said.nothing() : fascia.sound(),
                word -> new Facts.TimberSound(run, bracket, word),
                "whether the fascia of straight " + straight.id() + " is sound",
                run,
                bracket);
        here.said(
                Facts.TimberTreatment.class,
                fascia == null ? Said.nothing() : fascia.treatedWith(),
                word -> new Facts.TimberTreatment(run, bracket, word),
                "what the fascia of straight " + straight.id() + " was treated with",
                run,
                bracket);
    }

    private void holes(String bracket, int holes, Answers here) {
        Uncertain count = Uncertain.exact(holes);
        here.known(
                new Facts.BracketHoles(run, bracket, holes),
                count,
                Answers.working("holes", count, Unit.COUNT, "as recorded"));
    }

    /** A record that contradicts itself shows nothing, and surely not that no hole is empty. */
    private static Found<Integer> empty(String bracket, int screws, int holes) {
        return screws > holes
                ? Found.missing("bracket " + bracket + " is recorded with more screws than holes")
                : Found.of(holes - screws);
    }

    private void emptyHoles(String bracket, int empty, Answers here) {
        Uncertain count = Uncertain.exact(empty);
        here.known(
                new Facts.EmptyHoles(run, bracket, empty),
                count,
                Answers.working("empty holes", count, Unit.COUNT, "holes - screws fitted"));
    }

    private void metal(Bracket bracket, Answers here) {
        Integer screws = bracket.screwsFitted();
        if (screws != null && screws == 0 && bracket.screwMetal() == null) {
            String why = "bracket " + bracket.id() + " has no screw";
            here.none(Facts.ScrewMetal.class, why, run, bracket.id());
            return;
        }
        here.word(
                Facts.ScrewMetal.class,
                bracket.screwMetal(),
                word -> new Facts.ScrewMetal(run, bracket.id(), word),
                "the metal of the screws of bracket " + bracket.id(),
                run,
                bracket.id());
    }
}
