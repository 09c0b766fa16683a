package eavesproof.survey;

import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.SoleProfile.Point;
import java.util.List;
import java.util.Optional;

/**
 * How far the sole of a reach hangs below the straight line from its high end to its outlet, where
 * it does most. A reach whose two ends are good may sag between them and still hold no water, where
 * it is steep enough.
 */
final class Sags {
    private static final int FEWEST = 3;

    private static final String SHORT = "no reading was needed between the ends";

    private final Trough trough;
    private final Levels levels;
    private final Answers answers;

    Sags(Trough trough, Levels levels, Answers answers) {
        this.trough = trough;
        this.levels = levels;
        this.answers = answers;
    }

    /** To be called once it is known what stands in the reach. */
    void answer(ReachLevels read) {
        Answers here = read.reach().shownOn(trough, answers);
        String outlet = read.reach().outlet().id();
        String side = read.reach().side();
        List<SoleProfile> between =
                SoleProfile.of(read, levels).stream().filter(SoleProfile::isWhole).toList();
        List<SoleProfile> whole =
                between.stream().filter(it -> it.points().size() >= FEWEST).toList();
        if (whole.isEmpty()) {
            String[] place = {trough.id(), outlet, side};
            if (between.isEmpty()) {
                here.gap(Facts.SoleSag.class, notRead(outlet, side), place);
            } else {
                here.none(Facts.SoleSag.class, SHORT, place);
            }
            return;
        }
        Worst worst = new Worst();
        String lowest = "";
        double most = Double.NEGATIVE_INFINITY;
        for (SoleProfile profile : whole) {
            List<Point> points = profile.points();
            Point low = points.get(0);
            Point high = points.get(points.size() - 1);
            for (Point point : points.subList(1, points.size() - 1)) {
                double part =
                        (point.toOutletMm() - low.toOutletMm())
                                / (high.toOutletMm() - low.toOutletMm());
                Uncertain line = low.below().times(1 - part).plus(high.below().times(part));
                Uncertain sag = point.below().minus(line);
                worst.add(sag);
                lowest = sag.value() > most ? point.text() : lowest;
                most = Math.max(most, sag.value());
            }
        }
        Uncertain sag = worst.get();
        here.known(
                new Facts.SoleSag(trough.id(), outlet, side, sag.value()),
                sag,
                Answers.working(
                        "sag", sag, Unit.MM, "below the line from end to end, most at " + lowest));
    }

    /**
     * What is not recorded of the sole leaves open what stands in it, too, unless that was seen
     * with water, which shows no line.
     */
    private String notRead(String outlet, String side) {
        return answers.of(Facts.PondDepth.class, "outlet", outlet).stream()
                .filter(it -> it.place().key("side").equals(Optional.of(side)))
                .filter(Answer.Gap.class::isInstance)
                .map(it -> ((Answer.Gap) it).why())
                .findFirst()
                .orElse("the line of the sole was not read, and water poured in does not show it");
    }
}
