package eavesproof.survey;

import eavesproof.job.Gutter;
import eavesproof.job.Job;
import eavesproof.job.Said;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Trough.Spot;
import java.util.List;
import java.util.Optional;

/**
 * How much gutter hangs on each bracket, and on what else holds it up, and how heavy it is when the
 * gutter is full of water up to its lower lip, and when snow lies on it besides; and what a bracket
 * carries, as somebody states it.
 *
 * <p>The gutter is taken as beams from support to support: half of each span goes to either end,
 * and at an end of the straight the overhang levers its bracket down too, R = q (l + a)² / 2l for a
 * span l and an overhang a (statics). The gutter's own weight is left out: it is small beside that
 * of the water. Snow lies as deep as on the ground, on the width of the gutter.
 */
final class BracketLoads {
    private static final double WATER_KG_M3 = 1000;
    private static final double GRAVITY_M_S2 = 9.81;
    private static final double MM2_IN_A_M2 = 1e6;
    private static final double MM_IN_A_M = 1e3;
    private static final double N_IN_A_KN = 1e3;

    private static final List<Class<? extends Facts.Fact>> LOADS =
            List.of(Facts.BracketShare.class, Facts.BracketLoad.class, Facts.BracketSnowLoad.class);

    private final Trough trough;
    private final Found<Stated> water;
    private final Found<Stated> snow;
    private final Answers answers;

    /**
     * @param newtonPerMm for each mm of the gutter
     */
    private record Stated(double newtonPerMm, String from, Provenance provenance) {}

    private BracketLoads(Job job, Trough trough, Answers answers) {
        this.trough = trough;
        this.answers = answers;
        this.water = trough.gutter().then(BracketLoads::water);
        this.snow = trough.gutter().then(gutter -> snow(job, gutter));
    }

    static void answer(Job job, Trough trough, Answers answers) {
        BracketLoads loads = new BracketLoads(job, trough, answers);
        for (int i = 0; i < trough.straights().size(); i++) {
            loads.straight(i);
        }
    }

    private static Found<Stated> water(Gutter gutter) {
        return FullSection.stated(gutter)
                .map(
                        area ->
                                new Stated(
                                        area.mm2().value()
                                                / MM2_IN_A_M2
                                                / MM_IN_A_M
                                                * WATER_KG_M3
                                                * GRAVITY_M_S2,
                                        "area x 1000 kg/m3 x 9.81 m/s2, area "
                                                + Answers.text(area.mm2().value(), Unit.MM2)
                                                + ", "
                                                + area.from(),
                                        area.provenance()));
    }

    private static Found<Stated> snow(Job job, Gutter gutter) {
        Job.Circumstances place = job.circumstances();
        Said<Double> ground = place == null ? Said.nothing() : place.groundSnowKnM2();
        Gutter.Profile profile = gutter.profile();
        Found<Double> width =
                Found.recorded(
                        profile == null ? null : profile.widthMm(),
                        "the width of gutter " + gutter.id());
        return Circumstances.groundSnow(job)
                .then(
                        load ->
                                width.map(
                                        mm ->
                                                new Stated(
                                                        load * N_IN_A_KN * mm / MM_IN_A_M
                                                                / MM_IN_A_M,
                                                        Answers.text(load, Unit.KN_PER_M2)
                                                                + " on a width of "
                                                                + Answers.text(mm, Unit.MM)
                                                                + ", "
                                                                + Provenance.of(ground).text(),
                                                        Provenance.of(ground))));
    }

    private void straight(int index) {
        Holders holders = Holders.on(trough, index);
        holders.more().forEach(this::gaps);
        if (holders.more().isEmpty() && holders.all().isEmpty()) {
            String why = Brackets.none(trough.straight(index));
            answers.none(Facts.BracketCapacity.class, why, trough.id());
            LOADS.forEach(type -> answers.none(type, why, trough.id()));
        }
        Marks holds = holders.marks();
        List<Spot> supports = List.copyOf(holds.sorted());
        Found<Spot> end = trough.rightEnd(index);
        for (Holder holder : holders.all()) {
            capacity(holder);
            if (holder.holdsNothing()) {
                String why = holder.name() + " has no screw, so that nothing can hang on it";
                LOADS.forEach(type -> answers.none(type, why, trough.id(), holder.id()));
            } else {
                holder.holds()
                        .then(it -> borne(holds, supports, holder, end, index))
                        .either(this::loads, why -> gap(holder, why));
            }
        }
    }

    private void gaps(String why) {
        answers.gap(Facts.BracketCapacity.class, why, trough.id());
        LOADS.forEach(type -> answers.gap(type, why, trough.id()));
    }

    private void gap(Holder holder, String why) {
        LOADS.forEach(type -> answers.gap(type, why, trough.id(), holder.id()));
    }

