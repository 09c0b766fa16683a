package eavesproof.survey;

import eavesproof.job.Job;
import eavesproof.survey.RunWater.Rain;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The water of a whole job under the design rain: what one run sends on, another's pipe carries.
 */
final class Waters {
    private final Basis basis;
    private final Found<DesignRain> design;
    private final Found<DesignRain> ofOverflows;
    private final Catchments catchments;
    private final Map<String, Found<Rain>> rains = new LinkedHashMap<>();
    private final Map<String, Found<RunWater>> waters = new LinkedHashMap<>();
    private final Loads loads;

    Waters(Job job, Basis basis, Way way, List<Trough> troughs) {
        this.basis = basis;
        design = DesignRain.of(job, basis);
        ofOverflows = DesignRain.ofOverflows(job, basis);
        catchments = new Catchments(job, basis);
        loads = new Loads(way, design, catchments, basis);
        for (Trough trough : troughs) {
            Found<Rain> rain = Rain.of(design, catchments.of(trough.id()), basis);
            Found<RunWater> water = RunWater.of(trough, trough.gutter(), rain, basis);
            rains.put(trough.id(), rain);
            waters.put(trough.id(), water);
            loads.add(trough, rain, water);
        }
        loads.sum();
    }

    void answer(Trough trough, Answers answers) {
        Found<Rain> rain = of(rains, trough);
        Found<RunWater> water = of(waters, trough);
        GutterWater.answer(trough, design, rain, water, loads, basis, answers);
        NominalReaches.answer(trough, water, basis, answers);
        OverflowWater.answer(trough, ofOverflows, catchments.of(trough.id()), basis, answers);
        SpillSides.answer(trough, answers);
        BlockedRain.answer(trough, catchments.of(trough.id()), basis, answers);
        WayCapacity.answer(trough, loads, basis, answers);
    }

    private static <T> Found<T> of(Map<String, Found<T>> all, Trough trough) {
        return Found.recorded(all.get(trough.id()), "run " + trough.id()).then(it -> it);
    }
}
