package eavesproof.survey;

import eavesproof.hydraulics.PlumbingCodeLeader;
import eavesproof.hydraulics.RoundPipe;
import eavesproof.hydraulics.WallHole;
import eavesproof.hydraulics.WylyEaton;
import eavesproof.job.WayPart.Branch;
import eavesproof.job.WayPart.Downpipe;
import eavesproof.job.WayPart.Drain;
import eavesproof.job.WayPart.Offset;
import eavesproof.job.WayPart.Tank;
import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What downpipes, branches, drains and tanks carry, by the methods that the rule set states. */
final class Capacities {
    private static final double MM_PER_M = 1000;
    private static final double LITRES = 1000;
    private static final double SCREENED = 0.5;

    /** By how much a fall is made steeper to see what that does. */
    private static final double STEEPER = 1.001;

    private final Basis basis;
    private final Instruments instruments;

    Capacities(Basis basis, Instruments instruments) {
        this.basis = basis;
        this.instruments = instruments;
    }

    /**
     * @param flow in L/s, as sure as the fall was measured; the size is as marked
     */
    record Capacity(Uncertain flow, List<Working> workings) {}

    /** The least of the pipe itself and of each of its offsets. */
    Found<Capacity> of(Downpipe downpipe) {
        return Found.by(
                () -> {
                    String name = "downpipe " + downpipe.id();
                    Size size = size(downpipe, name);
                    Capacity least = upright(size);
                    List<Offset> offsets = Found.need(downpipe.offsets(), "the offsets of " + name);
                    for (Offset offset : offsets) {
                        double angle =
                                Found.need(offset.angleDeg(), "the angle of an offset of " + name);
                        double slope = StrictMath.tan(StrictMath.toRadians(angle));
                        Capacity sloping = sloping(size, Uncertain.exact(slope));
                        least = sloping.flow().value() < least.flow().value() ? sloping : least;
                    }
                    return least;
                });
    }

    Found<Capacity> of(Branch branch) {
        String name = "branch " + branch.id();
        return Found.by(
                () ->
                        sloping(
                                Size.round(Found.need(branch.sizeMm(), "the size of " + name)),
                                slope(
                                        branch.dropMm(),
                                        branch.lengthMm(),
                                        branch.measuredWith(),
                                        name)));
    }

    Found<Capacity> of(Drain drain) {
        String name = "drain " + drain.id();
        return Found.by(
                () ->
                        asDrain(
                                Size.round(Found.need(drain.sizeMm(), "the size of " + name)),
                                slope(
                                        drain.dropMm(),
                                        drain.lengthMm(),
                                        drain.measuredWith(),
                                        name)));
    }

    private Uncertain slope(
            @Nullable Double dropMm, @Nullable Double lengthMm, @Nullable String with, String name)
            throws Lacking {
        double drop = Found.need(dropMm, "the drop of " + name);
        double length = Found.need(lengthMm, "the length of " + name);
        if (length <= 0) {
            throw Found.lacking(name + " is recorded without any length");
        }
        return instruments
                .read(drop, "drop of " + name, with, name)
                .over(instruments.read(length, "length of " + name, with, name));
    }

    /**
     * The inlet of a tank takes what an upright pipe of its size carries, of which it is the last
     * piece; a screen over it halves that, as a strainer does to an outlet (EN 12056-3:2000 5.3,
     * from memory).
     */
    Found<Capacity> inletOf(Tank tank) {
        String name = "tank " + tank.id();
        return Found.by(
                () -> {
                    double size =
                            Found.need(tank.inletSizeMm(), "the size of the inlet of " + name);
                    String what = "whether the inlet of " + name + " is screened";
                    String screened = Found.need(tank.screened(), what);
                    if (!screened.equals(Words.YES) && !screened.equals(Words.NO)) {
                        throw Found.lacking(what + " is recorded as " + screened);
                    }
                    Capacity open = upright(Size.round(size));
                    return screened.equals(Words.NO) ? open : screened(open);
                });
    }

    private static Capacity screened(Capacity open) {
        Uncertain litres = open.flow().times(SCREENED);
        List<Working> workings = new ArrayList<>(open.workings());
        workings.add(
                GutterWater.flow(
                        "capacity",
                        litres.value(),
                        "half of that for its screen, as for the strainer of an outlet; EN 12056-3"
                                + " 5.3, from memory"));
        return new Capacity(litres, List.copyOf(workings));
    }

    /** What the overflow of a tank lets out before the water stands above it. */
    Found<Capacity> overflowOf(Tank tank) {
        return Found.by(
                () -> {
                    double size =
                            Found.need(
                                    tank.overflowSizeMm(),
                                    "the size of the overflow of tank " + tank.id());
                    Basis.Amount part = basis.amount(BasisKey.TANK_OVERFLOW_COEFFICIENT).need();
                    WallHole hole = new WallHole(size / MM_PER_M, part.value());
                    return capacity(
                            hole.flow() * LITRES,
                            Size.round(size),
                            Decimals.plain(part.value(), 3)
                                    + " x 8/15 sqrt(2 g) D^2.5, the tank full to its top; "
                                    + part.source(),
                            new ArrayList<>());
                });
    }

