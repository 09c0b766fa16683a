package eavesproof.survey;

import eavesproof.job.Run.Straight;
import eavesproof.job.Words;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Trough.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What grows and shrinks together: the lengths between the breaks of a run, round its corners. */
final class Movement {
    private final Trough trough;
    private final Answers answers;
    private final List<Marks> marks = new ArrayList<>();
    private final Moving moving;

    private Movement(Trough trough, Basis basis, Answers answers) {
        this.trough = trough;
        this.answers = answers;
        this.moving = new Moving(trough, basis);
        for (int i = 0; i < trough.straights().size(); i++) {
            marks.add(Breaks.of(trough, i));
        }
    }

    static void answer(Trough trough, Basis basis, Answers answers) {
        Movement movement = new Movement(trough, basis, answers);
        for (int i = 0; i < trough.straights().size(); i++) {
            movement.count(i);
        }
        movement.freeLengths();
        Room.answer(trough, movement.moving, basis, answers);
    }

    private void count(int index) {
        Straight straight = trough.straight(index);
        Double mm = straight.lengthMm();
        Answers here = mm == null ? answers : answers.on(straight.id(), 0, mm);
        marks.get(index)
                .count()
                .either(
                        count ->
                                here.known(
                                        new Facts.ExpansionBreaks(
                                                trough.id(), straight.id(), count),
                                        Uncertain.exact(count),
                                        Answers.working(
                                                "breaks",
                                                Uncertain.exact(count),
                                                Unit.COUNT,
                                                "expansion joints, and outlets that slide and are"
                                                        + " not cemented")),
                        why ->
                                here.gap(
                                        Facts.ExpansionBreaks.class,
                                        why,
                                        trough.id(),
                                        straight.id()));
    }

    private record Cut(Spot at, Optional<String> doubt) {}

    private void freeLengths() {
        int last = trough.straights().size() - 1;
        Cut from = new Cut(trough.leftEnd(0), noBreak(true));
        for (Marks onStraight : marks) {
            for (Spot at : onStraight.sorted()) {
                Cut to = new Cut(at, Optional.empty());
                piece(from, to);
                from = to;
            }
        }
        Cut before = from;
        trough.rightEnd(last)
                .either(
                        end -> piece(before, new Cut(end, noBreak(false))),
                        why -> {
                            String end = Trough.rightEndOf(trough.straight(last));
                            moving.unknown(before.at().id(), end, why);
                            gap(why, before.at().id(), end);
                        });
    }

    /** Why an end of the run may be no break, if that is so. */
    private Optional<String> noBreak(boolean left) {
        Straight straight = trough.straight(left ? 0 : trough.straights().size() - 1);
        String gutterEnd = left ? Trough.leftEndOf(straight) : Trough.rightEndOf(straight);
        Optional<String> kind = Trough.endKind(left ? straight.leftEnd() : straight.rightEnd());
        if (kind.isEmpty()) {
            return Optional.of("the kind of end " + gutterEnd + " is not recorded");
        }
        return kind.filter(Words.CORNER::equals)
                .map(it -> "what goes on round the corner " + gutterEnd + " is not recorded");
    }

    private void piece(Cut from, Cut to) {
        Optional<String> doubt =
                from.doubt()
                        .or(to::doubt)
                        .or(() -> Marks.perhapsBetween(marks, from.at(), to.at()));
        Found<Uncertain> length =
                doubt.<Found<Uncertain>>map(Found::missing)
                        .orElseGet(() -> trough.distance(from.at(), to.at()));
        moving.between(from.at(), to.at(), length);
        length.either(
                mm -> known(from.at(), to.at(), mm), why -> gap(why, from.at().id(), to.at().id()));
    }

    private void known(Spot from, Spot to, Uncertain length) {
        Answers here =
                from.straight() == to.straight()
                        ? answers.on(
                                trough.straight(from.straight()).id(),
                                from.stationMm(),
                                to.stationMm())
                        : answers;
        here.known(
                new Facts.FreeLength(trough.id(), from.id(), to.id(), length.value()),
                length,
                trough.working(from),
                trough.working(to),
                Answers.working(
                        "free length",
                        length,
                        Unit.MM,
                        "along the gutter from " + from.name() + " to " + to.name()));
    }

    private void gap(String why, String from, String to) {
        answers.gap(Facts.FreeLength.class, why, trough.id(), from, to);
    }
}
