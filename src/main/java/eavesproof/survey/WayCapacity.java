package eavesproof.survey;

import eavesproof.job.WayPart;
import eavesproof.job.WayPart.Branch;
import eavesproof.job.WayPart.Downpipe;
import eavesproof.job.WayPart.Drain;
import eavesproof.job.WayPart.Tank;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Whether each part of the way bears what comes to it. */
final class WayCapacity {
    private static final List<Class<? extends Facts.Fact>> KINDS =
            List.of(
                    Facts.BranchRatio.class,
                    Facts.DownpipeRatio.class,
                    Facts.DrainRatio.class,
                    Facts.TankInletRatio.class,
                    Facts.TankOverflowLoad.class,
                    Facts.TankOverflowRatio.class,
                    Facts.LowestOpening.class);

    private final String run;
    private final Loads loads;
    private final Answers answers;

    private WayCapacity(Trough trough, Loads loads, Answers answers) {
        this.run = trough.id();
        this.loads = loads;
        this.answers = answers;
    }

    static void answer(Trough trough, Loads loads, Basis basis, Answers answers) {
        Way way = trough.way();
        Way.Course course = way.from(trough.outlets());
        List<String> beyond = new ArrayList<>();
        way.doubt().ifPresent(beyond::add);
        beyond.addAll(course.broken());
        for (Class<? extends Facts.Fact> kind : KINDS) {
            beyond.forEach(why -> answers.gap(kind, why, trough.id()));
        }
        WayCapacity of = new WayCapacity(trough, loads, answers);
        of.each(course, new Capacities(basis, trough.instruments()), beyond.isEmpty());
        Openings openings = new Openings(trough, answers);
        course.each(Drain.class).forEach(openings::answer);
    }

    private void each(Way.Course course, Capacities capacities, boolean whole) {
        List<Branch> branches = course.each(Branch.class);
        List<Downpipe> downpipes = course.each(Downpipe.class);
        List<Drain> drains = course.each(Drain.class);
        List<Tank> tanks = course.each(Tank.class);
        branches.forEach(
                it ->
                        ratio(
                                Facts.BranchRatio.class,
                                it,
                                capacities.of(it),
                                ratio -> new Facts.BranchRatio(run, it.id(), ratio)));
        downpipes.forEach(
                it ->
                        ratio(
                                Facts.DownpipeRatio.class,
                                it,
                                capacities.of(it),
                                ratio -> new Facts.DownpipeRatio(run, it.id(), ratio)));
        drains.forEach(
                it ->
                        ratio(
                                Facts.DrainRatio.class,
                                it,
                                capacities.of(it),
                                ratio -> new Facts.DrainRatio(run, it.id(), ratio)));
        tanks.forEach(
                it ->
                        ratio(
                                Facts.TankInletRatio.class,
                                it,
                                capacities.inletOf(it),
                                ratio -> new Facts.TankInletRatio(run, it.id(), ratio)));
        tanks.forEach(
                it ->
                        ratio(
                                Facts.TankOverflowLoad.class,
                                it,
                                capacities.overflowOf(it),
                                ratio -> new Facts.TankOverflowLoad(run, it.id(), ratio)));
        tanks.forEach(this::tank);
        if (whole) {
            none(branches, Facts.BranchRatio.class, "branch");
            none(downpipes, Facts.DownpipeRatio.class, "downpipe");
            none(drains, Facts.DrainRatio.class, "drain");
            none(drains, Facts.LowestOpening.class, "drain");
            none(tanks, Facts.TankInletRatio.class, "tank");
            none(tanks, Facts.TankOverflowLoad.class, "tank");
            none(tanks, Facts.TankOverflowRatio.class, "tank");
        }
    }

    private void none(List<?> parts, Class<? extends Facts.Fact> kind, String what) {
        if (parts.isEmpty()) {
            answers.none(kind, "the water of run " + run + " passes no " + what, run);
        }
    }

    private void ratio(
            Class<? extends Facts.Fact> kind,
            WayPart part,
            Found<Capacities.Capacity> capacity,
            Function<Double, Facts.Fact> fact) {
        Found.both(loads.on(part), capacity, WayCapacity::against)
                .either(
                        against ->
                                answers.stated(
                                        fact.apply(against.computed().value()),
                                        against.computed(),
                                        against.known(),
                                        GutterWater.array(against.workings())),
                        why -> answers.gap(kind, why, run, part.id()));
    }

    private record Against(Uncertain computed, Provenance known, List<Working> workings) {}

    private static Against against(Loads.Load load, Capacities.Capacity capacity) {
        Uncertain ratio = Sureness.computed(load.flow().over(capacity.flow()));
        List<Working> workings = new ArrayList<>(load.workings());
        workings.addAll(capacity.workings());
        workings.add(GutterWater.ratio(ratio.value()));
        Sureness.working(ratio, Unit.RATIO).ifPresent(workings::add);
        return new Against(ratio, load.known(), workings);
    }

    /** What runs into a full tank must run out of it. */
    private void tank(Tank tank) {
        String name = "tank " + tank.id();
        Found.recorded(tank.inletSizeMm(), "the size of the inlet of " + name)
                .then(
                        in ->
                                Found.recorded(
                                                tank.overflowSizeMm(),
                                                "the size of the overflow of " + name)
                                        .map(out -> new Through(in, out)))
                .either(
                        through ->
                                answers.known(
                                        new Facts.TankOverflowRatio(
                                                run, tank.id(), through.ratio()),
                                        Sureness.computed(Uncertain.exact(through.ratio())),
                                        new Working(
                                                "inlet",
                                                Decimals.with(through.inMm(), Unit.MM),
                                                "as recorded"),
                                        new Working(
                                                "overflow",
                                                Decimals.with(through.outMm(), Unit.MM),
                                                "as recorded"),
                                        new Working(
                                                "ratio",
                                                Decimals.plain(through.ratio(), 3),
                                                "inlet / overflow")),
                        why -> answers.gap(Facts.TankOverflowRatio.class, why, run, tank.id()));
    }

    private record Through(double inMm, double outMm) {
        double ratio() {
            return inMm / outMm;
        }
    }
}
