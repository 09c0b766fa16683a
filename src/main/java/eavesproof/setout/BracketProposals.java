package eavesproof.setout;

import eavesproof.job.Run.Joint;
import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart.Outlet;
import eavesproof.judge.Ruling;
import eavesproof.survey.Facts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Brackets beside joints and outlets, and too few of them. */
final class BracketProposals {
    private BracketProposals() {}

    /** A joint that no support is near: add a bracket beside it. */
    static List<Proposal> nearJoint(Case here, List<Ruling> group) {
        Ruling first = group.get(0);
        String run = Case.run(first);
        Straight straight = Parts.straight(here.job(), Case.straight(first)).orElse(null);
        if (straight == null) {
            return List.of();
        }
        double atMost = Grid.down(here.limits(Facts.JointSupport.class, run).atMost());
        Room room = Room.forBracket(here, run, straight);
        List<Double> stations = new ArrayList<>();
        for (Ruling ruling : group) {
            String id = Case.key(ruling, "joint");
            Joint joint = Parts.first(straight.joints(), it -> it.id().equals(id)).orElse(null);
            Double at = joint == null ? null : joint.stationMm();
            if (at == null) {
                return List.of();
            }
            OptionalDouble beside = room.nearest(at + atMost / 2, at - atMost, at + atMost);
            if (beside.isEmpty()) {
                return List.of();
            }
            stations.add(beside.getAsDouble());
        }
        return stations.isEmpty()
                ? List.of()
                : List.of(
                        NewBracket.at(
                                here, run, straight.id(), stations.stream().distinct().toList()));
    }

    /** A bracket too near an outlet: move it away. */
    static List<Proposal> clearOfOutlet(Case here, List<Ruling> group) {
        Ruling first = group.get(0);
        String id = Case.key(first, "bracket");
        Straight straight = Parts.straight(here.job(), Case.straight(first)).orElse(null);
        Outlet outlet = Parts.outlet(here.job(), Case.key(first, "outlet")).orElse(null);
        Double at = outlet == null ? null : outlet.stationMm();
        Double body = outlet == null ? null : outlet.bodyMm();
        if (straight == null || at == null || body == null) {
            return List.of();
        }
        double clear = here.limits(Facts.OutletClearance.class, Case.run(first)).atLeast();
        double to = body / 2 + clear;
        Room room = Room.forBracket(here, Case.run(first), straight);
        double stands =
                Parts.first(straight.brackets(), it -> it.id().equals(id))
                        .flatMap(it -> Optional.ofNullable(it.stationMm()))
                        .orElse(at);
        List<Double> places = new ArrayList<>(List.of(Grid.down(at - to), Grid.up(at + to)));
        places.sort(Comparator.comparingDouble(it -> Math.abs(it - stands)));
        return places.stream()
                .filter(room::free)
                .map(
                        station ->
                                new Proposal(
                                        "move bracket "
                                                + id
                                                + " to "
                                                + Grid.mm(station)
                                                + " on straight "
                                                + straight.id()
                                                + ", clear of outlet "
                                                + Case.key(first, "outlet"),
                                        Edits.moveBracket(here.job(), straight.id(), id, station)))
                .toList();
    }

    /** Too few supports: one near each end that has none, and between them as many as it takes. */
    static List<Proposal> more(Case here, List<Ruling> group) {
        Ruling first = group.get(0);
        String run = Case.run(first);
        Straight straight = Parts.straight(here.job(), Case.straight(first)).orElse(null);
        Double length = straight == null ? null : straight.lengthMm();
        if (straight == null || length == null) {
            return List.of();
        }
        double needed = here.limits(Facts.SupportCount.class, run).atLeast();
        Room room = Room.forBracket(here, run, straight);
        List<Support> there = Support.of(here.job(), straight);
        List<Double> stations = new ArrayList<>();
        for (boolean left : new boolean[] {true, false}) {
            double from = left ? 0 : length / 2;
            double to = left ? length / 2 : length;
            boolean held =
                    there.stream().anyMatch(it -> it.stationMm() >= from && it.stationMm() <= to);
            double wanted =
                    EndProposals.place(here, run, straight, left)
                            .orElse(left ? from + 50 : to - 50);
            if (!held || there.size() + stations.size() < needed) {
                room.nearest(wanted, from, to).ifPresent(stations::add);
            }
        }
        return stations.isEmpty()
                ? List.of()
                : List.of(NewBracket.at(here, run, straight.id(), stations));
    }
}
