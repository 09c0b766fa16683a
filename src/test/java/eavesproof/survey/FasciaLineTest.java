package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Run.Fascia;
import eavesproof.job.Run.Reading;
import eavesproof.job.Said;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FasciaLineTest {
    private final AJob job = new AJob();

    /** Read every 2 m. */
    private Seen edges(double... belowMm) {
        List<Reading> readings = new ArrayList<>();
        for (double below : belowMm) {
            double station = 2000.0 * readings.size();
            readings.add(new Reading(station, null, below, "s1", null, null));
        }
        return read(readings);
    }

    private Seen read(List<Reading> readings) {
        job.a1.fascia =
                new Fascia(0.0, 10_000.0, null, null, Said.nothing(), Said.nothing(), readings);
        return job.survey();
    }

    /** From 100 to 110 over 8 m the line is at 105 in the middle. */
    @Test
    void howFarAFasciaHangsBelowItsLine() {
        Facts.FasciaSag sag = edges(100, 102.5, 111, 107.5, 110).fact(Facts.FasciaSag.class);
        assertEquals(6, sag.sagMm(), 1e-9);
    }

    @Test
    void aFasciaMayBowUpToo() {
        assertEquals(-4, edges(100, 96, 100).fact(Facts.FasciaSag.class).sagMm(), 1e-9);
    }

    @Test
    void howeverSteepAStraightFasciaDoesNotSag() {
        assertEquals(0, edges(100, 110, 120).fact(Facts.FasciaSag.class).sagMm(), 1e-9);
    }

    /** Three readings of 0.5 / sqrt 3, half of each of the outer two: x sqrt 1.5. */
    @Test
    void itIsAsUnsureAsItsReadings() {
        Seen seen = edges(100, 100, 100);
        double u = seen.value(seen.fact(Facts.FasciaSag.class)).standardUncertainty();
        assertEquals(0.5 / Math.sqrt(3) * Math.sqrt(1.5), u, 1e-6);
    }

    /** A quarter of the way from 100 to 108 the line is at 102. */
    @Test
    void theLineRunsBetweenTheOutermostReadingsWhereverTheyAre() {
        List<Reading> readings = new ArrayList<>();
        readings.add(new Reading(1000.0, null, 100.0, "s1", null, null));
        readings.add(new Reading(3000.0, null, 107.0, "s1", null, null));
        readings.add(new Reading(9000.0, null, 108.0, "s1", null, null));
        assertEquals(5, read(readings).fact(Facts.FasciaSag.class).sagMm(), 1e-9);
    }

    /** 0.3 mm / sqrt 3 for each of 4 m, to the left and to the right, half of each. */
    @Test
    void whereTheInstrumentStoodMatters() {
        job.laser(0.3).setUp("s2", "laser", "a1", 4000.0);
        List<Reading> readings = new ArrayList<>();
        for (double at : new double[] {0, 4000, 8000}) {
            readings.add(new Reading(at, null, 100.0, "s2", null, null));
        }
        Seen seen = read(readings);
        double own = 0.5 / Math.sqrt(3);
        double line = 0.3 / Math.sqrt(3) * 4;
        assertEquals(
                Math.sqrt(1.5 * own * own + 0.5 * line * line),
                seen.value(seen.fact(Facts.FasciaSag.class)).standardUncertainty(),
                1e-6);
    }

    @Test
    void nobodyHasToReadAFascia() {
        assertEquals(
                List.of(
                        "a a1: the levels of the edge of the fascia of straight a1 are not recorded"),
                read(null).gaps(Facts.FasciaSag.class));
        assertEquals(1, read(List.of()).none(Facts.FasciaSag.class).size());
    }

    @Test
    void twoReadingsShowNoLineNorDoThoseOfTwoSetUps() {
        assertEquals(1, edges(100, 104).gaps(Facts.FasciaSag.class).size());
        List<Reading> two = new ArrayList<>();
        two.add(new Reading(0.0, null, 100.0, "s1", null, null));
        two.add(new Reading(5000.0, null, 100.0, "s1", null, null));
        two.add(new Reading(9000.0, null, 100.0, "s2", null, null));
        assertTrue(read(two).gaps(Facts.FasciaSag.class).get(0).endsWith("from one set-up"));
    }
}
