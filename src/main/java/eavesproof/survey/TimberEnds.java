package eavesproof.survey;

import eavesproof.job.Run.End;
import eavesproof.job.Run.Straight;
import eavesproof.job.Words;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Trough.Spot;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How far the first and the last bracket of a straight that is screwed on are from the ends of the
 * timber that carries it: the difference of their stations. At a corner the timber goes on, so
 * there is no such end.
 */
final class TimberEnds {
    private final Trough trough;
    private final int index;
    private final Straight straight;
    private final Answers answers;

    private TimberEnds(Trough trough, int index, Answers answers) {
        this.trough = trough;
        this.index = index;
        this.straight = trough.straight(index);
        this.answers = answers;
    }

    static void answer(Trough trough, Answers answers) {
        for (int i = 0; i < trough.straights().size(); i++) {
            TimberEnds of = new TimberEnds(trough, i, answers);
            of.end(Trough.leftEndOf(of.straight), of.straight.leftEnd(), true);
            of.end(Trough.rightEndOf(of.straight), of.straight.rightEnd(), false);
        }
    }

    private void end(String gutterEnd, @Nullable End end, boolean left) {
        Optional<String> kind = Trough.endKind(end);
        boolean corner = kind.filter(Words.CORNER::equals).isPresent();
        boolean noBracket = Brackets.noneHolds(trough, index);
        if (kind.isEmpty()) {
            gap(gutterEnd, "the kind of end " + gutterEnd + " is not recorded");
        } else if (corner || noBracket) {
            String why = corner ? gutterEnd + " is a corner" : Brackets.noneScrewed(straight);
            answers.none(Facts.TimberEndBracket.class, why, trough.id(), gutterEnd);
        } else {
            Found<Spot> bracket = Brackets.outermost(trough, index, left);
            Found.both(timber(left), bracket, (timber, nearest) -> List.of(timber, nearest))
                    .either(
                            two -> known(gutterEnd, two.get(0), two.get(1)),
                            why -> gap(gutterEnd, why));
        }
    }

    private Found<Spot> timber(boolean left) {
        String name = (left ? "the left end" : "the right end") + " of the fascia";
        return Found.recorded(straight.fascia(), "the fascia of straight " + straight.id())
                .then(
                        fascia ->
                                trough.spot(
                                        index,
                                        straight.id(),
                                        name,
                                        left ? fascia.beginsMm() : fascia.endsMm()));
    }

    private void known(String gutterEnd, Spot timber, Spot bracket) {
        Uncertain distance = Trough.apart(timber, bracket);
        answers.on(
                        straight.id(),
                        Math.min(timber.stationMm(), bracket.stationMm()),
                        Math.max(timber.stationMm(), bracket.stationMm()))
                .known(
                        new Facts.TimberEndBracket(trough.id(), gutterEnd, distance.value()),
                        distance,
                        trough.working(timber),
                        trough.working(bracket),
                        Answers.working(
                                "distance",
                                distance,
                                Unit.MM,
                                "from " + timber.name() + " to " + bracket.name()));
    }

    private void gap(String gutterEnd, String why) {
        answers.gap(Facts.TimberEndBracket.class, why, trough.id(), gutterEnd);
    }
}
