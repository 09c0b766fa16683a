package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the tables of documents are entered with: roof, section and pitch, sizes of pipes. */
class TableKeysTest {
    private static final Basis PLAN =
            new Basis(Map.of("roof_rain", new Basis.Choice("plan", "a document")));

    private static final String TWO_SIDES =
            """
            {"id": "j", "instruments": {"tape": {"kind": "tape", "accuracy_mm": 1}},
             "measured_with": "tape",
             "gutters": {"g": {"kind": "eaves", "material": "copper",
               "profile": {"shape": "rectangular", "width_mm": 100, "depth_mm": 60}}},
             "runs": [{"id": "a", "gutter": "g", "straights": [{"id": "a1", "length_mm": 8000}]}],
             "catchments": [
               {"id": "c1", "run": "a", "plan_area_m2": 30, "pitch_deg": 20, "walls": []},
               {"id": "c2", "run": "a", "plan_area_m2": 10, "pitch_deg": 35, "walls": []}],
             "way": [
               {"id": "o1", "kind": "outlet", "on": "a1", "station_mm": 6000, "body_mm": 100,
                "to": "d1"},
               {"id": "d1", "kind": "downpipe", "size_mm": 74, "also_carries":
                 [{"id": "shed", "plan_area_m2": {"is": 5, "how": "told", "by": "the owner"}}],
                "to": "dr"},
               {"id": "dr", "kind": "drain", "size_mm": 100, "length_mm": 6000, "drop_mm": 60,
                "also_carries": [], "to": "g1"},
               {"id": "g1", "kind": "discharge"}]}
            """;

    private static final String SHED = "\\[\\{\"id\": \"shed\".*?\\}\\}\\]";

    @Test
    void eachReachHasItsPartOfTheRoofByItsLength() {
        Seen seen = seen(TWO_SIDES);
        List<Facts.ReachRoof> roofs = seen.facts(Facts.ReachRoof.class);
        assertEquals(
                List.of(
                        new Facts.ReachRoof("a", "o1", "left", 30),
                        new Facts.ReachRoof("a", "o1", "right", 10)),
                roofs);
    }

    @Test
    void theSteepestRoofCounts() {
        assertEquals(new Facts.RoofPitch("a", 35), seen(TWO_SIDES).fact(Facts.RoofPitch.class));
    }

    @Test
    void theSectionIsThatOfTheProfileUnlessItIsStated() {
        assertEquals(6000, seen(TWO_SIDES).facts(Facts.GutterSection.class).get(0).areaMm2(), 1e-9);
        String stated =
                "\"area_mm2\": {\"is\": 5800, \"how\": \"told\", \"by\": \"x\"}, \"profile\"";
        assertEquals(
                5800,
                seen(TWO_SIDES.replace("\"profile\"", stated))
                        .facts(Facts.GutterSection.class)
                        .get(0)
                        .areaMm2());
        String points = TWO_SIDES.replace("rectangular", "points");
        assertEquals(2, seen(points).gaps(Facts.GutterSection.class).size());
    }

    @Test
    void aSectionThatItsProfileContradictsIsAGap() {
        for (int mm2 : new int[] {580, 3900, 9100, 58000}) {
            String stated = "\"area_mm2\": {\"is\": " + mm2 + ", \"how\": \"told\"}, \"profile\"";
            String why =
                    seen(TWO_SIDES.replace("\"profile\"", stated))
                            .gaps(Facts.GutterSection.class)
                            .get(0);
            assertTrue(why.endsWith("mm2, and its profile gives 6000 mm2"), why);
        }
    }

    @Test
    void aDownpipeServesAllRoofThatComesToIt() {
        assertEquals(
                new Facts.DownpipeRoof("a", "d1", 45),
                seen(TWO_SIDES).fact(Facts.DownpipeRoof.class));
        assertTrue(
                seen(TWO_SIDES)
                        .gaps(Facts.DownpipeGutter.class)
                        .get(0)
                        .contains("how much gutter of roof shed"));
        assertEquals(
                new Facts.DownpipeGutter("a", "d1", 8000),
                seen(TWO_SIDES.replaceAll(SHED, "[]")).fact(Facts.DownpipeGutter.class));
    }

