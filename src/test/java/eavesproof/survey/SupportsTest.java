package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.job.Run.Bracket;
import eavesproof.job.Run.Fitting;
import eavesproof.job.WayPart;
import java.util.List;
import org.junit.jupiter.api.Test;

class SupportsTest {
    private final AJob job = new AJob();

    private List<Facts.BracketSpacing> spacings() {
        return job.survey().facts(Facts.BracketSpacing.class);
    }

    private List<String> spacingGaps() {
        return job.survey().gaps(Facts.BracketSpacing.class);
    }

    @Test
    void aSpacingIsTheDifferenceOfTwoStations() {
        job.a1.bracket("b1", 50.0).bracket("b2", 540.0);
        assertEquals(List.of(new Facts.BracketSpacing("a", "b1", "b2", 490)), spacings());
    }

    /** Class II to 1 m: 0.3 + 0.2 = 0.5 mm each; 0.5 / sqrt 3 x sqrt 2 = 0.408 mm. Arithmetic. */
    @Test
    void aSpacingIsAsUnsureAsItsTwoStations() {
        job.a1.bracket("b1", 50.0).bracket("b2", 540.0);
        Facts.BracketSpacing spacing = spacings().get(0);
        assertEquals(0.408, job.survey().value(spacing).standardUncertainty(), 0.0005);
    }

    @Test
    void aSpacingIsShownWhereItIs() {
        job.a1.bracket("b1", 50.0).bracket("b2", 540.0);
        Answer.Known known = job.survey().known(spacings().get(0));
        assertEquals(
                Place.of("run", "a", "from", "b1", "to", "b2").keys().values().toString(),
                known.place().keys().values().toString());
        assertEquals(new Place.Stretch("a1", 50, 540), known.place().stretch().orElseThrow());
        assertEquals("490 mm", known.measure().text());
    }

    @Test
    void theOrderInWhichBracketsAreWrittenDoesNotMatter() {
        job.a1.bracket("b2", 540.0).bracket("b3", 900.0).bracket("b1", 50.0);
        assertEquals(
                List.of(
                        new Facts.BracketSpacing("a", "b1", "b2", 490),
                        new Facts.BracketSpacing("a", "b2", "b3", 360)),
                spacings());
    }

    @Test
    void aBracketWithoutAScrewSupportsNothing() {
        job.a1.bracket("b1", 50.0).bracket("b3", 950.0);
        job.a1.brackets.add(new Bracket("b2", 500.0, 0, 4, null, null, null));
        assertEquals(List.of(new Facts.BracketSpacing("a", "b1", "b3", 900)), spacings());
        assertEquals(
                new Facts.SupportCount("a", "a1", 2), job.survey().fact(Facts.SupportCount.class));
    }

    @Test
    void aBracketWhoseScrewsNobodyCountedMayBeNoSupport() {
        job.a1.bracket("b1", 50.0).bracket("b3", 950.0).bracket("b4", 1400.0);
        job.a1.brackets.add(new Bracket("b2", 500.0, null, 4, null, null, null));
        assertEquals(List.of("a b1 b3: the screws of bracket b2 are not recorded"), spacingGaps());
        assertEquals(List.of(new Facts.BracketSpacing("a", "b3", "b4", 450)), spacings());
        assertEquals(
                List.of("a a1: the screws of bracket b2 are not recorded"),
                job.survey().gaps(Facts.SupportCount.class));
    }

    @Test
    void aFittingThatIsScrewedOnAndDoesNotCarryTheGutterSupportsNothing() {
        job.a1.bracket("b1", 50.0).bracket("b2", 950.0);
        job.a1.fittings.add(new Fitting("f1", "leaf guard", 500.0, "yes", null, "no", null));
        assertEquals(List.of(new Facts.BracketSpacing("a", "b1", "b2", 900)), spacings());
        job.a1.fittings.set(0, new Fitting("f1", "leaf guard", 500.0, "yes", null, null, null));
        assertEquals(
                List.of("a b1 b2: whether fitting f1 carries the gutter is not recorded"),
                spacingGaps());
        job.a1.fittings.set(0, new Fitting("f1", "leaf guard", 500.0, "no", null, null, null));
        assertEquals(1, spacings().size());
    }

