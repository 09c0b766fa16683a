package eavesproof.survey;

import eavesproof.job.Instrument.SetUp;
import eavesproof.job.Run.Fascia;
import eavesproof.job.Run.Reading;
import eavesproof.job.Run.Straight;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Whether the fascia itself is straight: how far its edge departs from the line between the two
 * outermost readings, where it does most. A gutter that follows a crooked fascia sags with it.
 * Nobody has to read it, and no reading of it stands for one of the gutter.
 */
final class FasciaLine {
    private static final int FEWEST = 3;

    private final Trough trough;
    private final Straight straight;
    private final Answers answers;

    private FasciaLine(Trough trough, Straight straight, Answers answers) {
        this.trough = trough;
        this.straight = straight;
        this.answers = answers;
    }

    static void answer(Trough trough, Answers answers) {
        trough.straights().forEach(it -> new FasciaLine(trough, it, answers).answer());
    }

    /** An edge at its station, below the datum of its set-up. */
    private record Edge(double stationMm, Uncertain below) {}

    private void answer() {
        Fascia fascia = straight.fascia();
        List<Reading> readings = fascia == null ? null : fascia.edgeReadings();
        String of = "the edge of the fascia of straight " + straight.id();
        List<Edge> edges = readings == null ? List.of() : ofOneSetUp(readings);
        if (readings == null) {
            gap("the levels of " + of + " are not recorded");
        } else if (readings.isEmpty()) {
            String why = of + " was not read";
            answers.none(Facts.FasciaSag.class, why, trough.id(), straight.id());
        } else if (edges.size() < FEWEST) {
            gap(of + " was not read at three places from one set-up");
        } else {
            known(edges);
        }
    }

    private void gap(String why) {
        answers.gap(Facts.FasciaSag.class, why, trough.id(), straight.id());
    }

    /** Those of the set-up that read the most places, from left to right. */
    private List<Edge> ofOneSetUp(List<Reading> readings) {
        Map<String, TreeMap<Double, Edge>> bySetUp = new TreeMap<>();
        for (Reading reading : readings) {
            Double station = reading.stationMm();
            Double below = reading.belowMm();
            String setUp = reading.setUp();
            if (station != null && below != null && setUp != null) {
                bySetUp.computeIfAbsent(setUp, it -> new TreeMap<>())
                        .putIfAbsent(station, edge(station, below, setUp, reading.measuredWith()));
            }
        }
        return bySetUp.values().stream()
                .max(Comparator.comparingInt(TreeMap::size))
                .<List<Edge>>map(it -> new ArrayList<>(it.values()))
                .orElse(List.of());
    }

    private Edge edge(double station, double below, String setUp, @Nullable String with) {
        String of = "edge of the fascia at " + Decimals.plain(station, 1) + " on " + straight.id();
        double stood =
                trough.instruments()
                        .setUp(setUp)
                        .filter(it -> straight.id().equals(it.on()))
                        .map(SetUp::stationMm)
                        .orElse(0.0);
        Uncertain read =
                trough.instruments().read(below, of, with, "the readings on " + straight.id());
        return new Edge(station, read.plus(trough.instruments().levelLine(setUp, station - stood)));
    }

    private void known(List<Edge> edges) {
        Edge left = edges.get(0);
        Edge right = edges.get(edges.size() - 1);
        Uncertain most = Uncertain.exact(0);
        double at = left.stationMm();
        for (Edge edge : edges.subList(1, edges.size() - 1)) {
            double part =
                    (edge.stationMm() - left.stationMm()) / (right.stationMm() - left.stationMm());
            Uncertain line = left.below().times(1 - part).plus(right.below().times(part));
            Uncertain sag = edge.below().minus(line);
            if (at == left.stationMm() || Math.abs(sag.value()) > Math.abs(most.value())) {
                most = sag;
                at = edge.stationMm();
            }
        }
        answers.on(straight.id(), left.stationMm(), right.stationMm())
                .known(
                        new Facts.FasciaSag(trough.id(), straight.id(), most.value()),
                        most,
                        Answers.working(
                                "sag of the fascia",
                                most,
                                Unit.MM,
                                "below the line between its two outermost readings, most at "
                                        + Decimals.with(at, Unit.MM)));
    }
}