    @Test
    void anOutletHasAllRoofOfItsDownpipe() {
        assertEquals(
                new Facts.OutletRoof("a", "o1", 45), seen(TWO_SIDES).fact(Facts.OutletRoof.class));
        Seen broken = seen(TWO_SIDES.replace("\"to\": \"d1\"", "\"to\": null"));
        assertEquals(
                List.of("a o1: where the water goes from o1 is not recorded"),
                broken.gaps(Facts.OutletRoof.class));
        Seen spout =
                seen(TWO_SIDES.replace("\"to\": \"d1\"", "\"to\": \"g1\", \"spout\": \"yes\""));
        assertEquals(
                List.of("a o1: the water of outlet o1 passes no downpipe"),
                spout.none(Facts.OutletRoof.class));
    }

    @Test
    void anExistingPipeOfWhichNothingIsSaidIsAGap() {
        String unsaid = TWO_SIDES.replaceAll("\"also_carries\":\\s*" + SHED + ",", "");
        assertTrue(
                seen(unsaid).gaps(Facts.DownpipeRoof.class).get(0).contains("other roofs"),
                () -> seen(unsaid).gaps(Facts.DownpipeRoof.class).toString());
    }

    @Test
    void waterThatArrivesAtOnePlaceIsNotSharedOutByLength() {
        String valley =
                TWO_SIDES.replace(
                        "\"pitch_deg\": 35,",
                        "\"pitch_deg\": 35, \"inflow\": {\"kind\": \"valley\", \"on\": \"a1\","
                                + " \"station_mm\": 100},");
        assertEquals(2, seen(valley).gaps(Facts.ReachRoof.class).size());
    }

    @Test
    void wallsThatNobodySpokeOfLeaveTheRoofUnknown() {
        String unsaid = TWO_SIDES.replace(", \"walls\": []", "");
        assertTrue(seen(unsaid).gaps(Facts.ReachRoof.class).get(0).contains("walls"));
        assertTrue(seen(unsaid).gaps(Facts.DownpipeRoof.class).get(0).contains("walls"));
    }

    @Test
    void pipesAreRoundOrRectangular() {
        Seen round = seen(TWO_SIDES);
        assertEquals(new Facts.DownpipeSize("a", "d1", 74), round.fact(Facts.DownpipeSize.class));
        assertEquals(1, round.none(Facts.DownpipeWidth.class).size());
        Seen box =
                seen(TWO_SIDES.replace("\"size_mm\": 74", "\"width_mm\": 50, \"depth_mm\": 100"));
        assertEquals(1, box.none(Facts.DownpipeSize.class).size());
        assertEquals(new Facts.DownpipeWidth("a", "d1", 100), box.fact(Facts.DownpipeWidth.class));
        assertEquals(new Facts.DownpipeDepth("a", "d1", 50), box.fact(Facts.DownpipeDepth.class));
        Seen nothing = seen(TWO_SIDES.replace("\"size_mm\": 74,", ""));
        assertEquals(1, nothing.gaps(Facts.DownpipeSize.class).size());
        assertEquals(1, nothing.gaps(Facts.DownpipeDepth.class).size());
    }

    @Test
    void aDrainFallsByItsDropOverItsLength() {
        assertEquals(
                new Facts.DrainFall("a", "dr", 10), seen(TWO_SIDES).fact(Facts.DrainFall.class));
        assertEquals(
                new Facts.DrainSize("a", "dr", 100), seen(TWO_SIDES).fact(Facts.DrainSize.class));
        assertEquals(
                new Facts.DrainRoof("a", "dr", 45), seen(TWO_SIDES).fact(Facts.DrainRoof.class));
        String unread = TWO_SIDES.replace(" \"drop_mm\": 60,", "");
        assertEquals(1, seen(unread).gaps(Facts.DrainFall.class).size());
    }

    @Test
    void whereTheWayBreaksOffNothingIsKnownOfPipesBeyond() {
        Seen broken = seen(TWO_SIDES.replace("\"to\": \"d1\"", "\"to\": null"));
        assertEquals(1, broken.gaps(Facts.DownpipeRoof.class).size());
        assertEquals(1, broken.gaps(Facts.DrainSize.class).size());
    }

    private static Seen seen(String record) {
        return Seen.of(record, PLAN);
    }
}