    @Test
    void whatIsScrewedToTheFasciaSupportsTheGutterToo() {
        job.a1.bracket("b1", 0.0).joint("j1", "cemented", 500.0, "yes");
        job.a1.fitting("f1", 900.0, "yes").bracket("b2", 1400.0).fitting("f2", 1000.0, "no");
        job.part(
                new WayPart.Outlet(
                        "o1",
                        null,
                        null,
                        "a1",
                        2000.0,
                        100.0,
                        "fixed",
                        AJob.said("no"),
                        AJob.said("no"),
                        null,
                        null,
                        "yes",
                        null,
                        null,
                        null,
                        null,
                        null,
                        null));
        assertEquals(
                List.of("b1 j1 500.0", "j1 f1 400.0", "f1 b2 500.0", "b2 o1 600.0"),
                spacings().stream()
                        .map(it -> String.join(" ", it.from(), it.to(), "" + it.centresMm()))
                        .toList());
        assertEquals(
                new Facts.SupportCount("a", "a1", 5), job.survey().fact(Facts.SupportCount.class));
    }

    @Test
    void aThingThatMayBeScrewedMakesGapsOnlyOfWhatItCouldChange() {
        job.a1.bracket("b1", 0.0).bracket("b2", 500.0).bracket("b3", 1000.0);
        job.a1.fitting("f1", 700.0, "unknown");
        assertEquals(List.of(new Facts.BracketSpacing("a", "b1", "b2", 500)), spacings());
        String why = "whether fitting f1 is screwed to the fascia is recorded as unknown";
        assertEquals(List.of("a b2 b3: " + why), spacingGaps());
        assertEquals(List.of("a a1: " + why), job.survey().gaps(Facts.SupportCount.class));
        assertEquals(2, job.survey().facts(Facts.EndSupport.class).size());
    }

    @Test
    void aBracketWithoutAStationCountsButMayBeAnywhere() {
        job.a1.bracket("b1", 0.0).bracket("b2", null).bracket("b3", 1000.0);
        String why = "the station of bracket b2 is not recorded";
        assertEquals(List.of(), spacings());
        assertEquals(List.of("a: " + why), spacingGaps());
        assertEquals(
                new Facts.SupportCount("a", "a1", 3), job.survey().fact(Facts.SupportCount.class));
        assertEquals(
                List.of("a a1.left: " + why, "a a1.right: " + why),
                job.survey().gaps(Facts.EndSupport.class));
    }

    @Test
    void absentBracketsAreAGap() {
        job.a1.brackets = null;
        String why = "the brackets of straight a1 are not recorded";
        assertEquals(List.of("a: " + why), spacingGaps());
        assertEquals(List.of("a a1: " + why), job.survey().gaps(Facts.SupportCount.class));
    }

    @Test
    void absentFittingsJointsOrWayMayHoldSupportsToo() {
        job.a1.bracket("b1", 0.0).bracket("b2", 500.0);
        job.a1.fittings = null;
        assertEquals(List.of("a: the fittings of straight a1 are not recorded"), spacingGaps());
        job.a1.fittings = List.of();
        job.a1.joints = null;
        assertEquals(List.of("a: the joints of straight a1 are not recorded"), spacingGaps());
        job.a1.joints = List.of();
        job.way = null;
        assertEquals(List.of("a: the way of the water is not recorded"), spacingGaps());
    }

    @Test
    void anOutletOnNoStraightMayBeScrewedToAny() {
        job.a1.bracket("b1", 0.0).bracket("b2", 500.0);
        job.outlet("o1", null, 250.0);
        assertEquals(1, spacings().size(), "it is not screwed to anything");
        job.part(
                new WayPart.Outlet(
                        "o2",
                        null,
                        null,
                        null,
                        250.0,
                        null,
                        null,
                        AJob.said(null),
                        AJob.said(null),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null));
        assertEquals(List.of("a: which straight outlet o2 is on is not recorded"), spacingGaps());
    }

    @Test
    void noBracketsAreNoSpacingsButACountOfNone() {
        Seen seen = job.survey();
        assertEquals(
                List.of("a: straight a1 has no support"), seen.none(Facts.BracketSpacing.class));
        assertEquals(new Facts.SupportCount("a", "a1", 0), seen.fact(Facts.SupportCount.class));
        assertEquals(
                List.of(
                        "a a1.left: straight a1 has no support",
                        "a a1.right: straight a1 has no support"),
                seen.none(Facts.EndSupport.class));
    }

    @Test
    void oneSupportIsNoSpacing() {
        job.a1.bracket("b1", 50.0);
        assertEquals(
                List.of("a: straight a1 has only one support"),
                job.survey().none(Facts.BracketSpacing.class));
    }

    @Test
    void theSpansToTheEndsAreFactsToo() {
        job.a1.bracket("b1", 50.0).bracket("b2", 9900.0);
        assertEquals(
                List.of(
                        new Facts.EndSupport("a", "a1.left", 50),
                        new Facts.EndSupport("a", "a1.right", 100)),
                job.survey().facts(Facts.EndSupport.class));
    }

