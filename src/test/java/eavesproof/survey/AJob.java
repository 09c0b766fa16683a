package eavesproof.survey;

import eavesproof.job.Gutter;
import eavesproof.job.Instrument;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Said;
import eavesproof.job.WayPart;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A job for tests, every instrument read so finely that its step counts for nothing: run a with one
 * straight a1, everything measured with a tape of class II that is not read from its hook, levels
 * read from set-up s1 with an exact datum.
 */
final class AJob {
    private static final double FINE = 1e-9;

    final AStraight a1 = new AStraight("a1");
    List<AStraight> straights = new ArrayList<>(List.of(a1));
    List<WayPart> way = new ArrayList<>();
    Gutter gutter = gutter("eaves", "PVC-U", "cemented", 100.0);
    Job.Circumstances circumstances = circumstances(said("yes"), said("no"));
    Map<String, Instrument> instruments = new LinkedHashMap<>();
    Map<String, Instrument.SetUp> setUps = new LinkedHashMap<>();
    String measuredWith = "tape";
    List<Job.Catchment> catchments = null;
    Run.EavesSection eaves = null;
    Job.Site site = null;
    Run.Fitted fitted = null;
    String held = null;
    Basis basis = Basis.NOTHING;
    List<Job.WaterTest> tests = null;

    AJob() {
        tape("II", "no");
        instruments.put(
                "still water",
                new Instrument("still water", "water level", null, null, null, 0.0, FINE, null));
        setUp("s1", "still water", null, null);
    }

    AJob tape(String tapeClass, String fromHook) {
        instruments.put(
                "tape",
                new Instrument("tape", "tape", tapeClass, fromHook, null, null, FINE, null));
        return this;
    }

    /** Adds a laser that is off by at most so many mm for each metre. */
    AJob laser(Double accuracyMmPerM) {
        instruments.put(
                "laser",
                new Instrument("laser", "laser", null, null, null, accuracyMmPerM, FINE, null));
        return this;
    }

    AJob setUp(String id, String instrument, String on, Double stationMm) {
        setUps.put(id, new Instrument.SetUp(id, instrument, on, stationMm, "yes", null));
        return this;
    }

    AJob foundClean(String id, String clean) {
        Instrument.SetUp as = setUps.get(id);
        setUps.put(
                id,
                new Instrument.SetUp(id, as.instrument(), as.on(), as.stationMm(), clean, null));
        return this;
    }

    /** Sliding, not cemented, not screwed, with a fitting of 100 mm. */
    AJob outlet(String id, String on, Double stationMm) {
        way.add(outlet(id, null, on, stationMm, 100.0, "sliding", "no"));
        return this;
    }

    /** A test of run a after which somebody looked what still stood. */
    AJob test(String id, String kind, Job.Stood... stood) {
        tests = tests == null ? new ArrayList<>() : tests;
        tests.add(new Job.WaterTest(id, kind, "a", 20.0, 5.0, null, "no", "o1", List.of(stood)));
        return this;
    }

    AJob part(WayPart part) {
        way.add(part);
        return this;
    }

    AStraight straight(String id) {
        AStraight straight = new AStraight(id);
        straights.add(straight);
        return straight;
    }

    /** A free spout, so that nothing need lie between it and where it leads. */
    static WayPart.Outlet outlet(
            String id,
            String to,
            String on,
            Double stationMm,
            Double bodyMm,
            String hold,
            String cemented) {
        return new WayPart.Outlet(
                id,
                to,
                null,
                on,
                stationMm,
                bodyMm,
                hold,
                said(cemented),
                said("yes"),
                null,
                null,
                "no",
                null,
                null,
                null,
                null,
                null,
                "yes");
    }

    static Gutter gutter(String kind, String material, String jointing, Double widthMm) {
        Gutter.Profile profile =
                new Gutter.Profile("half-round", widthMm, null, null, null, null, null);
        return new Gutter(
                "g",
                kind,
                material,
                jointing,
                profile,
                Said.nothing(),
                Said.nothing(),
                null,
                null,
                null,
                null);
    }

    static Job.Circumstances circumstances(Said<String> snow, Said<String> rain) {
        return new Job.Circumstances(
                snow,
                rain,
                Said.nothing(),
                Said.nothing(),
                Said.nothing(),
                Said.nothing(),
                Said.nothing(),
                null);
    }

    static Said<String> said(String word) {
        return new Said<>(word, "seen", "A. Fitter", null);
    }

    Job build() {
        List<Run.Straight> built =
                straights == null ? null : straights.stream().map(AStraight::build).toList();
        Run run = new Run("a", null, "g", built, fitted, eaves, held);
        Map<String, Gutter> gutters = gutter == null ? null : Map.of("g", gutter);
        return of(List.of(run), gutters);
    }

    Job of(List<Run> runs, Map<String, Gutter> gutters) {
        return new Job(
                "j",
                null,
                null,
                site,
                null,
                null,
                null,
                circumstances,
                instruments,
                measuredWith,
                setUps,
                gutters,
                runs,
                catchments,
                way,
                tests,
                null,
                null,
                null);
    }

    Seen survey() {
        return new Seen(Surveyor.survey(build(), basis));
    }
}
