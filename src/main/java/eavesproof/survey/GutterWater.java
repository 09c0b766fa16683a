package eavesproof.survey;

import eavesproof.hydraulics.GreatestRain;
import eavesproof.hydraulics.RoundOutlet;
import eavesproof.hydraulics.RunFlow;
import eavesproof.hydraulics.RunSurface;
import eavesproof.hydraulics.RunSurface.Taken;
import eavesproof.hydraulics.WaterSurface;
import eavesproof.job.WayPart.Outlet;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import eavesproof.survey.Trough.Position;
import java.util.ArrayList;
import java.util.List;

/** How the gutter of a run and its outlets bear the design rain. */
final class GutterWater {
    private static final List<Class<? extends Facts.Fact>> OF_THE_RUN =
            List.of(Facts.GutterFreeboard.class, Facts.GutterRatio.class);

    private static final double MM_PER_M = 1000;
    private static final double LITRES = 1000;

    /** A gutter that spills without any rain is said to be overloaded so many times. */
    private static final double MOST = 1000;

    private final Trough trough;
    private final String run;
    private final Found<RunWater.Rain> rain;
    private final Loads loads;
    private final Basis basis;
    private final Answers answers;

    private GutterWater(
            Trough trough, Found<RunWater.Rain> rain, Loads loads, Basis basis, Answers answers) {
        this.trough = trough;
        this.run = trough.id();
        this.rain = rain;
        this.loads = loads;
        this.basis = basis;
        this.answers = answers;
    }

    static void answer(
            Trough trough,
            Found<DesignRain> design,
            Found<RunWater.Rain> rain,
            Found<RunWater> water,
            Loads loads,
            Basis basis,
            Answers answers) {
        GutterWater of = new GutterWater(trough, rain, loads, basis, answers);
        design.either(of::design, why -> answers.gap(Facts.DesignRain.class, why, trough.id()));
        rain.either(of::demand, why -> answers.gap(Facts.RunDemand.class, why, trough.id()));
        water.either(of::known, of::gap);
    }

    private static Uncertain computed(double value) {
        return Sureness.computed(Uncertain.exact(value));
    }

    /** A figure to reckon with, which a map or table states and nobody measures. */
    private void design(DesignRain design) {
        answers.known(
                new Facts.DesignRain(run, design.mmPerH()),
                Uncertain.exact(design.mmPerH()),
                design.workings().toArray(Working[]::new));
    }

    private void demand(RunWater.Rain of) {
        double litres = of.all();
        Uncertain demand = Sureness.computed(of.part(litres));
        List<Working> workings = of.workings();
        workings.add(flow("demand", litres, "run-off x intensity x area"));
        Sureness.working(demand, Unit.L_PER_S).ifPresent(workings::add);
        answers.known(new Facts.RunDemand(run, litres), demand, array(workings));
    }

    private void gap(String why) {
        OF_THE_RUN.forEach(kind -> answers.gap(kind, why, run));
        List<Outlet> outlets = trough.outlets();
        outlets.forEach(this::only);
        boolean more = outlets.isEmpty() || trough.way().doubt().isPresent();
        if (more) {
            answers.gap(Facts.OutletDemand.class, why, run);
        }
        each(Facts.OutletRatio.class, outlets, more, why);
        if (outlets.size() == 1 && !more) {
            noOther(outlets.get(0).id());
        } else {
            each(Facts.BlockedFreeboard.class, outlets, more, why);
        }
    }

    private void each(
            Class<? extends Facts.Fact> kind, List<Outlet> outlets, boolean more, String why) {
        outlets.forEach(outlet -> answers.gap(kind, why, run, outlet.id()));
        if (more) {
            answers.gap(kind, why, run);
        }
    }

    private void noOther(String id) {
        String why = "run " + run + " has no outlet besides " + id;
        answers.none(Facts.BlockedFreeboard.class, why, run, id);
    }

    /** What comes to an outlet although the water surface is not known. */
    private void only(Outlet outlet) {
        String id = outlet.id();
        loads.of(outlet)
                .either(
                        flow ->
                                answers.known(
                                        new Facts.OutletDemand(run, id, flow.value()),
                                        Sureness.computed(flow),
                                        flow("demand", flow.value(), "all that comes to the run")),
                        why -> answers.gap(Facts.OutletDemand.class, why, run, id));
    }

    private void known(RunWater water) {
        answers.water(run, WaterLine.of(trough, water));
        freeboard(water);
        ratio(water);
        for (int i = 0; i < water.outlets().size(); i++) {
            outlet(water, i);
            blocked(water, i);
        }
    }

    private void freeboard(RunWater water) {
        WaterSurface.At worst = water.surface().worst();
        List<Working> workings = entering(water);
        workings.addAll(surface(worst));
        Found<Uncertain> sure = Found.by(() -> water.freeboardMm(rain.need()));
        sure.map(known -> Sureness.working(known, Unit.MM).map(workings::add));
        Found.by(water::underMore).map(workings::add);
        double mm = worst.freeboard() * MM_PER_M;
        shownAt(worst.x())
                .known(
                        new Facts.GutterFreeboard(run, mm),
                        sure instanceof Found.Value<Uncertain> known ? known.value() : computed(mm),
                        array(workings));
    }

    private List<Working> entering(RunWater water) {
        List<Working> workings = new ArrayList<>();
        rain.map(of -> workings.add(flow("demand", of.all(), "what the roof sends to the run")));
        workings.addAll(water.workings());
        return workings;
    }

