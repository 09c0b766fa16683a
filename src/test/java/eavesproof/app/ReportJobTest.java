package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.FindingsFile;
import eavesproof.findings.Digest;
import eavesproof.findings.Finding;
import eavesproof.findings.InWords;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.report.Paper;
import eavesproof.report.pdf.Conformance;
import eavesproof.rules.Sha256;
import eavesproof.survey.Answer;
import eavesproof.survey.Facts;
import eavesproof.survey.Survey;
import eavesproof.survey.Vocabulary;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The paper of every sample: that it says what was found, and that it lasts. */
class ReportJobTest {
    private static final Path SAMPLES = Path.of("samples");
    private static final Path TEMPLATE = Path.of("report-templates/installer-record");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    /** Made once, and looked at by several tests. */
    private static final Map<Path, byte[]> ON_A4 = new ConcurrentHashMap<>();

    private static final Map<String, CheckedJob> CHECKED = new ConcurrentHashMap<>();

    private static byte[] onA4(Path sample) throws Exception {
        byte[] pdf = ON_A4.get(sample);
        if (pdf == null) {
            byte[] record = Files.readAllBytes(sample);
            pdf = write(Paper.A4).pdf(check(record), record, Photographs.NONE);
            ON_A4.put(sample, pdf);
        }
        return pdf;
    }

