package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.judge.Ruling;
import eavesproof.quantity.Decimals;
import eavesproof.survey.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Looks for a change that mends some findings. Every candidate goes through the whole check; where
 * one mends them but puts something else wrong, a second and a third change are tried on top.
 */
final class Mending {
    private static final int ON_TOP = 2;

    /** A record so long that one check is slow is checked less often. */
    private static final int MOST_CHECKS = 60;

    private static final int FEWEST_CHECKS = 6;
    private static final int RULINGS_IN_ALL = 200_000;

    private final Job job;
    private final Checked before;
    private final Function<Job, Checked> check;
    private int checksLeft;

    Mending(Job job, Checked before, Function<Job, Checked> check) {
        this.job = job;
        this.before = before;
        this.check = check;
        int affordable = RULINGS_IN_ALL / Math.max(1, before.rulings().size());
        checksLeft = Math.max(FEWEST_CHECKS, Math.min(MOST_CHECKS, affordable));
    }

    private record Tried(Proposal proposal, Trial trial, Checked after) {}

    private final List<Cure> cures = new ArrayList<>();

    /** The changes that were found to serve, each with what else it mends. */
    List<Cure> cures() {
        return List.copyOf(cures);
    }

    /** A change, or why none of those tried serves; empty where nothing can be proposed. */
    Optional<Remedy> mend(List<Ruling> group) {
        if (checksLeft <= 0) {
            return Optional.empty();
        }
        List<Tried> refused = new ArrayList<>();
        for (Proposal proposal : Proposals.of(new Case(job, before), group)) {
            Tried tried = tried(proposal, group);
            if (tried == null) {
                break;
            }
            if (tried.trial().serves()) {
                return Optional.of(change(tried));
            }
            refused.add(tried);
        }
        for (Tried one : refused) {
            Tried now = one;
            for (int n = 0; now != null && n < ON_TOP; n++) {
                now = onTop(now, group);
                if (now != null && now.trial().serves()) {
                    return Optional.of(change(now));
                }
            }
        }
        return refused.stream().findFirst().map(Mending::conflict);
    }

    /** What a job would be found to be, while checks are left. */
    Optional<Checked> checked(Job edited) {
        return checksLeft-- > 0 ? Optional.of(check.apply(edited)) : Optional.empty();
    }

    private Remedy change(Tried tried) {
        Remedy.Change change =
                new Remedy.Change(tried.proposal().words(), tried.proposal().edited());
        cures.add(Cure.of(change, before, tried.after()));
        return change;
    }

    private @Nullable Tried tried(Proposal proposal, List<Ruling> group) {
        return checked(proposal.edited())
                .map(after -> new Tried(proposal, Trial.of(before, after, group), after))
                .orElse(null);
    }

    /** Mends, on top of a change, the first thing that it put wrong or left wrong. */
    private @Nullable Tried onTop(Tried tried, List<Ruling> group) {
        List<List<Ruling>> wrong = Groups.wrong(tried.trial().worse());
        if (wrong.isEmpty()) {
            return null;
        }
        Case now = new Case(tried.proposal().edited(), tried.after());
        List<Proposal> next = Proposals.of(now, wrong.get(0));
        return next.isEmpty() ? null : tried(tried.proposal().and(next.get(0)), group);
    }

    private static Remedy conflict(Tried tried) {
        String wrong =
                tried.trial().worse().stream()
                        .limit(2)
                        .map(Mending::text)
                        .distinct()
                        .collect(Collectors.joining(", and "));
        String but = wrong.isEmpty() ? "that alone would not show it" : "then " + wrong;
        return new Remedy.Advice(
                "no single change was found to serve: "
                        + tried.proposal().words()
                        + ", but "
                        + but);
    }

    private static String text(Ruling ruling) {
        Optional<Place.Stretch> stretch = ruling.subject().place().stretch();
        String at =
                stretch.map(
                                it ->
                                        " at "
                                                + Decimals.plain(it.fromMm(), 1)
                                                + " to "
                                                + Grid.mm(it.toMm())
                                                + " on straight "
                                                + it.straight())
                        .orElse("");
        return "\"" + ruling.rule() + "\"" + at + " would be: " + ruling.verdict().words();
    }
}
