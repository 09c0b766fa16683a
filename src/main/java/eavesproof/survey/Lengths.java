package eavesproof.survey;

import eavesproof.job.Run.Straight;
import eavesproof.quantity.Unit;

/** How long each straight is. */
final class Lengths {
    private Lengths() {}

    static void answer(Trough trough, Answers answers) {
        for (int i = 0; i < trough.straights().size(); i++) {
            Straight straight = trough.straight(i);
            String with = trough.instruments().named(straight.measuredWith());
            trough.length(i)
                    .either(
                            mm ->
                                    answers.on(straight.id(), 0, mm.value())
                                            .known(
                                                    new Facts.StraightLength(
                                                            trough.id(), straight.id(), mm.value()),
                                                    mm,
                                                    Answers.working("length", mm, Unit.MM, with)),
                            why ->
                                    answers.gap(
                                            Facts.StraightLength.class,
                                            why,
                                            trough.id(),
                                            straight.id()));
        }
    }
}
