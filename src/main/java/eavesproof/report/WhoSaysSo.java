package eavesproof.report;

import eavesproof.job.Gutter;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Said;
import eavesproof.job.WayPart;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Every circumstance and approval of the record, with who says so and how they know. */
final class WhoSaysSo {
    private final Grids grid =
            new Grids("", "No circumstance is recorded.")
                    .words("What", 34)
                    .words("Said", 20)
                    .words("How known", 12)
                    .words("By", 18)
                    .words("Reference", 18);

    private WhoSaysSo() {}

    static Report.Grid of(Job job) {
        WhoSaysSo said = new WhoSaysSo();
        said.circumstances(job.circumstances());
        Objects.requireNonNullElse(job.gutters(), Map.<String, Gutter>of())
                .values()
                .forEach(said::gutter);
        for (Run run : Objects.requireNonNullElse(job.runs(), List.<Run>of())) {
            said.run(run);
        }
        Objects.requireNonNullElse(job.way(), List.<WayPart>of()).forEach(said::part);
        return said.grid.grid();
    }

    private void circumstances(Job.@Nullable Circumstances all) {
        if (all == null) {
            return;
        }
        word("Snow lies at the site", all.snowLies());
        word("The site has heavy rain", all.heavyRain());
        number("Snow load on the ground", all.groundSnowKnM2(), " kN/m²", Unit.KN_PER_M2);
        number("Distance to salt water", all.saltWaterKm(), " km", Unit.M);
        word("Corrosion class", all.corrosionClass());
        word("Wind zone", all.windZone());
        word("Bushfire level", all.bushfireLevel());
        for (Job.Rainfall rain :
                Objects.requireNonNullElse(all.rainfall(), List.<Job.Rainfall>of())) {
            grid.row("Rainfall", rain(rain), null, null, rain.source());
        }
    }

    private static String rain(Job.Rainfall rain) {
        return People.joined(
                rain.intensityMmH() == null
                        ? "intensity not recorded"
                        : Decimals.plain(rain.intensityMmH(), 1) + " mm/h",
                rain.durationMin() == null
                        ? null
                        : "over " + Decimals.plain(rain.durationMin(), 1) + " min",
                rain.aepPercent() == null
                        ? null
                        : Decimals.plain(rain.aepPercent(), 2) + " % a year");
    }

    private void gutter(Gutter gutter) {
        number("Gutter " + gutter.id() + ": section", gutter.areaMm2(), " mm²", Unit.MM2);
        number(
                "Gutter " + gutter.id() + ": what one bracket carries",
                gutter.bracketCapacityN(),
                " N",
                Unit.NEWTON);
    }

    private void run(Run run) {
        Run.EavesSection section = run.eavesSection();
        if (section != null) {
            word("Run " + run.id() + ": eaves are lined", section.lined());
        }
        for (Run.Straight straight :
                Objects.requireNonNullElse(run.straights(), List.<Run.Straight>of())) {
            Run.RoofEdge edge = straight.roofEdge();
            if (edge != null) {
                word("Straight " + straight.id() + ": snow held on the roof", edge.snowHeld());
            }
            for (Run.Joint joint :
                    Objects.requireNonNullElse(straight.joints(), List.<Run.Joint>of())) {
                carries("Joint " + joint.id(), joint.fixing());
            }
            for (Run.Fitting fitting :
                    Objects.requireNonNullElse(straight.fittings(), List.<Run.Fitting>of())) {
                carries("Fitting " + fitting.id(), fitting.fixing());
            }
            Run.Fascia fascia = straight.fascia();
            if (fascia != null) {
                word("Straight " + straight.id() + ": the timber is sound", fascia.sound());
                word(
                        "Straight " + straight.id() + ": the timber was treated with",
                        fascia.treatedWith());
            }
        }
    }

    private void carries(String what, Run.@Nullable Fixing fixing) {
        if (fixing != null) {
            number(what + ": what it carries", fixing.carriesN(), " N", Unit.NEWTON);
        }
    }

    private void part(WayPart part) {
        if (part instanceof WayPart.Outlet outlet) {
            word("Outlet " + outlet.id() + ": cemented to the gutter", outlet.cementedToGutter());
            word(
                    "Outlet " + outlet.id() + ": set for the temperature on the day",
                    outlet.setForTemperature());
            carries("Outlet " + outlet.id(), outlet.fixing());
        } else if (part instanceof WayPart.Downpipe downpipe) {
            for (WayPart.OtherRoof roof :
                    Objects.requireNonNullElse(
                            downpipe.alsoCarries(), List.<WayPart.OtherRoof>of())) {
                number(
                        "Downpipe " + downpipe.id() + " also carries " + roof.id(),
                        roof.planAreaM2(),
                        " m²",
                        Unit.M2);
            }
        } else if (part instanceof WayPart.Discharge discharge) {
            word("Discharge " + discharge.id() + ": what it is", discharge.place());
            word("Discharge " + discharge.id() + ": approved", discharge.approved());
            word("Discharge " + discharge.id() + ": how traced", discharge.traced());
        }
    }

    private void word(String what, Said<String> said) {
        row(what, said.is(), said);
    }

    private void number(String what, Said<Double> said, String unit, Unit decimals) {
        Double is = said.is();
        row(what, is == null ? null : Decimals.plain(is, decimals.decimals()) + unit, said);
    }

    private void row(String what, @Nullable String is, Said<?> said) {
        if (!said.equals(Said.nothing())) {
            grid.row(what, is, said.how(), said.by(), said.reference());
        }
    }
}
