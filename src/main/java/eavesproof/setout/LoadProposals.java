package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.job.Run.Straight;
import eavesproof.judge.Demanded;
import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.Answer;
import eavesproof.survey.Facts;
import eavesproof.survey.Vocabulary;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Brackets of one straight that carry more than they can: as many more as it takes, first in the
 * wider of the two spans beside each, then in both.
 *
 * <p>The load goes with the length of gutter that hangs on a bracket, so that what one can carry is
 * a length too. No span wider than that, and no bracket between two such bears more. One at an end
 * bears (l + a)² / 2l of its span l and its overhang a: solved for l.
 */
final class LoadProposals {
    /** Our choice: where an end hangs out too far, a new bracket is about so near to it. */
    private static final double FROM_END_MM = 50;

    /** Our choice: brackets closer together than this are no remedy; stronger ones are. */
    private static final double CLOSEST_MM = 100;

    private final Case here;
    private final String run;
    private final Straight straight;
    private final Room room;
    private final List<Support> supports;

    /** What may hang on one bracket, mm of gutter. */
    private final double mostMm;

    private LoadProposals(Case here, String run, Straight straight) {
        this.here = here;
        this.run = run;
        this.straight = straight;
        room = Room.forBracket(here, run, straight);
        supports = Support.of(here.job(), straight);
        mostMm = Grid.down(mostMm());
    }

    static List<Proposal> of(Case here, List<Ruling> group) {
        Ruling first = group.get(0);
        Set<String> laden = new LinkedHashSet<>();
        group.forEach(it -> laden.add(Case.key(it, "bracket")));
        return Parts.straight(here.job(), Case.straight(first))
                .map(it -> new LoadProposals(here, Case.run(first), it).of(laden, first))
                .orElse(List.of());
    }

    static boolean isLoad(Ruling ruling) {
        Class<?> kind = ruling.subject().kind().type();
        return kind == Facts.BracketLoad.class || kind == Facts.BracketSnowLoad.class;
    }

    /** By every rule on the loads of this straight, so that one change serves them all. */
    private double mostMm() {
        double most = Double.POSITIVE_INFINITY;
        Map<String, Double> shares = shares();
        for (Ruling ruling : here.rulings()) {
            if (isLoad(ruling)
                    && ruling.verdict() != Verdict.NOT_APPLICABLE
                    && Case.straight(ruling).equals(straight.id())
                    && ruling.demanded() instanceof Demanded.AtMost limit) {
                double length = shares.getOrDefault(Case.key(ruling, "bracket"), Double.NaN);
                double bears = limit.limit() - Case.kept(ruling);
                double mm = length * bears / Case.measured(ruling);
                most = mm < most ? mm : most;
            }
        }
        return most;
    }

    /** How much gutter hangs on each bracket of the run, mm. */
    private Map<String, Double> shares() {
        Map<String, Double> shares = new HashMap<>();
        for (Answer answer :
                here.checked().survey().of(Vocabulary.kind(Facts.BracketShare.class))) {
            if (answer instanceof Answer.Known known
                    && known.fact() instanceof Facts.BracketShare share
                    && share.run().equals(run)) {
                shares.put(share.bracket(), share.lengthMm());
            }
        }
        return shares;
    }

    private List<Proposal> of(Set<String> laden, Ruling first) {
        if (!(mostMm >= CLOSEST_MM) || mostMm == Double.POSITIVE_INFINITY || supports.size() < 2) {
            return List.of();
        }
        List<Proposal> proposals = new ArrayList<>();
        for (boolean both : new boolean[] {false, true}) {
            List<Double> added = added(laden, both);
            if (!added.isEmpty()) {
                proposals.add(proposal(added, first));
            }
        }
        return proposals;
    }

    private Proposal proposal(List<Double> added, Ruling first) {
        Proposal more = NewBracket.at(here, run, straight.id(), added);
        Job edited = more.edited();
        String carries =
                first.demanded() instanceof Demanded.AtMost limit
                        ? ", so that none has to carry more than "
                                + Decimals.with(limit.limit(), Unit.NEWTON)
                        : "";
        return new Proposal(more.words() + carries, edited);
    }

    /** Where brackets are added; none if there is no room for them. */
    private List<Double> added(Set<String> laden, boolean both) {
        List<Double> added = new ArrayList<>();
        Double length = straight.lengthMm();
        int last = supports.size() - 1;
        double left = supports.get(0).stationMm();
        double right = length == null ? 0 : length - supports.get(last).stationMm();
        boolean atLeft = laden.contains(supports.get(0).id()) && left > mostMm / 2;
        boolean atRight = laden.contains(supports.get(last).id()) && right > mostMm / 2;
        Set<Integer> spans = spans(laden, both);
        if (atLeft && !end(0, left, added)) {
            return List.of();
        }
        for (int i : spans) {
            double widest = mostMm;
            widest = i == 0 && !atLeft ? Math.min(widest, endSpan(left)) : widest;
            widest = i == last - 1 && !atRight ? Math.min(widest, endSpan(right)) : widest;
            double from = supports.get(i).stationMm();
            double to = supports.get(i + 1).stationMm();
            List<Double> between = to - from > widest ? room.between(from, to, widest) : List.of();
            if (to - from > widest && between.isEmpty()) {
                return List.of();
            }
            added.addAll(between);
        }
        boolean placed = !atRight || length == null || end(length, length - right, added);
        return placed ? added : List.of();
    }

    /** The spans to be filled, each by the number of its left support. */
    private Set<Integer> spans(Set<String> laden, boolean both) {
        Set<Integer> spans = new LinkedHashSet<>();
        for (int i = 0; i < supports.size(); i++) {
            boolean relieved = !both && spans.contains(i - 1);
            if (laden.contains(supports.get(i).id()) && !relieved) {
                boolean rightIsWider = wide(i) >= wide(i - 1);
                if (i > 0 && (both || !rightIsWider)) {
                    spans.add(i - 1);
                }
                if (i < supports.size() - 1 && (both || rightIsWider)) {
                    spans.add(i);
                }
            }
        }
        return spans;
    }

    private double wide(int i) {
        return i < 0 || i + 1 >= supports.size()
                ? 0
                : supports.get(i + 1).stationMm() - supports.get(i).stationMm();
    }

    /** The widest span of a bracket at an end that hangs out so far. */
    private double endSpan(double overhang) {
        double rest = mostMm - overhang;
        return rest + StrictMath.sqrt(Math.max(0, rest * rest - overhang * overhang));
    }

    /** A bracket near an end, and what it takes between it and the one that was outermost. */
    private boolean end(double end, double outermost, List<Double> added) {
        double wanted = Math.min(FROM_END_MM, Grid.down(mostMm / 2));
        double at = end == 0 ? wanted : end - wanted;
        double from = Math.min(end, outermost);
        double to = Math.max(end, outermost);
        double station = room.nearest(at, from, to).orElse(Double.NaN);
        double overhang = Math.abs(end - station);
        double span = Math.abs(outermost - station);
        if (!(overhang <= mostMm / 2)) {
            return false;
        }
        added.add(station);
        double widest = Math.min(mostMm, endSpan(overhang));
        List<Double> between =
                span > widest
                        ? room.between(
                                Math.min(station, outermost), Math.max(station, outermost), widest)
                        : List.of();
        added.addAll(between);
        return span <= widest || !between.isEmpty();
    }
}
