package eavesproof.exchange;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Whether the way of the water can be gone: never in a circle and never up into an outlet. */
final class WayChecks {
    private final Map<String, Found> parts = new LinkedHashMap<>();
    private final Problems problems;

    private WayChecks(Problems problems) {
        this.problems = problems;
    }

    static void check(Found job, Problems problems) {
        WayChecks checks = new WayChecks(problems);
        List<Found> way = job.items("way");
        for (Found part : way) {
            String id = part.text("id");
            if (id != null) {
                checks.parts.putIfAbsent(id, part);
            }
        }
        way.forEach(checks::leadsToNoOutlet);
        way.forEach(checks::fallsIntoNoPipe);
        checks.runsInNoCircle();
        HeightChecks.check(job, problems);
    }

    private void leadsToNoOutlet(Found part) {
        Found to = part.at("to");
        Found next = next(part);
        if (to != null && next != null && "outlet".equals(next.text("kind"))) {
            String found = Shown.quoted((String) to.value()) + ", which is an outlet";
            problems.add(to, found, "a part below; what falls into a gutter is an `inflow`");
        }
    }

    private void fallsIntoNoPipe(Found outlet) {
        Found spout = outlet.at("spout");
        Found next = next(outlet);
        if (spout == null || next == null || !"yes".equals(spout.value())) {
            return;
        }
        if (List.of("branch", "downpipe").contains(next.text("kind"))) {
            String found = "\"yes\" of an outlet that leads to " + next.text("id");
            problems.add(spout, found, "`no`, as that is a pipe");
        }
    }

    /** Follows every part to the end once; each circle is told where the first part closes it. */
    private void runsInNoCircle() {
        Set<String> done = new HashSet<>();
        for (String start : parts.keySet()) {
            Set<String> path = new HashSet<>();
            String id = start;
            while (id != null && !done.contains(id) && path.add(id)) {
                Found to = to(id);
                id = to == null ? null : (String) to.value();
                if (to != null && path.contains(id)) {
                    circle(to);
                }
            }
            done.addAll(path);
        }
    }

    private @Nullable Found to(String id) {
        Found part = parts.get(id);
        return part == null ? null : part.at("to");
    }

    private void circle(Found to) {
        String found = Shown.quoted(to.value().toString()) + ", which makes a circle";
        problems.add(to, found, "a part that the water has not passed yet");
    }

    private @Nullable Found next(Found part) {
        String to = part.text("to");
        return to == null ? null : parts.get(to);
    }
}
