package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.job.Run.Joint;
import eavesproof.job.Run.Straight;
import eavesproof.job.Said;
import eavesproof.job.WayPart;
import eavesproof.job.WayPart.Outlet;
import eavesproof.job.Words;
import eavesproof.judge.Demanded;
import eavesproof.judge.Ruling;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Room to move: expansion joints where a length has too few, outlets that must slide. */
final class MovementProposals {
    /** Our choice: a joint so near to the edge of a zone may lie in it, for all a tape can say. */
    private static final double NEAR_MM = 10;

    private MovementProposals() {}

    /** Too few breaks on a straight: each new one halves the longest piece. */
    static List<Proposal> breaks(Case here, List<Ruling> group) {
        Straight straight = Parts.straight(here.job(), Case.straight(group.get(0))).orElse(null);
        Double length = straight == null ? null : straight.lengthMm();
        int missing = 0;
        for (Ruling ruling : group) {
            if (ruling.demanded() instanceof Demanded.AtLeast least) {
                double more = StrictMath.ceil(least.limit() - Case.measured(ruling));
                missing = Math.max(missing, (int) more);
            }
        }
        if (straight == null || length == null || missing < 1 || missing > 100) {
            return List.of();
        }
        List<Double> cuts = new ArrayList<>(List.of(0.0, length));
        Parts.of(straight.joints()).stream()
                .filter(it -> Words.EXPANSION.equals(it.kind()))
                .forEach(it -> Optional.ofNullable(it.stationMm()).ifPresent(cuts::add));
        Parts.outletsOn(here.job(), straight.id()).stream()
                .filter(it -> Words.SLIDING.equals(it.hold()))
                .filter(it -> Words.NO.equals(it.cementedToGutter().is()))
                .forEach(it -> Optional.ofNullable(it.stationMm()).ifPresent(cuts::add));
        List<Along.Spot> spots = new ArrayList<>();
        for (Piece piece : pieces(cuts, missing)) {
            for (int i = 1; i <= piece.parts() - 1; i++) {
                double at = piece.from() + (piece.to() - piece.from()) * i / piece.parts();
                spots.add(new Along.Spot(straight, at));
            }
        }
        return joints(here, Case.run(group.get(0)), spots);
    }

    private record Piece(double from, double to, int parts) {
        double each() {
            return (to - from) / parts;
        }
    }