    /** Nobody can say that an end hangs free while something may hold it. */
    @Test
    void whereNothingIsKnownToHoldAndSomethingMayTheSpansToTheEndsAreGaps() {
        job.a1.fitting("f1", 1200.0, null).joint("j1", "cemented", 900.0, "no");
        String why = "whether fitting f1 is screwed to the fascia is not recorded";
        Seen seen = job.survey();
        assertEquals(
                List.of("a a1.left: " + why, "a a1.right: " + why),
                seen.gaps(Facts.EndSupport.class));
        assertEquals(List.of("a j1: " + why), seen.gaps(Facts.JointSupport.class));
        assertEquals(List.of(), seen.none(Facts.EndSupport.class));
    }

    @Test
    void whatMayHoldOneEndLeavesTheOtherKnown() {
        job.a1.bracket("b1", 500.0).bracket("b2", 9000.0).fitting("f1", 200.0, null);
        Seen seen = job.survey();
        assertEquals(
                List.of(new Facts.EndSupport("a", "a1.right", 1000)),
                seen.facts(Facts.EndSupport.class));
        assertEquals(
                List.of("a a1.left: whether fitting f1 is screwed to the fascia is not recorded"),
                seen.gaps(Facts.EndSupport.class));
    }

    @Test
    void whatMayHoldAJointOnlyFromFartherAwayLeavesItKnown() {
        job.a1.bracket("b1", 1100.0).joint("j1", "cemented", 1000.0, "no");
        job.a1.fitting("f1", 850.0, null);
        assertEquals(
                new Facts.JointSupport("a", "j1", 100),
                job.survey().fact(Facts.JointSupport.class));
        job.a1.fitting("f2", 950.0, null);
        assertEquals(
                List.of("a j1: whether fitting f2 is screwed to the fascia is not recorded"),
                job.survey().gaps(Facts.JointSupport.class));
    }

    @Test
    void withoutALengthTheSpanToTheRightEndIsAGap() {
        job.a1.bracket("b1", 50.0).lengthMm = null;
        assertEquals(
                List.of("a a1.right: the length of straight a1 is not recorded"),
                job.survey().gaps(Facts.EndSupport.class));
        assertEquals(
                List.of("a a1: the length of straight a1 is not recorded"),
                job.survey().gaps(Facts.StraightLength.class));
    }

    @Test
    void spacingsDoNotGoRoundACorner() {
        job.a1.bracket("b1", 9900.0);
        job.straight("a2").bracket("b2", 100.0);
        assertEquals(List.of(), spacings());
    }

    @Test
    void aJointIsHeldByTheNearestSupport() {
        job.a1.bracket("b1", 400.0).bracket("b2", 700.0);
        job.a1.joint("j1", "cemented", 500.0, "no").joint("j2", "cemented", 600.0, "no");
        assertEquals(
                List.of(
                        new Facts.JointSupport("a", "j1", 100),
                        new Facts.JointSupport("a", "j2", 100)),
                job.survey().facts(Facts.JointSupport.class));
    }

    @Test
    void aScrewedJointHoldsItself() {
        job.a1.bracket("b1", 400.0).joint("j1", "cemented", 500.0, "yes");
        Seen seen = job.survey();
        Facts.JointSupport itself = seen.fact(Facts.JointSupport.class);
        assertEquals(0, itself.distanceMm());
        assertEquals(0, seen.value(itself).standardUncertainty());
    }

    @Test
    void aJointThatMayHoldItselfIsAGap() {
        job.a1.bracket("b1", 400.0).joint("j1", "cemented", 500.0, null);
        assertEquals(
                List.of("a j1: whether joint j1 is screwed to the fascia is not recorded"),
                job.survey().gaps(Facts.JointSupport.class));
    }

    @Test
    void jointsAreMissingNoneOrNowhere() {
        job.a1.joints = null;
        assertEquals(
                List.of("a: the joints of straight a1 are not recorded"),
                job.survey().gaps(Facts.JointSupport.class));
        job.a1.joints = List.of();
        assertEquals(
                List.of("a: straight a1 has no joint"),
                job.survey().none(Facts.JointSupport.class));
        job.a1.joints = new java.util.ArrayList<>();
        job.a1.bracket("b1", 400.0).joint("j1", "cemented", null, "no");
        assertEquals(
                List.of("a j1: the station of joint j1 is not recorded"),
                job.survey().gaps(Facts.JointSupport.class));
    }
}
