package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Run.Fascia;
import eavesproof.job.Run.Fitting;
import eavesproof.job.Run.Fixing;
import eavesproof.job.Run.Joint;
import eavesproof.job.Said;
import eavesproof.job.WayPart.Outlet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What holds the gutter up and is no bracket is asked what a bracket is asked. */
class HoldersTest {
    private static final List<Class<? extends Facts.Fact>> ASKED =
            List.of(
                    Facts.BracketHoles.class,
                    Facts.EmptyHoles.class,
                    Facts.ScrewMetal.class,
                    Facts.ScrewBite.class,
                    Facts.BracketCapacity.class);

    private final AJob job = new AJob();

    HoldersTest() {
        job.a1.lengthMm = 2000.0;
        job.a1.bracket("b1", 100.0).bracket("b2", 1900.0);
    }

    private static Fixing fixing(Integer screws) {
        Said<Double> carries = new Said<>(250.0, "told", "the maker", null);
        return new Fixing(screws, 3, "brass", 4.0, 28.0, carries);
    }

    private void fitting(String screwed, String carries, Fixing fixing) {
        job.a1.fittings.add(new Fitting("h1", null, 1000.0, screwed, "yes", carries, fixing));
    }

    private void assertAsked(String id) {
        Seen seen = job.survey();
        assertTrue(
                seen.facts(Facts.BracketHoles.class).contains(new Facts.BracketHoles("a", id, 3)));
        assertTrue(seen.facts(Facts.EmptyHoles.class).contains(new Facts.EmptyHoles("a", id, 1)));
        assertTrue(
                seen.facts(Facts.ScrewMetal.class)
                        .contains(new Facts.ScrewMetal("a", id, "brass")));
        assertEquals(new Facts.ScrewBite("a", id, 28), seen.fact(Facts.ScrewBite.class));
        assertEquals(
                "told by the maker",
                seen.known(new Facts.BracketCapacity("a", id, 250)).provenance().text());
        // Half of 900 mm on its left and of 900 mm on its right.
        assertTrue(
                seen.facts(Facts.BracketShare.class)
                        .contains(new Facts.BracketShare("a", id, 900)));
    }

    @Test
    void aScrewedFittingThatCarriesTheGutter() {
        fitting("yes", "yes", fixing(2));
        assertAsked("h1");
    }

    @Test
    void aScrewedJoint() {
        job.a1.joints.add(
                new Joint("h1", "gasket", 1000.0, null, null, null, null, "yes", fixing(2)));
        assertAsked("h1");
    }

    @Test
    void aScrewedOutlet() {
        job.part(outlet("yes", fixing(2)));
        assertAsked("h1");
    }

    private static Outlet outlet(String screwed, Fixing fixing) {
        return new Outlet(
                "h1",
                null,
                null,
                "a1",
                1000.0,
                100.0,
                "sliding",
                AJob.said("no"),
                AJob.said("yes"),
                null,
                null,
                screwed,
                fixing,
                null,
                null,
                null,
                null,
                null);
    }

    @Test
    void whereNothingOfItsFixingIsRecordedEachIsAGap() {
        fitting("yes", "yes", null);
        Seen seen = job.survey();
        for (Class<? extends Facts.Fact> type : ASKED) {
            assertEquals(1, seen.gaps(type).stream().filter(it -> it.contains("h1")).count());
        }
        assertTrue(
                seen.gaps(Facts.BracketCapacity.class)
                        .contains("a h1: what fitting h1 carries is not recorded"));
    }

    @Test
    void whetherItsTimberIsSoundIsAskedToo() {
        job.a1.fascia =
                new Fascia(0.0, 2000.0, "pine", null, Said.nothing(), AJob.said("no"), null);
        fitting("yes", "yes", fixing(2));
        assertTrue(
                job.survey()
                        .facts(Facts.TimberSound.class)
                        .contains(new Facts.TimberSound("a", "h1", "no")));
    }

    @Test
    void whatIsScrewedOnWithoutAScrewContradictsItself() {
        fitting("yes", "yes", fixing(0));
        Seen seen = job.survey();
        String why = "fitting h1 is recorded as screwed to the fascia and without a screw";
        assertEquals(List.of("a a1: " + why), seen.gaps(Facts.SupportCount.class));
        for (Class<? extends Facts.Fact> type : ASKED) {
            assertTrue(seen.gaps(type).contains("a h1: " + why), type.getSimpleName());
        }
        assertEquals(1, seen.gaps(Facts.BracketSpacing.class).size());
    }

    @Test
    void ofWhatMayBeScrewedOnEachIsAGap() {
        job.part(outlet(null, fixing(2)));
        Seen seen = job.survey();
        for (Class<? extends Facts.Fact> type : ASKED) {
            assertTrue(
                    seen.gaps(type)
                            .contains(
                                    "a h1: whether outlet h1 is screwed to the fascia is not"
                                            + " recorded"),
                    type.getSimpleName());
        }
    }

    @Test
    void whatIsNotScrewedOnOrCarriesNothingIsNotAsked() {
        fitting("yes", "no", null);
        job.part(outlet("no", null));
        Seen seen = job.survey();
        for (Class<? extends Facts.Fact> type : ASKED) {
            assertTrue(seen.gaps(type).stream().noneMatch(it -> it.contains("h1")));
        }
        assertEquals(2, seen.fact(Facts.SupportCount.class).count());
    }

    @Test
    void absentJointsMayHoldTheGutterToo() {
        job.a1.joints = null;
        for (Class<? extends Facts.Fact> type : ASKED) {
            assertTrue(
                    job.survey()
                            .gaps(type)
                            .contains("a: the joints of straight a1 are not recorded"));
        }
    }

    @Test
    void aFittingIsABracketBesideTheEndOfTheTimberAndBesideAnOutlet() {
        job.a1.brackets.clear();
        fitting("yes", "yes", fixing(2));
        job.outlet("o1", "a1", 1200.0);
        Seen seen = job.survey();
        assertTrue(
                seen.facts(Facts.TimberEndBracket.class)
                        .contains(new Facts.TimberEndBracket("a", "a1.left", 1000)));
        assertEquals(
                List.of(new Facts.OutletClearance("a", "o1", "h1", 150)),
                seen.facts(Facts.OutletClearance.class));
        job.a1.fittings = null;
        assertEquals(
                List.of("a o1: the fittings of straight a1 are not recorded"),
                job.survey().gaps(Facts.OutletClearance.class));
    }
}
