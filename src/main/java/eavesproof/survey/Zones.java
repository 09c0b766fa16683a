package eavesproof.survey;

import eavesproof.job.Run.Joint;
import eavesproof.job.Run.KeepClear;
import eavesproof.job.Run.Straight;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Trough.Spot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How many joints lie in each length that is to be kept clear. A joint so near to the edge of the
 * length that its expanded uncertainty reaches across counts as inside.
 */
final class Zones {
    private final Trough trough;
    private final int index;
    private final Straight straight;
    private final Answers answers;

    private Zones(Trough trough, int index, Answers answers) {
        this.trough = trough;
        this.index = index;
        this.straight = trough.straight(index);
        this.answers = answers;
    }

    static void answer(Trough trough, Answers answers) {
        for (int i = 0; i < trough.straights().size(); i++) {
            new Zones(trough, i, answers).all();
        }
    }

    private void all() {
        List<KeepClear> zones = straight.keepClear();
        if (zones == null) {
            String why =
                    "the lengths to be kept clear on straight "
                            + straight.id()
                            + " are not recorded";
            answers.gap(Facts.JointsInZone.class, why, trough.id());
        } else if (zones.isEmpty()) {
            String why = "straight " + straight.id() + " has no length to be kept clear";
            answers.none(Facts.JointsInZone.class, why, trough.id());
        } else {
            Found<List<Spot>> joints = joints();
            zones.forEach(zone -> zone(zone, joints));
        }
    }

    private Found<List<Spot>> joints() {
        List<Joint> joints = straight.joints();
        if (joints == null) {
            return Found.missing("the joints of straight " + straight.id() + " are not recorded");
        }
        List<Spot> spots = new ArrayList<>();
        for (Joint joint : joints) {
            String name = "joint " + joint.id();
            Found<Spot> spot = trough.spot(index, joint.id(), name, joint.stationMm());
            if (spot instanceof Found.Missing<Spot> missing) {
                return Found.missing(missing.why());
            }
            spot.map(spots::add);
        }
        Collections.sort(spots);
        return Found.of(spots);
    }

    private record Zone(String id, Spot from, Spot to) {}

    private void zone(KeepClear recorded, Found<List<Spot>> joints) {
        String id = recorded.id();
        Found<Spot> from = trough.spot(index, id, "the left edge of zone " + id, recorded.fromMm());
        Found<Spot> to = trough.spot(index, id, "the right edge of zone " + id, recorded.toMm());
        Found.both(from, to, (left, right) -> new Zone(id, left, right))
                .either(
                        zone ->
                                joints.then(all -> count(zone, all))
                                        .either(count -> known(zone, count), why -> gap(id, why)),
                        why -> gap(id, why));
    }

    private void gap(String zone, String why) {
        answers.gap(Facts.JointsInZone.class, why, trough.id(), zone);
    }

    /**
     * @param between by their stations
     * @param atEdge outside by its station, but not by more than its expanded uncertainty
     */
    private record Count(int between, int atEdge) {}

    private Found<Count> count(Zone zone, List<Spot> joints) {
        if (joints.isEmpty()) {
            return Found.of(new Count(0, 0));
        }
        // All stations of a straight are read with one instrument: one stands for all.
        Uncertain any = zone.from().station().minus(joints.get(0).station());
        if (!any.isStated()) {
            return Found.missing(any.unstated().first() + ", so how near joints are is not known");
        }
        int first = Nearest.firstBeyond(zone.from().stationMm(), joints);
        int beyond = Nearest.firstBeyond(zone.to().stationMm(), joints);
        int atEdge = 0;
        for (int i = first - 1; i >= 0 && atEdge(joints.get(i), zone.from()); i--) {
            atEdge++;
        }
        for (int i = beyond; i < joints.size() && atEdge(joints.get(i), zone.to()); i++) {
            atEdge++;
        }
        return Found.of(new Count(Math.max(0, beyond - first), atEdge));
    }

    private static boolean atEdge(Spot joint, Spot edge) {
        Uncertain apart = Trough.apart(joint, edge);
        return apart.value() <= apart.expandedUncertainty();
    }

    private void known(Zone zone, Count count) {
        int joints = count.between() + count.atEdge();
        answers.on(straight.id(), zone.from().stationMm(), zone.to().stationMm())
                .known(
                        new Facts.JointsInZone(trough.id(), zone.id(), joints),
                        Uncertain.exact(joints),
                        trough.working(zone.from()),
                        trough.working(zone.to()),
                        Answers.working(
                                "joints between",
                                Uncertain.exact(count.between()),
                                Unit.COUNT,
                                "by their stations"),
                        Answers.working(
                                "joints at the edge",
                                Uncertain.exact(count.atEdge()),
                                Unit.COUNT,
                                "no farther from it than their expanded uncertainty: counted as"
                                        + " inside"));
    }
}
