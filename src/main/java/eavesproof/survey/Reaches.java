package eavesproof.survey;

import eavesproof.job.WayPart.Outlet;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Trough.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The reaches of a run, and how long and how steep each is, and what stands in it. */
final class Reaches {
    /**
     * Our choice: no outlet's fitting is taken to be longer than 1 m. Where its length is not
     * recorded, it could reach the end of the run only from within half of that.
     */
    private static final double HALF_OF_LONGEST_FITTING_MM = 500;

    private final Trough trough;
    private final Levels levels;
    private final Falls falls;
    private final Ponds ponds;
    private final Sags sags;
    private final HighPoints highPoints;
    private final Answers answers;

    private Reaches(Trough trough, WaterTests tests, Answers answers) {
        this.trough = trough;
        this.levels = new Levels(trough);
        this.falls = new Falls(trough, levels, answers);
        this.ponds = new Ponds(trough, levels, tests, answers);
        this.sags = new Sags(trough, levels, answers);
        this.highPoints = new HighPoints(trough, levels);
        this.answers = answers;
    }

    static void answer(Trough trough, WaterTests tests, Answers answers) {
        new Reaches(trough, tests, answers).answer();
    }

    private void answer() {
        List<Outlet> outlets = trough.outlets();
        Optional<String> doubt = trough.way().doubt();
        if (doubt.isPresent()) {
            gap(doubt.get(), trough.id());
            for (Outlet outlet : outlets) {
                gapOnBothSides(outlet, doubt.get());
            }
        } else if (outlets.isEmpty()) {
            none("run " + trough.id() + " has no outlet", trough.id());
        } else {
            inOrder()
                    .either(
                            this::each,
                            why -> outlets.forEach(outlet -> gapOnBothSides(outlet, why)));
        }
    }

    private record Placed(Outlet outlet, Spot at) {}

    private Found<List<Placed>> inOrder() {
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < trough.straights().size(); i++) {
            for (Outlet outlet : trough.outletsOn(i)) {
                Found<Spot> at = trough.spot(i, outlet);
                if (at instanceof Found.Missing<Spot> missing) {
                    return Found.missing(missing.why());
                }
                at.map(spot -> placed.add(new Placed(outlet, spot)));
            }
        }
        placed.sort((one, other) -> one.at().compareTo(other.at()));
        return Found.of(placed);
    }

    /** One side of an outlet: the reach there, or why it cannot be told. */
    private record Side(Outlet outlet, boolean left, Found<Reach> reach) {
        boolean mayDrain() {
            return !(reach instanceof Found.Value<Reach> known) || drains(known.value());
        }

        static boolean drains(Reach reach) {
            return reach.length().value() > reach.halfBodyMm();
        }
    }

    private void each(List<Placed> outlets) {
        List<Side> sides = sides(outlets);
        boolean only = sides.stream().filter(Side::mayDrain).count() == 1;
        sides.forEach(side -> answer(side, only));
    }

    private List<Side> sides(List<Placed> outlets) {
        List<Side> sides = new ArrayList<>();
        Found<Spot> high = Found.of(trough.leftEnd(0));
        for (int i = 0; i < outlets.size(); i++) {
            Placed here = outlets.get(i);
            sides.add(side(here, true, high));
            high =
                    i == outlets.size() - 1
                            ? trough.rightEnd(trough.straights().size() - 1)
                            : highPoints.between(here.at(), outlets.get(i + 1).at());
            sides.add(side(here, false, high));
        }
        return sides;
    }

    private Side side(Placed outlet, boolean left, Found<Spot> high) {
        return new Side(outlet.outlet(), left, high.then(end -> reach(outlet, left, end)));
    }

    private void answer(Side side, boolean only) {
        String id = side.outlet().id();
        side.reach()
                .either(
                        reach -> {
                            if (Side.drains(reach)) {
                                length(reach);
                                ReachLevels read = new ReachLevels(trough, levels, reach);
                                falls.answer(read);
                                ponds.answer(read, only);
                                sags.answer(read);
                            } else {
                                String why = "the fitting of outlet " + id + " reaches ";
                                none(why + reach.high().name(), trough.id(), id, reach.side());
                            }
                        },
                        why -> gap(why, trough.id(), id, Reach.side(side.left())));
    }

    private Found<Reach> reach(Placed outlet, boolean left, Spot high) {
        Spot at = outlet.at();
        Found<Uncertain> length = left ? trough.distance(high, at) : trough.distance(at, high);
        Found<Uncertain> body = Outlets.body(trough, at.straight(), outlet.outlet());
        return length.then(
                mm -> {
                    if (body instanceof Found.Missing<Uncertain> missing
                            && mm.value() <= HALF_OF_LONGEST_FITTING_MM) {
                        return Found.missing(missing.why());
                    }
                    double half =
                            body instanceof Found.Value<Uncertain> known
                                    ? known.value().value() / 2
                                    : 0;
                    return Found.of(new Reach(outlet.outlet(), at, left, high, mm, half));
                });
    }

    private void length(Reach reach) {
        reach.shownOn(trough, answers)
                .known(
                        new Facts.ReachLength(
                                trough.id(),
                                reach.outlet().id(),
                                reach.side(),
                                reach.length().value()),
                        reach.length(),
                        trough.working(reach.high()),
                        trough.working(reach.at()),
                        Answers.working(
                                "length",
                                reach.length(),
                                Unit.MM,
                                "along the gutter from "
                                        + reach.high().name()
                                        + " to the centre of "
                                        + reach.at().name()));
    }

    private void gapOnBothSides(Outlet outlet, String why) {
        gap(why, trough.id(), outlet.id(), Reach.side(true));
        gap(why, trough.id(), outlet.id(), Reach.side(false));
    }

    private void gap(String why, String... ids) {
        answers.gap(Facts.ReachLength.class, why, ids);
        answers.gap(Facts.ReachFall.class, why, ids);
        answers.gap(Facts.PondDepth.class, why, ids);
        answers.gap(Facts.SoleSag.class, why, ids);
    }

    private void none(String why, String... ids) {
        answers.none(Facts.ReachLength.class, why, ids);
        answers.none(Facts.ReachFall.class, why, ids);
        answers.none(Facts.PondDepth.class, why, ids);
        answers.none(Facts.SoleSag.class, why, ids);
    }
}
