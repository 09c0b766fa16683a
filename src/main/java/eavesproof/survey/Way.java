package eavesproof.survey;

import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.WayPart;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The way of the water as recorded: which outlets are on which straight, and what leads where. */
final class Way {
    private final boolean recorded;
    private final Map<String, WayPart> parts = new LinkedHashMap<>();
    private final Map<String, List<WayPart.Outlet>> outlets = new LinkedHashMap<>();
    private final List<WayPart.Outlet> unplaced = new ArrayList<>();
    private final Map<String, List<Run.KeepClear>> keptClear = new LinkedHashMap<>();

    Way(Job job) {
        List<WayPart> way = job.way();
        recorded = way != null;
        Set<String> straights = straightsOf(job);
        keptClear(job);
        for (WayPart part : way == null ? List.<WayPart>of() : way) {
            parts.putIfAbsent(part.id(), part);
            if (part instanceof WayPart.Outlet outlet) {
                String on = outlet.on();
                if (on != null && straights.contains(on)) {
                    outlets.computeIfAbsent(on, id -> new ArrayList<>()).add(outlet);
                } else {
                    unplaced.add(outlet);
                }
            }
        }
    }

    private static Set<String> straightsOf(Job job) {
        Set<String> ids = new HashSet<>();
        List<Run> runs = job.runs();
        for (Run run : runs == null ? List.<Run>of() : runs) {
            List<Run.Straight> straights = run.straights();
            if (straights != null) {
                straights.forEach(straight -> ids.add(straight.id()));
            }
        }
        return ids;
    }

    private void keptClear(Job job) {
        List<Run> runs = job.runs();
        for (Run run : runs == null ? List.<Run>of() : runs) {
            List<Run.Straight> straights = run.straights();
            for (Run.Straight straight : straights == null ? List.<Run.Straight>of() : straights) {
                List<Run.KeepClear> zones = straight.keepClear();
                keptClear.put(straight.id(), zones == null ? List.of() : zones);
            }
        }
    }

    /** What is to be kept clear below an outlet, such as a door. */
    Optional<Run.KeepClear> below(WayPart.Outlet outlet) {
        Double at = outlet.stationMm();
        String on = outlet.on();
        return at == null || on == null
                ? Optional.empty()
                : keptClear.getOrDefault(on, List.of()).stream()
                        .filter(zone -> zone.fromMm() != null && zone.fromMm() <= at)
                        .filter(zone -> zone.toMm() != null && zone.toMm() >= at)
                        .findFirst();
    }

    List<WayPart.Outlet> outletsOn(String straight) {
        return outlets.getOrDefault(straight, List.of());
    }

    /** Outlets that may be on any straight, because the record does not say on which they are. */
    List<WayPart.Outlet> unplaced() {
        return unplaced;
    }

    boolean isRecorded() {
        return recorded;
    }

    /** Why the outlets of a run are not all known, if they are not. */
    Optional<String> doubt() {
        if (!recorded) {
            return Optional.of("the way of the water is not recorded");
        }
        return unplaced.stream().findFirst().map(Way::unplaced);
    }

    static String unplaced(WayPart.Outlet outlet) {
        return "which straight outlet " + outlet.id() + " is on is not recorded";
    }

    /**
     * What the water passes from some outlets on, each part once, in the order of its coming.
     *
     * @param broken why the way cannot be followed to a discharge, once for each place
     */
    record Course(List<WayPart> parts, List<String> broken) {
        <P extends WayPart> List<P> each(Class<P> kind) {
            return parts.stream().filter(kind::isInstance).map(kind::cast).toList();
        }
    }

    /** All parts that are recorded, in the order of the record. */
    List<WayPart> parts() {
        return List.copyOf(parts.values());
    }

    /** The part that a part leads to, where both are recorded. */
    Optional<WayPart> after(WayPart part) {
        String to = part.to();
        return Optional.ofNullable(to == null ? null : parts.get(to));
    }

    /** Parts of a kind to which no outlet leads. What comes to them is not recorded. */
    <P extends WayPart> List<P> unreached(Class<P> kind) {
        Set<String> reached = new HashSet<>();
        List<WayPart> starts =
                parts.values().stream().filter(WayPart.Outlet.class::isInstance).toList();
        from(starts).parts().forEach(part -> reached.add(part.id()));
        return parts.values().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .filter(part -> !reached.contains(part.id()))
                .toList();
    }

    /** By the id of each part, those that lead to it. */
    Map<String, List<WayPart>> feeders() {
        Map<String, List<WayPart>> feeders = new LinkedHashMap<>();
        for (WayPart part : parts.values()) {
            feeders.computeIfAbsent(part.id(), id -> new ArrayList<>());
            after(part)
                    .ifPresent(
                            next ->
                                    feeders.computeIfAbsent(next.id(), id -> new ArrayList<>())
                                            .add(part));
        }
        return feeders;
    }

    /** All whose water comes to a part, that part itself included. */
    List<WayPart> above(WayPart part) {
        Map<String, List<WayPart>> feeders = feeders();
        Map<String, WayPart> seen = new LinkedHashMap<>();
        Deque<WayPart> next = new ArrayDeque<>(List.of(part));
        while (!next.isEmpty()) {
            WayPart here = next.remove();
            if (seen.putIfAbsent(here.id(), here) == null) {
                next.addAll(feeders.getOrDefault(here.id(), List.of()));
            }
        }
        return List.copyOf(seen.values());
    }

    Course from(List<? extends WayPart> starts) {
        Set<String> seen = new LinkedHashSet<>();
        List<String> broken = new ArrayList<>();
        starts.forEach(start -> follow(start, seen, broken));
        return new Course(seen.stream().map(parts::get).toList(), List.copyOf(broken));
    }

    private void follow(WayPart start, Set<String> seen, List<String> broken) {
        Set<String> onThisWay = new HashSet<>();
        WayPart part = start;
        while (seen.add(part.id())) {
            onThisWay.add(part.id());
            if (part instanceof WayPart.Discharge) {
                return;
            }
            String to = part.to();
            WayPart next = to == null ? null : parts.get(to);
            if (next == null) {
                broken.add(
                        to == null
                                ? "where the water goes from " + part.id() + " is not recorded"
                                : part.id() + " leads to " + to + ", which is not recorded");
                return;
            }
            if (!part.leadsDownTo(next)) {
                broken.add(
                        "how the water gets from "
                                + part.id()
                                + " down to "
                                + next.id()
                                + " is not recorded");
            }
            part = next;
        }
        if (onThisWay.contains(part.id())) {
            broken.add("the way of the water comes back to " + part.id());
        }
    }
}
