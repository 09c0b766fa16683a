package eavesproof.survey;

import eavesproof.job.WayPart.Outlet;
import eavesproof.job.Words;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Trough.Spot;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The outlets of a run: how many, how they hold the gutter, and what is in their way. */
final class Outlets {
    private static final List<Class<? extends Facts.Fact>> OF_EACH =
            List.of(
                    Facts.OutletClearance.class,
                    Facts.OutletHold.class,
                    Facts.OutletSet.class,
                    Facts.OutletCemented.class);

    private final Trough trough;
    private final String run;
    private final Answers answers;

    private Outlets(Trough trough, Answers answers) {
        this.trough = trough;
        this.run = trough.id();
        this.answers = answers;
    }

    static void answer(Trough trough, Answers answers) {
        Outlets of = new Outlets(trough, answers);
        Optional<String> doubt = trough.way().doubt();
        List<Outlet> outlets = trough.outlets();
        doubt.ifPresentOrElse(
                why -> answers.gap(Facts.OutletCount.class, why, trough.id()),
                () -> of.count(outlets.size()));
        for (Class<? extends Facts.Fact> type : OF_EACH) {
            if (doubt.isPresent()) {
                answers.gap(type, doubt.get(), trough.id());
            } else if (outlets.isEmpty()) {
                answers.none(type, "run " + trough.id() + " has no outlet", trough.id());
            }
        }
        for (int i = 0; i < trough.straights().size(); i++) {
            Found<List<Spot>> brackets = Brackets.sorted(trough, i);
            for (Outlet outlet : trough.outletsOn(i)) {
                Double at = outlet.stationMm();
                Outlets here = at == null ? of : of.on(trough.straight(i).id(), at);
                here.hold(outlet);
                here.clearances(i, outlet, brackets);
            }
        }
    }

    private Outlets on(String straight, double stationMm) {
        return new Outlets(trough, answers.on(straight, stationMm, stationMm));
    }

    private void count(int outlets) {
        Uncertain count = Uncertain.exact(outlets);
        answers.known(
                new Facts.OutletCount(run, outlets),
                count,
                Answers.working("outlets", count, Unit.COUNT, "outlets on a straight of the run"));
    }

    private void hold(Outlet outlet) {
        String id = outlet.id();
        answers.word(
                Facts.OutletHold.class,
                outlet.hold(),
                word -> new Facts.OutletHold(run, id, word),
                "whether outlet " + id + " is sliding or fixed",
                run,
                id);
        if (Words.FIXED.equals(outlet.hold()) && outlet.setForTemperature().is() == null) {
            answers.none(Facts.OutletSet.class, "outlet " + id + " is fixed", run, id);
        } else {
            answers.said(
                    Facts.OutletSet.class,
                    outlet.setForTemperature(),
                    word -> new Facts.OutletSet(run, id, word),
                    "whether outlet " + id + " was set for the temperature on the day",
                    run,
                    id);
        }
        answers.said(
                Facts.OutletCemented.class,
                outlet.cementedToGutter(),
                word -> new Facts.OutletCemented(run, id, word),
                "whether outlet " + id + " is cemented to the gutter",
                run,
                id);
    }

    private void clearances(int index, Outlet outlet, Found<List<Spot>> brackets) {
        Found<Uncertain> half = body(trough, index, outlet).map(body -> body.times(0.5));
        if (brackets instanceof Found.Value<List<Spot>> all && all.value().isEmpty()) {
            String why = Brackets.none(trough.straight(index));
            answers.none(Facts.OutletClearance.class, why, run, outlet.id());
            return;
        }
        trough.spot(index, outlet)
                .then(at -> half.then(edge -> brackets.map(all -> new Beside(at, edge, all))))
                .either(
                        this::clearances,
                        why -> answers.gap(Facts.OutletClearance.class, why, run, outlet.id()));
    }

    /**
     * @param half of the length of the outlet's fitting
     */
    private record Beside(Spot outlet, Uncertain half, List<Spot> brackets) {}

    private void clearances(Beside beside) {
        clearance(beside, Nearest.leftOf(beside.outlet(), beside.brackets()));
        clearance(beside, Nearest.rightOf(beside.outlet(), beside.brackets()));
    }

    private void clearance(Beside beside, @Nullable Spot bracket) {
        if (bracket == null) {
            return;
        }
        Spot outlet = beside.outlet();
        Uncertain clearance = Trough.apart(outlet, bracket).minus(beside.half());
        answers.on(
                        trough.straight(outlet.straight()).id(),
                        Math.min(outlet.stationMm(), bracket.stationMm()),
                        Math.max(outlet.stationMm(), bracket.stationMm()))
                .known(
                        new Facts.OutletClearance(
                                run, outlet.id(), bracket.id(), clearance.value()),
                        clearance,
                        trough.working(outlet),
                        trough.working(bracket),
                        Answers.working(
                                "half the fitting",
                                beside.half(),
                                Unit.MM,
                                "length of the fitting / 2"),
                        Answers.working(
                                "clearance",
                                clearance,
                                Unit.MM,
                                "between the stations, less half the fitting"));
    }

    /** The length of an outlet's fitting along the gutter. */
    static Found<Uncertain> body(Trough trough, int index, Outlet outlet) {
        String what = "length of the fitting of outlet " + outlet.id();
        return Found.recorded(outlet.bodyMm(), "the " + what)
                .map(mm -> trough.read(index, mm, what));
    }
}
