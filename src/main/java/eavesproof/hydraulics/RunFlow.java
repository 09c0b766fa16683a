package eavesproof.hydraulics;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * How the water of a run parts between its outlets, and the surface that it takes.
 *
 * <p>Each outlet stands as deep as it must to take what comes from its two sides. Between two
 * outlets the water parts where the surfaces that lead to the one and to the other meet: at a high
 * point of the bed if that stays dry, elsewhere if it drowns. What an outlet cannot take passes it;
 * it is taken to lose its momentum there, so that the depth is overstated.
 */
public final class RunFlow {
    /** Shares are found to within this part of all that flows in. */
    private static final double FINE = 1e-7;

    private static final int ENOUGH = 200;
    private static final int MOST_SWEEPS = 200;

    private final GutterRun run;
    private final Channel channel;

    /** From the left end to the first outlet, from each outlet to the next, to the right end. */
    private final List<Segment> stretches = new ArrayList<>();

    private final List<Segment> mirrored = new ArrayList<>();

    /** Of what flows into each stretch, how much goes to its left end. */
    private final double[] share;

    private RunFlow(GutterRun run, int steps) {
        this.run = run;
        this.channel = run.channel();
        Soles soles = new Soles(run.soles());
        double step = run.length() / steps;
        double from = 0;
        for (int i = 0; i <= outlets(); i++) {
            double to = i == outlets() ? run.length() : run.outlets().get(i).x();
            double begin = from;
            Segment stretch =
                    Segment.of(
                            soles,
                            from,
                            to,
                            run.perMetre(),
                            run.inflows().stream()
                                    .filter(it -> it.x() > begin || begin == 0)
                                    .filter(it -> it.x() <= to)
                                    .toList(),
                            run.corners(),
                            step);
            stretches.add(stretch);
            mirrored.add(stretch.mirrored());
            from = to;
        }
        share = new double[stretches.size()];
    }

    /**
     * @param steps least number of steps along the whole run
     * @throws Refused if no parting of the water between the outlets was found
     */
    public static RunSurface solve(GutterRun run, int steps) {
        return of(run, steps).surface();
    }

    static RunFlow of(GutterRun run, int steps) {
        RunFlow flow = new RunFlow(run, steps);
        flow.part();
        return flow;
    }

    private int outlets() {
        return run.outlets().size();
    }

    /** Settles what goes which way, one pair of outlets after the other, until nothing changes. */
    private void part() {
        int last = outlets();
        share[last] = stretches.get(last).total();
        for (int i = 1; i < last; i++) {
            share[i] = stretches.get(i).total() / 2;
        }
        double fine = FINE * run.inflow();
        for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
            double moved = 0;
            for (int i = 1; i < last; i++) {
                double before = share[i];
                share[i] = settled(i, fine);
                moved = Math.max(moved, Math.abs(share[i] - before));
            }
            if (last <= 2 || moved <= 2 * fine) {
                return;
            }
        }
        throw new Refused("how the water parts between " + last + " outlets was not found");
    }

    private double settled(int i, double fine) {
        double least = share[i - 1] - stretches.get(i - 1).total();
        double most = stretches.get(i).total() + share[i + 1];
        UnivariateFunction step = it -> levelFromLeft(i, it) - levelFromRight(i, it);
        if (most - least <= fine || step.value(least) >= 0) {
            return least;
        }
        if (step.value(most) <= 0) {
            return most;
        }
        return new BracketingNthOrderBrentSolver(0, fine, 0, 5).solve(ENOUGH, step, least, most);
    }

    /** What outlet i takes, counted from 0. */
    private double taken(int i) {
        return Math.max(0, stretches.get(i).total() - share[i] + share[i + 1]);
    }

    private double depthAt(int outlet, double taken) {
        return run.outlets().get(outlet).outlet().depthFor(Math.max(0, taken));
    }

    /** Where stretch i parts, the level of the water that goes to its left end. */
    private double levelFromLeft(int i, double left) {
        double taken = stretches.get(i - 1).total() - share[i - 1] + left;
        double depth = depthAt(i - 1, taken);
        return left <= 0
                ? stretches.get(i).bedAtLeft() + depth
                : toTheLeft(i, left, depth).levelAtHighEnd();
    }

    private double levelFromRight(int i, double left) {
        Segment stretch = stretches.get(i);
        double depth = depthAt(i, stretch.total() - left + share[i + 1]);
        return left >= stretch.total()
                ? stretch.bedAtRight() + depth
                : toTheRight(i, left, depth).levelAtHighEnd();
    }

    private SteadyFlow toTheRight(int i, double left, double depth) {
        return SteadyFlow.solve(channel, stretches.get(i).toTheRight(left), depth);
    }

    private SteadyFlow toTheLeft(int i, double left, double depth) {
        Segment seen = mirrored.get(i);
        return SteadyFlow.solve(channel, seen.toTheRight(seen.total() - left), depth);
    }

    RunSurface surface() {
        List<WaterSurface.At> points = new ArrayList<>();
        double[] begins = new double[outlets()];
        double[] ends = new double[outlets()];
        for (int i = 0; i < outlets(); i++) {
            begins[i] = run.outlets().get(i).x();
            ends[i] = begins[i];
        }
        for (int i = 0; i <= outlets(); i++) {
            if (i > 0 && share[i] >= 0) {
                List<WaterSurface.At> seen =
                        toTheLeft(i, share[i], depthAt(i - 1, taken(i - 1))).surface().points();
                for (int k = seen.size() - 1; k >= 0; k--) {
                    points.add(seen.get(k).mirrored());
                }
                ends[i - 1] = points.get(points.size() - 1).x();
            }
            if (i < outlets() && share[i] <= stretches.get(i).total()) {
                List<WaterSurface.At> seen =
                        toTheRight(i, share[i], depthAt(i, taken(i))).surface().points();
                points.addAll(seen);
                begins[i] = seen.get(0).x();
            }
        }
        List<RunSurface.Taken> takes = new ArrayList<>();
        for (int i = 0; i < outlets(); i++) {
            takes.add(
                    new RunSurface.Taken(
                            run.outlets().get(i),
                            taken(i),
                            stretches.get(i).total() - share[i],
                            share[i + 1],
                            begins[i],
                            ends[i],
                            depthAt(i, taken(i))));
        }
        return new RunSurface(run, new WaterSurface(points), takes);
    }
}
