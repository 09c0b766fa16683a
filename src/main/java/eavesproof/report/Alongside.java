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

/** What lies along a straight: readings and brackets by station, joints and the rest in words. */
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
        along.readings(strips, fascia == null ? null : fascia.edgeReadings(), "Edge of the timber");
        return strips;
    }

    /** Joints, fittings and lengths to keep clear, one after the other. */
    static List<Report.Entry> things(Run.Straight straight) {
        List<Report.Entry> things = new ArrayList<>();
        for (Run.Joint joint :
                Objects.requireNonNullElse(straight.joints(), List.<Run.Joint>of())) {
            things.add(new Report.Entry("Joint " + joint.id(), text(joint)));
        }
        for (Run.Fitting fitting :
                Objects.requireNonNullElse(straight.fittings(), List.<Run.Fitting>of())) {
            things.add(new Report.Entry("Fitting " + fitting.id(), text(fitting)));
        }
        for (Run.KeepClear zone :
                Objects.requireNonNullElse(straight.keepClear(), List.<Run.KeepClear>of())) {
            things.add(new Report.Entry("Keep clear " + zone.id(), text(zone)));
        }
        return things;
    }

    private static String text(Run.Joint joint) {
        return People.joined(
                joint.kind() == null ? "kind not recorded" : joint.kind(),
                at(joint.stationMm()),
                with("lap", joint.lapMm()),
                joint.lapWithFlow() == null ? null : "lap with the flow: " + joint.lapWithFlow(),
                with("gap", joint.gapMm()),
                with("inserted", joint.insertionMm()),
                screwed(joint.screwedToFascia()),
                fixing(joint.fixing()));
    }

    private static String text(Run.Fitting fitting) {
        return People.joined(
                fitting.what(),
                at(fitting.stationMm()),
                screwed(fitting.screwedToFascia()),
                fitting.gutterSlides() == null
                        ? null
                        : "gutter slides in it: " + fitting.gutterSlides(),
                fitting.carriesGutter() == null
                        ? null
                        : "carries the gutter: " + fitting.carriesGutter(),
                fixing(fitting.fixing()));
    }

    private static String text(Run.KeepClear zone) {
        return People.joined(
                zone.what(),
                "from "
                        + People.or(mm(zone.fromMm()))
                        + " to "
                        + People.or(Amounts.with(zone.toMm(), Unit.MM)));
    }

    private static String at(@Nullable Double stationMm) {
        return stationMm == null
                ? "station not recorded"
                : "at " + Amounts.with(stationMm, Unit.MM);
    }

    private static @Nullable String with(String what, @Nullable Double mm) {
        return mm == null ? null : what + " " + Amounts.with(mm, Unit.MM);
    }

    private static String screwed(@Nullable String said) {
        return "screwed to the fascia: " + People.or(said);
    }

    /** How something that is no bracket is screwed on; what it carries stands with who says so. */
    static @Nullable String fixing(Run.@Nullable Fixing fixing) {
        if (fixing == null) {
            return null;
        }
        Integer screws = fixing.screwsFitted();
        Integer holes = fixing.holesProvided();
        String text =
                People.joined(
                        screws == null ? null : screws + (screws == 1 ? " screw" : " screws"),
                        fixing.screwMetal(),
                        with("diameter", fixing.screwDiameterMm()),
                        holes == null ? null : holes + (holes == 1 ? " hole" : " holes"),
                        with("bite", fixing.biteMm()));
        return text.isEmpty() ? null : text;
    }

    private void readings(
            List<Report.Strip> strips, @Nullable List<Run.Reading> readings, String what) {
        Map<String, List<Run.Reading>> groups = new LinkedHashMap<>();
        for (Run.Reading reading : Objects.requireNonNullElse(readings, List.<Run.Reading>of())) {
            String surface = Objects.requireNonNullElse(reading.surface(), "surface not recorded");
            String setUp =
                    reading.setUp() == null ? "set-up not recorded" : "set-up " + reading.setUp();
            groups.computeIfAbsent(
                            (what.isEmpty() ? surface : what) + ", " + setUp,
                            g -> new ArrayList<>())
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
