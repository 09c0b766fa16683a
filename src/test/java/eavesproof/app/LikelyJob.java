package eavesproof.app;

import static eavesproof.app.LikelyParts.said;

import eavesproof.job.Instrument;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Run.Bracket;
import eavesproof.job.Run.Joint;
import eavesproof.job.Run.KeepClear;
import eavesproof.job.Run.Reading;
import eavesproof.job.Run.Straight;
import eavesproof.job.Said;
import eavesproof.job.WayPart;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * A job such as a fitter makes it: nearly all good, everything recorded, and a fault here and
 * there. The same seed, the same job.
 */
final class LikelyJob {
    private static final double BODY_MM = 120;

    private final Random random;
    private final double halfWidthMm;
    private final String material;
    private final String jointing;
    private final String snow;
    private final String heavyRain;
    private final double centresMm;
    private final double toEndMm;
    private final double slope;
    private final int corner;
    private final double fault;
    private final List<WayPart> way = new ArrayList<>();
    private final List<Job.Catchment> catchments = new ArrayList<>();

    private LikelyJob(long seed, double halfWidthMm, double fault) {
        // Neighbouring seeds begin alike in this generator unless they are spread.
        random = new Random(seed * 0x9E3779B97F4A7C15L);
        this.halfWidthMm = halfWidthMm;
        this.fault = fault;
        int kind = random.nextInt(4);
        material = kind < 2 ? "PVC-U" : kind == 2 ? "copper" : "aluminium";
        jointing = kind == 0 ? "cemented" : kind == 1 ? "gasket" : "soldered";
        snow = random.nextInt(4) == 0 ? "yes" : "no";
        heavyRain = random.nextInt(4) == 0 ? "yes" : "no";
        boolean close = snow.equals("yes") || heavyRain.equals("yes");
        centresMm = kind != 0 ? 580 : close && !once() ? 280 : 440;
        toEndMm = kind == 0 ? 50 : 100;
        slope = kind > 1 ? 0.004 : 0.002;
        corner = random.nextInt(3) == 0 ? 1 : 0;
    }

    /** Measured with a tape of class II and a fine optical level. */
    static Job of(long seed) {
        return new LikelyJob(seed, 0.05, 0.15).build();
    }

    /** Measured so well that no verdict hangs on it. */
    static Job exact(long seed) {
        return new LikelyJob(seed, 1e-6, 0.15).build();
    }

    private boolean wrong() {
        return random.nextDouble() < fault / 25;
    }

    /** Of things that there is one of in a run. */
    private boolean once() {
        return random.nextDouble() < fault / 3;
    }

    private boolean often() {
        return random.nextDouble() < fault;
    }

    private Job build() {
        Map<String, Instrument.SetUp> setUps = new LinkedHashMap<>();
        List<Run> runs = new ArrayList<>();
        for (int r = 0; r <= random.nextInt(2); r++) {
            String s = "s" + r;
            setUps.put(s, new Instrument.SetUp(s, "laser", "r" + r + "a", 1000.0, "yes", null));
            runs.add(run(r, s));
        }
        way.add(
                new WayPart.Discharge(
                        "x",
                        null,
                        said(once() ? "foul gully" : "soakaway"),
                        new Said<>(once() ? "no" : "yes", "told", "the council", "letter 7"),
                        said(once() ? "not traced" : "dye")));
        Job.Circumstances circumstances =
                LikelyParts.circumstances(snow, heavyRain, once() ? 400.0 : 60.0);
        return new Job(
                "likely",
                null,
                "trade-practice",
                null,
                null,
                null,
                null,
                circumstances,
                LikelyParts.instruments(halfWidthMm),
                "tape",
                setUps,
                Map.of("g", LikelyParts.gutter(material, jointing)),
                runs,
                catchments,
                way,
                List.of(),
                null,
                null,
                null);
    }

    private Run run(int r, String setUp) {
        List<Straight> straights = new ArrayList<>();
        boolean isLong = corner == 0 && random.nextInt(4) == 0;
        double first = (isLong ? 9000 : 2000) + 500 * random.nextInt(8);
        double second = corner == 1 ? 1500 + 500 * random.nextInt(6) : 0;
        double outlet = first + second - 350;
        String id = "r" + r;
        double rise = slope * (often() ? 0.3 + random.nextDouble() : 1);
        straights.add(straight(id + "a", 0, first, outlet, rise, setUp, true, corner == 0));
        if (corner == 1) {
            straights.add(straight(id + "b", first, second, outlet, rise, setUp, false, true));
        }
        double area = (first + second) / 1000 * (once() ? 9 : 1.5);
        catchments.add(
                new Job.Catchment(
                        "c" + r, id, area, 20.0, "steel", List.of(), null, null, null, null, null,
                        null));
        Run.Fitted fitted = new Run.Fitted(once() ? -15.0 : 18.0, "shade", "2026-05-04");
        return new Run(id, null, "g", straights, fitted, null, null);
    }

