package eavesproof.findings;

import static eavesproof.findings.Examples.all;
import static eavesproof.findings.Examples.discharge;
import static eavesproof.findings.Examples.open;
import static eavesproof.findings.Examples.spacing;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.judge.Verdict;
import eavesproof.survey.Place;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DigestTest {
    private static final Place LEFT = Place.of("run", "a", "outlet", "o1", "side", "left");
    private static final Place RIGHT = Place.of("run", "a", "outlet", "o1", "side", "right");

    private static final Finding WIDE = spacing("b1", "b2", 50, 540);
    private static final Finding WIDER = spacing("b2", "b3", 590, 560);
    private static final Finding FITS = spacing("b3", "b4", 1150, 420);
    private static final Finding FITS_BARELY = spacing("b4", "b5", 1570, 495);
    private static final Finding ON_THE_LIMIT = spacing("b5", "b6", 2065, 500);

    @Test
    void whatFailsIsReadOncePerRequirementWithEveryPlace() {
        Digest digest = Digest.of(all(Outcome.DOES_NOT_COMPLY, WIDE, WIDER, FITS));

        assertEquals(1, digest.doesNotComply().size());
        assertEquals(List.of(WIDE, WIDER), digest.doesNotComply().get(0).findings());
    }

    @Test
    void eachVerdictGoesToItsOwnPart() {
        Finding missing = open(Verdict.NOT_RECORDED, "fall", LEFT, "no readings");
        Finding apart = open(Verdict.NOT_APPLICABLE, "fall of box gutters", LEFT, "it is eaves");

        Digest digest =
                Digest.of(all(Outcome.DOES_NOT_COMPLY, WIDE, FITS, ON_THE_LIMIT, missing, apart));

        assertEquals(List.of(WIDE), findings(digest.doesNotComply().stream()));
        assertEquals(List.of(ON_THE_LIMIT), findings(digest.tooClose().stream()));
        assertEquals(List.of(missing), shared(digest.notRecorded()));
        assertEquals(List.of(FITS), findings(digest.complies().stream()));
        assertEquals(List.of(apart), shared(digest.notApplicable()));
    }

    @Test
    void findingsThatShareOneGapAreOneEntryNamingAllThatItLeavesOpen() {
        Finding least = open(Verdict.NOT_RECORDED, "least fall", LEFT, "no readings");
        Finding leastRight = open(Verdict.NOT_RECORDED, "least fall", RIGHT, "no readings");
        Finding most = open(Verdict.NOT_RECORDED, "most fall", LEFT, "no readings");

        Digest digest = Digest.of(all(Outcome.NOT_SHOWN, least, leastRight, most));

        assertEquals(1, digest.notRecorded().size());
        Digest.Shared entry = digest.notRecorded().get(0);
        assertEquals(List.of("no readings"), entry.because());
        assertEquals(
                List.of("least fall", "most fall"),
                entry.requirements().stream().map(Digest.Held::rule).toList());
        assertEquals(3, entry.places());
    }

    @Test
    void differentGapsStayApartAndTheOneThatLeavesMostOpenComesFirst() {
        Finding one = open(Verdict.NOT_RECORDED, "least fall", LEFT, "no tie");
        Finding two = open(Verdict.NOT_RECORDED, "least fall", RIGHT, "no readings");
        Finding three = open(Verdict.NOT_RECORDED, "most fall", RIGHT, "no readings");

        Digest digest = Digest.of(all(Outcome.NOT_SHOWN, one, two, three));

        assertEquals(
                List.of(List.of("no readings"), List.of("no tie")),
                digest.notRecorded().stream().map(Digest.Shared::because).toList());
    }

    @Test
    void theTightestCaseIsTheOneWithTheLeastMargin() {
        Digest digest = Digest.of(all(Outcome.COMPLIES, FITS, FITS_BARELY));

        Digest.Held centres = digest.complies().get(0);
        assertEquals(2, centres.findings().size());
        assertEquals(FITS_BARELY, centres.tightest());
    }

    /** 8 mm to spare with ± 6 leave less than 5 mm with ± 1.1. */
    @Test
    void theTightestCaseCountsHowSureTheMeasureIs() {
        Finding unsure = sure(spacing("b6", "b7", 2565, 492), 6);

        Digest digest = Digest.of(all(Outcome.COMPLIES, FITS, FITS_BARELY, unsure));

        assertEquals(unsure, digest.complies().get(0).tightest());
    }

    private static Finding sure(Finding like, double expandedMm) {
        Finding.MeasuredNumber was = (Finding.MeasuredNumber) like.measured().orElseThrow();
        return new Finding(
                like.rule(),
                like.topic(),
                like.says(),
                like.verdict(),
                like.kind(),
                like.measures(),
                like.place(),
                Optional.of(
                        new Finding.MeasuredNumber(
                                was.value(), was.unit(), Optional.of(expandedMm))),
                like.limit(),
                like.margin(),
                like.probability(),
                like.decision(),
                like.because(),
                like.source(),
                like.provenance(),
                like.assumed(),
                like.remedy(),
                like.workings());
    }

    @Test
    void wherePlacesHaveNoMarginTheFirstStandsForAll() {
        Finding kerb = discharge("kerb", "kerb", "soakaway");
        Finding soakaway = discharge("soakaway", "kerb", "soakaway");

        Digest digest = Digest.of(all(Outcome.COMPLIES, kerb, soakaway));

        assertEquals(kerb, digest.complies().get(0).tightest());
    }

    @Test
    void oneReasonIsEnoughToKeepARequirementAway() {
        Finding one = open(Verdict.NOT_APPLICABLE, "box fall", LEFT, "it is eaves", "it is zinc");
        Finding two = open(Verdict.NOT_APPLICABLE, "box depth", LEFT, "it is eaves");

        Digest digest = Digest.of(all(Outcome.NOT_SHOWN, one, two));

        assertEquals(1, digest.notApplicable().size());
        assertEquals(List.of(one, two), shared(digest.notApplicable()));
    }

    @Test
    void onlyWhatIsNotSettledNeedsAction() {
        assertFalse(Digest.of(all(Outcome.COMPLIES, FITS)).needsAction());
        assertTrue(Digest.of(all(Outcome.DOES_NOT_COMPLY, FITS, WIDE)).needsAction());
        assertTrue(Digest.of(all(Outcome.NOT_SHOWN, FITS, ON_THE_LIMIT)).needsAction());
        assertTrue(
                Digest.of(
                                all(
                                        Outcome.NOT_SHOWN,
                                        open(Verdict.NOT_RECORDED, "fall", LEFT, "no readings")))
                        .needsAction());
    }

    @Test
    void aRequirementWithoutAFindingIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Digest.Held("fall", "least fall", "It falls.", FITS.source(), List.of()));
    }

    private static List<Finding> findings(Stream<Digest.Held> held) {
        return held.flatMap(one -> one.findings().stream()).toList();
    }

    private static List<Finding> shared(List<Digest.Shared> entries) {
        return findings(entries.stream().flatMap(entry -> entry.requirements().stream()));
    }
}
