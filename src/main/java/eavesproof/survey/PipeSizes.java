package eavesproof.survey;

import eavesproof.job.WayPart;
import eavesproof.job.WayPart.Downpipe;
import eavesproof.job.WayPart.Drain;
import eavesproof.job.WayPart.OtherRoof;
import eavesproof.job.WayPart.Outlet;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How large the pipes are that the water of a run passes, how drains fall, and how much roof and
 * gutter comes to a downpipe, from every run and from other roofs.
 */
final class PipeSizes {
    private static final List<Class<? extends Facts.Fact>> OF_DOWNPIPES =
            List.of(
                    Facts.DownpipeSize.class,
                    Facts.DownpipeWidth.class,
                    Facts.DownpipeDepth.class,
                    Facts.DownpipeRoof.class,
                    Facts.DownpipeGutter.class);
    private static final List<Class<? extends Facts.Fact>> OF_DRAINS =
            List.of(Facts.DrainSize.class, Facts.DrainRoof.class, Facts.DrainFall.class);

    private final String run;
    private final Way way;
    private final Instruments instruments;
    private final Catchments catchments;
    private final Answers answers;

    private PipeSizes(Trough trough, Catchments catchments, Answers answers) {
        run = trough.id();
        way = trough.way();
        instruments = trough.instruments();
        this.catchments = catchments;
        this.answers = answers;
    }

    /** To be asked once the reaches of every run have their roofs. */
    static void answer(Trough trough, Catchments catchments, Answers answers) {
        PipeSizes of = new PipeSizes(trough, catchments, answers);
        Way.Course course = trough.way().from(trough.outlets());
        List<String> beyond = new ArrayList<>();
        trough.way().doubt().ifPresent(beyond::add);
        beyond.addAll(course.broken());
        List<Downpipe> downpipes = course.each(Downpipe.class);
        List<Drain> drains = course.each(Drain.class);
        of.beyond(OF_DOWNPIPES, beyond, downpipes.isEmpty(), "downpipe");
        of.beyond(OF_DRAINS, beyond, drains.isEmpty(), "drain");
        downpipes.forEach(of::downpipe);
        of.outlets(trough);
        drains.forEach(of::drain);
    }

    private void beyond(
            List<Class<? extends Facts.Fact>> kinds, List<String> why, boolean none, String what) {
        for (Class<? extends Facts.Fact> kind : kinds) {
            why.forEach(reason -> answers.gap(kind, reason, run));
            if (none && why.isEmpty()) {
                answers.none(kind, "the water of run " + run + " passes no " + what, run);
            }
        }
    }

    private void outlets(Trough trough) {
        List<Outlet> outlets = trough.outlets();
        trough.way().doubt().ifPresent(why -> answers.gap(Facts.OutletRoof.class, why, run));
        if (outlets.isEmpty() && trough.way().doubt().isEmpty()) {
            answers.none(Facts.OutletRoof.class, "run " + run + " has no outlet", run);
        }
        for (Outlet outlet : outlets) {
            String id = outlet.id();
            Way.Course course = way.from(List.of(outlet));
            List<Downpipe> pipes = course.each(Downpipe.class);
            if (!pipes.isEmpty()) {
                number(
                        Facts.OutletRoof.class,
                        m2 -> new Facts.OutletRoof(run, id, m2),
                        Found.by(() -> comesTo(pipes.get(0), Facts.ReachRoof.class, this::roof)),
                        id);
            } else if (course.broken().isEmpty()) {
                String why = "the water of outlet " + id + " passes no downpipe";
                answers.none(Facts.OutletRoof.class, why, run, id);
            } else {
                answers.gap(Facts.OutletRoof.class, course.broken().get(0), run, id);
            }
        }
    }

    private void downpipe(Downpipe pipe) {
        String id = pipe.id();
        String name = "downpipe " + id;
        Double wide = pipe.widthMm();
        Double deep = pipe.depthMm();
        if (pipe.sizeMm() != null) {
            number(
                    Facts.DownpipeSize.class,
                    mm -> new Facts.DownpipeSize(run, id, mm),
                    asMarked(pipe.sizeMm(), "size of " + name),
                    id);
            String round = name + " is recorded as round";
            answers.none(Facts.DownpipeWidth.class, round, run, id);
            answers.none(Facts.DownpipeDepth.class, round, run, id);
        } else if (wide == null && deep == null) {
            String why = "the size of " + name + " is not recorded";
            answers.gap(Facts.DownpipeSize.class, why, run, id);
            answers.gap(Facts.DownpipeWidth.class, why, run, id);
            answers.gap(Facts.DownpipeDepth.class, why, run, id);
        } else {
            answers.none(Facts.DownpipeSize.class, name + " is rectangular", run, id);
            Found<Uncertain> one = asMarked(wide, "width of " + name);
            Found<Uncertain> other = asMarked(deep, "depth of " + name);
            number(
                    Facts.DownpipeWidth.class,
                    mm -> new Facts.DownpipeWidth(run, id, mm),
                    Found.both(one, other, (a, b) -> a.value() >= b.value() ? a : b),
                    id);
            number(
                    Facts.DownpipeDepth.class,
                    mm -> new Facts.DownpipeDepth(run, id, mm),
                    Found.both(one, other, (a, b) -> a.value() < b.value() ? a : b),
                    id);
        }
        number(
                Facts.DownpipeRoof.class,
                m2 -> new Facts.DownpipeRoof(run, id, m2),
                Found.by(() -> comesTo(pipe, Facts.ReachRoof.class, this::roof)),
                id);
        number(
                Facts.DownpipeGutter.class,
                mm -> new Facts.DownpipeGutter(run, id, mm),
                Found.by(() -> comesTo(pipe, Facts.ReachLength.class, PipeSizes::noGutter)),
                id);
    }

