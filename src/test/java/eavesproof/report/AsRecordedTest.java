package eavesproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.exchange.JobFile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class AsRecordedTest {
    private static List<String> held(String more) throws Exception {
        String job =
                "{\"id\": \"j\", \"runs\": [{\"id\": \"a\""
                        + more
                        + ", \"straights\": [{\"id\": \"a1\"}]}]}";
        return AsRecorded.of(JobFile.read(job.getBytes(StandardCharsets.UTF_8))).stream()
                .flatMap(record -> record.facts().stream())
                .filter(fact -> fact.name().equals("How it is held"))
                .map(Report.Entry::text)
                .toList();
    }

    @Test
    void howTheGutterIsHeldIsPrintedBesideIt() throws Exception {
        assertEquals(List.of("fixed through"), held(", \"held\": \"fixed through\""));
        assertEquals(
                List.of("slides in its brackets"), held(", \"held\": \"slides in its brackets\""));
    }

    @Test
    void whereNobodySaidHowItIsHeldThePaperSaysSo() throws Exception {
        assertEquals(List.of(Grids.NOT_RECORDED), held(""));
    }
}
