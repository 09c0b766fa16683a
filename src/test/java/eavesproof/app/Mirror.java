package eavesproof.app;

import eavesproof.job.Instrument;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A job as it is seen from behind: left is right, and every station counts from the other end. */
final class Mirror {
    private final Map<String, Double> lengths = new HashMap<>();

    private Mirror(Job job) {
        for (Run run : job.runs()) {
            run.straights().forEach(it -> lengths.put(it.id(), it.lengthMm()));
        }
    }

    static Job of(Job job) {
        return new Mirror(job).mirrored(job);
    }

    /** Of an end or a side. */
    static String id(String id) {
        return switch (id) {
            case "left" -> "right";
            case "right" -> "left";
            default ->
                    id.endsWith(".left")
                            ? id.replace(".left", ".right")
                            : id.replace(".right", ".left");
        };
    }

    private Job mirrored(Job job) {
        List<Run> runs = new ArrayList<>();
        for (Run run : job.runs()) {
            List<Straight> straights = new ArrayList<>();
            run.straights().forEach(it -> straights.add(mirrored(it)));
            Collections.reverse(straights);
            runs.add(RecordTree.with(run, List.of("straights"), it -> straights));
        }
        Job turned = RecordTree.with(job, List.of("runs"), it -> runs);
        List<WayPart> way = new ArrayList<>();
        for (WayPart part : job.way()) {
            way.add(
                    part instanceof WayPart.Outlet outlet
                            ? turned(outlet, lengths.get(outlet.on()))
                            : part);
        }
        turned = RecordTree.with(turned, List.of("way"), it -> way);
        for (Instrument.SetUp setUp : job.setUps().values()) {
            double length = lengths.get(setUp.on());
            turned =
                    RecordTree.with(
                            turned,
                            List.of("setUps", setUp.id(), "stationMm"),
                            it -> length - (Double) it);
        }
        return turned;
    }

    private static Straight mirrored(Straight straight) {
        double length = straight.lengthMm();
        Straight turned = RecordTree.with(straight, List.of("leftEnd"), it -> straight.rightEnd());
        turned = RecordTree.with(turned, List.of("rightEnd"), it -> straight.leftEnd());
        for (String list : List.of("readings", "brackets", "fittings", "joints")) {
            turned =
                    RecordTree.with(
                            turned,
                            List.of(list),
                            all ->
                                    ((List<?>) all)
                                            .stream()
                                                    .map(it -> turned((Record) it, length))
                                                    .toList());
        }
        List<Run.KeepClear> zones =
                straight.keepClear().stream()
                        .map(
                                it ->
                                        new Run.KeepClear(
                                                it.id(),
                                                it.what(),
                                                length - it.toMm(),
                                                length - it.fromMm()))
                        .toList();
        turned = RecordTree.with(turned, List.of("keepClear"), it -> zones);
        Run.Fascia fascia = straight.fascia();
        turned =
                RecordTree.with(
                        turned, List.of("fascia", "beginsMm"), it -> length - fascia.endsMm());
        return RecordTree.with(
                turned, List.of("fascia", "endsMm"), it -> length - fascia.beginsMm());
    }

    private static <R extends Record> R turned(R thing, double length) {
        return RecordTree.with(thing, List.of("stationMm"), it -> length - (Double) it);
    }
}
