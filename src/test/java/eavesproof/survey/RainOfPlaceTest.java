package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A record that names its place is reckoned with the rain that the rule set has for it. */
class RainOfPlaceTest {
    private static final Basis BASIS =
            new Basis(
                    Map.of(
                            "rain_duration_min", new Basis.Amount(5, "a document"),
                            "rain_aep_percent", new Basis.Amount(5, "a document"),
                            "rain_at Dry Creek", new Basis.Amount(100, "table 3")));

    private static final String DRY_CREEK =
            """
            {"id": "j", "site": {"place": "Dry Creek"}, "circumstances": {"rainfall": []},
             "runs": [{"id": "a", "straights": [{"id": "a1"}]}]}
            """;

    @Test
    void theRainOfThePlaceIsTaken() {
        Seen seen = seen(DRY_CREEK);
        assertEquals(new Facts.PlaceRain("a", 100), seen.fact(Facts.PlaceRain.class));
        assertEquals(new Facts.DesignRain("a", 100), seen.fact(Facts.DesignRain.class));
        assertTrue(
                seen.known(new Facts.DesignRain("a", 100)).workings().stream()
                        .anyMatch(working -> working.from().equals("Dry Creek; table 3")));
        String unsaid = DRY_CREEK.replace(", \"circumstances\": {\"rainfall\": []}", "");
        assertEquals(new Facts.DesignRain("a", 100), seen(unsaid).fact(Facts.DesignRain.class));
    }

    @Test
    void ofTheRainRecordedAndThatOfThePlaceTheStrongerCounts() {
        assertEquals(
                new Facts.DesignRain("a", 100), seen(recorded("80")).fact(Facts.DesignRain.class));
        assertEquals(
                new Facts.DesignRain("a", 120), seen(recorded("120")).fact(Facts.DesignRain.class));
    }

    @Test
    void aPlaceThatIsNotListedIsNoneAndLeavesTheRainToTheRecord() {
        String elsewhere = DRY_CREEK.replace("Dry Creek", "dry creek");
        Seen seen = seen(elsewhere);
        assertEquals(
                List.of("a: dry creek is no place whose rain the rule set states"),
                seen.none(Facts.PlaceRain.class));
        assertTrue(
                seen.gaps(Facts.DesignRain.class)
                        .get(0)
                        .endsWith("and dry creek is no place whose rain the rule set states"));
        assertEquals(
                new Facts.DesignRain("a", 80),
                seen(recorded("80").replace("Dry Creek", "dry creek"))
                        .fact(Facts.DesignRain.class));
    }

    @Test
    void aPlaceThatNobodyNamedIsAGap() {
        Seen seen = seen(DRY_CREEK.replace("\"Dry Creek\"", "null"));
        assertEquals(
                List.of("a: the place of the site is not recorded"),
                seen.gaps(Facts.PlaceRain.class));
        assertEquals(1, seen.gaps(Facts.DesignRain.class).size());
    }

    private static String recorded(String mmPerH) {
        return DRY_CREEK.replace(
                "[]}",
                "[{\"intensity_mm_h\": " + mmPerH + ", \"duration_min\": 5, \"aep_percent\": 5}]}");
    }

    private static Seen seen(String record) {
        return Seen.of(record, BASIS);
    }
}
