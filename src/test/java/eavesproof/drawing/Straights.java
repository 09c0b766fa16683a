package eavesproof.drawing;

import eavesproof.job.Run;
import eavesproof.job.Said;
import eavesproof.job.WayPart;
import eavesproof.judge.Verdict;
import eavesproof.survey.WaterLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Straights for the tests, by hand and by chance. */
final class Straights {
    private static final List<String> ENDS = List.of("stop end", "corner", "open");
    private static final List<Verdict> OPEN =
            List.of(Verdict.DOES_NOT_COMPLY, Verdict.TOO_CLOSE, Verdict.NOT_RECORDED);

    private Straights() {}

    static Run.Straight bare(String id, Double lengthMm) {
        return new Run.Straight(
                id, lengthMm, null, null, null, null, null, null, null, null, null, null, null);
    }

    static Run.Straight with(
            double lengthMm, List<Run.Reading> readings, List<Run.Bracket> brackets) {
        return new Run.Straight(
                "a1",
                lengthMm,
                null,
                new Run.End("stop end", null),
                new Run.End("corner", null),
                readings,
                brackets,
                List.of(),
                List.of(),
                List.of(),
                null,
                new Run.Fascia(
                        -20.0, lengthMm + 20, null, null, Said.nothing(), Said.nothing(), null),
                null);
    }

    static Run.Bracket bracket(String id, Double stationMm) {
        return new Run.Bracket(id, stationMm, null, null, null, null, null);
    }

    static Run.Reading sole(double stationMm, double belowMm, String setUp, String tie) {
        return new Run.Reading(stationMm, "sole", belowMm, setUp, null, tie);
    }

    static WayPart.Outlet outlet(String id, Double stationMm, Double bodyMm) {
        return new WayPart.Outlet(
                id,
                null,
                null,
                "a1",
                stationMm,
                bodyMm,
                null,
                Said.nothing(),
                Said.nothing(),
                null,
                null,
                null,
                null,
                80.0,
                null,
                null,
                null,
                null);
    }

    static Built built(Run.Straight straight, Numbered... findings) {
        return new Built("a", straight, List.of(), List.of(findings), List.of(), Optional.empty());
    }

    static Built wet(Run.Straight straight, WaterLine water) {
        return new Built("a", straight, List.of(), List.of(), List.of(), Optional.of(water));
    }

    /** A box gutter 100 mm wide and 60 mm deep whose front is the lower one, by 10 mm. */
    static WaterLine water(WaterLine.At... along) {
        WaterLine.At nearest = along[0];
        for (WaterLine.At at : along) {
            nearest = at.freeboardMm() < nearest.freeboardMm() ? at : nearest;
        }
        return new WaterLine(
                List.of(along),
                nearest,
                WaterLine.Lip.FRONT,
                50,
                List.of(
                        new WaterLine.Across(0, 60),
                        new WaterLine.Across(0, 0),
                        new WaterLine.Across(100, 0),
                        new WaterLine.Across(100, 50)));
    }

    /** So deep in that gutter. */
    static WaterLine.At deep(double stationMm, double depthMm) {
        return new WaterLine.At("a1", stationMm, depthMm, 50 - depthMm);
    }

    /** Anything that a record can hold, crowded or empty. */
    static Built random(long seed) {
        Random chance = new Random(seed);
        double length = 200 + chance.nextInt(60000);
        List<Run.Bracket> brackets = new ArrayList<>();
        int count = chance.nextInt(120);
        for (int i = 0; i < count; i++) {
            brackets.add(bracket("bracket" + i, at(chance, length)));
        }
        List<Run.Joint> joints = new ArrayList<>();
        List<Run.Fitting> fittings = new ArrayList<>();
        List<WayPart.Outlet> outlets = new ArrayList<>();
        List<Run.KeepClear> zones = new ArrayList<>();
        List<Run.Reading> readings = new ArrayList<>();
        for (int i = chance.nextInt(6); i > 0; i--) {
            joints.add(
                    new Run.Joint(
                            "j" + i,
                            chance.nextBoolean() ? "expansion" : "gasket",
                            at(chance, length),
                            null,
                            null,
                            null,
                            null,
                            chance.nextBoolean() ? "yes" : null,
                            null));
            fittings.add(
                    new Run.Fitting(
                            "f" + i, "piece", at(chance, length), "yes", null, "yes", null));
            outlets.add(outlet("o" + i, at(chance, length), chance.nextBoolean() ? 160.0 : null));
            double from = at(chance, length);
            zones.add(new Run.KeepClear("z" + i, "above a door", from, from + chance.nextInt(900)));
            readings.add(
                    sole(at(chance, length), chance.nextInt(60), "L" + chance.nextInt(2), null));
        }
        List<Slope> slopes = new ArrayList<>();
        for (int i = chance.nextInt(3); i > 0; i--) {
            double from = at(chance, length);
            slopes.add(
                    new Slope(from, from + (length - from) / 2, chance.nextBoolean(), "2.1 mm/m"));
        }
        Run.Straight straight =
                new Run.Straight(
                        "a1",
                        length,
                        null,
                        end(chance),
                        end(chance),
                        readings,
                        brackets,
                        fittings,
                        joints,
                        zones,
                        null,
                        chance.nextBoolean()
                                ? null
                                : new Run.Fascia(
                                        -500.0,
                                        length + 300,
                                        null,
                                        null,
                                        Said.nothing(),
                                        Said.nothing(),
                                        null),
                        null);
        return new Built(
                "a", straight, outlets, findings(chance, length), slopes, water(chance, length));
    }

    private static Optional<WaterLine> water(Random chance, double length) {
        return chance.nextBoolean()
                ? Optional.empty()
                : Optional.of(
                        water(
                                deep(0, chance.nextInt(80)),
                                deep(length / 2, chance.nextInt(80)),
                                deep(length, chance.nextInt(80))));
    }

    private static List<Numbered> findings(Random chance, double length) {
        List<Numbered> findings = new ArrayList<>();
        int blocks = chance.nextInt(8);
        for (int block = 1; block <= blocks; block++) {
            Verdict verdict = OPEN.get(chance.nextInt(OPEN.size()));
            int rows = chance.nextInt(40);
            for (int row = 1; row <= rows; row++) {
                double from = at(chance, length);
                double to = chance.nextBoolean() ? from : from + (length - from) / 3;
                findings.add(new Numbered(block, row, verdict, from, to));
            }
        }
        return findings;
    }

    private static Run.End end(Random chance) {
        int which = chance.nextInt(ENDS.size() + 1);
        return which == ENDS.size()
                ? null
                : new Run.End(ENDS.get(which), chance.nextBoolean() ? 15.0 : null);
    }

    private static double at(Random chance, double length) {
        return Math.rint(chance.nextDouble() * length);
    }
}
