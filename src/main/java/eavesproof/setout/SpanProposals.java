package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.job.Run.Straight;
import eavesproof.judge.Ruling;
import eavesproof.survey.Facts;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Supports of one straight that are too far apart: move one bracket where that alone serves, else
 * add as few as it takes.
 */
final class SpanProposals {
    private final Case here;
    private final String run;
    private final Straight straight;
    private final Room room;
    private final double atMostMm;
    private final List<Support> supports;

    private SpanProposals(Case here, String run, Straight straight) {
        this.here = here;
        this.run = run;
        this.straight = straight;
        room = Room.forBracket(here, run, straight);
        atMostMm = Grid.down(here.limits(Facts.BracketSpacing.class, run).atMost());
        supports = Support.of(here.job(), straight);
    }

    static List<Proposal> of(Case here, List<Ruling> group) {
        Ruling first = group.get(0);
        return Parts.straight(here.job(), Case.straight(first))
                .map(it -> new SpanProposals(here, Case.run(first), it).of(wide(group)))
                .orElse(List.of());
    }

    /** The left supports of the spans that are too wide. */
    private static Set<String> wide(List<Ruling> group) {
        Set<String> from = new LinkedHashSet<>();
        group.forEach(it -> from.add(Case.key(it, "from")));
        return from;
    }

    private List<Proposal> of(Set<String> wide) {
        List<Proposal> proposals = new ArrayList<>();
        propose(wide, true, proposals);
        propose(wide, false, proposals);
        return proposals;
    }

    private void propose(Set<String> wide, boolean moving, List<Proposal> proposals) {
        List<Support> now = new ArrayList<>(supports);
        List<String> moves = new ArrayList<>();
        List<Double> added = new ArrayList<>();
        Job job = here.job();
        for (int i = 0; i + 1 < now.size(); i++) {
            double gap = now.get(i + 1).stationMm() - now.get(i).stationMm();
            if (!wide.contains(now.get(i).id()) || gap <= atMostMm) {
                continue;
            }
            int moved = moving ? move(now, i) : -1;
            if (moved >= 0) {
                Support to = now.get(moved);
                moves.add("move bracket " + to.id() + " to " + Grid.mm(to.stationMm()));
                job = Edits.moveBracket(job, straight.id(), to.id(), to.stationMm());
                continue;
            }
            List<Double> between =
                    room.between(now.get(i).stationMm(), now.get(i + 1).stationMm(), atMostMm);
            if (between.isEmpty()) {
                return;
            }
            added.addAll(between);
        }
        if (moving == moves.isEmpty()) {
            return;
        }
        String words =
                Grid.listed(moves) + (moves.isEmpty() ? "" : " on straight " + straight.id());
        Proposal proposal = new Proposal(words, job);
        if (!added.isEmpty()) {
            Proposal more = NewBracket.at(new Case(job, here.checked()), run, straight.id(), added);
            proposal = moves.isEmpty() ? more : proposal.and(more);
        }
        proposals.add(proposal);
    }

    /** Moves the bracket on one side of a span so that this and the next one serve; else -1. */
    private int move(List<Support> now, int left) {
        int right = left + 1;
        double toRight = Grid.up(now.get(right).stationMm() - atMostMm);
        double toLeft = Grid.down(now.get(left).stationMm() + atMostMm);
        boolean canRight =
                left > 0
                        && now.get(left).isBracket()
                        && toRight - now.get(left - 1).stationMm() <= atMostMm
                        && room.free(toRight);
        boolean canLeft =
                right + 1 < now.size()
                        && now.get(right).isBracket()
                        && now.get(right + 1).stationMm() - toLeft <= atMostMm
                        && room.free(toLeft);
        if (!canRight && !canLeft) {
            return -1;
        }
        int which = canRight ? left : right;
        Support one = now.get(which);
        now.set(which, new Support(one.id(), which == left ? toRight : toLeft, true));
        return which;
    }
}