    private static List<Piece> pieces(List<Double> cuts, int more) {
        Collections.sort(cuts);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 1; i < cuts.size(); i++) {
            pieces.add(new Piece(cuts.get(i - 1), cuts.get(i), 1));
        }
        for (int n = 0; n < more; n++) {
            int longest = 0;
            for (int i = 1; i < pieces.size(); i++) {
                longest = pieces.get(i).each() > pieces.get(longest).each() ? i : longest;
            }
            Piece it = pieces.get(longest);
            pieces.set(longest, new Piece(it.from(), it.to(), it.parts() + 1));
        }
        return pieces;
    }

    /** Too long between two breaks: as few expansion joints as it takes, evenly spaced. */
    static List<Proposal> freeLength(Case here, List<Ruling> group) {
        Ruling first = group.get(0);
        Along along = Along.of(here.job(), Case.run(first)).orElse(null);
        if (along == null) {
            return List.of();
        }
        OptionalDouble from = along.named(here.job(), Case.key(first, "from"));
        OptionalDouble to = along.named(here.job(), Case.key(first, "to"));
        double atMost = Double.POSITIVE_INFINITY;
        for (Ruling ruling : group) {
            if (ruling.demanded() instanceof Demanded.AtMost most) {
                atMost = Math.min(atMost, most.limit() - Case.kept(ruling));
            }
        }
        if (from.isEmpty() || to.isEmpty() || !(atMost > 0)) {
            return List.of();
        }
        double length = to.getAsDouble() - from.getAsDouble();
        int fewest = (int) StrictMath.ceil(length / atMost);
        List<Proposal> proposals = new ArrayList<>();
        // One more than the fewest, for where the places of these are taken.
        for (int parts = fewest; parts <= fewest + 1 && parts <= 100; parts++) {
            List<Along.Spot> spots = new ArrayList<>();
            for (int i = 1; i < parts; i++) {
                spots.add(along.at(from.getAsDouble() + length * i / parts));
            }
            proposals.addAll(joints(here, Case.run(first), spots));
        }
        return proposals;
    }

    /**
     * Each at the free place nearest to its spot. First without a word on how far they are set
     * open; where a rule asks that, closed, so that the check says what each has to take up.
     */
    private static List<Proposal> joints(Case here, String run, List<Along.Spot> spots) {
        List<Proposal> proposals = new ArrayList<>(joints(here, run, spots, null));
        proposals.addAll(joints(here, run, spots, 0.0));
        return proposals;
    }

    private static List<Proposal> joints(
            Case here, String run, List<Along.Spot> spots, @Nullable Double setMm) {
        Job job = here.job();
        List<String> words = new ArrayList<>();
        for (Along.Spot spot : spots) {
            Straight straight = spot.straight();
            double length = Optional.ofNullable(straight.lengthMm()).orElse(spot.stationMm());
            OptionalDouble at =
                    Room.forJoint(here, run, straight, "")
                            .nearest(spot.stationMm(), Room.HALF_MM, length - Room.HALF_MM);
            if (at.isEmpty()) {
                return List.of();
            }
            words.add("at " + Grid.mm(at.getAsDouble()) + " on straight " + straight.id());
            Joint joint =
                    new Joint(
                            Parts.newId(job),
                            Words.EXPANSION,
                            at.getAsDouble(),
                            null,
                            null,
                            setMm,
                            setMm,
                            Words.NO,
                            null);
            job = Edits.addJoint(job, straight.id(), joint);
        }
        String what = words.size() == 1 ? "put in an expansion joint " : "put in expansion joints ";
        return words.isEmpty() ? List.of() : List.of(new Proposal(what + Grid.listed(words), job));
    }

    /** A sliding outlet that is cemented to the gutter. */
    static List<Proposal> cemented(Case here, List<Ruling> group) {
        String id = Case.key(group.get(0), "outlet");
        return List.of(
                new Proposal(
                        "replace outlet "
                                + id
                                + ", or cut it free, so that it is not cemented to"
                                + " the gutter and slides",
                        Edits.way(here.job(), id, it -> said(it, "cementedToGutter", Words.NO))));
    }

    /** A sliding outlet that was not set for the day. */
    static List<Proposal> set(Case here, List<Ruling> group) {
        String id = Case.key(group.get(0), "outlet");
        String run = Case.run(group.get(0));
        Double gap = RoomProposals.gapOf(here, run, id).orElse(null);
        String to =
                gap == null
                        ? ""
                        : ": a gap of at least " + Grid.mm(gap) + RoomProposals.at(here, run);
        return List.of(
                new Proposal(
                        "set outlet "
                                + id
                                + " again for the temperature of the gutter, so that it"
                                + " has room both ways"
                                + to,
                        Edits.way(here.job(), id, it -> said(it, "setForTemperature", Words.YES))));
    }

    private static WayPart said(WayPart part, String what, String word) {
        Said<String> said = new Said<>(word, "seen", null, null);
        return part instanceof Outlet outlet ? Edits.with(outlet, what, said) : part;
    }

    /** Joints where there may be none: each to the nearest free place outside. */
    static List<Proposal> jointsInZone(Case here, List<Ruling> group) {
        String run = Case.run(group.get(0));
        String zoneId = Case.key(group.get(0), "zone");
        Straight straight = Parts.straight(here.job(), Case.straight(group.get(0))).orElse(null);
        Double length = straight == null ? null : straight.lengthMm();
        if (straight == null || length == null) {
            return List.of();
        }
        Job job = here.job();
        List<String> words = new ArrayList<>();
        for (Joint joint : Parts.of(straight.joints())) {
            Double at = joint.stationMm();
            boolean inside =
                    at != null
                            && Parts.of(straight.keepClear()).stream()
                                    .filter(it -> it.id().equals(zoneId))
                                    .anyMatch(it -> holds(it.fromMm(), at, it.toMm()));
            if (at == null || !inside) {
                continue;
            }
            Straight now = Parts.straight(job, straight.id()).orElse(straight);
            OptionalDouble to =
                    Room.forJoint(new Case(job, here.checked()), run, now, joint.id())
                            .nearest(at, 0, length);
            if (to.isEmpty()) {
                return List.of();
            }
            words.add("joint " + joint.id() + " to " + Grid.mm(to.getAsDouble()));
            job = Edits.moveJoint(job, straight.id(), joint.id(), to.getAsDouble());
        }
        return words.isEmpty()
                ? List.of()
                : List.of(
                        new Proposal(
                                "move "
                                        + Grid.listed(words)
                                        + " on straight "
                                        + straight.id()
                                        + ", clear of "
                                        + zoneId,
                                job));
    }

    /** Those that may be inside by how sure their stations are, too. */
    private static boolean holds(@Nullable Double from, double at, @Nullable Double to) {
        return from != null && to != null && at > from - NEAR_MM && at < to + NEAR_MM;
    }
}