    static List<Path> samples() throws IOException {
        try (Stream<Path> files = Files.list(SAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        }
    }

    @Test
    void thereAreSamplesOfEveryOutcome() throws Exception {
        List<String> outcomes = new ArrayList<>();
        for (Path sample : samples()) {
            outcomes.add(check(Files.readAllBytes(sample)).findings().outcome().id());
        }
        assertTrue(outcomes.containsAll(List.of("complies", "does-not-comply", "not-shown")));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everythingThatNeedsActionAndTheTightestOfTheRestIsOnThePaper(Path sample)
            throws Exception {
        byte[] record = Files.readAllBytes(sample);
        CheckedJob checked = check(record);
        String text = words(text(onA4(sample)));
        Digest digest = Digest.of(checked.findings());
        List<Finding> must = new ArrayList<>();
        checked.findings().findings().stream()
                .filter(finding -> finding.verdict().needsAction())
                .forEach(must::add);
        digest.complies().forEach(held -> must.add(held.tightest()));
        assertTrue(must.size() > 5, "a sample has findings");
        for (Finding finding : must) {
            assertTrue(text.contains(words(finding.rule())), finding.rule());
            assertTrue(text.contains(words(finding.says())), finding.says());
            String place = words(InWords.place(finding.place()));
            assertTrue(endsSomewhereIn(text, place), finding.rule() + ", " + place);
            for (String why : finding.because()) {
                assertTrue(
                        text.toLowerCase(Locale.ROOT).contains(words(why).toLowerCase(Locale.ROOT)),
                        why);
            }
        }
        for (String clause : checked.findings().rules().clausesNotChecked()) {
            assertTrue(text.contains(words(clause)), clause);
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void theWaterOfEachRunIsDrawnOrSaidNotToBeKnown(Path sample) throws Exception {
        Survey survey = check(Files.readAllBytes(sample)).survey();
        String text = words(text(onA4(sample)));
        for (Answer answer : survey.of(Vocabulary.kind(Facts.GutterFreeboard.class))) {
            if (answer instanceof Answer.Known known) {
                double free = ((Facts.GutterFreeboard) known.fact()).freeboardMm();
                String mm = Decimals.with(Math.abs(free), Unit.MM);
                assertTrue(text.contains(free < 0 ? "spills, " + mm : mm + " free"), mm);
            } else {
                assertTrue(text.contains("How the water stands in the gutter is not known"));
            }
        }
        for (Answer.Known known : survey.known()) {
            if (known.fact() instanceof Facts.BlockedRain) {
                String rain = "With every outlet blocked up to " + known.measure().text();
                assertTrue(text.contains(words(rain)), rain);
            }
            if (known.fact() instanceof Facts.DownpipeRatio downpipe) {
                String carried = Decimals.plain(downpipe.ratio() * 100, 0) + " %";
                assertTrue(text.contains("downpipe " + downpipe.downpipe()), downpipe::toString);
                assertTrue(text.contains(carried), carried);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void thePaperConformsOnBothSheets(Path sample) throws Exception {
        byte[] record = Files.readAllBytes(sample);
        CheckedJob checked = check(record);
        for (Paper paper : Paper.values()) {
            byte[] pdf =
                    paper == Paper.A4
                            ? onA4(sample)
                            : write(paper).pdf(checked, record, Photographs.NONE);
            Conformance.assertArchivalAndAccessible(pdf);
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void theDataInsideIsTheRecordAndTheFindings(Path sample) throws Exception {
        byte[] record = Files.readAllBytes(sample);
        CheckedJob checked = check(record);
        try (PDDocument document = Loader.loadPDF(onA4(sample))) {
            var files = document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
            assertArrayEquals(record, files.get("job.json").getEmbeddedFile().toByteArray());
            assertArrayEquals(
                    FindingsFile.write(checked.findings()),
                    files.get("findings.json").getEmbeddedFile().toByteArray());
        }
    }

    @Test
    void theSameJobOnTheSameDayGivesTheSameFileAndAnotherDayAnotherNumber() throws Exception {
        byte[] record = Files.readAllBytes(samples().get(0));
        byte[] once = onA4(samples().get(0));
        assertArrayEquals(once, write(Paper.A4).pdf(check(record), record, Photographs.NONE));
        byte[] page = write(Paper.A4).html(check(record), record, Photographs.NONE);
        assertArrayEquals(page, write(Paper.A4).html(check(record), record, Photographs.NONE));
        String next =
                text(
                        new ReportJob(TEMPLATE, Paper.A4, DAY.plusDays(1))
                                .pdf(check(record), record, Photographs.NONE));
        assertTrue(text(once).contains("/2026-11-25/"));
        assertTrue(next.contains("/2026-11-26/"));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void eachPageIsNumberedAndTheLastOneEndsTheReport(Path sample) throws Exception {
        try (PDDocument document = Loader.loadPDF(onA4(sample))) {
            int pages = document.getNumberOfPages();
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page <= pages; page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(document);
                assertTrue(text.contains("page " + page + " of " + pages), text);
                assertEquals(page == pages, text.contains("End of report"), text);
            }
        }
    }

    @Test
    void aLongReportHasContentsWithThePagesWhereThingsAre() throws Exception {
        StringBuilder runs = new StringBuilder();
        for (int i = 0; i < 8; i++) {
            runs.append(i == 0 ? "" : ", ")
                    .append("{\"id\": \"r" + i + "\", \"straights\": [{\"id\": \"s" + i)
                    .append("\", \"length_mm\": 3000}]}");
        }
        byte[] record =
                ("{\"id\": \"long\", \"rule_set\": \"trade-practice\", \"runs\": [" + runs + "]}")
                        .getBytes(StandardCharsets.UTF_8);
        byte[] pdf = write(Paper.A4).pdf(check(record), record, Photographs.NONE);
        Conformance.assertArchivalAndAccessible(pdf);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (String section : List.of("9. Workings", "13. Limits of use")) {
                Matcher row =
                        Pattern.compile(Pattern.quote(section) + " ([0-9]+)")
                                .matcher(words(text(pdf)));
                assertTrue(row.find(), section);
                int page = Integer.parseInt(row.group(1));
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertTrue(stripper.getText(document).contains(section), section);
            }
        }
        assertTrue(!text(onA4(samples().get(0))).contains("Contents"), "a short report has none");
    }

    @Test
    void thePaperNeverCallsItselfMoreThanItIs() throws Exception {
        for (Path sample : samples()) {
            byte[] record = Files.readAllBytes(sample);
            String page =
                    new String(
                                    write(Paper.A4).html(check(record), record, Photographs.NONE),
                                    StandardCharsets.UTF_8)
                            .toLowerCase(Locale.ROOT);
            assertTrue(
                    page.contains("installer&#39;s measurement record and declaration")
                            || page.contains("installer's measurement record and declaration"));
            assertTrue(!page.contains("certif"), "a certificate");
            assertTrue(page.contains("it approves nothing"));
        }
    }

    private static ReportJob write(Paper paper) throws Exception {
        return new ReportJob(TEMPLATE, paper, DAY);
    }

    private static CheckedJob check(byte[] record) throws Exception {
        String key = Sha256.of(record);
        CheckedJob checked = CHECKED.get(key);
        if (checked == null) {
            checked = CheckJob.check(record, Optional.empty(), Path.of("rules"));
            CHECKED.put(key, checked);
        }
        return checked;
    }

    /** The paper leaves out the run and the straight where there is but one of each. */
    private static boolean endsSomewhereIn(String text, String place) {
        String rest = place;
        while (true) {
            String capital =
                    rest.isEmpty()
                            ? rest
                            : Character.toUpperCase(rest.charAt(0)) + rest.substring(1);
            if (text.contains(rest) || text.contains(capital)) {
                return true;
            }
            int comma = rest.indexOf(", ");
            if (comma < 0 || !(rest.startsWith("run ") || rest.startsWith("straight "))) {
                return false;
            }
            rest = rest.substring(comma + 2);
        }
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            return stripper.getText(document);
        }
    }

    private static String words(String text) {
        return text.replaceAll("-\\s+", "-").replaceAll("\\s+", " ");
    }
}
