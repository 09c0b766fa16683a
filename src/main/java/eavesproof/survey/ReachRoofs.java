package eavesproof.survey;

import eavesproof.job.Job;
import eavesproof.job.Job.Catchment;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What the printed tables of documents are entered with: the roof that drains to a reach, by its
 * part of the length of all reaches of the run, and the gutter's cross-section there.
 */
final class ReachRoofs {
    private final Job job;
    private final Catchments catchments;
    private final Answers answers;

    ReachRoofs(Job job, Catchments catchments, Answers answers) {
        this.job = job;
        this.catchments = catchments;
        this.answers = answers;
    }

    /** To be asked once the reaches of the run have their lengths. */
    void answer(Trough trough) {
        String run = trough.id();
        Found.by(() -> steepest(run))
                .either(
                        deg ->
                                answers.known(
                                        new Facts.RoofPitch(run, deg),
                                        Uncertain.exact(deg),
                                        Answers.working(
                                                "pitch of the steepest roof",
                                                Uncertain.exact(deg),
                                                Unit.DEGREE,
                                                "as recorded")),
                        why -> answers.gap(Facts.RoofPitch.class, why, run));
        List<Answer> reaches = answers.of(Facts.ReachLength.class, "run", run);
        Found<List<Uncertain>> lengths = Found.by(() -> lengths(reaches));
        for (Answer reach : reaches) {
            String[] ids = reach.place().keys().values().toArray(String[]::new);
            if (reach instanceof Answer.Known known) {
                Found.by(() -> roof(run, length(known), lengths.need()))
                        .either(
                                m2 -> roof(known, m2),
                                why -> answers.gap(Facts.ReachRoof.class, why, ids));
                section(trough, known, ids);
            } else if (reach instanceof Answer.Gap gap) {
                answers.gap(Facts.ReachRoof.class, gap.why(), ids);
                answers.gap(Facts.GutterSection.class, gap.why(), ids);
            } else if (reach instanceof Answer.NoneHere none) {
                answers.none(Facts.ReachRoof.class, none.why(), ids);
                answers.none(Facts.GutterSection.class, none.why(), ids);
            }
        }
    }

    private double steepest(String run) throws Lacking {
        double steepest = -1;
        for (Catchment one : Found.need(job.catchments(), "what roof drains to the gutters")) {
            String name = "catchment " + one.id();
            if (Found.need(one.run(), "which run " + name + " drains to").equals(run)) {
                double pitch = Found.need(one.pitchDeg(), "the pitch of " + name);
                steepest = Math.max(steepest, pitch);
            }
        }
        if (steepest < 0) {
            throw Found.lacking("no catchment of run " + run + " is recorded");
        }
        return steepest;
    }

    private static Uncertain length(Answer.Known reach) {
        return ((Measure.Number) reach.measure()).value();
    }

    private static List<Uncertain> lengths(List<Answer> reaches) throws Lacking {
        List<Uncertain> lengths = new ArrayList<>();
        for (Answer reach : reaches) {
            if (reach instanceof Answer.Gap gap) {
                throw Found.lacking(gap.why());
            }
            if (reach instanceof Answer.Known known) {
                lengths.add(length(known));
            }
        }
        return lengths;
    }

    private Uncertain roof(String run, Uncertain length, List<Uncertain> lengths) throws Lacking {
        Catchments.Gathered gathered = catchments.of(run).need();
        if (lengths.size() == 1) {
            return Uncertain.exact(gathered.totalM2());
        }
        if (!gathered.arriving().isEmpty()) {
            throw Found.lacking(
                    "water arrives at single places of run "
                            + run
                            + ", and how much of it each side of an outlet takes is not known");
        }
        Uncertain all = Uncertain.exact(0);
        for (Uncertain one : lengths) {
            all = all.plus(one);
        }
        if (all.value() <= 0) {
            throw Found.lacking("the reaches of run " + run + " have no length");
        }
        return length.over(all).times(gathered.roofM2());
    }

    private void roof(Answer.Known reach, Uncertain m2) {
        Map<String, String> ids = reach.place().keys();
        at(reach)
                .known(
                        new Facts.ReachRoof(
                                id(ids, "run"), id(ids, "outlet"), id(ids, "side"), m2.value()),
                        m2,
                        Answers.working(
                                "roof of the reach",
                                m2,
                                Unit.M2,
                                "roof of the run x length of the reach / length of all reaches"));
    }

    /** Shown where the reach is shown. */
    private Answers at(Answer.Known reach) {
        return reach.place()
                .stretch()
                .map(on -> answers.on(on.straight(), on.fromMm(), on.toMm()))
                .orElse(answers);
    }

    private static String id(Map<String, String> ids, String key) {
        return ids.getOrDefault(key, "");
    }

    private void section(Trough trough, Answer.Known reach, String[] ids) {
        trough.gutter()
                .then(FullSection::of)
                .either(
                        area ->
                                at(reach)
                                        .stated(
                                                new Facts.GutterSection(
                                                        ids[0], ids[1], ids[2], area.mm2().value()),
                                                area.mm2(),
                                                area.provenance(),
                                                Answers.working(
                                                        "section",
                                                        area.mm2(),
                                                        Unit.MM2,
                                                        area.from())),
                        why -> answers.gap(Facts.GutterSection.class, why, ids));
    }
}
