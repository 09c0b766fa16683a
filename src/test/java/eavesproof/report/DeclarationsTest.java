package eavesproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.JobFile;
import eavesproof.job.Job;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DeclarationsTest {
    private static final String HASH = "0123456789abcdef".repeat(4);

    private static final String TWO =
            "{\"id\": \"p\", \"role\": \"installer\", \"name\": \"Ada\"}, {\"id\": \"q\","
                    + " \"role\": \"measured\", \"name\": \"Bo\"}";

    private static Job job(String people) throws Exception {
        String job = "{\"id\": \"j\", \"people\": [" + people + "]}";
        return JobFile.read(job.getBytes(StandardCharsets.UTF_8));
    }

    private static Declarations with(
            String people, Map<String, Photo.Print> pictures, Optional<SignedBy> signer)
            throws Exception {
        Issue issue = Verandah.bare(job(people)).with(Map.of(), pictures, signer, "", List.of());
        return new Declarations(issue, new Pictures(issue, 174).hands());
    }

    private static List<Report.Signature> of(String people) throws Exception {
        return with(people, Map.of(), Optional.empty()).signatures();
    }

    private static Photo.Print picture(int widthPx, int heightPx) {
        return new Photo.Print(HASH, new byte[] {1}, widthPx, heightPx);
    }

    private static List<Report.Signature> withPicture(String people, int widthPx, int heightPx)
            throws Exception {
        return with(people, Map.of("", picture(widthPx, heightPx)), Optional.empty()).signatures();
    }

    @Test
    void aPictureUnderNobodysNameStandsInTheFirstPlaceOnlyAndSaysThatItProvesNothing()
            throws Exception {
        List<Report.Signature> signatures = withPicture(TWO, 400, 100);
        Report.SignaturePicture picture = signatures.get(0).pictures().get(0);
        String shown = picture.shown().toString();
        assertTrue(shown.contains("alt=\"Signature of Ada, as a picture\""), shown);
        assertTrue(picture.says().contains("proves nothing about who put it there"));
        assertTrue(picture.says().contains(HASH));
        assertEquals(List.of(), signatures.get(1).pictures());
    }

    @Test
    void eachWhoSignsHasAPictureOfTheirOwn() throws Exception {
        Map<String, Photo.Print> pictures = new LinkedHashMap<>();
        pictures.put("q", picture(100, 150));
        pictures.put("p", picture(400, 100));
        List<Report.Signature> signatures = with(TWO, pictures, Optional.empty()).signatures();
        String ada = signatures.get(0).pictures().get(0).shown().toString();
        String bo = signatures.get(1).pictures().get(0).shown().toString();
        assertTrue(ada.contains("alt=\"Signature of Ada, as a picture\""), ada);
        assertTrue(ada.contains("width:48.0mm;height:12.0mm"), ada);
        assertTrue(bo.contains("alt=\"Signature of Bo, as a picture\""), bo);
        assertTrue(bo.contains("width:10.0mm;height:15.0mm"), bo);
    }

    @Test
    void thePictureOfTheSecondDoesNotStandInTheFirstPlace() throws Exception {
        List<Report.Signature> signatures =
                with(TWO, Map.of("q", picture(100, 150)), Optional.empty()).signatures();
        assertEquals(List.of(), signatures.get(0).pictures());
        assertEquals(1, signatures.get(1).pictures().size());
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
    void thatNobodySignedIsSaidWithTheNamesThatAreLeftOpen() throws Exception {
        String signed = with(TWO, Map.of(), Optional.empty()).signed();
        assertTrue(signed.startsWith("By nobody in this file."), signed);
        assertTrue(signed.contains("to be signed by hand: Ada and Bo."), signed);
    }

    @Test
    void whoeverSignsByAPictureIsNamedAndWhoDoesNotIsLeftOpen() throws Exception {
        String signed = with(TWO, Map.of("q", picture(9, 9)), Optional.empty()).signed();
        assertTrue(signed.contains("over the name of Bo, which proves nothing"), signed);
        assertTrue(signed.contains("to be signed by hand: Ada."), signed);
        assertFalse(signed.contains("By nobody"), signed);
    }

    @Test
    void aSelfMadeCertificateIsSaidNotToShowWhoSigned() throws Exception {
        String signed = with(TWO, Map.of(), Optional.of(new SignedBy("Cy", HASH, true))).signed();
        assertTrue(signed.contains("certificate of Cy, SHA-256 fingerprint " + HASH), signed);
        assertTrue(signed.contains("does not show who signed"), signed);
        assertFalse(signed.contains("By nobody"), signed);
    }

    @Test
    void whoHasAPlaceToSignIsTheSameInShortAndInFull() throws Exception {
        assertEquals(List.of("p", "q"), Declarations.signers(job(TWO)));
        assertEquals(List.of("p"), Declarations.signers(job(TWO.replace("\"Bo\"", "\"Ada\""))));
        assertEquals(List.of(), Declarations.signers(job("")));
    }

    @Test
    void whoFittedAndMeasuredDeclaresBoth() throws Exception {
        List<Report.Signature> signatures = of(TWO.replace("\"Bo\"", "\"Ada\""));
        assertEquals(1, signatures.size());
        assertTrue(signatures.get(0).declares().contains("was fitted by me"));
        assertTrue(signatures.get(0).declares().contains("that I took and saw"));
    }

    @Test
    void nobodyAnswersForTheReadingsOrTheWorkOfAnother() throws Exception {
        List<Report.Signature> signatures = of(TWO);
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
