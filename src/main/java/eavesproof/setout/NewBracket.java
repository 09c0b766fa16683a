package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.job.Run.Bracket;
import eavesproof.job.Run.Straight;
import eavesproof.survey.Facts;
import java.util.List;

/** Brackets to be added: like those that are there, with a screw in every hole. */
final class NewBracket {
    /** Our choice where there is no bracket to be like: the fewest that keep one from turning. */
    private static final int SCREWS = 2;

    private NewBracket() {}

    static Proposal at(Case here, String run, String straight, List<Double> stations) {
        Job job = here.job();
        for (double station : stations) {
            job = Edits.addBracket(job, straight, like(here, job, run, straight, station));
        }
        String many = stations.size() == 1 ? "a bracket" : stations.size() + " brackets";
        return new Proposal(
                "add " + many + " on straight " + straight + " at " + Grid.stations(stations), job);
    }

    private static Bracket like(Case here, Job job, String run, String straight, double stationMm) {
        Bracket model =
                Parts.straight(job, straight).map(Straight::brackets).stream()
                        .flatMap(List::stream)
                        .filter(it -> screws(it) > 0)
                        .findFirst()
                        .orElse(new Bracket("", null, SCREWS, SCREWS, null, null, null));
        Bracket screwed = Edits.with(model, "screwsFitted", screws(model));
        Bracket metal =
                Edits.with(
                        screwed,
                        "screwMetal",
                        here.word(Facts.ScrewMetal.class, run).orElse(model.screwMetal()));
        return Edits.with(Edits.with(metal, "stationMm", stationMm), "id", Parts.newId(job));
    }

    /** One in every hole; as many as are in where the holes were not counted. */
    private static int screws(Bracket model) {
        Integer holes = model.holesProvided();
        Integer fitted = model.screwsFitted();
        return holes != null ? holes : fitted == null ? 0 : fitted;
    }
}