    private List<Working> surface(WaterSurface.At worst) {
        return List.of(
                new Working(
                        "where the water comes nearest to the lip",
                        Decimals.with(worst.x() * MM_PER_M, Unit.MM),
                        "along the gutter from its left end"),
                new Working(
                        "depth of the water there",
                        Decimals.with(worst.depth() * MM_PER_M, Unit.MM),
                        "steady flow by the momentum balance (Chow, Open-Channel Hydraulics, 1959,"
                                + " 12-3); outlets by EN 12056-3 table 7, from memory"));
    }

    private void ratio(RunWater water) {
        Found.by(
                        () -> {
                            Basis.Amount share = basis.amount(BasisKey.GUTTER_SHARE).need();
                            double times =
                                    GreatestRain.factor(water.surface().run(), 0, water.steps());
                            return new Carried(
                                    times, share, rain.need().all(), sure(times, share, water));
                        })
                .either(
                        carried -> ratio(carried, water),
                        why -> answers.gap(Facts.GutterRatio.class, why, run));
    }

    /** The roof moves what comes, the sole what is carried. */
    private Uncertain sure(double times, Basis.Amount share, RunWater water) throws Lacking {
        if (times * share.value() * MOST < 1) {
            return computed(MOST);
        }
        Uncertain fills =
                Found.by(() -> water.fills(times)) instanceof Found.Value<Uncertain> known
                        ? known.value()
                        : Uncertain.exact(times);
        return Sureness.computed(rain.need().part(1).over(fills.times(share.value())));
    }

    /**
     * @param times how many times the design rain fills the gutter to the lip
     */
    private record Carried(double times, Basis.Amount share, double demand, Uncertain ratio) {}

    private void ratio(Carried carried, RunWater water) {
        double full = carried.times() * carried.demand();
        List<Working> workings = entering(water);
        workings.add(
                flow("flow that fills the gutter to the lip", full, "by the momentum balance"));
        workings.add(
                flow(
                        "capacity",
                        full * carried.share().value(),
                        Decimals.plain(carried.share().value(), 3)
                                + " of that; "
                                + carried.share().source()));
        Uncertain ratio = carried.ratio();
        workings.add(ratio(ratio.value()));
        Sureness.working(ratio, Unit.RATIO).ifPresent(workings::add);
        answers.known(new Facts.GutterRatio(run, ratio.value()), ratio, array(workings));
    }

    private void outlet(RunWater water, int index) {
        Taken taken = water.surface().outlets().get(index);
        String id = water.outlets().get(index).id();
        double litres = taken.flow() * LITRES;
        Answers here = shownAt(taken.outlet().x());
        Uncertain demand =
                rain.map(of -> of.part(litres)) instanceof Found.Value<Uncertain> known
                        ? Sureness.computed(known.value())
                        : computed(litres);
        here.known(
                new Facts.OutletDemand(run, id, litres),
                demand,
                flow("from the left", taken.fromLeft() * LITRES, "where the water parts"),
                flow("from the right", taken.fromRight() * LITRES, "where the water parts"),
                flow("demand", litres, "the sum of both"));
        RoundOutlet hole = (RoundOutlet) taken.outlet().outlet();
        double head = water.hung().section().lip() + hole.sump();
        double takes = hole.flowAt(head) * LITRES;
        here.known(
                new Facts.OutletRatio(run, id, demand.times(1 / takes).value()),
                demand.times(1 / takes),
                flow("demand", litres, "where the water parts between the outlets"),
                new Working(
                        "head in a full gutter",
                        Decimals.with(head * MM_PER_M, Unit.MM),
                        "depth to the lower lip, and the sump"),
                flow(
                        "capacity",
                        takes,
                        "weir or orifice of "
                                + Decimals.with(hole.diameter() * MM_PER_M, Unit.MM)
                                + (hole.strained() ? ", halved by its strainer" : "")
                                + "; EN 12056-3 table 7, from memory"),
                ratio(litres / takes));
    }

    /** What happens when leaves close one of several outlets. */
    private void blocked(RunWater water, int index) {
        String id = water.outlets().get(index).id();
        if (water.outlets().size() == 1) {
            noOther(id);
            return;
        }
        Found.by(() -> RunFlow.solve(water.surface().run().without(index), water.steps()))
                .map(RunSurface::worst)
                .either(
                        worst ->
                                shownAt(worst.x())
                                        .known(
                                                new Facts.BlockedFreeboard(
                                                        run, id, worst.freeboard() * MM_PER_M),
                                                computed(worst.freeboard() * MM_PER_M),
                                                array(surface(worst))),
                        why -> answers.gap(Facts.BlockedFreeboard.class, why, run, id));
    }

    private Answers shownAt(double alongM) {
        double mm = alongM * MM_PER_M;
        int last = trough.straights().size() - 1;
        int index = 0;
        while (index < last && trough.along(new Position(index + 1, 0)) <= mm) {
            index++;
        }
        double station = mm - trough.along(new Position(index, 0));
        return answers.on(trough.straight(index).id(), station, station);
    }

    static Working flow(String name, double litresPerSecond, String from) {
        return new Working(name, Decimals.with(litresPerSecond, Unit.L_PER_S), from);
    }

    static Working ratio(double ratio) {
        return new Working("ratio", Decimals.plain(ratio, 3), "demand / capacity");
    }

    static Working[] array(List<Working> workings) {
        return workings.toArray(Working[]::new);
    }
}
