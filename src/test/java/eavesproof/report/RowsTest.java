package eavesproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.findings.Examples;
import eavesproof.findings.Finding;
import eavesproof.survey.Place;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RowsTest {
    private static Finding without(String bracket, String remedy) {
        Finding like = Examples.discharge("no", "yes");
        return new Finding(
                "screws",
                like.topic(),
                like.says(),
                like.verdict(),
                like.kind(),
                like.measures(),
                Place.of("run", "a", "bracket", bracket),
                like.measured(),
                like.limit(),
                like.margin(),
                like.probability(),
                like.decision(),
                like.because(),
                like.source(),
                like.provenance(),
                List.of(),
                Optional.of(remedy),
                List.of());
    }

    private static List<Report.Held> folded(List<Finding> findings) {
        IdentityHashMap<Finding, String> labels = new IdentityHashMap<>();
        findings.forEach(one -> labels.put(one, "3." + (labels.size() + 1)));
        return new Rows(new Places(Verandah.job("Verandah", 3, List.of())), labels)
                .folded(findings, Set.of());
    }

    @Test
    void placesThatDifferInNothingElseShareARow() {
        List<Report.Held> rows =
                folded(
                        List.of(
                                without("b1", "fit screws to bracket b1"),
                                without("b2", "fit screws to bracket b2"),
                                without("b10", "fit screws to bracket b10")));
        assertEquals(1, rows.size());
        assertEquals("3.1 to 3.3", rows.get(0).number());
        assertEquals("Bracket b1; bracket b2; bracket b10", rows.get(0).place());
        assertEquals(
                List.of("To put it right: fit screws to bracket b1. The same at each other place."),
                rows.get(0).notes());
    }

    @Test
    void aPlaceWithAnotherRemedyHasARowOfItsOwn() {
        List<Report.Held> rows =
                folded(
                        List.of(
                                without("b1", "fit screws to bracket b1"),
                                without("b2", "replace bracket b2"),
                                without("b3", "fit screws to bracket b3")));
        assertEquals(List.of("3.1, 3.3", "3.2"), rows.stream().map(Report.Held::number).toList());
    }

    @Test
    void onTheFirstPageAFewPlacesStandForMany() {
        List<Finding> many = new ArrayList<>();
        IdentityHashMap<Finding, String> labels = new IdentityHashMap<>();
        for (int i = 1; i <= 9; i++) {
            many.add(without("b" + i, i % 2 == 0 ? "replace it" : "move bracket b" + i));
            labels.put(many.get(i - 1), "3." + i);
        }
        List<Report.Held> rows =
                new Rows(new Places(Verandah.job("Verandah", 3, List.of())), labels).brief(many);
        assertEquals(1, rows.size());
        assertEquals("3.1 to 3.9", rows.get(0).number());
        assertEquals(
                "Bracket b1; bracket b2; bracket b3; bracket b4; and 5 more", rows.get(0).place());
    }

    @Test
    void aRowStaysShortEnoughForAPage() {
        List<Finding> many = new ArrayList<>();
        for (int i = 1; i <= 90; i++) {
            many.add(without("b" + i, "fit screws to bracket b" + i));
        }
        assertEquals(
                List.of("3.1 to 3.40", "3.41 to 3.80", "3.81 to 3.90"),
                folded(many).stream().map(Report.Held::number).toList());
    }
}
