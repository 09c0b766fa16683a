package eavesproof.survey;

import eavesproof.job.Run;
import eavesproof.job.Run.Joint;
import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart.Outlet;
import eavesproof.job.Words;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * What is left of the room that a gutter was given when it was fitted, once it is as warm or as
 * cold as it gets: in its expansion joints, in outlets in which it slides, and towards walls. Below
 * 0 it pushes, or parts.
 */
final class Room {
    private static final List<Class<? extends Facts.Fact>> OF_A_JOINT =
            List.of(Facts.JointGapLeft.class, Facts.JointInsertionLeft.class);
    private static final List<Class<? extends Facts.Fact>> OF_AN_OUTLET =
            List.of(Facts.OutletGapLeft.class, Facts.OutletInsertionLeft.class);

    private final Trough trough;
    private final Moving moving;
    private final Found<Expansion> expansion;
    private final Answers answers;

    private Room(Trough trough, Moving moving, Basis basis, Answers answers) {
        this.trough = trough;
        this.moving = moving;
        this.expansion = Expansion.of(trough.run(), trough.gutter(), basis);
        this.answers = answers;
    }

    static void answer(Trough trough, Moving moving, Basis basis, Answers answers) {
        Room room = new Room(trough, moving, basis, answers);
        trough.straights().forEach(room::joints);
        room.outlets();
        Straight first = trough.straight(0);
        Straight last = trough.straight(trough.straights().size() - 1);
        String left = Trough.leftEndOf(first);
        String right = Trough.rightEndOf(last);
        room.end(first, left, first.leftEnd(), room.moving.fromTheRight(left));
        room.end(last, right, last.rightEnd(), room.moving.fromTheLeft(right));
    }

    private void joints(Straight straight) {
        List<Joint> joints = straight.joints();
        for (Class<? extends Facts.Fact> type : OF_A_JOINT) {
            if (joints == null) {
                String why = "the joints of straight " + straight.id() + " are not recorded";
                answers.gap(type, why, trough.id());
            } else if (joints.isEmpty()) {
                answers.none(type, "straight " + straight.id() + " has no joint", trough.id());
            }
        }
        for (Joint joint : joints == null ? List.<Joint>of() : joints) {
            joint(straight, joint);
        }
    }

    private void joint(Straight straight, Joint joint) {
        String id = joint.id();
        String kind = joint.kind();
        Double at = joint.stationMm();
        Answers here = at == null ? answers : answers.on(straight.id(), at, at);
        if (kind == null || !Words.JOINT_KINDS.contains(kind)) {
            String why = "the kind of joint " + id + " is not recorded";
            OF_A_JOINT.forEach(type -> here.gap(type, why, trough.id(), id));
        } else if (!kind.equals(Words.EXPANSION)) {
            String why = "joint " + id + " is no expansion joint";
            OF_A_JOINT.forEach(type -> here.none(type, why, trough.id(), id));
        } else {
            Found<Uncertain> length =
                    Found.both(moving.fromTheLeft(id), moving.fromTheRight(id), Uncertain::plus);
            heat(
                    here,
                    Facts.JointGapLeft.class,
                    mm -> new Facts.JointGapLeft(trough.id(), id, mm),
                    length,
                    read(straight, joint.gapMm(), "gap left in joint " + id),
                    id);
            cold(
                    here,
                    Facts.JointInsertionLeft.class,
                    mm -> new Facts.JointInsertionLeft(trough.id(), id, mm),
                    length,
                    read(straight, joint.insertionMm(), "insertion of joint " + id),
                    id);
        }
    }

    private void outlets() {
        Optional<String> doubt = trough.way().doubt();
        for (Class<? extends Facts.Fact> type : OF_AN_OUTLET) {
            if (doubt.isPresent()) {
                answers.gap(type, doubt.get(), trough.id());
            } else if (trough.outlets().isEmpty()) {
                answers.none(type, "run " + trough.id() + " has no outlet", trough.id());
            }
        }
        for (int i = 0; i < trough.straights().size(); i++) {
            for (Outlet outlet : trough.outletsOn(i)) {
                outlet(trough.straight(i), outlet);
            }
        }
    }