    private void capacity(Holder holder) {
        Said<Double> said = holder.fixing().carriesN();
        String what = "what " + holder.name() + " carries";
        Found<Double> capacity =
                holder.isBracket()
                        ? trough.gutter()
                                .then(
                                        gutter ->
                                                Found.recorded(
                                                        said.is(),
                                                        "what a bracket of gutter "
                                                                + gutter.id()
                                                                + " carries"))
                        : holder.holds().then(holds -> Found.recorded(said.is(), what));
        capacity.either(
                newton ->
                        answers.stated(
                                new Facts.BracketCapacity(trough.id(), holder.id(), newton),
                                Uncertain.exact(newton),
                                Provenance.of(said),
                                new Working(
                                        what,
                                        Answers.text(newton, Unit.NEWTON),
                                        Provenance.of(said).text())),
                why -> answers.gap(Facts.BracketCapacity.class, why, trough.id(), holder.id()));
    }

    /**
     * @param length of gutter that hangs on it, mm
     */
    private record Borne(Spot at, Uncertain length) {}

    private Found<Borne> borne(
            Marks holds, List<Spot> supports, Holder holder, Found<Spot> end, int index) {
        return trough.spot(index, holder.id(), holder.name(), holder.stationMm())
                .then(at -> borne(holds, supports, at, end).map(mm -> new Borne(at, mm)));
    }

    private Found<Uncertain> borne(Marks holds, List<Spot> supports, Spot at, Found<Spot> end) {
        Spot left = Nearest.leftOf(new Spot("", "", at.straight(), before(at)), supports);
        Spot right = Nearest.rightOf(at, supports);
        double from = left == null ? Double.NEGATIVE_INFINITY : left.stationMm();
        double to = right == null ? Double.POSITIVE_INFINITY : right.stationMm();
        Optional<String> doubt =
                holds.perhapsBetween(from, at.stationMm())
                        .or(() -> holds.perhapsBetween(at.stationMm(), to));
        if (doubt.isPresent()) {
            return Found.missing(doubt.get());
        }
        Spot begin = trough.leftEnd(at.straight());
        if (left == null) {
            return right == null
                    ? end.map(it -> Trough.apart(begin, it))
                    : levered(Trough.apart(at, right), Trough.apart(begin, at));
        }
        Uncertain span = Trough.apart(left, at);
        return right == null
                ? end.then(it -> levered(span, Trough.apart(at, it)))
                : Found.of(span.plus(Trough.apart(at, right)).times(0.5));
    }

    /** Just to the left of a bracket, so that the nearest one on the left is another one. */
    private static Uncertain before(Spot at) {
        return Uncertain.exact(Math.nextDown(at.stationMm()));
    }

    private static Found<Uncertain> levered(Uncertain span, Uncertain overhang) {
        if (span.value() <= 0) {
            return Found.missing("two supports are recorded at one place");
        }
        Uncertain both = span.plus(overhang);
        return Found.of(both.times(both).over(span).times(0.5));
    }

    private void loads(Borne borne) {
        double at = borne.at().stationMm();
        Answers here = answers.on(trough.straight(borne.at().straight()).id(), at, at);
        String run = trough.id();
        String bracket = borne.at().id();
        here.known(
                new Facts.BracketShare(run, bracket, borne.length().value()),
                borne.length(),
                length(borne));
        Found<Uncertain> full = water.map(it -> borne.length().times(it.newtonPerMm()));
        Found<Uncertain> laden =
                full.then(
                        newton ->
                                snow.map(
                                        it -> newton.plus(borne.length().times(it.newtonPerMm()))));
        full.either(
                newton ->
                        here.stated(
                                new Facts.BracketLoad(run, bracket, newton.value()),
                                newton,
                                provenance(water),
                                length(borne),
                                Answers.working("load", newton, Unit.NEWTON, from(water))),
                why -> here.gap(Facts.BracketLoad.class, why, run, bracket));
        laden.either(
                newton ->
                        here.stated(
                                new Facts.BracketSnowLoad(run, bracket, newton.value()),
                                newton,
                                provenance(snow),
                                length(borne),
                                Answers.working(
                                        "load",
                                        newton,
                                        Unit.NEWTON,
                                        from(water) + "; and snow, " + from(snow))),
                why -> here.gap(Facts.BracketSnowLoad.class, why, run, bracket));
    }

    private static Working length(Borne borne) {
        return Answers.working(
                "length of gutter on the bracket",
                borne.length(),
                Unit.MM,
                "half of each span; at an end (span + overhang)2 / (2 x span)");
    }

    private static String from(Found<Stated> load) {
        return load instanceof Found.Value<Stated> known ? known.value().from() : "";
    }

    private static Provenance provenance(Found<Stated> load) {
        return load instanceof Found.Value<Stated> known
                ? known.value().provenance()
                : Provenance.MEASURED;
    }
}
