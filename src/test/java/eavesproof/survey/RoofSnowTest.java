package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.job.Job;
import eavesproof.job.Said;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RoofSnowTest {
    private final AJob job = new AJob();

    private void snow(double groundKnM2, double onRoof, double weightKnM3) {
        job.circumstances =
                new Job.Circumstances(
                        AJob.said(groundKnM2 == 0 ? "no" : "yes"),
                        AJob.said("no"),
                        new Said<>(groundKnM2, "told", "the snow map", null),
                        Said.nothing(),
                        Said.nothing(),
                        Said.nothing(),
                        Said.nothing(),
                        List.of());
        Map<String, Basis.Stated> basis = new LinkedHashMap<>();
        basis.put("roof_snow", new Basis.Amount(onRoof, "a code"));
        basis.put("snow_weight_kn_m3", new Basis.Amount(weightKnM3, "a code"));
        job.basis = new Basis(basis);
    }

    private double overhang() {
        return job.survey().fact(Facts.OverhangingSnow.class).loadKnPerM();
    }

    /** EN 1991-1-3 6.3: s 1.5 kN/m2, d 0.5 m, 3 kN/m3, k = 0.5 x 3 = 1.5. Arithmetic. */
    @Test
    void halfAMetreOfSnowHangsOverByOneAndAnEighth() {
        snow(1.5, 1, 3);
        assertEquals(1.125, overhang(), 1e-12);
    }

    /** The same with s 6 kN/m2, so that d is 2 m and k = 3 / 2 and not 6: 1.5 x 36 / 3. */
    @Test
    void deepSnowHangsOverLessThanItWeighs() {
        snow(7.5, 0.8, 3);
        assertEquals(18, overhang(), 1e-12);
    }

    @Test
    void whereNoSnowLiesNoneHangsOver() {
        snow(0, 0.8, 3);
        assertEquals(0, overhang());
    }

    @Test
    void whatTheRuleSetDoesNotStateIsAGap() {
        snow(1.5, 0.8, 3);
        job.basis = Basis.NOTHING;
        assertEquals(
                List.of(
                        "a: the rule set does not state what part of the snow load on the ground"
                                + " lies on a roof"),
                job.survey().gaps(Facts.OverhangingSnow.class));
    }

    @Test
    void whatNobodySaidOfTheSnowIsAGap() {
        job.circumstances = null;
        assertEquals(
                List.of("a: the snow load on the ground is not recorded"),
                job.survey().gaps(Facts.OverhangingSnow.class));
        assertEquals(
                List.of(
                        "a a1: whether snow guards hold the snow above straight a1 is not recorded"),
                job.survey().gaps(Facts.SnowHeld.class));
    }
}
