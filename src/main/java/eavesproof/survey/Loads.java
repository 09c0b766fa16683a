package eavesproof.survey;

import eavesproof.job.WayPart;
import eavesproof.job.WayPart.Downpipe;
import eavesproof.job.WayPart.Drain;
import eavesproof.job.WayPart.OtherRoof;
import eavesproof.job.WayPart.Outlet;
import eavesproof.job.Words;
import eavesproof.quantity.Uncertain;
import eavesproof.survey.Found.Lacking;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What each part of the way carries under the design rain: the water of all outlets of the job that
 * comes to it, and of all other roofs that are recorded on the pipes above it. A pipe that was
 * there is never taken to be free.
 */
final class Loads {
    private static final double LITRES = 1000;

    private final Way way;
    private final Found<DesignRain> design;
    private final Catchments catchments;
    private final Basis basis;
    private final Map<String, Found<Uncertain>> outlets = new LinkedHashMap<>();
    private final Map<String, Found<Load>> loads = new LinkedHashMap<>();

    /** Outlets of which nobody knows where their water ends. */
    private final List<Lost> lost = new ArrayList<>();

    private record Lost(Set<String> passes, String why) {}

    Loads(Way way, Found<DesignRain> design, Catchments catchments, Basis basis) {
        this.way = way;
        this.design = design;
        this.catchments = catchments;
        this.basis = basis;
    }

    /** Takes in what the outlets of a run take; a single one takes all that comes to the run. */
    void add(Trough trough, Found<RunWater.Rain> rain, Found<RunWater> water) {
        boolean single = trough.outlets().size() == 1 && trough.way().doubt().isEmpty();
        for (Outlet outlet : trough.outlets()) {
            outlets.put(
                    outlet.id(),
                    single
                            ? rain.map(of -> of.part(of.all()))
                            : Found.both(
                                            rain,
                                            water,
                                            (of, in) -> taken(in, outlet.id()).map(of::part))
                                    .then(it -> it));
        }
    }

    /** What an outlet takes, L/s. */
    Found<Uncertain> of(Outlet outlet) {
        return Found.orElse(
                        outlets.get(outlet.id()),
                        "which straight outlet " + outlet.id() + " is on is not recorded")
                .then(it -> it);
    }

    private static Found<Double> taken(RunWater water, String outlet) {
        for (int i = 0; i < water.outlets().size(); i++) {
            if (water.outlets().get(i).id().equals(outlet)) {
                return Found.of(water.surface().outlets().get(i).flow() * LITRES);
            }
        }
        return Found.missing("how much outlet " + outlet + " takes is not known");
    }

    /**
     * @param flow in L/s
     * @param known how the roofs are known that others built and that drain into it too
     */
    record Load(Uncertain flow, List<Working> workings, Provenance known) {}

    /** To be called once all runs are in. */
    void sum() {
        Map<String, List<WayPart>> feeders = way.feeders();
        Map<String, Integer> waiting = new HashMap<>();
        Deque<WayPart> next = new ArrayDeque<>();
        for (WayPart part : way.parts()) {
            int above = feeders.getOrDefault(part.id(), List.of()).size();
            waiting.put(part.id(), above);
            if (above == 0) {
                next.add(part);
            }
            if (part instanceof Outlet) {
                Way.Course course = way.from(List.of(part));
                course.broken().stream()
                        .limit(1)
                        .forEach(why -> lost.add(new Lost(ids(course), why)));
            }
        }
        while (!next.isEmpty()) {
            WayPart part = next.remove();
            List<WayPart> above = feeders.getOrDefault(part.id(), List.of());
            loads.put(part.id(), Found.by(() -> sum(part, above)));
            way.after(part)
                    .filter(below -> waiting.merge(below.id(), -1, Integer::sum) == 0)
                    .ifPresent(next::add);
        }
    }

    private static Set<String> ids(Way.Course course) {
        Set<String> ids = new HashSet<>();
        course.parts().forEach(part -> ids.add(part.id()));
        return ids;
    }

    Found<Load> on(WayPart part) {
        for (Lost outlet : lost) {
            if (!outlet.passes().contains(part.id())) {
                return Found.missing(outlet.why() + ", so that it may come to " + part.id());
            }
        }
        return Found.orElse(loads.get(part.id()), "the way of the water comes back to " + part.id())
                .then(it -> it);
    }

    private Load sum(WayPart part, List<WayPart> feeders) throws Lacking {
        Uncertain sum = Uncertain.exact(0);
        Provenance known = Provenance.MEASURED;
        List<Working> workings = new ArrayList<>();
        if (part instanceof Outlet outlet) {
            sum = sum.plus(outlet(outlet, workings));
        }
        for (WayPart feeder : feeders) {
            Load from = Found.need(loads.get(feeder.id()), "what comes from " + feeder.id()).need();
            Uncertain flow = from.flow();
            workings.add(GutterWater.flow("from " + feeder.id(), flow.value(), "its demand"));
            sum = sum.plus(flow);
            known = known.orLess(from.known());
        }
        for (OtherRoof roof : others(part)) {
            known = known.orLess(Provenance.of(roof.planAreaM2()));
        }
        sum = sum.plus(Uncertain.exact(roofs(part, workings)));
        workings.add(GutterWater.flow("demand", sum.value(), "the sum of all that comes to it"));
        return new Load(sum, workings, known);
    }

    private Uncertain outlet(Outlet outlet, List<Working> workings) throws Lacking {
        Uncertain flow = of(outlet).need();
        workings.add(GutterWater.flow("from the gutter", flow.value(), "where the water parts"));
        return flow;
    }

    /**
     * Every other roof that drains into a pipe. A new pipe of which nothing is said carries what
     * the record leads to it; of one that was there it must be said.
     */
    static List<OtherRoof> others(WayPart part) throws Lacking {
        if (part instanceof Downpipe pipe) {
            return others(part, pipe.newOrExisting(), pipe.alsoCarries());
        }
        return part instanceof Drain drain
                ? others(part, drain.newOrExisting(), drain.alsoCarries())
                : List.of();
    }

    private static List<OtherRoof> others(
            WayPart part, @Nullable String newOrExisting, @Nullable List<OtherRoof> recorded)
            throws Lacking {
        return recorded == null && Words.NEW.equals(newOrExisting)
                ? List.of()
                : Found.need(recorded, "what other roofs drain into " + part.id());
    }

    private double roofs(WayPart part, List<Working> workings) throws Lacking {
        double sum = 0;
        for (OtherRoof roof : others(part)) {
            String name = "roof " + roof.id() + " on " + part.id();
            double plan = Found.need(roof.planAreaM2().is(), "the plan area of " + name);
            Catchments.Gathered gathered =
                    new Catchments.Gathered(
                            catchments.roof(plan, null, name, workings),
                            List.of(),
                            Uncertain.exact(0),
                            List.of());
            Basis.Amount runOff = basis.amount(BasisKey.RUN_OFF).need();
            double litres = new RunWater.Rain(design.need(), gathered, runOff).all();
            workings.add(GutterWater.flow("from " + name, litres, "run-off x intensity x area"));
            sum += litres;
        }
        return sum;
    }
}
