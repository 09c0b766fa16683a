package eavesproof.survey;

import eavesproof.job.Run;
import eavesproof.job.Run.Overflow;
import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the slots, weirs, nozzles and rainheads of a run let out while its outlets are blocked, by
 * the figures that the rule set has for each kind of them. A figure holds for a measure that is as
 * large and lies as low as the rule set says; one that is not counts for nothing.
 *
 * <p>Those that go along the gutter let water out at one height, so that of several kinds only the
 * one that lets out most is counted.
 */
final class Overflows {
    private static final double MM_PER_M = 1000;

    private final Run run;
    private final double lengthMm;
    private final Basis basis;
    private final List<Working> workings = new ArrayList<>();
    private final Map<String, Double> alongLs = new LinkedHashMap<>();
    private final Map<String, Double> alongMm = new LinkedHashMap<>();
    private double singleLs;

    private Overflows(Run run, double lengthMm, Basis basis) {
        this.run = run;
        this.lengthMm = lengthMm;
        this.basis = basis;
    }

    /**
     * @param allLs what all of them let out, L/s
     * @param eachMetreLs the same for each metre of the run
     */
    record Capacity(double allLs, double eachMetreLs, List<Working> workings) {}

    /**
     * @param lengthMm of the run
     */
    static Found<Capacity> of(Run run, Found<Double> lengthMm, Basis basis) {
        return Found.by(
                () -> {
                    List<Overflow> recorded = recorded(run);
                    return new Overflows(run, lengthMm.need(), basis).capacity(recorded);
                });
    }

    private static List<Overflow> recorded(Run run) throws Lacking {
        Run.EavesSection eaves = run.eavesSection();
        List<Overflow> overflows = eaves == null ? null : eaves.overflows();
        List<String> named = eaves == null ? null : eaves.overflowProvisions();
        return overflows == null && named != null && named.isEmpty()
                ? List.of()
                : Found.need(
                        overflows, "how large the overflow measures of run " + run.id() + " are,");
    }

    private Capacity capacity(List<Overflow> overflows) throws Lacking {
        for (Overflow one : overflows) {
            String name = "overflow measure " + one.id();
            String kind = Found.need(one.kind(), "the kind of " + name);
            Basis.Amount lets = basis.of(BasisKey.OVERFLOW_L_S, kind).need();
            Optional<String> doubt = doubt(one, kind, name);
            if (doubt.isPresent()) {
                workings.add(new Working(name + ", " + kind, "not counted", doubt.get()));
            } else if (Words.ALONG_THE_GUTTER.contains(kind)) {
                along(one, kind, name, lets);
            } else {
                singleLs += lets.value();
                workings.add(GutterWater.flow(name + ", " + kind, lets.value(), lets.source()));
            }
        }
        double along = alongLs.values().stream().mapToDouble(it -> it).max().orElse(0);
        if (overflows.isEmpty()) {
            workings.add(new Working("overflow measures", "none", "as recorded"));
        }
        if (alongLs.size() > 1) {
            workings.add(
                    GutterWater.flow(
                            "of those along the gutter",
                            along,
                            "the kind that lets out most, our choice"));
        }
        double all = singleLs + along;
        return new Capacity(all, all / lengthMm * MM_PER_M, List.copyOf(workings));
    }

    private void along(Overflow one, String kind, String name, Basis.Amount lets) throws Lacking {
        double mm = Found.need(one.lengthMm(), "along what length of gutter " + name + " goes,");
        double all = alongMm.merge(kind, mm, Double::sum);
        if (all > lengthMm * (1 + 1e-9)) {
            throw Found.lacking(
                    kind
                            + " are recorded along "
                            + Decimals.with(all, Unit.MM)
                            + " of run "
                            + run.id()
                            + ", which is "
                            + Decimals.with(lengthMm, Unit.MM)
                            + " long");
        }
        double litres = lets.value() * mm / MM_PER_M;
        alongLs.merge(kind, litres, Double::sum);
        workings.add(
                GutterWater.flow(
                        name + ", " + kind,
                        litres,
                        Decimals.plain(lets.value(), 2)
                                + " L/s x "
                                + Decimals.plain(mm / MM_PER_M, 3)
                                + " m; "
                                + lets.source()));
    }

    /** Why the figure of its kind does not hold for a measure, where it does not. */
    private Optional<String> doubt(Overflow one, String kind, String name) throws Lacking {
        List<String> doubts = new ArrayList<>();
        least(doubts, BasisKey.OVERFLOW_SIZE_MM, kind, one.sizeMm(), "the size of " + name);
        least(doubts, BasisKey.OVERFLOW_HEIGHT_MM, kind, one.heightMm(), "the height of " + name);
        String open = "how much of each metre " + name + " leaves open";
        least(doubts, BasisKey.OVERFLOW_OPEN_MM2, kind, one.openMm2PerM(), open);
        String below = "how far " + name + " lies below the top of the fascia";
        least(doubts, BasisKey.OVERFLOW_BELOW_MM, kind, one.belowFasciaTopMm(), below);
        if (basis.of(BasisKey.OVERFLOW_HIGH_POINT_MM, kind)
                instanceof Found.Value<Basis.Amount> most) {
            String what = "how far " + name + " lies from a high point of the gutter";
            double mm = Found.need(one.highPointMm(), what);
            if (mm > most.value().value()) {
                doubts.add(what + ": " + figure(mm) + ", at most " + figure(most.value().value()));
            }
        }
        return doubts.stream().findFirst();
    }

    private void least(
            List<String> doubts, BasisKey key, String kind, @Nullable Double recorded, String what)
            throws Lacking {
        if (basis.of(key, kind) instanceof Found.Value<Basis.Amount> least) {
            double found = Found.need(recorded, what);
            double needed = least.value().value();
            if (found < needed) {
                doubts.add(what + ": " + figure(found) + ", at least " + figure(needed));
            } else {
                String by = "at least " + figure(needed) + "; " + least.value().source();
                workings.add(new Working(what, figure(found), by));
            }
        }
    }

    private static String figure(double value) {
        return Decimals.plain(value, 1);
    }
}
