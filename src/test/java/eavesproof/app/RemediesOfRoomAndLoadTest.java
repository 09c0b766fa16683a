package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.JobFile;
import eavesproof.job.Job;
import eavesproof.job.Run.KeepClear;
import eavesproof.job.Run.Reading;
import eavesproof.job.Run.Straight;
import eavesproof.job.Said;
import eavesproof.job.WayPart.Outlet;
import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import eavesproof.setout.Checked;
import eavesproof.setout.Remedies;
import eavesproof.setout.Remedy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What is to be done where brackets carry too much or a gutter has too little room. A good job of
 * 7.2 m of cemented PVC-U, fitted at 18.5 degrees, gets one fault; 0.07 mm for each metre and
 * degree, up to 60 degrees and down to -20. All that is expected here is plain arithmetic.
 */
class RemediesOfRoomAndLoadTest {
    private static final List<Object> A1 = List.of("runs", 0, "straights", 0);
    private static final List<Object> J1 = RecordTree.and(A1, "joints", 0);

    private Job job;

    RemediesOfRoomAndLoadTest() throws Exception {
        job = JobFile.read(Files.readAllBytes(Path.of("samples", "verandah-pvc.json")));
    }

    private void set(Object value, List<Object> path, Object... steps) {
        job = RecordTree.with(job, RecordTree.and(path, steps), it -> value);
    }

    private Remedy remedy(String rule) {
        Checked before = WholeCheck.check(job);
        Remedies remedies = Remedies.of(job, before, WholeCheck::check);
        Optional<Ruling> broken =
                before.rulings().stream()
                        .filter(it -> it.rule().equals(rule))
                        .filter(it -> it.verdict() == Verdict.DOES_NOT_COMPLY)
                        .findFirst();
        return remedies.of(broken.orElseThrow()).orElseThrow();
    }

    private Remedy.Change change(String rule) {
        return assertInstanceOf(Remedy.Change.class, remedy(rule));
    }

    /** 7.13 m from the left end to the outlet that slides grow by 20.7 mm; 12 mm are 9 too few. */
    @Test
    void anEndThatComesToPushAgainstAWallIsCutBackByWhatIsMissing() {
        set(12.0, A1, "leftEnd", "gapToWallMm");
        Remedy.Change change = change("room to grow at a wall in PVC-U");
        assertEquals(
                "cut the gutter back by 9 mm at its left end on straight a1 and close it again"
                        + " there, so that 21 mm are left to the wall, with the gutter at 18.5 °C",
                change.words());
        Straight cut = change.edited().runs().get(0).straights().get(0);
        assertEquals(7191.0, cut.lengthMm());
        assertEquals(61.0, cut.brackets().get(0).stationMm());
        assertEquals(7121.0, ((Outlet) change.edited().way().get(0)).stationMm());
        assertEquals(11.0, cut.fascia().beginsMm());
    }

    @Test
    void anEndWithABracketOnThePieceToBeCutOffIsNotCutBack() {
        set(12.0, A1, "leftEnd", "gapToWallMm");
        set(5.0, A1, "brackets", 0, "stationMm");
        assertInstanceOf(Remedy.Advice.class, remedy("room to grow at a wall in PVC-U"));
    }

    private void expansion(double gap, double insertion) {
        set("expansion", J1, "kind");
        set(gap, J1, "gapMm");
        set(insertion, J1, "insertionMm");
    }

    /** Nothing holds it: 7.13 m push into the joint and draw out of it, by 20.7 and 19.2 mm. */
    @Test
    void aJointTooClosedIsSetOpenAsFarAsTheDayAsks() {
        expansion(5, 60);
        assertEquals(
                "set joint j1 to a gap of 21 mm, so that the gutter sits 44 mm deep, with the"
                        + " gutter at 18.5 °C",
                change("room to grow at a joint in PVC-U").words());
    }

    @Test
    void aJointTooOpenIsPushedTogether() {
        expansion(60, 5);
        assertEquals(
                "set joint j1 to a gap of 45 mm, so that the gutter sits 20 mm deep, with the"
                        + " gutter at 18.5 °C",
                change("room to shrink at a joint in PVC-U").words());
    }

    @Test
    void aJointThatIsTooShallowAltogetherIsReplaced() {
        expansion(5, 20);
        assertEquals(
                "replace joint j1 with an expansion joint that takes up 41 mm, and set it to a gap"
                        + " of 21 mm, so that the gutter sits 20 mm deep, with the gutter at"
                        + " 18.5 °C",
                change("room to grow at a joint in PVC-U").words());
    }

    /** 7.2 m grow by 0.07 x 7.2 x 41.5 = 20.9 mm. */
    @Test
    void aSlidingOutletTooClosedIsSetOpenAsFarAsTheDayAsks() {
        set(12.0, List.of("way", 0), "gapMm");
        assertEquals(
                "set outlet o1 to a gap of 21 mm, so that the gutter sits 31 mm deep, with the"
                        + " gutter at 18.5 °C",
                change("room to grow at a sliding outlet in PVC-U").words());
    }

    /** It shrinks by 0.07 x 7.2 x 38.5 = 19.4 mm; what is pushed in is closed. */
    @Test
    void aSlidingOutletTooOpenIsPushedTogether() {
        set(40.0, List.of("way", 0), "gapMm");
        set(12.0, List.of("way", 0), "insertionMm");
        assertEquals(
                "set outlet o1 to a gap of 32 mm, so that the gutter sits 20 mm deep, with the"
                        + " gutter at 18.5 °C",
                change("room to shrink at a sliding outlet in PVC-U").words());
    }

