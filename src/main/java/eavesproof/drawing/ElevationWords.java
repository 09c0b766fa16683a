package eavesproof.drawing;

import eavesproof.job.Run;
import eavesproof.job.WayPart;
import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What an elevation shows and what it does not show, in words. */
final class ElevationWords {
    private ElevationWords() {}

    /** For those who cannot see the drawing. */
    static String alt(Built built, double lengthMm) {
        Run.Straight straight = built.straight();
        List<String> parts = new ArrayList<>();
        parts.add(
                "Straight "
                        + straight.id()
                        + " of run "
                        + built.run()
                        + " seen from outside, "
                        + mm(lengthMm)
                        + " long");
        parts.add("left end " + end(straight.leftEnd()));
        parts.add("right end " + end(straight.rightEnd()));
        stations(parts, "brackets", at(straight.brackets(), Run.Bracket::stationMm));
        stations(parts, "joints", at(straight.joints(), Run.Joint::stationMm));
        stations(parts, "fittings", at(straight.fittings(), Run.Fitting::stationMm));
        stations(parts, "outlets", at(built.outlets(), WayPart.Outlet::stationMm));
        built.slopes()
                .forEach(
                        slope ->
                                parts.add(
                                        "the sole falls to the "
                                                + (slope.towardsRight() ? "right" : "left")
                                                + ", "
                                                + slope.text()));
        ElevationWater.of(built)
                .flatMap(
                        water ->
                                water.nearest()
                                        .map(
                                                at ->
                                                        "in the design rain the water comes nearest"
                                                                + " to the lip at "
                                                                + Decimals.plain(at.stationMm(), 0)
                                                                + " mm, "
                                                                + ElevationWater.near(
                                                                        at, water.line().lower())))
                .ifPresent(parts::add);
        built.findings()
                .forEach(
                        found ->
                                parts.add(
                                        "finding "
                                                + found.label()
                                                + " ("
                                                + found.verdict().words()
                                                + ") "
                                                + stretch(found)));
        return String.join("; ", parts) + ".";
    }

    static List<String> notes(Built built) {
        Run.Straight straight = built.straight();
        List<String> notes = new ArrayList<>();
        if (straight.lengthMm() == null) {
            notes.add("Not drawn, since its length is not recorded.");
        }
        fall(notes, Sole.of(straight));
        List<String> unrecorded = new ArrayList<>();
        missing(unrecorded, "the brackets", straight.brackets());
        missing(unrecorded, "the joints", straight.joints());
        missing(unrecorded, "the fittings", straight.fittings());
        missing(unrecorded, "lengths to keep clear", straight.keepClear());
        Run.Fascia fascia = straight.fascia();
        boolean timber = fascia != null && fascia.beginsMm() != null && fascia.endsMm() != null;
        missing(unrecorded, "where the timber begins and ends", timber ? fascia : null);
        if (!unrecorded.isEmpty()) {
            notes.add("Not recorded, and so not drawn: " + String.join(", ", unrecorded) + ".");
        }
        unplaced(notes, built);
        List<Numbered> all = Elevation.aboutAll(built);
        if (!all.isEmpty()) {
            notes.add(
                    "About the whole straight, and so not marked at a place: "
                            + new Tag(all, 0).text()
                            + ".");
        }
        return notes;
    }

    private static void fall(List<String> notes, Sole sole) {
        if (sole.isRead() && !sole.surface().equals(Words.SURFACES.get(0))) {
            notes.add(
                    "The sole was not read; the dashed line follows the readings of the "
                            + sole.surface()
                            + ".");
        }
        if (sole.lines().size() > 1) {
            notes.add(
                    "The readings of some set-ups are not tied to the others; each group is drawn "
                            + "from its own highest reading, and heights between groups say nothing.");
        }
    }

    /** Things of which it is known that they are there, and not where. */
    private static void unplaced(List<String> notes, Built built) {
        Run.Straight straight = built.straight();
        List<String> ids = new ArrayList<>();
        ElevationSheet.or(straight.brackets()).stream()
                .filter(b -> b.stationMm() == null)
                .forEach(b -> ids.add("bracket " + b.id()));
        ElevationSheet.or(straight.joints()).stream()
                .filter(j -> j.stationMm() == null)
                .forEach(j -> ids.add("joint " + j.id()));
        ElevationSheet.or(straight.fittings()).stream()
                .filter(f -> f.stationMm() == null)
                .forEach(f -> ids.add("fitting " + f.id()));
        built.outlets().stream()
                .filter(o -> o.stationMm() == null)
                .forEach(o -> ids.add("outlet " + o.id()));
        if (!ids.isEmpty()) {
            notes.add(
                    "Not drawn, since the station is not recorded: "
                            + String.join(", ", ids)
                            + ".");
        }
    }

    private static void missing(List<String> unrecorded, String what, @Nullable Object recorded) {
        if (recorded == null) {
            unrecorded.add(what);
        }
    }

    private static String end(Run.@Nullable End end) {
        String kind = end == null ? null : end.kind();
        return kind == null ? "not recorded" : kind;
    }

    private static <T> @Nullable List<@Nullable Double> at(
            @Nullable List<T> things, java.util.function.Function<T, @Nullable Double> station) {
        return things == null
                ? null
                : things.stream().map(station).collect(Collectors.toCollection(ArrayList::new));
    }

    private static void stations(
            List<String> parts, String what, @Nullable List<@Nullable Double> stations) {
        if (stations == null) {
            parts.add(what + " not recorded");
        } else if (stations.isEmpty()) {
            parts.add("no " + what);
        } else {
            parts.add(
                    what
                            + " at "
                            + stations.stream()
                                    .filter(Objects::nonNull)
                                    .map(mm -> Decimals.plain(mm, 1))
                                    .collect(Collectors.joining(", "))
                            + " mm");
        }
    }

    private static String stretch(Numbered found) {
        return found.fromMm() == found.toMm()
                ? "at " + mm(found.fromMm())
                : "from " + Decimals.plain(found.fromMm(), 1) + " to " + mm(found.toMm());
    }

    private static String mm(double value) {
        return Decimals.with(value, Unit.MM);
    }
}
