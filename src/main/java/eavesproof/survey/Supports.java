package eavesproof.survey;

import eavesproof.job.Run.Joint;
import eavesproof.job.Run.Straight;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Trough.Spot;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How a run is held up: how many supports each straight has, and how far they are from each other,
 * from the ends and from the joints. All distances are differences of stations along one straight.
 *
 * <p>A support that may be there but is not recorded makes a gap of every distance that it could
 * change, and of no other.
 */
final class Supports {
    private final Trough trough;
    private final int index;
    private final Straight straight;
    private final Marks holds;
    private final List<Spot> supports;
    private final Answers answers;

    private Supports(Trough trough, int index, Answers answers) {
        this.trough = trough;
        this.index = index;
        this.straight = trough.straight(index);
        this.holds = Holders.on(trough, index).marks();
        this.supports = holds.sorted();
        Double length = straight.lengthMm();
        this.answers = length == null ? answers : answers.on(straight.id(), 0, length);
    }

    static void answer(Trough trough, Answers answers) {
        for (int i = 0; i < trough.straights().size(); i++) {
            Supports of = new Supports(trough, i, answers);
            of.count();
            of.spacings();
            of.end(Trough.leftEndOf(of.straight), Found.of(trough.leftEnd(i)), true);
            of.end(Trough.rightEndOf(of.straight), trough.rightEnd(i), false);
            of.joints();
        }
    }

    private void count() {
        holds.count()
                .either(
                        count ->
                                answers.known(
                                        new Facts.SupportCount(trough.id(), straight.id(), count),
                                        Uncertain.exact(count),
                                        Answers.working(
                                                "supports",
                                                Uncertain.exact(count),
                                                Unit.COUNT,
                                                "brackets, and joints, fittings and outlets"
                                                        + " screwed to the fascia")),
                        why ->
                                answers.gap(
                                        Facts.SupportCount.class, why, trough.id(), straight.id()));
    }

    private void spacings() {
        Optional<String> anywhere = holds.anywhere();
        if (anywhere.isPresent()) {
            answers.gap(Facts.BracketSpacing.class, anywhere.get(), trough.id());
        } else if (supports.size() < 2) {
            holds.perhapsMore()
                    .ifPresentOrElse(
                            why -> answers.gap(Facts.BracketSpacing.class, why, trough.id()),
                            () -> answers.none(Facts.BracketSpacing.class, tooFew(), trough.id()));
        } else {
            for (int i = 1; i < supports.size(); i++) {
                spacing(supports.get(i - 1), supports.get(i));
            }
        }
    }

    private String tooFew() {
        return "straight "
                + straight.id()
                + (supports.isEmpty() ? " has no support" : " has only one support");
    }

    private void spacing(Spot from, Spot to) {
        Answers here = answers.on(straight.id(), from.stationMm(), to.stationMm());
        Optional<String> perhaps = holds.perhapsBetween(from.stationMm(), to.stationMm());
        if (perhaps.isPresent()) {
            here.gap(Facts.BracketSpacing.class, perhaps.get(), trough.id(), from.id(), to.id());
            return;
        }
        Uncertain centres = to.station().minus(from.station());
        here.known(
                new Facts.BracketSpacing(trough.id(), from.id(), to.id(), centres.value()),
                centres,
                trough.working(from),
                trough.working(to),
                Answers.working(
                        "centres",
                        centres,
                        Unit.MM,
                        "station of " + to.name() + " - station of " + from.name()));
    }

    private void end(String gutterEnd, Found<Spot> found, boolean left) {
        Optional<String> doubt = doubtAtEnd(left);
        if (!(found instanceof Found.Value<Spot> end)) {
            String why = ((Found.Missing<Spot>) found).why();
            answers.gap(Facts.EndSupport.class, why, trough.id(), gutterEnd);
        } else if (doubt.isPresent()) {
            answers.gap(Facts.EndSupport.class, doubt.get(), trough.id(), gutterEnd);
        } else if (supports.isEmpty()) {
            answers.none(Facts.EndSupport.class, tooFew(), trough.id(), gutterEnd);
        } else {
            endSupport(gutterEnd, end.value(), left ? supports.get(0) : last());
        }
    }

    private Optional<String> doubtAtEnd(boolean left) {
        if (supports.isEmpty()) {
            return holds.perhapsMore();
        }
        return left
                ? holds.perhapsBefore(supports.get(0).stationMm())
                : holds.perhapsAfter(last().stationMm());
    }

    private void endSupport(String gutterEnd, Spot end, Spot support) {
        Uncertain distance = Trough.apart(end, support);
        answers.on(
                        straight.id(),
                        Math.min(end.stationMm(), support.stationMm()),
                        Math.max(end.stationMm(), support.stationMm()))
                .known(
                        new Facts.EndSupport(trough.id(), gutterEnd, distance.value()),
                        distance,
                        trough.working(support),
                        Answers.working(
                                "distance",
                                distance,
                                Unit.MM,
                                "from " + end.name() + " to " + support.name()));
    }

    private void joints() {
        List<Joint> joints = straight.joints();
        if (joints == null) {
            String why = "the joints of straight " + straight.id() + " are not recorded";
            answers.gap(Facts.JointSupport.class, why, trough.id());
        } else if (joints.isEmpty()) {
            String why = "straight " + straight.id() + " has no joint";
            answers.none(Facts.JointSupport.class, why, trough.id());
        } else {
            joints.forEach(this::joint);
        }
    }

    private void joint(Joint joint) {
        Found<Spot> found =
                trough.spot(index, joint.id(), "joint " + joint.id(), joint.stationMm());
        if (!(found instanceof Found.Value<Spot> at)) {
            String why = ((Found.Missing<Spot>) found).why();
            answers.gap(Facts.JointSupport.class, why, trough.id(), joint.id());
            return;
        }
        Answers here = answers.on(straight.id(), at.value().stationMm(), at.value().stationMm());
        Spot support = Nearest.to(at.value(), supports);
        Optional<String> doubt = doubtAround(at.value().stationMm(), support);
        if (doubt.isPresent()) {
            here.gap(Facts.JointSupport.class, doubt.get(), trough.id(), joint.id());
        } else if (support == null) {
            here.none(Facts.JointSupport.class, tooFew(), trough.id(), joint.id());
        } else {
            Uncertain distance = Trough.apart(at.value(), support);
            here.known(
                    new Facts.JointSupport(trough.id(), joint.id(), distance.value()),
                    distance,
                    trough.working(at.value()),
                    trough.working(support),
                    Answers.working(
                            "distance",
                            distance,
                            Unit.MM,
                            "from " + at.value().name() + " to the nearest, " + support.name()));
        }
    }

    /** Whether something nearer than the nearest may hold the joint, itself included. */
    private Optional<String> doubtAround(double stationMm, @Nullable Spot nearest) {
        if (nearest == null) {
            return holds.perhapsMore();
        }
        double reach = Math.abs(nearest.stationMm() - stationMm);
        return holds.perhapsBetween(stationMm - reach, stationMm + reach);
    }

    private Spot last() {
        return supports.get(supports.size() - 1);
    }
}
