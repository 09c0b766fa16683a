package eavesproof.app;

import eavesproof.job.Gutter;
import eavesproof.job.Instrument;
import eavesproof.job.Job;
import eavesproof.job.Said;
import eavesproof.job.WayPart;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a likely job is built of and measured with. */
final class LikelyParts {
    private LikelyParts() {}

    static Gutter gutter(String material, String jointing) {
        return new Gutter(
                "g",
                "eaves",
                material,
                jointing,
                new Gutter.Profile("half-round", 125.0, 62.0, null, 68.0, 62.0, null),
                new Said<>(5900.0, "told", "the maker", "data sheet"),
                new Said<>(900.0, "told", "the maker", "data sheet"),
                null,
                null,
                null,
                null);
    }

    /**
     * @param halfWidthMm of a level reading; next to nothing is an exact job, its tape too
     */
    static Map<String, Instrument> instruments(double halfWidthMm) {
        boolean exact = halfWidthMm < 0.01;
        Map<String, Instrument> instruments = new LinkedHashMap<>();
        instruments.put(
                "tape",
                new Instrument(
                        "tape",
                        "tape",
                        exact ? null : "II",
                        "no",
                        exact ? halfWidthMm : null,
                        null,
                        exact ? halfWidthMm : 1.0,
                        null));
        instruments.put(
                "laser",
                new Instrument(
                        "laser",
                        "laser",
                        null,
                        null,
                        halfWidthMm,
                        exact ? 0.0 : 0.02,
                        halfWidthMm,
                        null));
        return instruments;
    }

    /** One rain, of the kind that the rules of the trade ask for. */
    static Job.Circumstances circumstances(String snow, String heavyRain, double mmPerH) {
        return new Job.Circumstances(
                said(snow),
                said(heavyRain),
                Said.nothing(),
                Said.nothing(),
                Said.nothing(),
                Said.nothing(),
                Said.nothing(),
                List.of(new Job.Rainfall(mmPerH, 10.0, 10.0, "map 2")));
    }

    /** A new one of 80 mm for one roof alone, into the discharge. */
    static WayPart.Downpipe downpipe(String id) {
        return new WayPart.Downpipe(
                id, "x", null, 80.0, null, null, "PVC-U", "new", List.of(), null, List.of(), null,
                null, null, null);
    }

    /** A fitter steps aside where the outlet is. */
    static double clear(double station, double outlet, double bodyMm) {
        double least = bodyMm / 2 + 60;
        if (Double.isNaN(outlet) || Math.abs(station - outlet) >= least) {
            return station;
        }
        return station < outlet ? outlet - least : outlet + least;
    }

    static Said<String> said(String word) {
        return new Said<>(word, "seen", "the fitter", "note 1");
    }
}
