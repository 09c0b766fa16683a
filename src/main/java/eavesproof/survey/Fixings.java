package eavesproof.survey;

import eavesproof.job.Run;
import eavesproof.job.Run.Straight;
import eavesproof.job.Said;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import java.util.List;

/**
 * How each thing that holds a straight up is fixed: a bracket, or what else is screwed to the
 * fascia.
 */
final class Fixings {
    private static final List<Class<? extends Facts.Fact>> OF_EACH =
            List.of(
                    Facts.BracketHoles.class,
                    Facts.EmptyHoles.class,
                    Facts.ScrewMetal.class,
                    Facts.ScrewBite.class,
                    Facts.TimberSound.class,
                    Facts.TimberTreatment.class);

    private final String run;
    private final Straight straight;
    private final Instruments instruments;
    private final Answers answers;

    private Fixings(Trough trough, Straight straight, Answers answers) {
        this.run = trough.id();
        this.straight = straight;
        this.instruments = trough.instruments();
        this.answers = answers;
    }

    static void answer(Trough trough, Answers answers) {
        for (int i = 0; i < trough.straights().size(); i++) {
            new Fixings(trough, trough.straight(i), answers).each(Holders.on(trough, i));
        }
    }

    private void each(Holders holders) {
        for (Class<? extends Facts.Fact> type : OF_EACH) {
            holders.more().forEach(why -> answers.gap(type, why, run));
            if (holders.more().isEmpty() && holders.all().isEmpty()) {
                answers.none(type, Brackets.none(straight), run);
            }
        }
        holders.all().forEach(this::fixing);
    }

    private void fixing(Holder holder) {
        String id = holder.id();
        Double at = holder.stationMm();
        Answers here = at == null ? answers : answers.on(straight.id(), at, at);
        if (!holder.isBracket() && holder.holds() instanceof Found.Missing<Boolean> open) {
            OF_EACH.forEach(type -> here.gap(type, open.why(), run, id));
            return;
        }
        Found<Integer> holes =
                Found.orElse(
                        holder.fixing().holesProvided(),
                        "the holes of " + holder.name() + " are not recorded");
        Found<Integer> screws =
                Found.orElse(
                        holder.fixing().screwsFitted(),
                        "the screws of " + holder.name() + " are not recorded");
        holes.either(
                count -> holes(id, count, here),
                why -> here.gap(Facts.BracketHoles.class, why, run, id));
        screws.then(fitted -> holes.then(provided -> empty(holder, fitted, provided)))
                .either(
                        empty -> emptyHoles(id, empty, here),
                        why -> here.gap(Facts.EmptyHoles.class, why, run, id));
        metal(holder, here);
        bite(holder, here);
        timber(id, here);
    }

    private static boolean hasNoScrew(Holder holder) {
        Integer screws = holder.fixing().screwsFitted();
        return screws != null && screws == 0;
    }

    private void bite(Holder holder, Answers here) {
        String id = holder.id();
        Double mm = holder.fixing().biteMm();
        if (hasNoScrew(holder) && mm == null) {
            here.none(Facts.ScrewBite.class, holder.name() + " has no screw", run, id);
        } else if (mm == null) {
            String why = "how deep the screws of " + holder.name() + " sit is not recorded";
            here.gap(Facts.ScrewBite.class, why, run, id);
        } else {
            String with = instruments.named(straight.measuredWith());
            Uncertain bite =
                    instruments.read(
                            mm,
                            "bite of the screws of " + holder.name(),
                            straight.measuredWith(),
                            "straight " + straight.id());
            here.known(
                    new Facts.ScrewBite(run, id, mm),
                    bite,
                    Answers.working("bite", bite, Unit.MM, with));
        }
    }

    /** What holds is no better than the timber that it is screwed to: asked of each by itself. */
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
    private static Found<Integer> empty(Holder holder, int screws, int holes) {
        return screws > holes
                ? Found.missing(holder.name() + " is recorded with more screws than holes")
                : Found.of(holes - screws);
    }

    private void emptyHoles(String bracket, int empty, Answers here) {
        Uncertain count = Uncertain.exact(empty);
        here.known(
                new Facts.EmptyHoles(run, bracket, empty),
                count,
                Answers.working("empty holes", count, Unit.COUNT, "holes - screws fitted"));
    }

    private void metal(Holder holder, Answers here) {
        String metal = holder.fixing().screwMetal();
        if (hasNoScrew(holder) && metal == null) {
            String why = holder.name() + " has no screw";
            here.none(Facts.ScrewMetal.class, why, run, holder.id());
            return;
        }
        here.word(
                Facts.ScrewMetal.class,
                metal,
                word -> new Facts.ScrewMetal(run, holder.id(), word),
                "the metal of the screws of " + holder.name(),
                run,
                holder.id());
    }
}
