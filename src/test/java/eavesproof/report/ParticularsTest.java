package eavesproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.JobFile;
import eavesproof.job.Job;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class ParticularsTest {
    private static final String BLANK = "{\"id\": \"j\"}";

    private static final String FULL =
            "{\"id\": \"j\", \"title\": \"APPROVED BY THE COUNCIL\", \"site\": {\"address\": \"3 Elm"
                    + " Row\"}, \"dates\": {\"measured\": \"2026-11-20\"}, \"people\": [{\"id\":"
                    + " \"p\", \"role\": \"installer\", \"name\": \"Ada\"}, {\"id\": \"q\","
                    + " \"role\": \"measured\", \"name\": \"Bo\"}]}";

    private static Job job(String record) throws Exception {
        return JobFile.read(record.getBytes(StandardCharsets.UTF_8));
    }

    private static String page(String record) throws Exception {
        return new Typesetting(Path.of("report-templates/installer-record"), Allowance.USUAL)
                .forPaper(Verandah.bare(job(record)))
                .xhtml();
    }

    private static String front(String record) throws Exception {
        String page = page(record);
        return page.substring(page.indexOf("<h1"), page.indexOf("id=\"s1\""));
    }

    @Test
    void whatNobodyRecordedOfPlaceDayAndPeopleStandsOnTheFirstPage() throws Exception {
        String missing = "Not recorded: address, day of measuring, who measured and who fitted it.";
        assertEquals(List.of(missing), new Particulars(job(BLANK)).missing());
        assertTrue(front(BLANK).contains(missing));
        assertTrue(front(BLANK).contains("on a day not recorded, by whom is not recorded"));
    }

    @Test
    void aPersonWithoutANameIsNobodyWhoIsRecorded() throws Exception {
        assertTrue(
                new Particulars(job(FULL.replace(", \"name\": \"Bo\"", "")))
                        .missing()
                        .contains("Not recorded: who measured."));
    }

    @Test
    void aRecordThatHoldsAllOfItSaysSoAndLacksNothing() throws Exception {
        assertEquals(List.of(), new Particulars(job(FULL)).missing());
        String front = front(FULL);
        assertFalse(front.contains("Not recorded: address"), front);
        assertTrue(front.contains("3 Elm Row"));
        assertTrue(front.contains("2026-11-20, by Bo"));
    }

    @Test
    void noWordOfTheRecorderStandsAboveTheOutcomeNorInTheHeadOfAPage() throws Exception {
        String page = page(FULL);
        int outcome = page.indexOf("class=\"outcome\"");
        assertTrue(outcome > 0);
        assertFalse(page.substring(0, outcome).contains("APPROVED"), page.substring(0, outcome));
        assertTrue(
                page.substring(outcome)
                        .replaceAll("<[^>]*>", " ")
                        .replaceAll("\\s+", " ")
                        .contains("Title given by the recorder APPROVED BY THE COUNCIL"));
    }

    @Test
    void whoSignedStandsOnTheFirstPageWithThePageOfTheDeclaration() throws Exception {
        String front = front(FULL);
        int signed = front.indexOf("By nobody in this file.");
        assertTrue(signed > 0, front);
        assertTrue(front.indexOf("href=\"#s12\"", signed) > 0, front);
        assertTrue(page(FULL).contains("id=\"s12\">12. Declaration"));
    }
}
