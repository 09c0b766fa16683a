package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart.Outlet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Where things are in the record of a job. */
final class Parts {
    private Parts() {}

    /** What is not recorded is not there to be changed. */
    static <T> List<T> of(@Nullable List<T> list) {
        return list == null ? List.of() : list;
    }

    static Optional<Run> run(Job job, String id) {
        return first(job.runs(), it -> it.id().equals(id));
    }

    static Optional<Straight> straight(Job job, String id) {
        return of(job.runs()).stream()
                .flatMap(run -> of(run.straights()).stream())
                .filter(it -> it.id().equals(id))
                .findFirst();
    }

    static Optional<Outlet> outlet(Job job, String id) {
        return of(job.way()).stream()
                .filter(it -> it.id().equals(id))
                .filter(Outlet.class::isInstance)
                .map(Outlet.class::cast)
                .findFirst();
    }

    static List<Outlet> outletsOn(Job job, String straight) {
        return of(job.way()).stream()
                .filter(Outlet.class::isInstance)
                .map(Outlet.class::cast)
                .filter(it -> straight.equals(it.on()))
                .toList();
    }

    /** With its word: "bracket b3", or what else of that id holds the straight up. */
    static String named(Job job, String straight, String id) {
        Straight on = straight(job, straight).orElse(null);
        if (on != null && first(on.joints(), it -> it.id().equals(id)).isPresent()) {
            return "joint " + id;
        } else if (on != null && first(on.fittings(), it -> it.id().equals(id)).isPresent()) {
            return "fitting " + id;
        }
        boolean outlet = outletsOn(job, straight).stream().anyMatch(it -> it.id().equals(id));
        return (outlet ? "outlet " : "bracket ") + id;
    }

    static <T> Optional<T> first(@Nullable List<T> list, Predicate<T> which) {
        return of(list).stream().filter(which).findFirst();
    }

    /** An id that nothing along the runs bears yet: new-1, new-2, … */
    static String newId(Job job) {
        Set<String> taken = new HashSet<>();
        for (Run run : of(job.runs())) {
            for (Straight straight : of(run.straights())) {
                of(straight.brackets()).forEach(it -> taken.add(it.id()));
                of(straight.joints()).forEach(it -> taken.add(it.id()));
                of(straight.fittings()).forEach(it -> taken.add(it.id()));
            }
        }
        int next = 1;
        while (taken.contains("new-" + next)) {
            next++;
        }
        return "new-" + next;
    }
}
