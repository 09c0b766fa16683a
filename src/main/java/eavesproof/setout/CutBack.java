package eavesproof.setout;

import eavesproof.job.Instrument.SetUp;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Run.Fascia;
import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart.Outlet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The record of a job one of whose straights was cut off a little at an end. Stations count from
 * the left end, so that a cut there changes them all; what was read on the piece that is cut off is
 * taken to hold at the new end.
 */
final class CutBack {
    private final double lengthMm;
    private final double shiftMm;

    private CutBack(double lengthMm, double shiftMm) {
        this.lengthMm = lengthMm;
        this.shiftMm = shiftMm;
    }

    /** Empty where the length or the gap is not recorded, or something sits on that piece. */
    static Optional<Job> of(Job job, String id, boolean left, double offMm) {
        Straight straight = Parts.straight(job, id).orElse(null);
        Double length = straight == null ? null : straight.lengthMm();
        Run.End end = straight == null ? null : left ? straight.leftEnd() : straight.rightEnd();
        Double gap = end == null ? null : end.gapToWallMm();
        if (straight == null || length == null || end == null || gap == null) {
            return Optional.empty();
        }
        boolean free = fixed(job, straight).allMatch(at -> left ? at > offMm : at < length - offMm);
        if (!free) {
            return Optional.empty();
        }
        CutBack cut = new CutBack(length - offMm, left ? -offMm : 0);
        Run.End farther = Edits.with(end, "gapToWallMm", gap + offMm);
        Job edited =
                Edits.straight(
                        job,
                        id,
                        it -> Edits.with(cut.straight(it), left ? "leftEnd" : "rightEnd", farther));
        return Optional.of(left ? cut.besides(edited, id) : edited);
    }

    /** The stations of all that sits on the straight. */
    private static Stream<Double> fixed(Job job, Straight straight) {
        return Stream.of(
                        Parts.of(straight.brackets()).stream().map(Run.Bracket::stationMm),
                        Parts.of(straight.fittings()).stream().map(Run.Fitting::stationMm),
                        Parts.of(straight.joints()).stream().map(Run.Joint::stationMm),
                        Parts.outletsOn(job, straight.id()).stream().map(Outlet::stationMm))
                .flatMap(all -> all)
                .flatMap(at -> Stream.ofNullable(at));
    }

    private Straight straight(Straight old) {
        Straight now = Edits.with(old, "lengthMm", lengthMm);
        now = Edits.with(now, "readings", within(now.readings()));
        now = Edits.with(now, "crossTilt", within(now.crossTilt()));
        now = Edits.with(now, "brackets", moved(now.brackets(), "stationMm"));
        now = Edits.with(now, "fittings", moved(now.fittings(), "stationMm"));
        now = Edits.with(now, "joints", moved(now.joints(), "stationMm"));
        now = Edits.with(now, "keepClear", moved(now.keepClear(), "fromMm", "toMm"));
        Fascia fascia = now.fascia();
        if (fascia == null) {
            return now;
        }
        Fascia beside = moved(fascia, "beginsMm", "endsMm");
        beside = Edits.with(beside, "edgeReadings", moved(beside.edgeReadings(), "stationMm"));
        return Edits.with(now, "fascia", beside);
    }

    /** What refers to stations of the straight from elsewhere in the record. */
    private Job besides(Job job, String id) {
        Job now =
                Edits.with(
                        job,
                        "way",
                        each(
                                job.way(),
                                it ->
                                        it instanceof Outlet outlet && id.equals(outlet.on())
                                                ? moved(outlet, "stationMm")
                                                : it));
        now =
                Edits.with(
                        now,
                        "catchments",
                        each(
                                now.catchments(),
                                it -> {
                                    Job.Inflow inflow = it.inflow();
                                    return inflow != null && id.equals(inflow.on())
                                            ? Edits.with(it, "inflow", moved(inflow, "stationMm"))
                                            : it;
                                }));
        now =
                Edits.with(
                        now,
                        "tests",
                        each(
                                now.tests(),
                                it ->
                                        Edits.with(
                                                it,
                                                "stood",
                                                each(
                                                        it.stood(),
                                                        one ->
                                                                id.equals(one.on())
                                                                        ? moved(
                                                                                one, "fromMm",
                                                                                "toMm")
                                                                        : one))));
        Map<String, SetUp> setUps = job.setUps();
        if (setUps == null) {
            return now;
        }
        Map<String, SetUp> beside = new LinkedHashMap<>(setUps);
        beside.replaceAll((key, it) -> id.equals(it.on()) ? moved(it, "stationMm") : it);
        return Edits.with(now, "setUps", beside);
    }

    private <R extends Record> @Nullable List<R> moved(@Nullable List<R> all, String... parts) {
        return each(all, it -> moved(it, parts));
    }

    private <R extends Record> R moved(R record, String... parts) {
        R now = record;
        for (String part : parts) {
            Double at = Edits.number(now, part);
            now = at == null ? now : Edits.with(now, part, at + shiftMm);
        }
        return now;
    }

    /** Never beyond the ends that the straight has now. */
    private <R extends Record> @Nullable List<R> within(@Nullable List<R> all) {
        return each(
                all,
                it -> {
                    Double at = Edits.number(it, "stationMm");
                    double to = at == null ? 0 : Math.max(0, Math.min(lengthMm, at + shiftMm));
                    return at == null ? it : Edits.with(it, "stationMm", to);
                });
    }

    private static <T> @Nullable List<T> each(@Nullable List<T> all, UnaryOperator<T> edit) {
        return all == null ? null : all.stream().map(edit).toList();
    }
}
