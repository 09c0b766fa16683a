package eavesproof.survey;

import eavesproof.hydraulics.RationalFlow;
import eavesproof.job.Job;
import eavesproof.job.Job.Catchment;
import eavesproof.job.Job.Inflow;
import eavesproof.job.Job.Wall;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How much roof, with its share of the walls above, sends its rain to a run. */
final class Catchments {
    /** As fine as the surface of the water is worked out. */
    private static final double PIECE_MM = 100;

    private static final int MOST_PIECES = 300;

    private final Job job;
    private final RoofWidths widths;
    private final Basis basis;

    Catchments(Job job, Basis basis) {
        this.job = job;
        this.widths = new RoofWidths(job);
        this.basis = basis;
    }

    /**
     * @param roofM2 area that catches rain and drains to the run along its whole length
     * @param arriving what arrives at single places
     * @param off what all of it may be out by, as far as it was measured, m2
     */
    record Gathered(double roofM2, List<Arriving> arriving, Uncertain off, List<Working> workings) {
        double totalM2() {
            return roofM2 + arriving.stream().mapToDouble(Arriving::areaM2).sum();
        }
    }

    /** What arrives at a station of a straight. */
    record Arriving(String straight, double stationMm, double areaM2) {}

    Found<Gathered> of(String run) {
        return Found.by(() -> gathered(run));
    }

    private Gathered gathered(String run) throws Lacking {
        double roof = 0;
        List<Arriving> arriving = new ArrayList<>();
        List<Working> workings = new ArrayList<>();
        List<Catchment> along = new ArrayList<>();
        for (Catchment catchment :
                Found.need(job.catchments(), "what roof drains to the gutters")) {
            String name = "catchment " + catchment.id();
            if (!Found.need(catchment.run(), "which run " + name + " drains to").equals(run)) {
                continue;
            }
            double plan = Found.need(catchment.planAreaM2(), "the plan area of " + name);
            double area =
                    roof(plan, catchment.pitchDeg(), name, workings)
                            + walls(catchment.walls(), name, workings);
            Inflow inflow = catchment.inflow();
            Job.EavesPart part = catchment.eaves();
            if (inflow == null) {
                along.add(catchment);
            }
            if (inflow == null && part != null) {
                arriving.addAll(spread(part, area, name));
            } else if (inflow == null) {
                roof += area;
            } else {
                String where = "where on the run the water of " + name + " arrives";
                arriving.add(
                        new Arriving(
                                Found.need(inflow.on(), where),
                                Found.need(inflow.stationMm(), where),
                                area));
            }
        }
        if (workings.isEmpty()) {
            throw Found.lacking("no catchment of run " + run + " is recorded");
        }
        workings.addAll(widths.held(run, along));
        Uncertain off = Uncertain.exact(0);
        for (Catchment one : along) {
            off = off.plus(widths.off(run, one));
        }
        return new Gathered(roof, List.copyOf(arriving), off, List.copyOf(workings));
    }

    /** A roof along a part of a straight, as what arrives at many places near each other. */
    private static List<Arriving> spread(Job.EavesPart part, double areaM2, String name)
            throws Lacking {
        String what = "to which part of the gutter " + name + " drains";
        String on = Found.need(part.on(), what);
        double from = Found.need(part.fromMm(), what);
        double to = Found.need(part.toMm(), what);
        int pieces =
                (int) Math.max(1, Math.min(MOST_PIECES, StrictMath.ceil((to - from) / PIECE_MM)));
        List<Arriving> spread = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            double at = from + (to - from) * (i + 0.5) / pieces;
            spread.add(new Arriving(on, at, areaM2 / pieces));
        }
        return spread;
    }

    /** What of a roof catches rain, m². */
    double roof(double planM2, @Nullable Double pitchDeg, String name, List<Working> workings)
            throws Lacking {
        Basis.Choice counts = basis.choice(BasisKey.ROOF_RAIN).need();
        workings.add(
                new Working("plan area of " + name, Decimals.with(planM2, Unit.M2), "as recorded"));
        if (counts.word().equals(Basis.PLAN)) {
            return planM2;
        }
        double pitch = Found.need(pitchDeg, "the pitch of " + name);
        double area = planM2 * RationalFlow.windFactor(pitch);
        workings.add(
                new Working(
                        "area of " + name,
                        Decimals.with(area, Unit.M2),
                        "plan and half the rise at a pitch of "
                                + Decimals.with(pitch, Unit.DEGREE)
                                + "; "
                                + counts.source()));
        return area;
    }

    private double walls(@Nullable List<Wall> recorded, String name, List<Working> workings)
            throws Lacking {
        double all = 0;
        for (Wall wall : Found.need(recorded, "whether walls stand above " + name)) {
            all += Found.need(wall.areaM2(), "the area of a wall above " + name);
        }
        if (all == 0) {
            return 0;
        }
        Basis.Amount share = basis.amount(BasisKey.WALL_SHARE).need();
        double counts = share.value() * all;
        workings.add(
                new Working(
                        "walls above " + name,
                        Decimals.with(counts, Unit.M2),
                        Decimals.plain(share.value(), 3)
                                + " of "
                                + Decimals.with(all, Unit.M2)
                                + "; "
                                + share.source()));
        return counts;
    }
}
