package eavesproof.app;

import com.sun.management.OperatingSystemMXBean;
import eavesproof.exchange.BadRecord;
import eavesproof.findings.Findings;
import eavesproof.rules.RefusedRules;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How long a record takes that has very many brackets, from its bytes to its findings: the
 * processor time of one check of each size in a process that has checked a small one before.
 * Arguments: how many brackets to a straight, then the sizes.
 */
public final class ManyBrackets {
    private static final int CENTRES_MM = 440;

    private ManyBrackets() {}

    public static void main(String[] arguments) throws Exception {
        int each = Integer.parseInt(arguments[0]);
        check(Math.min(each, 100), 200);
        for (int i = 1; i < arguments.length; i++) {
            int brackets = Integer.parseInt(arguments[i]);
            long began = processorNanos();
            Findings findings = check(each, brackets);
            long took = processorNanos() - began;
            System.out.printf(
                    Locale.ROOT,
                    "%d brackets, %d findings, %s: %.2f s of processor%n",
                    brackets,
                    findings.findings().size(),
                    findings.outcome(),
                    took / 1e9);
        }
    }

    private static long processorNanos() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class)
                .getProcessCpuTime();
    }

    private static Findings check(int each, int brackets)
            throws BadRecord, RefusedRules, IOException {
        // A record has no more than 16 MiB.
        String text = record(each, brackets).replaceAll("\\n *", "").replaceAll("([:,]) ", "$1");
        byte[] record = text.getBytes(StandardCharsets.UTF_8);
        return CheckJob.check(record, Optional.empty(), Path.of("rules")).findings();
    }

    /** Straights that each are a run, with one bracket too far from the next. */
    private static String record(int each, int brackets) {
        List<String> runs = new ArrayList<>();
        List<String> way = new ArrayList<>();
        List<String> catchments = new ArrayList<>();
        List<String> setUps = new ArrayList<>();
        for (int r = 0; r < brackets / each; r++) {
            runs.add(run("r" + r, each));
            setUps.add(
                    """
                    "s-r%d": {"instrument": "laser", "on": "r%ds", "station_mm": 0, "clean": "yes"}
                    """
                            .formatted(r, r));
            way.add(
                    """
                    {"id": "o-r%d", "kind": "outlet", "to": "x-r%d", "on": "r%ds", "station_mm": 250,
                     "body_mm": 100, "hold": "fixed", "screwed_to_fascia": "no", "size_mm": 100,
                     "edge": "tapered", "strainer": "no", "sump_depth_mm": 0}
                    """
                            .formatted(r, r, r));
            way.add(
                    """
                    {"id": "x-r%d", "kind": "discharge", "place": {"is": "soakaway", "how": "seen", "by": "n"},
                     "approved": {"is": "yes", "how": "told", "by": "n", "reference": "1"},
                     "traced": {"is": "dye", "how": "seen", "by": "n"}}
                    """
                            .formatted(r));
            catchments.add(
                    """
                    {"id": "c%d", "run": "r%d", "plan_area_m2": %d, "pitch_deg": 20, "cover": "steel", "walls": []}
                    """
                            .formatted(r, r, Math.max(1, each / 2)));
        }
        return """
                {"id": "many", "rule_set": "trade-practice",
                 "circumstances": {"snow_lies": {"is": "no", "how": "seen", "by": "n"},
                   "heavy_rain": {"is": "no", "how": "seen", "by": "n"},
                   "rainfall": [{"intensity_mm_h": 60, "duration_min": 10, "aep_percent": 10, "source": "map"}]},
                 "instruments": {"tape": {"kind": "tape", "class": "II", "from_hook": "no", "resolution_mm": 1},
                   "laser": {"kind": "laser", "accuracy_mm": 0.5, "accuracy_mm_per_m": 0.1, "resolution_mm": 0.5}},
                 "measured_with": "tape", "set_ups": {%s},
                 "gutters": {"g": {"kind": "eaves", "material": "PVC-U", "jointing": "cemented",
                   "profile": {"shape": "half-round", "width_mm": 125, "depth_mm": 62},
                   "area_mm2": {"is": 5900, "how": "told", "by": "maker"},
                   "bracket_capacity_n": {"is": 400, "how": "told", "by": "maker"}}},
                 "runs": [%s], "catchments": [%s], "way": [%s], "tests": []}
                """
                .formatted(
                        String.join(",\n", setUps),
                        String.join(",\n", runs),
                        String.join(",\n", catchments),
                        String.join(",\n", way));
    }

    private static String run(String id, int brackets) {
        List<String> there = new ArrayList<>();
        List<String> readings = new ArrayList<>();
        int length = (brackets - 1) * CENTRES_MM + 100;
        for (int b = 0; b < brackets; b++) {
            int at = 50 + b * CENTRES_MM + (b == 5 ? 100 : 0);
            there.add(
                    """
                    {"id": "%s-b%d", "station_mm": %d, "screws_fitted": 4, "holes_provided": 4,
                     "screw_metal": "stainless steel", "bite_mm": 30}
                    """
                            .formatted(id, b, at));
        }
        for (int at = 0; at <= length; at = at == length ? at + 1 : Math.min(length, at + 1200)) {
            readings.add(
                    """
                    {"station_mm": %d, "surface": "sole", "below_mm": %s, "set_up": "s-%s", "measured_with": "laser"}
                    """
                            .formatted(at, 2000 - Math.abs(at - 250) / 500.0, id));
        }
        return """
                {"id": "%s", "gutter": "g", "fitted": {"temperature_c": 18, "light": "shade"},
                 "straights": [{"id": "%ss", "length_mm": %d,
                   "left_end": {"kind": "stop end", "gap_to_wall_mm": 300},
                   "right_end": {"kind": "stop end", "gap_to_wall_mm": 300},
                   "cross_tilt": [{"station_mm": 100, "front_lower_mm": 3}],
                   "readings": [%s], "brackets": [%s], "fittings": [], "joints": [], "keep_clear": [],
                   "fascia": {"begins_mm": 0, "ends_mm": %d, "sound": {"is": "yes", "how": "seen", "by": "n"}}}]}
                """
                .formatted(
                        id,
                        id,
                        length,
                        String.join(",\n", readings),
                        String.join(",\n", there),
                        length);
    }
}
