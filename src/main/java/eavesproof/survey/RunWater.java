package eavesproof.survey;

import eavesproof.hydraulics.Channel;
import eavesproof.hydraulics.GutterRun;
import eavesproof.hydraulics.GutterRun.OutletAt;
import eavesproof.hydraulics.RationalFlow;
import eavesproof.hydraulics.RoundOutlet;
import eavesproof.hydraulics.RunFlow;
import eavesproof.hydraulics.RunSurface;
import eavesproof.hydraulics.Trough.Inflow;
import eavesproof.job.Gutter;
import eavesproof.job.Run;
import eavesproof.job.WayPart.Outlet;
import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import eavesproof.survey.Trough.Position;
import eavesproof.survey.Trough.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A run as built under the design rain, and the water in it.
 *
 * @param outlets from left to right, as those of the surface
 * @param workings how the gutter was taken
 */
record RunWater(
        RunSurface surface,
        List<Outlet> outlets,
        HungSection hung,
        AsBuilt sole,
        List<Working> workings) {
    private static final double MM_PER_M = 1000;
    private static final double LITRES = 1000;
    private static final double MORE = 1.1;
    private static final double BARELY = 1.01;

    /** The surface is worked out every 100 mm, within limits. */
    private static final double STEP_M = 0.1;

    private static final int FEWEST_STEPS = 50;
    private static final int MOST_STEPS = 300;

    /**
     * What falls on the roof of a run.
     *
     * @param runOff what part of it runs off
     */
    record Rain(DesignRain design, Catchments.Gathered gathered, Basis.Amount runOff) {
        static Found<Rain> of(
                Found<DesignRain> design, Found<Catchments.Gathered> roof, Basis basis) {
            return Found.by(
                    () ->
                            new Rain(
                                    design.need(),
                                    roof.need(),
                                    basis.amount(BasisKey.RUN_OFF).need()));
        }

        double litresPerSecond(double areaM2) {
            return RationalFlow.litresPerSecond(runOff.value(), design.mmPerH(), areaM2);
        }

        double all() {
            return litresPerSecond(gathered.totalM2());
        }

        /** What of it, L/s, is as sure as the roof was measured. */
        Uncertain part(double litres) {
            double area = gathered.totalM2();
            return area == 0
                    ? Uncertain.exact(litres)
                    : Uncertain.exact(litres).plus(gathered.off().times(litres / area));
        }

        List<Working> workings() {
            List<Working> workings = new ArrayList<>(gathered.workings());
            workings.addAll(design.workings());
            workings.add(
                    new Working("run-off", Decimals.plain(runOff.value(), 3), runOff.source()));
            return workings;
        }
    }

    static Found<RunWater> of(Trough trough, Found<Gutter> gutter, Found<Rain> rain, Basis basis) {
        return Found.by(() -> solved(trough, gutter.need(), rain.need(), basis));
    }

    private static RunWater solved(Trough trough, Gutter gutter, Rain rain, Basis basis)
            throws Lacking {
        String material = Found.need(gutter.material(), "the material of gutter " + gutter.id());
        HungSection hung = HungSection.of(gutter, FrontLower.of(trough)).need();
        closed(trough.straight(0).leftEnd(), trough.leftEnd(0).name());
        int last = trough.straights().size() - 1;
        Spot right = trough.rightEnd(last).need();
        closed(trough.straight(last).rightEnd(), right.name());
        double lengthMm = trough.distance(trough.leftEnd(0), right).need().value();
        AsBuilt sole = AsBuilt.of(trough, lengthMm).need();
        Basis.Choice method = basis.choice(BasisKey.OUTLET_METHOD).need();
        Basis.Amount n = basis.manningN(material).need();
        List<Placed> outlets = outlets(trough);
        GutterRun run =
                new GutterRun(
                        new Channel(hung.section(), n.value()),
                        sole.soles(),
                        rain.litresPerSecond(rain.gathered().roofM2())
                                / LITRES
                                / (lengthMm / MM_PER_M),
                        inflows(trough, rain),
                        corners(trough),
                        outlets.stream().map(Placed::at).toList());
        List<Working> workings = new ArrayList<>(hung.workings());
        workings.add(sole.working());
        workings.add(new Working("Manning's n", Decimals.plain(n.value(), 4), n.source()));
        workings.add(new Working("outlets", method.word(), method.source()));
        notCounted(trough.run()).ifPresent(workings::add);
        return new RunWater(
                RunFlow.solve(run, steps(run)),
                outlets.stream().map(Placed::outlet).toList(),
                hung,
                sole,
                List.copyOf(workings));
    }

    /**
     * The least freeboard, mm, with what the roof, as far as it was measured, and the readings of
     * the sole put into it: each of these is moved by its standard uncertainty, or by 1 mm where it
     * has none, and the water worked out again (JCGM 100:2008 5.1.3, note 2, to one side). How sure
     * areas, rain, the section, roughness and the method are is recorded nowhere, and stays
     * unstated.
     */
    Uncertain freeboardMm(Rain rain) {
        double found = surface.worst().freeboard() * MM_PER_M;
        Uncertain whole = rain.part(1);
        Uncertain freeboard =
                Sureness.computed(Uncertain.exact(found))
                        .plus(
                                whole.minus(Uncertain.exact(1))
                                        .times((underMoreMm() - found) / (MORE - 1)));
        for (Uncertain reading : sole.readings()) {
            double off = reading.standardUncertainty();
            double by = off > 0 ? off : 1;
            RunSurface moved = RunFlow.solve(surface.run().lying(sole.moved(reading, by)), steps());
            double each = (moved.worst().freeboard() * MM_PER_M - found) / by;
            freeboard = freeboard.plus(reading.minus(Uncertain.exact(reading.value())).times(each));
        }
        return freeboard;
    }

    /**
     * How many times the design rain fills the gutter to the lip, with what the readings of the
     * sole put into it: by how much each moves the freeboard then, over how much more rain does
     * (the lip is where the two together leave nothing).
     */
    Uncertain fills(double times) {
        Uncertain fills = Uncertain.exact(times);
        GutterRun full = surface.run().under(times);
        double left = leastMm(full);
        double perTime =
                times > 0 ? (leastMm(full.under(BARELY)) - left) / (times * (BARELY - 1)) : 0;
        if (perTime >= 0) {
            return fills;
        }
        for (Uncertain reading : sole.readings()) {
            double off = reading.standardUncertainty();
            double by = off > 0 ? off : 1;
            double each = (leastMm(full.lying(sole.moved(reading, by))) - left) / by;
            Uncertain moved = reading.minus(Uncertain.exact(reading.value()));
            fills = fills.plus(moved.times(-each / perTime));
        }
        return fills;
    }

    private double leastMm(GutterRun run) {
        return RunFlow.solve(run, steps()).worst().freeboard() * MM_PER_M;
    }

    private double underMoreMm() {
        return leastMm(surface.run().under(MORE));
    }

    /** What nobody stated may be off by: a roof that is drawn small, a rain that is mapped low. */
    Working underMore() {
        return new Working(
                "freeboard with a tenth more rain or roof",
                Decimals.with(underMoreMm(), Unit.MM),
                "worked out again");
    }

    /** Their sizes are not recorded, and what leaves by them would only help. */
    private static Optional<Working> notCounted(Run run) {
        Run.EavesSection eaves = run.eavesSection();
        List<String> provided = eaves == null ? null : Eaves.measures(eaves);
        return provided == null || provided.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Working(
                                "slots, weirs and other overflows",
                                "not counted",
                                "provided, as recorded: " + String.join(", ", provided)));
    }

    int steps() {
        return steps(surface.run());
    }

    private static int steps(GutterRun run) {
        double steps = StrictMath.ceil(run.length() / STEP_M);
        return (int) Math.min(MOST_STEPS, Math.max(FEWEST_STEPS, steps));
    }

    private static void closed(Run.@Nullable End end, String name) throws Lacking {
        String kind =
                Found.need(end == null ? null : end.kind(), "what kind of end " + name + " is");
        if (!kind.equals(Words.STOP_END)) {
            throw Found.lacking(
                    name
                            + " is recorded as "
                            + kind
                            + ": what happens to the water there is not recorded");
        }
    }

    private static List<Inflow> inflows(Trough trough, Rain rain) throws Lacking {
        List<Inflow> inflows = new ArrayList<>();
        for (Catchments.Arriving arriving : rain.gathered().arriving()) {
            int index = trough.indexOf(arriving.straight());
            if (index < 0) {
                throw Found.lacking(
                        "straight "
                                + arriving.straight()
                                + ", where water arrives, is not of run "
                                + trough.id());
            }
            double along = trough.along(new Position(index, arriving.stationMm()));
            inflows.add(
                    new Inflow(along / MM_PER_M, rain.litresPerSecond(arriving.areaM2()) / LITRES));
        }
        return inflows;
    }

    private static List<Double> corners(Trough trough) {
        List<Double> corners = new ArrayList<>();
        for (int i = 1; i < trough.straights().size(); i++) {
            corners.add(trough.along(new Position(i, 0)) / MM_PER_M);
        }
        return corners;
    }

    private record Placed(Outlet outlet, OutletAt at) {}

    private static List<Placed> outlets(Trough trough) throws Lacking {
        if (trough.way().doubt().isPresent()) {
            throw Found.lacking(trough.way().doubt().get());
        }
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < trough.straights().size(); i++) {
            for (Outlet outlet : trough.outletsOn(i)) {
                double along = trough.along(trough.spot(i, outlet).need().position());
                placed.add(new Placed(outlet, new OutletAt(along / MM_PER_M, hole(outlet))));
            }
        }
        if (placed.isEmpty()) {
            throw Found.lacking("run " + trough.id() + " has no outlet");
        }
        placed.sort(Comparator.comparingDouble(it -> it.at().x()));
        return placed;
    }

    /** A sump that is not recorded is none: it only helps. */
    private static RoundOutlet hole(Outlet outlet) throws Lacking {
        String name = "outlet " + outlet.id();
        double size = Found.need(outlet.sizeMm(), "the size of " + name);
        String what = "whether " + name + " has a strainer";
        String strainer = Found.need(outlet.strainer(), what);
        if (!strainer.equals(Words.YES) && !strainer.equals(Words.NO)) {
            throw Found.lacking(what + " is recorded as " + strainer);
        }
        Double sump = outlet.sumpDepthMm();
        return new RoundOutlet(
                size / MM_PER_M, sump == null ? 0 : sump / MM_PER_M, strainer.equals(Words.YES));
    }
}