    private void outlet(Straight straight, Outlet outlet) {
        String id = outlet.id();
        Double at = outlet.stationMm();
        Answers here = at == null ? answers : answers.on(straight.id(), at, at);
        String cemented = outlet.cementedToGutter().is();
        if (Words.FIXED.equals(outlet.hold()) || Words.YES.equals(cemented)) {
            String why =
                    "outlet " + id + (Words.YES.equals(cemented) ? " is cemented" : " is fixed");
            OF_AN_OUTLET.forEach(type -> here.none(type, why, trough.id(), id));
        } else if (!Words.SLIDING.equals(outlet.hold()) || !Words.NO.equals(cemented)) {
            String what = Words.SLIDING.equals(outlet.hold()) ? "cemented" : "sliding or fixed";
            String why = "whether outlet " + id + " is " + what + " is not recorded";
            OF_AN_OUTLET.forEach(type -> here.gap(type, why, trough.id(), id));
        } else {
            Found<Uncertain> length =
                    Found.both(moving.fromTheLeft(id), moving.fromTheRight(id), Uncertain::plus);
            heat(
                    here,
                    Facts.OutletGapLeft.class,
                    mm -> new Facts.OutletGapLeft(trough.id(), id, mm),
                    length,
                    read(straight, outlet.gapMm(), "gap left in outlet " + id),
                    id);
            cold(
                    here,
                    Facts.OutletInsertionLeft.class,
                    mm -> new Facts.OutletInsertionLeft(trough.id(), id, mm),
                    length,
                    read(straight, outlet.insertionMm(), "insertion of outlet " + id),
                    id);
        }
    }

    private void end(Straight straight, String id, Run.@Nullable End end, Found<Uncertain> length) {
        Optional<String> kind = Trough.endKind(end);
        if (kind.filter(Words.CORNER::equals).isPresent()) {
            String why = "what goes on round the corner " + id + " is not recorded";
            answers.gap(Facts.EndGapLeft.class, why, trough.id(), id);
            return;
        }
        Double gap = end == null ? null : end.gapToWallMm();
        heat(
                answers,
                Facts.EndGapLeft.class,
                mm -> new Facts.EndGapLeft(trough.id(), id, mm),
                length,
                read(straight, gap, "gap between " + id + " and the wall"),
                id);
    }

    private Found<Uncertain> read(Straight straight, @Nullable Double mm, String what) {
        String thing = "straight " + straight.id();
        return Found.recorded(mm, "the " + what)
                .map(it -> trough.instruments().read(it, what, straight.measuredWith(), thing));
    }

    private void heat(
            Answers here,
            Class<? extends Facts.Fact> type,
            DoubleFunction<Facts.Fact> fact,
            Found<Uncertain> length,
            Found<Uncertain> gap,
            String id) {
        Found.by(() -> new Change(length.need(), gap.need(), expansion.need()))
                .either(
                        it -> {
                            Uncertain growth = it.of().grows(it.length());
                            Uncertain left = it.room().minus(growth);
                            here.known(
                                    fact.apply(left.value()),
                                    left,
                                    it.lengthWorking(),
                                    it.of().temperature(),
                                    it.of().growth(growth),
                                    Answers.working("gap", it.room(), Unit.MM, "when fitted"),
                                    Answers.working("left", left, Unit.MM, "gap - growth"));
                        },
                        why -> here.gap(type, why, trough.id(), id));
    }

    private void cold(
            Answers here,
            Class<? extends Facts.Fact> type,
            DoubleFunction<Facts.Fact> fact,
            Found<Uncertain> length,
            Found<Uncertain> depth,
            String id) {
        Found.by(() -> new Change(length.need(), depth.need(), expansion.need()))
                .either(
                        it -> {
                            Uncertain shrinkage = it.of().shrinks(it.length());
                            Uncertain left = it.room().minus(shrinkage);
                            here.known(
                                    fact.apply(left.value()),
                                    left,
                                    it.lengthWorking(),
                                    it.of().temperature(),
                                    it.of().shrinkage(shrinkage),
                                    Answers.working("insertion", it.room(), Unit.MM, "when fitted"),
                                    Answers.working(
                                            "left", left, Unit.MM, "insertion - shrinkage"));
                        },
                        why -> here.gap(type, why, trough.id(), id));
    }

    /**
     * @param length of gutter that moves there
     */
    private record Change(Uncertain length, Uncertain room, Expansion of) {
        Working lengthWorking() {
            return Answers.working(
                    "moving length",
                    length,
                    Unit.MM,
                    "on each side from what holds the gutter still, or all of it up to the next"
                            + " break");
        }
    }
}
