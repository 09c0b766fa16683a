package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.job.Run.Joint;
import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart.Outlet;
import eavesproof.judge.Demanded;
import eavesproof.judge.Ruling;
import eavesproof.survey.Facts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Brackets beside joints and outlets, too few of them, and how they are fixed. */
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

    /** Screw holes left empty. */
    static List<Proposal> screws(Case here, List<Ruling> group) {
        Job job = here.job();
        List<String> words = new ArrayList<>();
        for (Ruling ruling : group) {
            String id = Case.key(ruling, "bracket");
            double most = ruling.demanded() instanceof Demanded.AtMost it ? it.limit() : 0;
            int missing = (int) StrictMath.ceil(Case.measured(ruling) - most);
            words.add(missing + " more in bracket " + id);
            job =
                    Edits.bracket(
                            job,
                            Case.straight(ruling),
                            id,
                            it -> {
                                Integer fitted = it.screwsFitted();
                                return Edits.with(
                                        it,
                                        "screwsFitted",
                                        (fitted == null ? 0 : fitted) + missing);
                            });
        }
        return List.of(new Proposal("fit screws: " + Grid.listed(words), job));
    }

    /** Screws that do not sit deep enough: longer ones. */
    static List<Proposal> bite(Case here, List<Ruling> group) {
        double longer = 0;
        for (Ruling ruling : group) {
            if (ruling.demanded() instanceof Demanded.AtLeast least) {
                double more = least.limit() + Case.kept(ruling) - Case.measured(ruling);
                longer = Math.max(longer, StrictMath.ceil(more));
            }
        }
        Job job = here.job();
        List<String> ids = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        for (Ruling ruling : group) {
            String id = Case.key(ruling, "bracket");
            double bite = Case.measured(ruling) + longer;
            ids.add(id);
            least = Math.min(least, bite);
            job =
                    Edits.bracket(
                            job, Case.straight(ruling), id, it -> Edits.with(it, "biteMm", bite));
        }
        if (!(longer > 0)) {
            return List.of();
        }
        return List.of(
                new Proposal(
                        "replace the screws of "
                                + (ids.size() == 1 ? "bracket " : "brackets ")
                                + Grid.listed(ids)
                                + " with ones "
                                + Grid.mm(longer)
                                + " longer, so that they sit at least "
                                + Grid.mm(least)
                                + " deep in sound timber",
                        job));
    }

    static List<Proposal> screwMetal(Case here, List<Ruling> group) {
        Job job = here.job();
        if (!(group.get(0).demanded() instanceof Demanded.OneOf allowed)) {
            return List.of();
        }
        String metal = allowed.words().get(0);
        List<String> ids = new ArrayList<>();
        for (Ruling ruling : group) {
            String id = Case.key(ruling, "bracket");
            ids.add(id);
            job =
                    Edits.bracket(
                            job,
                            Case.straight(ruling),
                            id,
                            it -> Edits.with(it, "screwMetal", metal));
        }
        String which = ids.size() == 1 ? "bracket " : "brackets ";
        return List.of(
                new Proposal(
                        "replace the screws of " + which + Grid.listed(ids) + " with " + metal,
                        job));
    }
}
