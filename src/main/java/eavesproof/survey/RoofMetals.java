package eavesproof.survey;

import eavesproof.job.Job;
import eavesproof.job.Job.Catchment;
import eavesproof.job.WayPart.Tank;
import eavesproof.job.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the water of a run has run over before it comes to the gutter, and whether anybody drinks
 * it: metals eat away others that lie against them or below them, and lead gets into the water.
 */
final class RoofMetals {
    private RoofMetals() {}

    /** Of each roof of the run, and of those that drain to nobody knows which run. */
    static void answer(Job job, String run, Answers answers) {
        List<Catchment> all = job.catchments();
        List<Catchment> own = new ArrayList<>();
        for (Catchment one : all == null ? List.<Catchment>of() : all) {
            if (one.run() == null || one.run().equals(run)) {
                own.add(one);
            }
        }
        if (own.isEmpty()) {
            String why = "what roof drains to run " + run + " is not recorded";
            answers.gap(Facts.RoofMetal.class, why, run);
            answers.gap(Facts.RoofLead.class, why, run);
        }
        for (Catchment one : own) {
            cover(run, one, answers);
            answers.word(
                    Facts.RoofLead.class,
                    Words.LEAD.equals(one.metal()) ? Words.YES : one.lead(),
                    word -> new Facts.RoofLead(run, one.id(), word),
                    "whether there is lead on roof " + one.id(),
                    run,
                    one.id());
        }
    }

    /** Of a metal that the tables do not name, nobody can say what it goes with. */
    private static void cover(String run, Catchment roof, Answers answers) {
        String metal = roof.metal();
        if (metal != null
                && Words.ALL_ROOF_METALS.contains(metal)
                && !Words.ROOF_METALS.contains(metal)) {
            String why =
                    "what goes with "
                            + metal
                            + ", the metal of roof "
                            + roof.id()
                            + ", is not known";
            answers.gap(Facts.RoofMetal.class, why, run, roof.id());
            return;
        }
        answers.word(
                Facts.RoofMetal.class,
                metal,
                word -> new Facts.RoofMetal(run, roof.id(), word),
                "which metal roof " + roof.id() + " is covered with, if any,",
                run,
                roof.id());
    }

    /** Where the way is not known to its end, a tank may still come. */
    static void drunk(Trough trough, Answers answers) {
        Way.Course course = trough.way().from(trough.outlets());
        List<Tank> tanks = course.each(Tank.class);
        Optional<Tank> asked =
                tanks.stream().filter(tank -> Words.YES.equals(tank.drinkingWater())).findFirst();
        List<String> doubts = new ArrayList<>();
        trough.way().doubt().ifPresent(doubts::add);
        doubts.addAll(course.broken());
        for (Tank tank : tanks) {
            if (!Words.NO.equals(tank.drinkingWater())) {
                doubts.add("whether the water of tank " + tank.id() + " is drunk is not recorded");
            }
        }
        String run = trough.id();
        if (asked.isPresent()) {
            drunk(run, Words.YES, "tank " + asked.get().id(), answers);
        } else if (doubts.isEmpty()) {
            String where = tanks.isEmpty() ? "it comes to no tank" : "as recorded of every tank";
            drunk(run, Words.NO, where, answers);
        } else {
            answers.gap(Facts.DrinkingWater.class, doubts.get(0), run);
        }
    }

    private static void drunk(String run, String word, String from, Answers answers) {
        answers.concluded(
                new Facts.DrinkingWater(run, word),
                word,
                new Working("whether the water of run " + run + " is drunk", word, from));
    }
}
