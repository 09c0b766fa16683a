package eavesproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.JobFile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DeclarationsTest {
    private static final String HASH = "0123456789abcdef".repeat(4);

    private static List<Report.Signature> of(String people) throws Exception {
        String job = "{\"id\": \"j\", \"people\": [" + people + "]}";
        return Declarations.of(
                JobFile.read(job.getBytes(StandardCharsets.UTF_8)), false, Optional.empty());
    }

    private static List<Report.Signature> withPicture(String people, int widthPx, int heightPx)
            throws Exception {
        String job = "{\"id\": \"j\", \"people\": [" + people + "]}";
        return Declarations.of(
                JobFile.read(job.getBytes(StandardCharsets.UTF_8)),
                false,
                Optional.of(new Photo.Print(HASH, new byte[] {1}, widthPx, heightPx)));
    }

    @Test
    void aPictureOfASignatureStandsInTheFirstPlaceOnlyAndSaysThatItProvesNothing()
            throws Exception {
        List<Report.Signature> signatures =
                withPicture(
                        "{\"id\": \"p\", \"role\": \"installer\", \"name\": \"Ada\"}, {\"id\": \"q\","
                                + " \"role\": \"measured\", \"name\": \"Bo\"}",
                        400,
                        100);
        Report.SignaturePicture picture = signatures.get(0).pictures().get(0);
        String shown = picture.shown().toString();
        assertTrue(shown.contains("alt=\"Signature of Ada, as a picture\""), shown);
        assertTrue(picture.says().contains("proves nothing about who put it there"));
        assertTrue(picture.says().contains(HASH));
        assertEquals(List.of(), signatures.get(1).pictures());
    }

    @Test
    void aPictureIsScaledToTheLineWithoutBeingBent() throws Exception {
        String one = "{\"id\": \"p\", \"role\": \"measured\"}";
        String flat = withPicture(one, 960, 120).get(0).pictures().get(0).shown().toString();
        assertTrue(flat.contains("width:48.0mm;height:6.0mm"), flat);
        assertTrue(flat.contains("Signature of somebody whose name is not recorded"), flat);
        String tall = withPicture("", 100, 150).get(0).pictures().get(0).shown().toString();
        assertTrue(tall.contains("width:10.0mm;height:15.0mm"), tall);
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
