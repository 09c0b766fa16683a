package eavesproof.report;

import eavesproof.job.Run;
import eavesproof.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What lies along a straight: readings and brackets by station, joints and the rest in tables. */
final class Alongside {
    private final Run.Straight straight;

    private Alongside(Run.Straight straight) {
        this.straight = straight;
    }

    static List<Report.Strip> strips(Run.Straight straight) {
        Alongside along = new Alongside(straight);
        List<Report.Strip> strips = new ArrayList<>();
        along.readings(strips, straight.readings(), "");
        along.brackets(strips);
        along.tilt(strips);
        Run.Fascia fascia = straight.fascia();
        along.readings(
                strips, fascia == null ? null : fascia.edgeReadings(), "Edge of the timber: ");
        return strips;
    }

    static List<Report.Grid> tables(Run.Straight straight) {
        Alongside along = new Alongside(straight);
        return List.of(along.joints(), along.fittings(), along.zones()).stream()
                .filter(grid -> !grid.isEmpty())
                .map(Grids::grid)
                .toList();
    }

    private void readings(
            List<Report.Strip> strips, @Nullable List<Run.Reading> readings, String what) {
        Map<String, List<Run.Reading>> groups = new LinkedHashMap<>();
        for (Run.Reading reading : Objects.requireNonNullElse(readings, List.<Run.Reading>of())) {
            String surface = Objects.requireNonNullElse(reading.surface(), "surface not recorded");
            String setUp =
                    reading.setUp() == null ? "set-up not recorded" : "set-up " + reading.setUp();
            groups.computeIfAbsent(what + surface + ", " + setUp, g -> new ArrayList<>())
                    .add(reading);
        }
        groups.forEach(
                (caption, group) ->
                        strips.add(
                                new Strips(Verdicts.sentence(caption))
                                        .row("station, mm", each(group, r -> mm(r.stationMm())))
                                        .row("below datum, mm", each(group, r -> mm(r.belowMm())))
                                        .rowIfRecorded("tie", each(group, Run.Reading::tie))
                                        .rowIfRecorded(
                                                "read with", each(group, Run.Reading::measuredWith))
                                        .strip()));
    }

    private void brackets(List<Report.Strip> strips) {
        List<Run.Bracket> brackets =
                Objects.requireNonNullElse(straight.brackets(), List.<Run.Bracket>of());
        if (!brackets.isEmpty()) {
            strips.add(
                    new Strips("Brackets.")
                            .row("bracket", each(brackets, Run.Bracket::id))
                            .row("station, mm", each(brackets, b -> or(mm(b.stationMm()))))
                            .rowIfRecorded("screws", each(brackets, b -> whole(b.screwsFitted())))
                            .rowIfRecorded("holes", each(brackets, b -> whole(b.holesProvided())))
                            .rowIfRecorded("screws of", each(brackets, Run.Bracket::screwMetal))
                            .rowIfRecorded(
                                    "diameter, mm", each(brackets, b -> mm(b.screwDiameterMm())))
                            .rowIfRecorded("bite, mm", each(brackets, b -> mm(b.biteMm())))
                            .strip());
        }
    }

    private void tilt(List<Report.Strip> strips) {
        List<Run.CrossTilt> tilts =
                Objects.requireNonNullElse(straight.crossTilt(), List.<Run.CrossTilt>of());
        if (!tilts.isEmpty()) {
            strips.add(
                    new Strips("Front bead lower than back edge.")
                            .row("station, mm", each(tilts, t -> mm(t.stationMm())))
                            .row("front lower, mm", each(tilts, t -> mm(t.frontLowerMm())))
                            .strip());
        }
    }

    private Grids joints() {
        Grids grid =
                new Grids("Joints", "")
                        .name("Joint", 10)
                        .words("Kind", 20)
                        .figures("Station, mm", 14)
                        .figures("Lap, mm", 12)
                        .words("Lap with the flow", 14)
                        .figures("Gap, mm", 12)
                        .figures("Inserted, mm", 13)
                        .words("Screwed to the fascia", 15);
        for (Run.Joint joint :
                Objects.requireNonNullElse(straight.joints(), List.<Run.Joint>of())) {
            grid.row(
                    joint.id(),
                    joint.kind(),
                    Amounts.fixed(joint.stationMm(), Unit.MM),
                    Amounts.fixed(joint.lapMm(), Unit.MM),
                    joint.lapWithFlow(),
                    Amounts.fixed(joint.gapMm(), Unit.MM),
                    Amounts.fixed(joint.insertionMm(), Unit.MM),
                    joint.screwedToFascia());
        }
        return grid;
    }

    private Grids fittings() {
        Grids grid =
                new Grids("Fittings", "")
                        .name("Fitting", 12)
                        .words("What", 34)
                        .figures("Station, mm", 14)
                        .words("Screwed to the fascia", 20)
                        .words("Gutter slides in it", 20);
        for (Run.Fitting fitting :
                Objects.requireNonNullElse(straight.fittings(), List.<Run.Fitting>of())) {
            grid.row(
                    fitting.id(),
                    fitting.what(),
                    Amounts.fixed(fitting.stationMm(), Unit.MM),
                    fitting.screwedToFascia(),
                    fitting.gutterSlides());
        }
        return grid;
    }

    private Grids zones() {
        Grids grid =
                new Grids("Lengths to keep clear of joints", "")
                        .name("Length", 12)
                        .words("What", 48)
                        .figures("From, mm", 20)
                        .figures("To, mm", 20);
        for (Run.KeepClear zone :
                Objects.requireNonNullElse(straight.keepClear(), List.<Run.KeepClear>of())) {
            grid.row(
                    zone.id(),
                    zone.what(),
                    Amounts.fixed(zone.fromMm(), Unit.MM),
                    Amounts.fixed(zone.toMm(), Unit.MM));
        }
        return grid;
    }

    private static <T> List<String> each(List<T> things, Function<T, @Nullable String> cell) {
        return things.stream()
                .map(thing -> Objects.requireNonNullElse(cell.apply(thing), ""))
                .toList();
    }

    private static @Nullable String mm(@Nullable Double value) {
        return Amounts.plain(value, Unit.MM.decimals());
    }

    private static @Nullable String whole(@Nullable Integer value) {
        return value == null ? null : value.toString();
    }

    private static String or(@Nullable String value) {
        return value == null ? "?" : value;
    }
}
