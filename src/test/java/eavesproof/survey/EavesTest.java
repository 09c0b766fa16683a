package eavesproof.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class EavesTest {
    private static final String RECORD =
            """
            {"id": "j", "instruments": {"tape": {"kind": "tape", "accuracy_mm": 1, "resolution_mm": 1}},
             "measured_with": "tape",
             "runs": [{"id": "a", "eaves_section": {"eaves_width_mm": 400,
               "lined": {"is": "yes", "how": "seen", "by": "x"},
               "overflow_provisions": ["front slots", "end weir"]}}]}
            """;

    @Test
    void whatIsRecordedOfTheEavesIsTaken() {
        Seen seen = Seen.of(RECORD);
        assertEquals(new Facts.EavesWidth("a", 400), seen.fact(Facts.EavesWidth.class));
        assertEquals(new Facts.EavesLined("a", "yes"), seen.fact(Facts.EavesLined.class));
        assertEquals(new Facts.OverflowMeasures("a", 2), seen.fact(Facts.OverflowMeasures.class));
        assertTrue(seen.value(new Facts.EavesWidth("a", 400)).expandedUncertainty() > 0);
    }

    @Test
    void anEmptyListSaysThatThereIsNone() {
        String none = RECORD.replace("[\"front slots\", \"end weir\"]", "[]");
        assertEquals(
                new Facts.OverflowMeasures("a", 0),
                Seen.of(none).fact(Facts.OverflowMeasures.class));
    }

    @Test
    void whatNobodyRecordedIsAGap() {
        Seen seen = Seen.of("{\"id\": \"j\", \"runs\": [{\"id\": \"a\"}]}");
        assertEquals(
                List.of("a: the width of the eaves is not recorded"),
                seen.gaps(Facts.EavesWidth.class));
        assertEquals(1, seen.gaps(Facts.EavesLined.class).size());
        assertEquals(1, seen.gaps(Facts.OverflowMeasures.class).size());
    }
}
