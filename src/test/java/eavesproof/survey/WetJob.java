package eavesproof.survey;

import eavesproof.job.Job;
import eavesproof.job.Run.CrossTilt;
import eavesproof.job.Said;
import eavesproof.job.WayPart;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A job for tests of which all is recorded that the water asks for: 10 m of a half-round of 112 mm,
 * its sole 20 mm lower at the outlet of 80 mm near its right end, hung 5 mm lower at the front,
 * under a roof of 60 m² in a rain of 90 mm/h, led by a downpipe of 80 mm and 10 m of drain of 100
 * mm that falls by 100 mm.
 */
final class WetJob {
    static final String SOURCE = "the test";

    final AJob job = new AJob();
    final Map<String, Basis.Stated> basis = new LinkedHashMap<>();
    final List<Job.Rainfall> rainfall = new ArrayList<>();

    Double widthMm = 112.0;
    Double outletMm = 80.0;
    String strainer = "no";
    Double planM2 = 60.0;
    List<Job.Wall> walls = List.of();
    WayPart.Downpipe downpipe = downpipe(80.0, "new", null, List.of());
    WayPart.Drain drain = drain(100.0, "new", null, 100.0);

    WetJob() {
        number("rain_duration_min", 10);
        number("rain_aep_percent", 10);
        number("run_off", 1);
        word("roof_rain", "plan");
        number("wall_share", 0.5);
        number("manning_n PVC-U", 0.010);
        number("gutter_share", 0.75);
        word("half_round_method", "EN 12056-3");
        number("length_factor 100", 0.93);
        number("length_factor 200", 0.80);
        number("bend_factor", 0.85);
        word("outlet_method", "EN 12056-3");
        word("downpipe_method", "Wyly-Eaton");
        number("downpipe_roughness_mm", 0.25);
        number("downpipe_filling", 0.20);
        word("drain_method", "Manning");
        number("drain_manning_n", 0.011);
        number("drain_filling", 0.7);
        number("steep_deg", 10);
        number("tank_overflow_coefficient", 0.6);
        rainfall.add(new Job.Rainfall(90.0, 10.0, 10.0, "a map"));
        job.a1.tilts = new ArrayList<>(List.of(new CrossTilt(5000.0, 5.0, null)));
        job.a1.reading(50, 400).reading(5000, 410).reading(9950, 420);
    }

    WetJob number(String key, double value) {
        basis.put(key, new Basis.Amount(value, SOURCE));
        return this;
    }

    WetJob word(String key, String word) {
        basis.put(key, new Basis.Choice(word, SOURCE));
        return this;
    }

    static WayPart.Downpipe downpipe(
            Double sizeMm,
            String newOrExisting,
            List<WayPart.OtherRoof> alsoCarries,
            List<WayPart.Offset> offsets) {
        return new WayPart.Downpipe(
                "d1",
                "g1",
                2500.0,
                sizeMm,
                null,
                null,
                "PVC-U",
                newOrExisting,
                alsoCarries,
                null,
                offsets,
                null,
                null,
                null,
                null);
    }

    static WayPart.Drain drain(
            Double sizeMm,
            String newOrExisting,
            List<WayPart.OtherRoof> alsoCarries,
            Double dropMm) {
        return new WayPart.Drain(
                "g1",
                "x1",
                2600.0,
                sizeMm,
                10_000.0,
                dropMm,
                null,
                newOrExisting,
                alsoCarries,
                null);
    }

    WayPart.Outlet outlet(String id, Double stationMm) {
        return new WayPart.Outlet(
                id,
                "d1",
                100.0,
                "a1",
                stationMm,
                100.0,
                "fixed",
                AJob.said("yes"),
                Said.nothing(),
                null,
                null,
                "no",
                null,
                outletMm,
                "sharp",
                null,
                strainer,
                null);
    }

    static WayPart.OtherRoof roof(String id, Double planM2) {
        return new WayPart.OtherRoof(id, null, new Said<>(planM2, "told", "A. Owner", null));
    }

    Seen survey() {
        if (job.way.stream().noneMatch(WayPart.Outlet.class::isInstance)) {
            job.way.add(outlet("o1", 9900.0));
        }
        job.way.add(downpipe);
        job.way.add(drain);
        job.way.add(
                new WayPart.Discharge(
                        "x1", 3000.0, AJob.said("soakaway"), AJob.said("yes"), AJob.said("dye")));
        job.gutter = AJob.gutter("eaves", "PVC-U", "cemented", widthMm);
        job.circumstances =
                new Job.Circumstances(
                        AJob.said("no"),
                        AJob.said("no"),
                        Said.nothing(),
                        Said.nothing(),
                        Said.nothing(),
                        Said.nothing(),
                        Said.nothing(),
                        rainfall);
        if (job.catchments == null) {
            job.catchments =
                    List.of(
                            new Job.Catchment(
                                    "c1", "a", planM2, 20.0, null, walls, null, null, null, null,
                                    null, null));
        }
        job.basis = new Basis(basis);
        return job.survey();
    }
}
