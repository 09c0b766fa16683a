package eavesproof.report;

import eavesproof.job.Gutter;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Said;
import eavesproof.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The readings and measurements of each straight, as they stand in the record. */
final class AsRecorded {
    private final Job job;
    private final Run run;
    private final Run.Straight straight;

    private AsRecorded(Job job, Run run, Run.Straight straight) {
        this.job = job;
        this.run = run;
        this.straight = straight;
    }

    static List<Report.Record> of(Job job) {
        List<Report.Record> records = new ArrayList<>();
        for (Run run : Objects.requireNonNullElse(job.runs(), List.<Run>of())) {
            for (Run.Straight straight :
                    Objects.requireNonNullElse(run.straights(), List.<Run.Straight>of())) {
                records.add(new AsRecorded(job, run, straight).record());
            }
        }
        return records;
    }

    private Report.Record record() {
        return new Report.Record(Figures.title(run, straight), facts(), Alongside.strips(straight));
    }

    private List<Report.Entry> facts() {
        List<Report.Entry> facts = new ArrayList<>();
        facts.add(new Report.Entry("Gutter", gutter(job, run)));
        facts.add(new Report.Entry("How it is held", People.or(run.held())));
        facts.add(
                new Report.Entry(
                        "Ends",
                        "left " + end(straight.leftEnd()) + "; right " + end(straight.rightEnd())));
        String with =
                straight.measuredWith() == null ? job.measuredWith() : straight.measuredWith();
        facts.add(new Report.Entry("Stations read with", People.or(with)));
        Run.Fitted fitted = run.fitted();
        String temperature =
                fitted == null
                        ? ""
                        : People.joined(
                                Amounts.with(fitted.temperatureC(), Unit.CELSIUS),
                                fitted.light(),
                                fitted.date());
        facts.add(new Report.Entry("Gutter when fitted", People.or(temperature)));
        Run.Fascia fascia = straight.fascia();
        if (fascia != null) {
            facts.add(new Report.Entry("Timber", People.or(timber(fascia))));
        }
        Run.RoofEdge edge = straight.roofEdge();
        if (edge != null) {
            facts.add(new Report.Entry("Edge of the roof", People.or(edge(edge))));
        }
        Run.EavesSection section = run.eavesSection();
        if (section != null) {
            facts.add(new Report.Entry("Section of the eaves", People.or(section(section))));
        }
        facts.addAll(Alongside.things(straight));
        absent(facts);
        return facts;
    }

    /** Whether there are none of a thing, or nobody said. */
    private void absent(List<Report.Entry> facts) {
        Map<String, @Nullable List<?>> lists = new LinkedHashMap<>();
        lists.put("readings", straight.readings());
        lists.put("brackets", straight.brackets());
        lists.put("joints", straight.joints());
        lists.put("fittings", straight.fittings());
        lists.put("lengths to keep clear", straight.keepClear());
        List<String> none = new ArrayList<>();
        List<String> unsaid = new ArrayList<>();
        lists.forEach(
                (what, list) -> {
                    if (list == null) {
                        unsaid.add(what);
                    } else if (list.isEmpty()) {
                        none.add(what);
                    }
                });
        if (!none.isEmpty()) {
            facts.add(new Report.Entry("There are none", String.join(", ", none)));
        }
        if (!unsaid.isEmpty()) {
            facts.add(new Report.Entry("Not recorded", String.join(", ", unsaid)));
        }
    }

    static String gutter(Job job, Run run) {
        String id = run.gutter();
        Gutter gutter = id == null || job.gutters() == null ? null : job.gutters().get(id);
        if (gutter == null) {
            return Grids.NOT_RECORDED;
        }
        Gutter.Profile profile = gutter.profile();
        return People.or(
                People.joined(
                        gutter.kind(),
                        gutter.material(),
                        gutter.jointing(),
                        profile == null ? null : profile.shape(),
                        profile == null || profile.widthMm() == null
                                ? null
                                : Amounts.with(profile.widthMm(), Unit.MM) + " wide",
                        profile == null || profile.depthMm() == null
                                ? null
                                : Amounts.with(profile.depthMm(), Unit.MM) + " deep",
                        gutter.thicknessMm() == null
                                ? null
                                : Amounts.with(gutter.thicknessMm(), Unit.MM) + " thick",
                        gutter.coating(),
                        gutter.colour(),
                        gutter.standardMarked() == null
                                ? null
                                : "marked " + gutter.standardMarked()));
    }

    private static String end(Run.@Nullable End end) {
        if (end == null) {
            return Grids.NOT_RECORDED;
        }
        return People.joined(
                People.or(end.kind()),
                end.gapToWallMm() == null
                        ? null
                        : Amounts.with(end.gapToWallMm(), Unit.MM) + " from the wall");
    }

    private static String timber(Run.Fascia fascia) {
        String from = Amounts.plain(fascia.beginsMm(), 1);
        String to = Amounts.with(fascia.endsMm(), Unit.MM);
        return People.joined(
                from == null && to == null
                        ? null
                        : "from " + People.or(from) + " to " + People.or(to),
                fascia.material(),
                fascia.preservative(),
                said("treated with", fascia.treatedWith()),
                said("sound", fascia.sound()));
    }

    private static String edge(Run.RoofEdge edge) {
        return People.joined(
                with("overhang", edge.overhangMm()),
                with("drop to the front bead", edge.dropToFrontBeadMm()),
                with("underlay past the fascia", edge.underlayPastFasciaMm()),
                said("snow held on the roof", edge.snowHeld()));
    }

    private static String section(Run.EavesSection section) {
        return People.joined(
                with("back edge below top of fascia", section.backEdgeBelowFasciaTopMm()),
                with("front bead below top of fascia", section.frontBeadBelowFasciaTopMm()),
                with("gap behind", section.gapBehindMm()),
                with("width of the eaves", section.eavesWidthMm()),
                said("lined", section.lined()),
                section.overflowProvisions() == null || section.overflowProvisions().isEmpty()
                        ? null
                        : "for overflow: " + String.join(", ", section.overflowProvisions()),
                overflows(section.overflows()));
    }

    private static @Nullable String overflows(@Nullable List<Run.Overflow> overflows) {
        return overflows == null || overflows.isEmpty()
                ? null
                : overflows.stream()
                        .map(AsRecorded::overflow)
                        .collect(java.util.stream.Collectors.joining("; "));
    }

    private static String overflow(Run.Overflow one) {
        return People.joined(
                one.id(),
                one.kind(),
                with("along", one.lengthMm()),
                with("size", one.sizeMm()),
                with("height", one.heightMm()),
                one.openMm2PerM() == null
                        ? null
                        : "open in each metre " + Amounts.with(one.openMm2PerM(), Unit.MM2),
                with("below top of fascia", one.belowFasciaTopMm()),
                with("from the high point", one.highPointMm()));
    }

    private static @Nullable String with(String what, @Nullable Double mm) {
        return mm == null ? null : what + " " + Amounts.with(mm, Unit.MM);
    }

    private static @Nullable String said(String what, Said<String> said) {
        return said.is() == null ? null : what + ": " + said.is();
    }
}