    private interface OfOther {
        double amount(OtherRoof roof, WayPart pipe) throws Lacking;
    }

    /** The sum over the reaches of all outlets above, and over the other roofs on the way. */
    private Uncertain comesTo(WayPart pipe, Class<? extends Facts.Fact> kind, OfOther ofOther)
            throws Lacking {
        if (way.doubt().isPresent()) {
            throw Found.lacking(way.doubt().get());
        }
        List<WayPart> above = way.above(pipe);
        for (WayPart part : way.parts()) {
            Way.Course course = way.from(List.of(part));
            if (part instanceof Outlet && !above.contains(part) && !course.broken().isEmpty()) {
                throw Found.lacking(
                        course.broken().get(0) + ", so that it may come to " + pipe.id());
            }
        }
        Uncertain sum = Uncertain.exact(0);
        for (WayPart part : above) {
            for (OtherRoof roof : Loads.others(part)) {
                sum = sum.plus(Uncertain.exact(ofOther.amount(roof, part)));
            }
            if (part instanceof Outlet) {
                sum = sum.plus(reaches(kind, part.id()));
            }
        }
        return sum;
    }

    private Uncertain reaches(Class<? extends Facts.Fact> kind, String outlet) throws Lacking {
        List<Answer> found = answers.of(kind, "outlet", outlet);
        if (found.isEmpty()) {
            throw Found.lacking("what comes to outlet " + outlet + " is not known");
        }
        Uncertain sum = Uncertain.exact(0);
        for (Answer answer : found) {
            if (answer instanceof Answer.Gap gap) {
                throw Found.lacking(gap.why());
            }
            if (answer instanceof Answer.Known known) {
                sum = sum.plus(((Measure.Number) known.measure()).value());
            }
        }
        return sum;
    }

    private double roof(OtherRoof roof, WayPart pipe) throws Lacking {
        String name = "roof " + roof.id() + " on " + pipe.id();
        double plan = Found.need(roof.planAreaM2().is(), "the plan area of " + name);
        return catchments.roof(plan, null, name, new ArrayList<>());
    }

    private static double noGutter(OtherRoof roof, WayPart pipe) throws Lacking {
        throw Found.lacking(
                "how much gutter of roof "
                        + roof.id()
                        + " drains to "
                        + pipe.id()
                        + " is not recorded");
    }

    private void drain(Drain drain) {
        String id = drain.id();
        String name = "drain " + id;
        String with = drain.measuredWith();
        number(
                Facts.DrainSize.class,
                mm -> new Facts.DrainSize(run, id, mm),
                asMarked(drain.sizeMm(), "size of " + name),
                id);
        number(
                Facts.DrainRoof.class,
                m2 -> new Facts.DrainRoof(run, id, m2),
                Found.by(() -> comesTo(drain, Facts.ReachRoof.class, this::roof)),
                id);
        Found<Uncertain> length = read(drain.lengthMm(), "length of " + name, with, name);
        number(
                Facts.DrainFall.class,
                fall -> new Facts.DrainFall(run, id, fall),
                read(drain.dropMm(), "drop of " + name, with, name)
                        .then(drop -> length.then(along -> fall(drop, along, name))),
                id);
    }

    private static Found<Uncertain> fall(Uncertain drop, Uncertain length, String name) {
        return length.value() > 0
                ? Found.of(drop.over(length).times(1000))
                : Found.missing(name + " is recorded without any length");
    }

    /** Pipes are of the size that is marked on them; nobody measures it. */
    private static Found<Uncertain> asMarked(@Nullable Double mm, String what) {
        return Found.recorded(mm, "the " + what).map(Uncertain::exact);
    }

    private Found<Uncertain> read(
            @Nullable Double mm, String what, @Nullable String with, String thing) {
        return Found.recorded(mm, "the " + what)
                .map(value -> instruments.read(value, what, with, thing));
    }

    private interface Made {
        Facts.Fact of(double value);
    }

    private void number(
            Class<? extends Facts.Fact> type, Made made, Found<Uncertain> value, String id) {
        FactKind kind = Vocabulary.kind(type);
        Unit unit = kind.unit().orElseThrow();
        value.either(
                known ->
                        answers.known(
                                made.of(known.value()),
                                known,
                                Answers.working(
                                        kind.title(), known, unit, "as recorded, or its sum")),
                why -> answers.gap(type, why, run, id));
    }
}
