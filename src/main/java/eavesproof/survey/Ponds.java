package eavesproof.survey;

import eavesproof.job.Gutter;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.SoleProfile.Point;
import eavesproof.survey.Trough.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The deepest water that stands in a reach when the rain is over: found from the whole profile of
 * the sole, and from what was seen after tests with water. Where the two differ the worse counts.
 */
final class Ponds {
    /** So many of the deepest are named. */
    private static final int NAMED = 5;

    private final Trough trough;
    private final Levels levels;
    private final WaterTests tests;
    private final Answers answers;

    Ponds(Trough trough, Levels levels, WaterTests tests, Answers answers) {
        this.trough = trough;
        this.levels = levels;
        this.tests = tests;
        this.answers = answers;
    }

    /**
     * @param only whether the run has no other reach
     */
    void answer(ReachLevels read, boolean only) {
        List<SoleProfile> profiles = SoleProfile.of(read, levels);
        Optional<Dip> dip = Dip.deepest(profiles);
        List<WaterTests.Seen> stood = tests.stoodIn(read);
        Optional<String> ran = only ? tests.ranThrough() : Optional.empty();
        Optional<String> doubt =
                stood.stream()
                        .flatMap(seen -> missing(seen.depth()).stream())
                        .findFirst()
                        .or(() -> ran.isPresent() ? Optional.empty() : notWhole(read, profiles));
        if (doubt.isPresent()) {
            String besides = only ? tests.notBelieved().map(it -> "; " + it).orElse("") : "";
            gap(read, doubt.get() + dip.map(Ponds::foundAllTheSame).orElse("") + besides);
        } else {
            known(read, profiles, dip, stood);
        }
    }

    private static Optional<String> missing(Found<?> found) {
        return found instanceof Found.Missing<?> missing
                ? Optional.of(missing.why())
                : Optional.empty();
    }

    private static Optional<String> notWhole(ReachLevels read, List<SoleProfile> profiles) {
        Optional<String> lost = read.lost(SoleProfile.SURFACES);
        if (lost.isPresent()) {
            return lost;
        }
        if (profiles.stream().anyMatch(SoleProfile::isWhole)) {
            return SoleProfile.untied(profiles);
        }
        return profiles.stream()
                .max(Comparator.comparingInt(it -> it.points().size()))
                .flatMap(SoleProfile::doubt)
                .or(
                        () ->
                                read.all().isEmpty()
                                        ? read.whyNotWhole(List.of())
                                        : Optional.of(
                                                "the sole of "
                                                        + read.reach().text()
                                                        + " was not read"));
    }

    private static String foundAllTheSame(Dip dip) {
        return !dip.holdsWater()
                ? ""
                : "; at "
                        + dip.low().text()
                        + " it lies "
                        + Decimals.with(dip.mm(), Unit.MM)
                        + " lower than at "
                        + dip.sill().text()
                        + ", nearer to the outlet";
    }

    private void known(
            ReachLevels read,
            List<SoleProfile> profiles,
            Optional<Dip> dip,
            List<WaterTests.Seen> stood) {
        List<Working> workings = new ArrayList<>();
        dip.ifPresent(it -> readings(read, it, workings));
        Uncertain byReadings =
                dip.filter(it -> it.holdsWater() || it.profile().isWhole())
                        .map(it -> it.depth(profiles))
                        .orElseGet(WaterTests::nothingSeen);
        Worst worst = new Worst().add(byReadings);
        for (WaterTests.Seen seen : stood) {
            Uncertain stoodMm = ((Found.Value<Uncertain>) seen.depth()).value();
            workings.add(Answers.working("stood after " + seen.text(), stoodMm, Unit.MM, "seen"));
            worst.add(stoodMm);
        }
        Uncertain depth = worst.get();
        if (stood.isEmpty()) {
            tests.texts().forEach(it -> workings.add(new Working(it, "nothing", "what stood")));
        }
        String from = dip.isEmpty() ? "what was seen" : "the worse of readings and tests";
        if (dip.isPresent() && disagree(byReadings, depth, stood)) {
            from += "; these do not agree";
        }
        workings.add(Answers.working("depth", depth, Unit.MM, from));
        String run = trough.id();
        String outlet = read.reach().outlet().id();
        shownOn(read, dip)
                .known(
                        new Facts.PondDepth(run, outlet, read.reach().side(), depth.value()),
                        depth,
                        workings.toArray(Working[]::new));
    }

