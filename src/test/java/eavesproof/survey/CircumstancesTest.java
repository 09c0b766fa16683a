package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Job;
import eavesproof.job.Said;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CircumstancesTest {
    private final AJob job = new AJob();

    @Test
    void theGutterOfARunIsDescribed() {
        Seen seen = job.survey();
        assertEquals(new Facts.GutterKind("a", "eaves"), seen.fact(Facts.GutterKind.class));
        assertEquals(new Facts.GutterMaterial("a", "PVC-U"), seen.fact(Facts.GutterMaterial.class));
        assertEquals(new Facts.Jointing("a", "cemented"), seen.fact(Facts.Jointing.class));
        assertEquals(new Facts.GutterWidth("a", 100), seen.fact(Facts.GutterWidth.class));
    }

    @ParameterizedTest
    @CsvSource({
        "PVC-U, plastic",
        "copper, metal",
        "zinc-aluminium coated steel, metal",
        "timber, other",
        "fibre cement, other",
        "other, other"
    })
    void theFamilyFollowsFromTheMaterial(String material, String family) {
        job.gutter = AJob.gutter("eaves", material, "cemented", null);
        assertEquals(
                new Facts.MaterialFamily("a", family),
                job.survey().fact(Facts.MaterialFamily.class));
    }

    @Test
    void whatIsNotSaidOfAGutterIsAGap() {
        job.gutter = AJob.gutter(null, null, null, null);
        Seen seen = job.survey();
        assertEquals(
                List.of("a: the kind of gutter g is not recorded"),
                seen.gaps(Facts.GutterKind.class));
        assertEquals(
                List.of("a: the material of gutter g is not recorded"),
                seen.gaps(Facts.MaterialFamily.class));
        assertEquals(
                List.of("a: the width of gutter g is not recorded"),
                seen.gaps(Facts.GutterWidth.class));
    }

    @Test
    void anAbsentGutterIsAGapOfAllItWouldSay() {
        job.gutter = null;
        for (var type :
                List.of(
                        Facts.GutterKind.class,
                        Facts.GutterMaterial.class,
                        Facts.MaterialFamily.class,
                        Facts.Jointing.class,
                        Facts.GutterWidth.class)) {
            assertEquals(List.of("a: gutter g is not recorded"), job.survey().gaps(type));
        }
    }

    @Test
    void circumstancesComeWithWhoSaysSo() {
        job.circumstances =
                AJob.circumstances(
                        new Said<>("yes", "assumed", "A. Fitter", null), AJob.said("no"));
        Seen seen = job.survey();
        Answer.Known snow = seen.known(new Facts.SnowArea("a", "yes"));
        assertTrue(snow.provenance().isAssumed());
        assertEquals("assumed by A. Fitter", snow.workings().get(0).from());
        assertEquals(new Facts.HeavyRain("a", "no"), seen.fact(Facts.HeavyRain.class));
    }

    @Test
    void howAGutterIsHeldIsAWordOfItsRun() {
        assertEquals(
                List.of(
                        "a: whether run a slides in its brackets or is fixed through is not recorded"),
                job.survey().gaps(Facts.GutterHeld.class));
        job.held = "fixed through";
        assertEquals(
                new Facts.GutterHeld("a", "fixed through"),
                job.survey().fact(Facts.GutterHeld.class));
    }

    @Test
    void aSnowLoadOnTheGroundSaysThatSnowLiesWhateverElseIsSaid() {
        job.circumstances = snow("no", 5.0);
        Answer.Known snow = job.survey().known(new Facts.SnowArea("a", "yes"));
        assertEquals(
                "whether snow lies at the site (recorded as no, and with a ground snow of 5 kN/m2:"
                        + " the worse counts)",
                snow.workings().get(0).name());
        assertEquals("told by the council", snow.workings().get(0).from());
        job.circumstances = snow("no", 0.0);
        assertEquals(new Facts.SnowArea("a", "no"), job.survey().fact(Facts.SnowArea.class));
    }

    private static Job.Circumstances snow(String lies, Double groundKnM2) {
        return new Job.Circumstances(
                AJob.said(lies),
                AJob.said("no"),
                new Said<>(groundKnM2, "told", "the council", null),
                Said.nothing(),
                Said.nothing(),
                Said.nothing(),
                Said.nothing(),
                null);
    }

    @Test
    void aStatementCountsThoughNobodyIsNamed() {
        job.circumstances = AJob.circumstances(new Said<>("yes", null, null, null), Said.nothing());
        Answer.Known snow = job.survey().known(new Facts.SnowArea("a", "yes"));
        assertEquals("not said", snow.provenance().how());
        assertEquals("how it is known is not said, nobody is named", snow.workings().get(0).from());
    }

    @Test
    void unknownAndAbsentCircumstancesAreGaps() {
        job.circumstances = AJob.circumstances(AJob.said("unknown"), Said.nothing());
        assertEquals(
                List.of("a: whether snow lies at the site is recorded as unknown"),
                job.survey().gaps(Facts.SnowArea.class));
        assertEquals(
                List.of("a: whether the site has heavy rain is not recorded"),
                job.survey().gaps(Facts.HeavyRain.class));
        job.circumstances = null;
        assertEquals(
                List.of("a: whether snow lies at the site is not recorded"),
                job.survey().gaps(Facts.SnowArea.class));
    }
}
