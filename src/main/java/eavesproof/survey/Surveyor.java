package eavesproof.survey;

import eavesproof.job.Gutter;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Run.Straight;
import java.util.List;
import java.util.function.Consumer;

/** Works out what the measurements of a job mean. */
public final class Surveyor {
    private Surveyor() {}

    /** For every kind of fact at every place of the job a fact, a gap, or that there is none. */
    public static Survey survey(Job job) {
        Answers answers = new Answers();
        List<Run> runs = job.runs();
        if (runs == null) {
            ofEachKind(type -> answers.gap(type, "the runs are not recorded"));
        } else if (runs.isEmpty()) {
            ofEachKind(type -> answers.none(type, "the job has no run"));
        } else {
            Way way = new Way(job);
            Instruments instruments = new Instruments(job);
            runs.forEach(run -> survey(job, run, way, instruments, answers));
        }
        return answers.asSurvey();
    }

    private static void survey(
            Job job, Run run, Way way, Instruments instruments, Answers answers) {
        Circumstances.answer(job, run, instruments, answers);
        List<Straight> straights = run.straights();
        String name = "run " + run.id();
        if (straights == null) {
            String why = "the straights of " + name + " are not recorded";
            alongTheRun(type -> answers.gap(type, why, run.id()));
        } else if (straights.isEmpty()) {
            alongTheRun(type -> answers.none(type, name + " has no straight", run.id()));
        } else {
            Found<Gutter> gutter = Circumstances.gutterOf(job, run);
            along(job, new Trough(run, gutter, straights, way, instruments), answers);
        }
    }

    private static void along(Job job, Trough trough, Answers answers) {
        Lengths.answer(trough, answers);
        Supports.answer(trough, answers);
        TimberEnds.answer(trough, answers);
        Brackets.answer(trough, answers);
        Outlets.answer(trough, answers);
        Reaches.answer(trough, WaterTests.of(job, trough), answers);
        Movement.answer(trough, answers);
        Zones.answer(trough, answers);
        WayOfWater.answer(trough, answers);
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
