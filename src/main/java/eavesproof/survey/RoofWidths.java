package eavesproof.survey;

import eavesproof.job.Job;
import eavesproof.job.Job.Catchment;
import eavesproof.job.Run;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Whether the roofs of a run go with the length of their eaves: area over length is the mean width
 * of a roof on plan. One that no roof has is a slip in the one or in the other, and what it would
 * bring is not believed.
 */
final class RoofWidths {
    /** Common practice: a roof that gets a gutter is wider than its overhang. */
    private static final double NARROWEST_MM = 500;

    /** Our choice: no roof is so wide, and one that is taken too wide only asks for more. */
    private static final double WIDEST_MM = 200_000;

    /** Our choice: a width that was measured apart may be that of a hip or of a splayed roof. */
    private static final double ALIKE = 1.25;

    private static final double MM2_PER_M2 = 1e6;

    private final Job job;
    private final Instruments instruments;

    RoofWidths(Job job) {
        this.job = job;
        this.instruments = new Instruments(job);
    }

    /**
     * What its measured width and the measured length of its eaves may put the area of a roof out
     * by, m2; nothing where its width was not measured apart. To be asked of a roof that was held.
     */
    Uncertain off(String run, Catchment roof) throws Lacking {
        Double widthMm = roof.meanWidthMm();
        if (widthMm == null) {
            return Uncertain.exact(0);
        }
        String name = "catchment " + roof.id();
        Job.EavesPart part = roof.eaves();
        double mm = part == null ? lengthMm(run) : lengthMm(part, name);
        Uncertain width =
                instruments.read(widthMm, "mean width of " + name, roof.measuredWith(), name);
        Uncertain length =
                instruments.read(mm, "length of the eaves of " + name, roof.measuredWith(), name);
        Uncertain area = width.times(length).times(1 / MM2_PER_M2);
        return new Uncertain(0, area.sources(), new TreeSet<>());
    }

    /**
     * @param roofs that drain to the run along its length, those left out that arrive at one place
     */
    List<Working> held(String run, List<Catchment> roofs) throws Lacking {
        List<Working> workings = new ArrayList<>();
        double together = 0;
        boolean measured = true;
        for (Catchment roof : roofs) {
            String name = "catchment " + roof.id();
            double area = Found.need(roof.planAreaM2(), "the plan area of " + name);
            Job.EavesPart part = roof.eaves();
            if (part != null) {
                workings.add(held(name, area, lengthMm(part, name), roof.meanWidthMm()));
            } else if (roof.meanWidthMm() != null) {
                workings.add(held(name, area, lengthMm(run), roof.meanWidthMm()));
            }
            together += part == null ? area : 0;
            measured &= part != null || roof.meanWidthMm() != null;
        }
        if (!measured) {
            workings.add(held("the roof of run " + run, together, lengthMm(run), null));
        }
        return workings;
    }

    private static Working held(
            String name, double areaM2, double lengthMm, @Nullable Double widthMm) throws Lacking {
        double mean = areaM2 * MM2_PER_M2 / lengthMm;
        String said =
                name
                        + ", "
                        + Decimals.with(areaM2, Unit.M2)
                        + " for "
                        + Decimals.with(lengthMm, Unit.MM)
                        + " of gutter, would be "
                        + Decimals.with(mean, Unit.MM)
                        + " wide in the mean";
        if (widthMm != null) {
            if (mean > widthMm * ALIKE || mean < widthMm / ALIKE) {
                throw Found.lacking(
                        said + ", and is recorded as " + Decimals.with(widthMm, Unit.MM));
            }
        } else if (mean < NARROWEST_MM) {
            throw Found.lacking(
                    said
                            + "; by common practice no roof with a gutter is narrower than "
                            + Decimals.with(NARROWEST_MM, Unit.MM)
                            + ", unless its mean width was measured too, or the part of the gutter"
                            + " that it drains to");
        } else if (mean > WIDEST_MM) {
            throw Found.lacking(said + ", which no roof is");
        }
        return new Working(
                "mean width of " + name,
                Decimals.with(mean, Unit.MM),
                widthMm == null
                        ? "area / length of gutter, held against common practice"
                        : "area / length of gutter, held against the width that was measured");
    }

    private static double lengthMm(Job.EavesPart part, String name) throws Lacking {
        String what = "to which part of the gutter " + name + " drains";
        Found.need(part.on(), what);
        double length = Found.need(part.toMm(), what) - Found.need(part.fromMm(), what);
        if (length <= 0) {
            throw Found.lacking("the part of the gutter that " + name + " drains to has no length");
        }
        return length;
    }

    private double lengthMm(String id) throws Lacking {
        double sum = 0;
        for (Run run : Found.need(job.runs(), "the runs")) {
            if (run.id().equals(id)) {
                String what = "the straights of run " + id;
                for (Run.Straight straight : Found.need(run.straights(), what)) {
                    String which = "the length of straight " + straight.id();
                    sum += Found.need(straight.lengthMm(), which);
                }
            }
        }
        if (sum <= 0) {
            throw Found.lacking("run " + id + " is recorded without any length");
        }
        return sum;
    }
}