    /** Whether tests say otherwise than readings, by more than both are unsure. */
    private boolean disagree(Uncertain read, Uncertain worse, List<WaterTests.Seen> stood) {
        boolean deeper = !worse.equals(read);
        Uncertain other = stood.isEmpty() ? WaterTests.nothingSeen() : worse;
        Uncertain between = read.minus(other);
        return (deeper || (stood.isEmpty() && !tests.texts().isEmpty()))
                && between.isStated()
                && Math.abs(between.value()) > between.expandedUncertainty();
    }

    private void readings(ReachLevels read, Dip dip, List<Working> workings) {
        SoleProfile profile = dip.profile();
        workings.add(
                Answers.working(
                        "readings of the " + profile.surface(),
                        Uncertain.exact(profile.points().size()),
                        Unit.COUNT,
                        "places, at most "
                                + Decimals.with(profile.widestMm(), Unit.MM)
                                + " apart; the last "
                                + Decimals.with(unreadMm(read, profile), Unit.MM)
                                + " to the high end were not read"));
        String sill = dip.holdsWater() ? "sill, " : "nearer to the outlet, ";
        String low = dip.holdsWater() ? "lowest place behind it, " : "next, ";
        workings.add(below(sill, dip.sill()));
        workings.add(below(low, dip.low()));
        List<Pond> ponds = new ArrayList<>(Pond.of(profile, read.endMm()));
        ponds.sort(Comparator.comparingDouble(Pond::depthMm).reversed());
        for (Pond pond : ponds.subList(0, Math.min(NAMED, ponds.size()))) {
            workings.add(working(read, pond));
        }
        if (ponds.isEmpty()) {
            workings.add(
                    new Working(
                            "back-fall",
                            "none",
                            "no reading lies lower than one nearer to the outlet"));
        }
    }

    private static double unreadMm(ReachLevels read, SoleProfile profile) {
        List<Point> points = profile.points();
        return Math.max(0, read.endMm() - points.get(points.size() - 1).toOutletMm());
    }

    private static Working below(String which, Point point) {
        return Answers.working(which + point.text(), point.below(), Unit.MM, "below datum");
    }

    private Working working(ReachLevels read, Pond pond) {
        Found<Gutter> gutter = trough.gutter();
        Pond.Depth one = pond.surface().get(0);
        Pond.Depth other = pond.surface().get(pond.surface().size() - 1);
        return new Working(
                "pond at " + pond.lowest().text(),
                Decimals.with(pond.depthMm(), Unit.MM) + " deep",
                "from "
                        + read.text(read.place(one.toOutletMm()))
                        + " to "
                        + read.text(read.place(other.toOutletMm()))
                        + ", "
                        + Decimals.with(pond.lengthMm(), Unit.MM)
                        + " long"
                        + PondVolume.litres(pond, gutter)
                                .map(it -> ", about " + Decimals.with(it, Unit.LITRE))
                                .orElse("")
                        + "; the sole taken as straight between readings");
    }

    private Answers shownOn(ReachLevels read, Optional<Dip> dip) {
        return dip.filter(Dip::holdsWater)
                .filter(it -> it.sill().spot().straight() == it.low().spot().straight())
                .map(it -> between(it.sill().spot(), it.low().spot()))
                .orElseGet(() -> read.reach().shownOn(trough, answers));
    }

    private Answers between(Spot sill, Spot low) {
        return answers.on(
                trough.straight(sill.straight()).id(),
                Math.min(sill.stationMm(), low.stationMm()),
                Math.max(sill.stationMm(), low.stationMm()));
    }

    private void gap(ReachLevels read, String why) {
        Reach reach = read.reach();
        reach.shownOn(trough, answers)
                .gap(Facts.PondDepth.class, why, trough.id(), reach.outlet().id(), reach.side());
    }
}