    /**
     * @param diameterMm of the pipe, or of a round one that is as large
     */
    private record Size(double diameterMm, boolean isRound, String text) {
        static Size round(double diameterMm) {
            return new Size(diameterMm, true, Decimals.with(diameterMm, Unit.MM));
        }
    }

    private static Size size(Downpipe downpipe, String name) throws Lacking {
        Double round = downpipe.sizeMm();
        if (round != null) {
            return Size.round(round);
        }
        double width = Found.need(downpipe.widthMm(), "the size of " + name);
        double depth = Found.need(downpipe.depthMm(), "the size of " + name);
        double equal = WylyEaton.equalDiameterMm(width, depth);
        return new Size(
                equal,
                false,
                Decimals.plain(width, 1)
                        + " x "
                        + Decimals.with(depth, Unit.MM)
                        + ", taken as a round pipe of equal area, "
                        + Decimals.with(equal, Unit.MM));
    }

    private Capacity sloping(Size size, Uncertain slope) throws Lacking {
        double steep = basis.amount(BasisKey.STEEP_DEG).need().value();
        double angle = StrictMath.toDegrees(StrictMath.atan(slope.value()));
        // An offset of more than 90 degrees leads upwards: its tangent is below 0.
        return angle >= steep ? upright(size) : asDrain(size, slope);
    }

    private Capacity upright(Size size) throws Lacking {
        Basis.Choice method = basis.choice(BasisKey.DOWNPIPE_METHOD).need();
        if (method.word().equals(Basis.SEVEN_24THS)) {
            if (!size.isRound()) {
                throw Found.lacking("the method " + method.word() + " is for round downpipes");
            }
            double gallons =
                    PlumbingCodeLeader.gallonsPerMinute(
                            Unit.MM.convert(size.diameterMm(), Unit.INCH));
            return capacity(
                    Unit.US_GPM.convert(gallons, Unit.L_PER_S),
                    size,
                    "round, " + method.word() + "; " + method.source(),
                    new ArrayList<>());
        }
        Basis.Amount filling = basis.amount(BasisKey.DOWNPIPE_FILLING).need();
        Basis.Amount rough = basis.amount(BasisKey.DOWNPIPE_ROUGHNESS_MM).need();
        List<Working> workings = new ArrayList<>();
        workings.add(
                new Working(
                        "filling degree", Decimals.plain(filling.value(), 3), filling.source()));
        workings.add(
                new Working("roughness", Decimals.plain(rough.value(), 3) + " mm", rough.source()));
        return capacity(
                WylyEaton.litresPerSecond(size.diameterMm(), rough.value(), filling.value()),
                size,
                "2.5e-4 kb^-0.167 d^2.667 f^1.667; " + method.source(),
                workings);
    }

    private interface Sloping {
        double flowAt(double slope);
    }

    /** With what the fall may be off by put into it (JCGM 100:2008 5.1.3, note 2, to one side). */
    private static Uncertain flow(Uncertain slope, Sloping of) {
        double at = slope.value();
        double flow = of.flowAt(at) * LITRES;
        double each = (of.flowAt(at * STEEPER) * LITRES - flow) / (at * (STEEPER - 1));
        return Uncertain.exact(flow).plus(slope.minus(Uncertain.exact(at)).times(each));
    }

    private Capacity asDrain(Size size, Uncertain slope) throws Lacking {
        Basis.Choice method = basis.choice(BasisKey.DRAIN_METHOD).need();
        Basis.Amount filling = basis.amount(BasisKey.DRAIN_FILLING).need();
        RoundPipe pipe = new RoundPipe(size.diameterMm() / MM_PER_M);
        boolean manning = method.word().equals(Basis.MANNING);
        Basis.Amount rough =
                basis.amount(manning ? BasisKey.DRAIN_MANNING_N : BasisKey.DRAIN_ROUGHNESS_MM)
                        .need();
        Uncertain flow =
                flow(
                        slope,
                        at ->
                                manning
                                        ? pipe.manning(filling.value(), at, rough.value())
                                        : pipe.colebrook(
                                                filling.value(), at, rough.value() / MM_PER_M));
        List<Working> workings = new ArrayList<>();
        workings.add(
                new Working(
                        "fall",
                        Decimals.with(slope.value() * MM_PER_M, Unit.MM_PER_M),
                        "drop / length"));
        workings.add(
                new Working(
                        "depth over diameter",
                        Decimals.plain(filling.value(), 3),
                        filling.source()));
        workings.add(
                new Working(
                        "roughness",
                        Decimals.plain(rough.value(), 4) + (manning ? "" : " mm"),
                        rough.source()));
        return capacity(flow, size, method.word() + "; " + method.source(), workings);
    }

    private static Capacity capacity(
            double litres, Size size, String from, List<Working> workings) {
        return capacity(Uncertain.exact(litres), size, from, workings);
    }

    private static Capacity capacity(
            Uncertain flow, Size size, String from, List<Working> workings) {
        workings.add(0, new Working("size", size.text(), "as recorded"));
        workings.add(GutterWater.flow("capacity", flow.value(), from));
        return new Capacity(flow, List.copyOf(workings));
    }
}
