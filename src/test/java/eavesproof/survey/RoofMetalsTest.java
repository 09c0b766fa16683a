package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class RoofMetalsTest {
    private static final String RECORD =
            """
            {"id": "j",
             "circumstances": {"corrosion_class": {"is": "C3", "how": "told", "by": "x"}},
             "runs": [{"id": "a", "straights": [{"id": "a1", "length_mm": 3000}]}],
             "catchments": [{"id": "c1", "run": "a", "metal": "copper", "lead": "no"}],
             "way": [{"kind": "outlet", "id": "o1", "on": "a1", "station_mm": 200, "to": "d1"},
               {"kind": "downpipe", "id": "d1", "to": "t1"},
               {"kind": "tank", "id": "t1", "to": "x1", "drinking_water": "yes"},
               {"kind": "discharge", "id": "x1"}]}
            """;

    @Test
    void whatIsRecordedOfRoofAndAirIsTaken() {
        Seen seen = Seen.of(RECORD);
        assertEquals(new Facts.RoofMetal("a", "c1", "copper"), seen.fact(Facts.RoofMetal.class));
        assertEquals(new Facts.RoofLead("a", "c1", "no"), seen.fact(Facts.RoofLead.class));
        assertEquals(new Facts.CorrosionClass("a", "C3"), seen.fact(Facts.CorrosionClass.class));
        assertEquals(new Facts.DrinkingWater("a", "yes"), seen.fact(Facts.DrinkingWater.class));
    }

    @Test
    void aRoofOfLeadHasLeadWhateverIsSaidOfIt() {
        Seen seen = Seen.of(RECORD.replace("copper", "lead"));
        assertEquals(new Facts.RoofLead("a", "c1", "yes"), seen.fact(Facts.RoofLead.class));
    }

    /** The tables of metals in contact do not name it. */
    @Test
    void aMetalThatNoTableNamesIsAGap() {
        assertEquals(
                List.of("a c1: what goes with aluminium, the metal of roof c1, is not known"),
                Seen.of(RECORD.replace("copper", "aluminium")).gaps(Facts.RoofMetal.class));
    }

    @Test
    void whatNobodyRecordedIsAGap() {
        Seen seen = Seen.of(RECORD.replace(", \"metal\": \"copper\", \"lead\": \"no\"", ""));
        assertEquals(1, seen.gaps(Facts.RoofMetal.class).size());
        assertEquals(1, seen.gaps(Facts.RoofLead.class).size());
        Seen bare = Seen.of("{\"id\": \"j\", \"runs\": [{\"id\": \"a\"}]}");
        assertEquals(
                List.of("a: what roof drains to run a is not recorded"),
                bare.gaps(Facts.RoofMetal.class));
        assertEquals(1, bare.gaps(Facts.RoofLead.class).size());
        assertEquals(1, bare.gaps(Facts.CorrosionClass.class).size());
        assertEquals(1, bare.gaps(Facts.DrinkingWater.class).size());
    }

    /** It may drain to this one. */
    @Test
    void aRoofThatDrainsToNobodyKnowsWhichRunCounts() {
        Seen seen = Seen.of(RECORD.replace("\"run\": \"a\", ", ""));
        assertEquals("copper", seen.fact(Facts.RoofMetal.class).named());
    }

    @Test
    void aClassThatIsNoneIsAGap() {
        assertEquals(
                1,
                Seen.of(RECORD.replace("C3", "coastal")).gaps(Facts.CorrosionClass.class).size());
    }

    @Test
    void waterThatComesToNoTankIsNotDrunk() {
        Seen seen = Seen.of(RECORD.replace("\"to\": \"t1\"", "\"to\": \"x1\""));
        assertEquals(new Facts.DrinkingWater("a", "no"), seen.fact(Facts.DrinkingWater.class));
    }

    @Test
    void aTankOfWhichNobodySaidAndAWayThatBreaksOffAreGaps() {
        for (String change : List.of("\"drinking_water\": \"unknown\"", "\"screened\": \"yes\"")) {
            Seen seen = Seen.of(RECORD.replace("\"drinking_water\": \"yes\"", change));
            assertEquals(
                    List.of("a: whether the water of tank t1 is drunk is not recorded"),
                    seen.gaps(Facts.DrinkingWater.class));
        }
        Seen broken = Seen.of(RECORD.replace(", \"to\": \"t1\"", ""));
        assertEquals(1, broken.gaps(Facts.DrinkingWater.class).size());
    }
}
