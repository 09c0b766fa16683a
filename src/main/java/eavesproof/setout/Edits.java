package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Run.Bracket;
import eavesproof.job.Run.Fitting;
import eavesproof.job.Run.Fixing;
import eavesproof.job.Run.Joint;
import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart;
import eavesproof.job.WayPart.Outlet;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** The same record of a job with something changed. */
final class Edits {
    private Edits() {}

    /**
     * The same record with one part changed. Parts are taken over by their names, whatever they
     * are, so that no edit can lose a part that is added to the record later.
     */
    static <R extends Record> R with(R record, String part, @Nullable Object value) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        @Nullable Object[] values = new @Nullable Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        boolean met = false;
        try {
            for (int i = 0; i < components.length; i++) {
                boolean here = components[i].getName().equals(part);
                met |= here;
                types[i] = components[i].getType();
                values[i] = here ? value : components[i].getAccessor().invoke(record);
            }
            if (!met) {
                throw new IllegalArgumentException(record.getClass() + " has no part " + part);
            }
            @SuppressWarnings("unchecked")
            Constructor<R> constructor =
                    (Constructor<R>) record.getClass().getDeclaredConstructor(types);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError("a record that cannot be copied", e);
        }
    }

    /** A number of a record by the name of its part. */
    static @Nullable Double number(Record record, String part) {
        try {
            return (Double) record.getClass().getMethod(part).invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException(record.getClass() + " has no part " + part, e);
        }
    }

    static Job straight(Job job, String id, UnaryOperator<Straight> edit) {
        List<Run> runs = new ArrayList<>();
        for (Run run : Parts.of(job.runs())) {
            List<Straight> straights = run.straights();
            if (straights == null) {
                runs.add(run);
                continue;
            }
            List<Straight> edited =
                    straights.stream().map(it -> it.id().equals(id) ? edit.apply(it) : it).toList();
            runs.add(with(run, "straights", edited));
        }
        return with(job, "runs", runs);
    }

    static Job way(Job job, String id, UnaryOperator<WayPart> edit) {
        return with(job, "way", one(job.way(), it -> it.id().equals(id), edit));
    }

    static Job bracket(Job job, String straight, String id, UnaryOperator<Bracket> edit) {
        return straight(
                job,
                straight,
                it -> with(it, "brackets", one(it.brackets(), b -> b.id().equals(id), edit)));
    }

    /**
     * How something is fixed: a bracket says so itself, a joint, fitting or outlet in its fixing.
     */
    static Job fixing(Job job, String straight, String id, UnaryOperator<Record> edit) {
        Job edited = straight(job, straight, it -> fixing(it, id, edit));
        return with(
                edited,
                "way",
                each(
                        edited.way(),
                        it -> it.id().equals(id),
                        it -> it instanceof Outlet o ? fixed(o, o.fixing(), edit) : it));
    }

    private static Straight fixing(Straight on, String id, UnaryOperator<Record> edit) {
        List<Bracket> brackets =
                each(on.brackets(), it -> it.id().equals(id), it -> (Bracket) edit.apply(it));
        List<Joint> joints =
                each(on.joints(), it -> it.id().equals(id), it -> fixed(it, it.fixing(), edit));
        List<Fitting> fittings =
                each(on.fittings(), it -> it.id().equals(id), it -> fixed(it, it.fixing(), edit));
        return with(with(with(on, "brackets", brackets), "joints", joints), "fittings", fittings);
    }

    private static <R extends Record> R fixed(
            R thing, @Nullable Fixing fixing, UnaryOperator<Record> edit) {
        return with(thing, "fixing", edit.apply(fixing == null ? Fixing.NOTHING : fixing));
    }

    /** A count of a record by the name of its part; none where nobody counted. */
    static int count(Record record, String part) {
        try {
            Object count = record.getClass().getMethod(part).invoke(record);
            return count == null ? 0 : (Integer) count;
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException(record.getClass() + " has no part " + part, e);
        }
    }

    /** A list that nobody recorded stays one. */
    private static <T> @Nullable List<T> each(
            @Nullable List<T> list, Predicate<T> asked, UnaryOperator<T> edit) {
        return list == null ? null : one(list, asked, edit);
    }

    static Job moveBracket(Job job, String straight, String id, double stationMm) {
        return bracket(job, straight, id, it -> with(it, "stationMm", stationMm));
    }

    static Job addBracket(Job job, String straight, Bracket bracket) {
        return straight(
                job, straight, it -> with(it, "brackets", plus(Parts.of(it.brackets()), bracket)));
    }

    static Job joint(Job job, String straight, String id, UnaryOperator<Joint> edit) {
        return straight(
                job,
                straight,
                it -> with(it, "joints", one(it.joints(), j -> j.id().equals(id), edit)));
    }

    static Job moveJoint(Job job, String straight, String id, double stationMm) {
        return joint(job, straight, id, it -> with(it, "stationMm", stationMm));
    }

    static Job addJoint(Job job, String straight, Joint joint) {
        return straight(
                job, straight, it -> with(it, "joints", plus(Parts.of(it.joints()), joint)));
    }

    private static <T> List<T> one(
            @Nullable List<T> list, Predicate<T> asked, UnaryOperator<T> edit) {
        return Parts.of(list).stream().map(it -> asked.test(it) ? edit.apply(it) : it).toList();
    }

    private static <T> List<T> plus(List<T> list, T one) {
        List<T> longer = new ArrayList<>(list);
        longer.add(one);
        return longer;
    }
}
