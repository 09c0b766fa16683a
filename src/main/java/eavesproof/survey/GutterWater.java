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

    /** What keeps a computed depth from having a stated uncertainty. */
    private static final String COMPUTED =
            "how sure areas, rain, roughness and the method itself are was not recorded";

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

    /** A number that was computed from others whose uncertainty is not recorded. */
    static Uncertain computed(double value) {
        return Uncertain.unstated(value, COMPUTED);
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
        List<Working> workings = of.workings();
        workings.add(flow("demand", litres, "run-off x intensity x area"));
        answers.known(new Facts.RunDemand(run, litres), computed(litres), array(workings));
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
                        litres ->
                                answers.known(
                                        new Facts.OutletDemand(run, id, litres),
                                        computed(litres),
                                        flow("demand", litres, "all that comes to the run")),
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
        Found<Uncertain> sure = Found.by(water::freeboardMm);
        sure.map(known -> workings.add(sureness(known)));
        Found.by(water::underMore).map(workings::add);
        double mm = worst.freeboard() * MM_PER_M;
        shownAt(worst.x())
                .known(
                        new Facts.GutterFreeboard(run, mm),
                        sure instanceof Found.Value<Uncertain> known ? known.value() : computed(mm),
                        array(workings));
    }

    /** As far as it is known; the rest makes it unstated, so that no guard can be kept. */
    private static Working sureness(Uncertain freeboard) {
        return new Working(
                "how sure",
                "± " + Decimals.with(freeboard.expandedUncertainty(), Unit.MM),
                "k = 2, from the readings of the sole alone; " + COMPUTED);
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
                            return new Carried(times, share, rain.need().all());
                        })
                .either(
                        carried -> ratio(carried, water),
                        why -> answers.gap(Facts.GutterRatio.class, why, run));
    }

    /**
     * @param times how many times the design rain fills the gutter to the lip
     */
    private record Carried(double times, Basis.Amount share, double demand) {
        double ratio() {
            double carries = times * share.value();
            return carries * MOST < 1 ? MOST : 1 / carries;
        }
    }

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
        workings.add(ratio(carried.ratio()));
        answers.known(
                new Facts.GutterRatio(run, carried.ratio()),
                computed(carried.ratio()),
                array(workings));
    }

    private void outlet(RunWater water, int index) {
        Taken taken = water.surface().outlets().get(index);
        String id = water.outlets().get(index).id();
        double litres = taken.flow() * LITRES;
        Answers here = shownAt(taken.outlet().x());
        here.known(
                new Facts.OutletDemand(run, id, litres),
                computed(litres),
                flow("from the left", taken.fromLeft() * LITRES, "where the water parts"),
                flow("from the right", taken.fromRight() * LITRES, "where the water parts"),
                flow("demand", litres, "the sum of both"));
        RoundOutlet hole = (RoundOutlet) taken.outlet().outlet();
        double head = water.hung().section().lip() + hole.sump();
        double takes = hole.flowAt(head) * LITRES;
        here.known(
                new Facts.OutletRatio(run, id, litres / takes),
                computed(litres / takes),
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
