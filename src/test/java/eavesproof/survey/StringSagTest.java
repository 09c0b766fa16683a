package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Instrument;
import eavesproof.job.Instrument.SetUp;
import eavesproof.job.Instrument.StringLine;
import eavesproof.job.Run.Reading;
import eavesproof.quantity.Uncertain;
import org.junit.jupiter.api.Test;

/** A string of 1 g a metre over 8 m, pulled with 50 N. */
class StringSagTest {
    private final AJob job = new AJob();

    private Uncertain line(StringLine string, double alongMm) {
        job.instruments.put(
                "string", new Instrument("string", "string", null, null, null, 0.01, null, null));
        job.setUps.put("s2", new SetUp("s2", "string", "a1", 0.0, "yes", string));
        return new Instruments(job.build()).levelLine("s2", alongMm);
    }

    /**
     * Statics: 0.001 x 9.81 x 64 / (8 x 50) m = 1.57 mm, and 3/4 of it at a quarter of the span.
     */
    @Test
    void aStringHangsByItsMassItsSpanAndHowHardItIsPulled() {
        StringLine pulled = new StringLine(8000.0, null, 1.0, 50.0);
        assertEquals(1.5696, line(pulled, 4000).value(), 1e-9);
        assertEquals(1.5696 * 0.75, line(pulled, 2000).value(), 1e-9);
        assertEquals(0, line(pulled, 0).value());
        assertEquals(0, line(pulled, 8000).value(), 1e-9);
    }

    @Test
    void aSagThatIsStatedCountsAsItIs() {
        assertEquals(3, line(new StringLine(8000.0, 3.0, 1.0, 50.0), 4000).value(), 1e-9);
    }

    /** A fifth of 3 mm as greatest error, / sqrt 3, beside 0.01 mm a metre of the line. */
    @Test
    void howFarItHangsIsKnownToAFifth() {
        Uncertain line = line(new StringLine(8000.0, 3.0, null, null), 4000);
        assertEquals(Math.hypot(0.6, 0.04) / Math.sqrt(3), line.standardUncertainty(), 1e-9);
    }

    @Test
    void aStringOfWhichNobodySaysHowFarItHangsIsNoDatum() {
        assertFalse(line(null, 4000).isStated());
        assertFalse(line(new StringLine(8000.0, null, 1.0, null), 4000).isStated());
        assertFalse(line(new StringLine(null, 3.0, null, null), 4000).isStated());
        assertTrue(line(new StringLine(8000.0, 0.0, null, null), 4000).isStated());
    }

    @Test
    void beyondItsEndsThereIsNoString() {
        StringLine pulled = new StringLine(8000.0, null, 1.0, 50.0);
        assertFalse(line(pulled, -1).isStated());
        assertFalse(line(pulled, 8001).isStated());
    }

    /** 4 mm as read from a string that hangs 3 mm there are 7 mm below the line. */
    @Test
    void theSagIsAddedToWhatIsReadFromTheString() {
        job.a1.lengthMm = 8000.0;
        job.outlet("o1", "a1", 7950.0);
        line(new StringLine(8000.0, 3.0, null, null), 0);
        for (double[] read :
                new double[][] {
                    {0, 200},
                    {1000, 200.7},
                    {2000, 201.4},
                    {3000, 202},
                    {4000, 204},
                    {5000, 204},
                    {6000, 205},
                    {7000, 206},
                    {8000, 208}
                }) {
            job.a1.readings.add(new Reading(read[0], "sole", read[1], "s2", null, null));
        }
        assertEquals(3, job.survey().fact(Facts.SoleSag.class).sagMm(), 1e-9);
    }
}
