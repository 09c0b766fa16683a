package eavesproof.report;

import eavesproof.drawing.Built;
import eavesproof.drawing.Drawing;
import eavesproof.drawing.Elevation;
import eavesproof.drawing.RoofPlan;
import eavesproof.drawing.Slope;
import eavesproof.drawing.WaterSheet;
import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.WayPart;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.Survey;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiFunction;

/** The drawings of a report, in the order of the record. */
final class Figures {
    private static final String FALL = "reach-fall";

    /** What the drawing of the water is about. */
    private static final Set<String> CARRIED =
            Set.of("gutter-freeboard", "gutter-ratio", "outlet-ratio");

    private final Map<String, Drawing> drawings = new LinkedHashMap<>();
    private final BiFunction<String, Drawing, Markup> placed;
    private final double widthMm;

    /**
     * @param placed how a drawing comes into the text, given its id
     */
    Figures(double widthMm, BiFunction<String, Drawing, Markup> placed) {
        this.widthMm = widthMm;
        this.placed = placed;
    }

    /** All that were placed so far, by id. */
    Map<String, Drawing> drawings() {
        return drawings;
    }

    Markup place(Drawing drawing) {
        String id = "drawing-" + (drawings.size() + 1);
        drawings.put(id, drawing);
        return placed.apply(id, drawing);
    }

    List<Report.Figure> of(Job job, Survey survey, Findings findings, Listed listed) {
        List<Report.Figure> figures = new ArrayList<>(plans(job, findings));
        for (Run run : Objects.requireNonNullElse(job.runs(), List.<Run>of())) {
            for (Run.Straight straight :
                    Objects.requireNonNullElse(run.straights(), List.<Run.Straight>of())) {
                Built built =
                        new Built(
                                run.id(),
                                straight,
                                outlets(job, straight.id()),
                                listed.on(straight.id()),
                                slopes(findings, straight.id()),
                                survey.water(run.id()));
                Elevation elevation = Elevation.of(built, widthMm);
                figures.add(
                        new Report.Figure(
                                title(run, straight),
                                elevation.drawing().map(this::place).stream().toList(),
                                elevation.notes()));
            }
            if (run.straights() != null && !run.straights().isEmpty()) {
                figures.add(water(job, run, survey, findings));
            }
        }
        return figures;
    }

    /** Of each run from above; the first says what all of them can show. */
    private List<Report.Figure> plans(Job job, Findings findings) {
        List<Report.Figure> plans = new ArrayList<>();
        for (Run run : Objects.requireNonNullElse(job.runs(), List.<Run>of())) {
            Map<String, List<Slope>> slopes = new LinkedHashMap<>();
            Objects.requireNonNullElse(run.straights(), List.<Run.Straight>of())
                    .forEach(s -> slopes.put(s.id(), slopes(findings, s.id())));
            RoofPlan.of(job, run, slopes, widthMm)
                    .ifPresent(
                            plan ->
                                    plans.add(
                                            new Report.Figure(
                                                    name(run) + ", from above",
                                                    List.of(place(plan)),
                                                    plans.isEmpty() ? schematic(job) : List.of())));
        }
        return plans;
    }

    private static List<String> schematic(Job job) {
        String north = job.site() == null ? null : job.site().north();
        return List.of(
                "Schematic, rolled out into a line as seen from outside: to scale along the run,"
                        + " and nothing else to any. Arrows in the gutter point down its fall; a"
                        + " solid triangle marks a high point. North: "
                        + (north == null ? "not recorded" : north)
                        + ".");
    }

    private Report.Figure water(Job job, Run run, Survey survey, Findings findings) {
        WaterSheet sheet = WaterSheet.of(job, run, survey, widthMm);
        List<String> notes = new ArrayList<>(sheet.notes());
        boolean judged =
                findings.findings().stream()
                        .anyMatch(it -> it.run().equals(run.id()) && CARRIED.contains(it.kind()));
        if (!judged) {
            notes.add(
                    0,
                    "No rule of this rule set judges by this method whether the gutter and its"
                            + " outlets carry the rain: what is drawn is shown, and decides"
                            + " nothing.");
        }
        return new Report.Figure(
                name(run) + ": the water in the design rain",
                List.of(place(sheet.drawing())),
                notes);
    }

    private static String name(Run run) {
        return "Run " + run.id() + (run.title() == null ? "" : " (" + run.title() + ")");
    }

    static String title(Run run, Run.Straight straight) {
        return name(run)
                + ", straight "
                + straight.id()
                + (straight.lengthMm() == null
                        ? ", length not recorded"
                        : ", " + Decimals.with(straight.lengthMm(), Unit.MM));
    }

    private static List<WayPart.Outlet> outlets(Job job, String straight) {
        return Objects.requireNonNullElse(job.way(), List.<WayPart>of()).stream()
                .filter(WayPart.Outlet.class::isInstance)
                .map(WayPart.Outlet.class::cast)
                .filter(outlet -> straight.equals(outlet.on()))
                .toList();
    }

    /** The fall of each reach as it was found; several requirements may speak of one reach. */
    private static List<Slope> slopes(Findings findings, String straight) {
        Map<String, Slope> slopes = new LinkedHashMap<>();
        for (Finding finding : findings.findings()) {
            if (finding.kind().equals(FALL)
                    && finding.measured().orElse(null) instanceof Finding.MeasuredNumber fall) {
                finding.place()
                        .stretch()
                        .filter(s -> s.straight().equals(straight))
                        .ifPresent(
                                s ->
                                        slopes.putIfAbsent(
                                                finding.place().keys().toString(),
                                                slope(finding, fall, s.fromMm(), s.toMm())));
            }
        }
        return List.copyOf(slopes.values());
    }

    private static Slope slope(
            Finding finding, Finding.MeasuredNumber fall, double from, double to) {
        boolean leftOfOutlet = finding.place().key("side").filter("left"::equals).isPresent();
        boolean towardsOutlet = fall.value() >= 0;
        String text =
                Decimals.with(Math.abs(fall.value()), fall.unit())
                        + Amounts.ratio(Math.abs(fall.value()), fall.unit())
                        + (towardsOutlet ? "" : ", away from the outlet");
        return new Slope(from, to, leftOfOutlet == towardsOutlet, text);
    }
}
