package eavesproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.JobFile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class DeclarationsTest {
    private static List<Report.Signature> of(String people) throws Exception {
        String job = "{\"id\": \"j\", \"people\": [" + people + "]}";
        return Declarations.of(JobFile.read(job.getBytes(StandardCharsets.UTF_8)), false);
    }

    @Test
    void whoFittedAndMeasuredDeclaresBoth() throws Exception {
        List<Report.Signature> signatures =
                of(
                        "{\"id\": \"p\", \"role\": \"installer\", \"name\": \"Ada\"}, {\"id\": \"q\","
                                + " \"role\": \"measured\", \"name\": \"Ada\"}");
        assertEquals(1, signatures.size());
        assertTrue(signatures.get(0).declares().contains("was fitted by me"));
        assertTrue(signatures.get(0).declares().contains("that I took and saw"));
    }

    @Test
    void nobodyAnswersForTheReadingsOrTheWorkOfAnother() throws Exception {
        List<Report.Signature> signatures =
                of(
                        "{\"id\": \"p\", \"role\": \"installer\", \"name\": \"Ada\"}, {\"id\": \"q\","
                                + " \"role\": \"measured\", \"name\": \"Bo\"}");
        assertEquals(
                List.of("Installer", "Measured by"),
                signatures.stream().map(Report.Signature::heading).toList());
        assertFalse(signatures.get(0).declares().contains("that I took"));
        assertTrue(signatures.get(0).declares().contains("The readings are another's"));
        assertFalse(signatures.get(1).declares().contains("fitted by me"));
        assertTrue(signatures.get(1).declares().contains("Others fitted it."));
    }

    @Test
    void whereNobodyIsNamedForTheReadingsTheInstallerSaysSoBySigning() throws Exception {
        assertTrue(
                of("{\"id\": \"p\", \"role\": \"installer\"}")
                        .get(0)
                        .declares()
                        .contains("Who took the readings is not recorded"));
    }

    @Test
    void twoPeopleWithoutANameAreTwo() throws Exception {
        assertEquals(
                2,
                of("{\"id\": \"p\", \"role\": \"installer\"}, {\"id\": \"q\", \"role\": \"measured\"}")
                        .size());
    }

    @Test
    void anInstallerWhomNobodyRecordedHasAPlaceToSign() throws Exception {
        List<Report.Signature> signatures = of("{\"id\": \"q\", \"role\": \"measured\"}");
        assertEquals(2, signatures.size());
        assertTrue(
                signatures.get(1).declares().startsWith("Who fitted the gutter is not recorded"));
    }
}