    @Test
    void aSlidingOutletThatIsTooShallowAltogetherIsReplaced() {
        set(12.0, List.of("way", 0), "gapMm");
        set(15.0, List.of("way", 0), "insertionMm");
        assertEquals(
                "replace outlet o1 with one that takes up 41 mm, and set it to a gap of 21 mm, so"
                        + " that the gutter sits 20 mm deep, with the gutter at 18.5 °C",
                change("room to grow at a sliding outlet in PVC-U").words());
    }

    private void edges(double middleMm) {
        List<Reading> edges = List.of(edge(0, 300), edge(3600, 300 + middleMm), edge(7200, 300));
        job = RecordTree.with(job, RecordTree.and(A1, "fascia", "edgeReadings"), it -> edges);
    }

    private static Reading edge(double stationMm, double belowMm) {
        return new Reading(stationMm, null, belowMm, "s1", "rule", null);
    }

    @Test
    void aGutterThatFollowsACrookedFasciaIsPackedOut() {
        set(434.0, A1, "readings", 4, "belowMm");
        edges(6);
        String rule = "fall all the way";
        assertTrue(
                change(rule)
                        .words()
                        .endsWith(
                                "; the fascia of straight a1 sags by 6 mm: pack the brackets out to"
                                        + " the line, and do not follow it"),
                change(rule).words());
        edges(1);
        assertFalse(change(rule).words().contains("fascia"), change(rule).words());
    }

    private void twelveMetresWithoutABreak() {
        set(12200.0, A1, "lengthMm");
        job = RecordTree.with(job, List.of("way", 0, "hold"), it -> "fixed");
    }

    /** In the middle but for bracket b14 at 6076; 12.2 m grow by 35.4 and shrink by 32.9 mm. */
    @Test
    void aNewExpansionJointHasItsPlaceAndIsSetForTheDay() {
        twelveMetresWithoutABreak();
        assertEquals(
                "put in an expansion joint at 6120 mm on straight a1; and set joint new-1 to a gap"
                        + " of 36 mm, so that the gutter sits 33 mm deep, with the gutter at"
                        + " 18.5 °C",
                change("expansion break in a long straight").words());
    }

    /** Our zone is 6000 to 6500, with 40 mm for half a joint. */
    @Test
    void aNewExpansionJointIsNotPutAboveADoor() {
        twelveMetresWithoutABreak();
        List<Object> zones = new ArrayList<>(job.runs().get(0).straights().get(0).keepClear());
        zones.add(new KeepClear("gate", "gate", 6000.0, 6500.0));
        set(zones, A1, "keepClear");
        String words = change("expansion break in a long straight").words();
        assertTrue(words.startsWith("put in an expansion joint at 5960 mm on"), words);
    }

    /** An outlet of 140 mm in the middle, with 80 mm for a joint beside it: 6100 - 150. */
    @Test
    void aNewExpansionJointIsClearOfAnOutlet() {
        twelveMetresWithoutABreak();
        set(6100.0, List.of("way", 0), "stationMm");
        String words = change("expansion break in a long straight").words();
        assertTrue(words.startsWith("put in an expansion joint at 5950 mm on"), words);
    }

    /**
     * 5900 mm2 of water are 57.9 N a metre, so that 26 N are 445 mm on the safe side: every second
     * span of 462 mm is halved, and the last one, beside an overhang of 205 mm, too.
     */
    @Test
    void bracketsThatCarryTooMuchGetOthersBesideThem() {
        job =
                RecordTree.with(
                        job,
                        List.of("gutters", "g", "bracketCapacityN"),
                        it -> new Said<>(26.0, "told", "the maker", null));
        assertEquals(
                "add 8 brackets on straight a1 at 765, 1685, 2610, 3535, 4460, 5385, 6305 and 6765"
                        + " mm, so that none has to carry more than 26 N",
                change("brackets carry a full gutter").words());
    }

    @Test
    void whereNoNumberOfBracketsServesStrongerOnesDo() {
        job =
                RecordTree.with(
                        job,
                        List.of("gutters", "g", "bracketCapacityN"),
                        it -> new Said<>(1.0, "told", "the maker", null));
        String words = remedy("brackets carry a full gutter").words();
        assertTrue(words.startsWith("put in brackets that carry at least "), words);
    }

    /** 20 mm and how sure a tape is of it, 0.7 mm, less 12 mm: 9 mm more. */
    @Test
    void screwsThatDoNotBiteAreReplacedByLongerOnes() {
        set(12.0, A1, "brackets", 2, "biteMm");
        assertEquals(
                "replace the screws of bracket b3 with ones 9 mm longer, so that they sit at least"
                        + " 21 mm deep in sound timber",
                change("screws bite").words());
    }

    @Test
    void noChangeOfARecordMakesTimberSound() {
        set(new Said<>("no", "seen", "the fitter", null), A1, "fascia", "sound");
        String words =
                assertInstanceOf(Remedy.Advice.class, remedy("sound timber behind a bracket"))
                        .words();
        assertTrue(words.startsWith("replace the timber behind bracket b1"), words);
    }
}