    private Straight straight(
            String id,
            double begins,
            double length,
            double outletAlong,
            double slopeMmPerMm,
            String setUp,
            boolean firstOne,
            boolean lastOne) {
        double outlet = lastOne ? outletAlong - begins : Double.NaN;
        if (lastOne) {
            outlet(id, outlet);
        }
        List<Joint> joints = joints(id, length, outlet);
        return new Straight(
                id,
                length,
                null,
                end(firstOne),
                end(lastOne),
                readings(begins, length, outletAlong, slopeMmPerMm, setUp),
                brackets(id, length, outlet, joints),
                List.of(),
                joints,
                zones(id, joints),
                List.of(new Run.CrossTilt(length / 2, 3.0, null)),
                new Run.Fascia(
                        0.0,
                        length,
                        null,
                        null,
                        said("none"),
                        once() ? Said.nothing() : said("yes"),
                        null),
                null);
    }

    private Run.End end(boolean stops) {
        return stops ? new Run.End("stop end", once() ? 5.0 : 200.0) : new Run.End("corner", null);
    }

    private void outlet(String on, double station) {
        String branch = "p" + on;
        String downpipe = "d" + on;
        boolean straightDown = !once();
        way.add(
                new WayPart.Outlet(
                        "o" + on,
                        straightDown ? downpipe : branch,
                        null,
                        on,
                        station,
                        BODY_MM,
                        "sliding",
                        said(once() ? "yes" : "no"),
                        said(once() ? "no" : "yes"),
                        45.0,
                        55.0,
                        "no",
                        null,
                        76.0,
                        "tapered",
                        0.0,
                        "no",
                        null));
        double drop = once() ? -3.0 : 20.0;
        if (!straightDown) {
            way.add(new WayPart.Branch(branch, downpipe, null, 1200.0, drop, 76.0, null, "laser"));
        }
        way.add(LikelyParts.downpipe(downpipe));
    }

    private List<Joint> joints(String id, double length, double outlet) {
        List<Joint> joints = new ArrayList<>();
        for (double at = 3000; at < length - 600; at += 3000) {
            boolean expansion = jointing.equals("soldered") && at % 9000 == 0 && !once();
            joints.add(
                    new Joint(
                            id + "j" + joints.size(),
                            expansion ? "expansion" : jointing,
                            at,
                            null,
                            null,
                            expansion ? (once() ? 2.0 : 25.0) : null,
                            expansion ? 60.0 : null,
                            "no",
                            null));
        }
        return joints;
    }

    private List<KeepClear> zones(String id, List<Joint> joints) {
        List<KeepClear> zones = new ArrayList<>();
        if (random.nextInt(3) == 0) {
            double from = once() && !joints.isEmpty() ? 2700 : 1200;
            zones.add(new KeepClear(id + "z", "door", from, from + 900));
        }
        return zones;
    }

    private List<Reading> readings(
            double begins, double length, double outlet, double slope, String setUp) {
        List<Reading> readings = new ArrayList<>();
        double parts = StrictMath.ceil(length / 1200);
        for (int i = 0; i <= parts; i++) {
            read(readings, begins, length * i / parts, outlet, slope, setUp);
        }
        for (double beside : new double[] {-BODY_MM, BODY_MM}) {
            if (outlet + beside - begins > 0 && outlet + beside - begins < length) {
                read(readings, begins, outlet + beside - begins, outlet, slope, setUp);
            }
        }
        return readings;
    }

    private void read(
            List<Reading> readings,
            double begins,
            double station,
            double outlet,
            double slope,
            String setUp) {
        double below = 60 - Math.abs(outlet - begins - station) * slope + (wrong() ? 4 : 0);
        double rounded = Math.rint(below * 100) / 100;
        readings.add(new Reading(station, "sole", rounded, setUp, "laser", null));
    }

    private List<Bracket> brackets(String id, double length, double outlet, List<Joint> joints) {
        List<Double> stations = new ArrayList<>();
        double parts = StrictMath.ceil((length - 2 * toEndMm) / centresMm);
        for (int i = 0; i <= parts; i++) {
            stations.add(Math.rint(toEndMm + (length - 2 * toEndMm) * i / parts));
        }
        if (jointing.equals("gasket")) {
            joints.forEach(it -> stations.add(it.stationMm() + 100));
        }
        List<Bracket> brackets = new ArrayList<>();
        for (double station : stations) {
            double at =
                    LikelyParts.clear(station, outlet, BODY_MM)
                            + (wrong() ? 40 * random.nextInt(7) - 120 : 0);
            if (!wrong() || brackets.isEmpty()) {
                brackets.add(
                        new Bracket(
                                id + "b" + brackets.size(),
                                Math.min(length, Math.max(0, at)),
                                wrong() ? 2 : 4,
                                4,
                                wrong() ? "zinc-plated steel" : "stainless steel",
                                null,
                                wrong() ? 15.0 : 30.0));
            }
        }
        return brackets;
    }
}
