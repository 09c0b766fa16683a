package eavesproof.survey;

import eavesproof.job.Gutter;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Run.Straight;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Works out what the measurements of a job mean. */
public final class Surveyor {
    private final Job job;
    private final Basis basis;
    private final Way way;
    private final Instruments instruments;
    private final Answers answers;

    private Surveyor(Job job, Basis basis, Answers answers) {
        this.job = job;
        this.basis = basis;
        this.way = new Way(job);
        this.instruments = new Instruments(job);
        this.answers = answers;
    }

    /** The same with a basis that states nothing: all that would rest on it is a gap. */
    static Survey survey(Job job) {
        return survey(job, Basis.NOTHING);
    }

    /** For every kind of fact at every place of the job a fact, a gap, or that there is none. */
    public static Survey survey(Job job, Basis basis) {
        Answers answers = new Answers();
        List<Run> runs = job.runs();
        if (runs == null) {
            ofEachKind(type -> answers.gap(type, "the runs are not recorded"));
        } else if (runs.isEmpty()) {
            ofEachKind(type -> answers.none(type, "the job has no run"));
        } else {
            new Surveyor(job, basis, answers).each(runs);
        }
        return answers.asSurvey();
    }

    private void each(List<Run> runs) {
        List<Trough> troughs = new ArrayList<>();
        for (Run run : runs) {
            trough(run).ifPresent(troughs::add);
        }
        Waters waters = new Waters(job, basis, way, troughs);
        Iterator<Trough> next = troughs.iterator();
        for (Run run : runs) {
            Circumstances.answer(job, run, basis, instruments, answers);
            List<Straight> straights = run.straights();
            String name = "run " + run.id();
            if (straights == null) {
                String why = "the straights of " + name + " are not recorded";
                alongTheRun(type -> answers.gap(type, why, run.id()));
            } else if (straights.isEmpty()) {
                // Water cannot run along nothing: whoever left the list empty has yet to fill it.
                String why = name + " is recorded without a straight";
                alongTheRun(type -> answers.gap(type, why, run.id()));
            } else {
                along(next.next(), waters);
            }
        }
        Catchments catchments = new Catchments(job, basis);
        ReachRoofs roofs = new ReachRoofs(job, catchments, answers);
        troughs.forEach(roofs::answer);
        troughs.forEach(trough -> PipeSizes.answer(trough, catchments, answers));
    }

    private Optional<Trough> trough(Run run) {
        List<Straight> straights = run.straights();
        if (straights == null || straights.isEmpty()) {
            return Optional.empty();
        }
        Found<Gutter> gutter = Circumstances.gutterOf(job, run);
        return Optional.of(new Trough(run, gutter, straights, way, instruments));
    }

    private void along(Trough trough, Waters waters) {
        Lengths.answer(trough, answers);
        Supports.answer(trough, answers);
        TimberEnds.answer(trough, answers);
        Fixings.answer(trough, answers);
        BracketLoads.answer(job, trough, answers);
        RoofSnow.answer(job, trough, basis, answers);
        Outlets.answer(trough, answers);
        Reaches.answer(trough, WaterTests.of(job, trough), answers);
        FasciaLine.answer(trough, answers);
        Movement.answer(trough, basis, answers);
        Zones.answer(trough, answers);
        Drips.answer(job, trough, answers);
        WayOfWater.answer(trough, answers);
        RoofMetals.drunk(trough, answers);
        waters.answer(trough, answers);
    }

    private static void ofEachKind(Consumer<Class<? extends Facts.Fact>> answer) {
        Vocabulary.kinds().forEach(kind -> answer.accept(kind.type()));
    }

    /** Of each kind that asks what lies along a run. */
    private static void alongTheRun(Consumer<Class<? extends Facts.Fact>> answer) {
        ofEachKind(
                type -> {
                    if (!Circumstances.KINDS.contains(type)) {
                        answer.accept(type);
                    }
                });
    }
}
