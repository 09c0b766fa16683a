package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What to do about each finding that needs it. Start here. */
public final class Remedies {
    private final IdentityHashMap<Ruling, Remedy> byRuling = new IdentityHashMap<>();

    private Remedies() {}

    public static Remedies none() {
        return new Remedies();
    }

    /**
     * @param check the whole check, for changes to be tried on
     */
    public static Remedies of(Job job, Checked before, Function<Job, Checked> check) {
        Remedies remedies = new Remedies();
        Mending mending = new Mending(job, before, check);
        for (List<Ruling> group : Groups.of(before.rulings())) {
            remedies.mend(mending, group);
        }
        List<Cure> cures = mending.cures();
        Doubts doubts = new Doubts(job, mending);
        for (Ruling ruling : before.rulings()) {
            if (ruling.verdict().needsAction()
                    && !(remedies.byRuling.get(ruling) instanceof Remedy.Change)) {
                remedies.share(job, ruling, cures, doubts);
            }
        }
        return remedies;
    }

    /** A change that was found for others serves this finding too where it mends it. */
    private void share(Job job, Ruling ruling, List<Cure> cures, Doubts doubts) {
        Optional<Remedy.Change> found =
                ruling.verdict() == Verdict.NOT_RECORDED
                        ? Optional.empty()
                        : cures.stream()
                                .filter(it -> it.mends(ruling))
                                .findFirst()
                                .map(Cure::change);
        if (found.isPresent() && Groups.canBeChanged(ruling)) {
            byRuling.put(ruling, found.get());
        } else if (!byRuling.containsKey(ruling)) {
            String also = found.map(it -> "; or, which mends others too: " + it.words()).orElse("");
            byRuling.put(ruling, new Remedy.Advice(advice(job, ruling, doubts) + also));
        }
    }

    public Optional<Remedy> of(Ruling ruling) {
        return Optional.ofNullable(byRuling.get(ruling));
    }

    private void mend(Mending mending, List<Ruling> group) {
        Optional<Remedy> whole = mending.mend(group);
        List<List<Ruling>> places = Groups.apart(group);
        if (places.size() == 1 || whole.filter(Remedy.Change.class::isInstance).isPresent()) {
            whole.ifPresent(remedy -> group.forEach(it -> byRuling.put(it, remedy)));
            return;
        }
        for (List<Ruling> place : places) {
            mending.mend(place).ifPresent(one -> place.forEach(it -> byRuling.put(it, one)));
        }
    }

    private static String advice(Job job, Ruling ruling, Doubts doubts) {
        if (ruling.verdict() == Verdict.TOO_CLOSE) {
            return doubts.settle(ruling);
        }
        return ruling.verdict() == Verdict.NOT_RECORDED
                ? Asking.missing(ruling)
                : Asking.about(job, ruling);
    }
}
