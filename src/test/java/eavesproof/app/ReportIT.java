package eavesproof.app;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.app.Launcher.Answer;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports written, or not written, as somebody at a terminal asks for them. */
class ReportIT {
    private static final Path SAMPLES = Launcher.distribution().resolve("samples");
    private static final String GOOD = SAMPLES.resolve("verandah-pvc.json").toString();
    private static final String FAULTY = SAMPLES.resolve("carport-several-faults.json").toString();

    @TempDir Path elsewhere;
    private Launcher eavesproof;

    @BeforeEach
    void callItFromAFolderOfItsOwn() {
        eavesproof = Launcher.from(elsewhere);
    }

    @Test
    void aReportIsAPdfAndTheOutcomeIsShown() throws Exception {
        Answer answer = eavesproof.ask("report", GOOD, "-o", "r.pdf");

        assertEquals(0, answer.exit(), answer::err);
        assertTrue(answer.out().startsWith("Complies: "), answer::out);
        assertEquals("written: r.pdf\n", answer.err());
        String pdf = Files.readString(elsewhere.resolve("r.pdf"), ISO_8859_1);
        assertTrue(pdf.startsWith("%PDF-1."));
        assertTrue(pdf.stripTrailing().endsWith("%%EOF"));
    }

    @Test
    void aJobThatDoesNotComplyHasAReportToo() throws Exception {
        Answer answer = eavesproof.ask("report", FAULTY, "-o", "r.html", "--paper", "letter");

        assertEquals(1, answer.exit(), answer::err);
        assertTrue(
                Files.readString(elsewhere.resolve("r.html")).contains("does not comply"),
                answer::out);
    }

    @Test
    void theSameRecordRulesAndDateGiveTheSameBytes() throws Exception {
        eavesproof.ask("report", GOOD, "-o", "a.pdf", "--date", "2026-05-31");
        eavesproof
                .with("TZ", "Pacific/Auckland")
                .with("LC_ALL", "C")
                .ask("report", GOOD, "-o", "b.pdf", "--date", "2026-05-31");

        assertArrayEquals(
                Files.readAllBytes(elsewhere.resolve("a.pdf")),
                Files.readAllBytes(elsewhere.resolve("b.pdf")));
    }

    @Test
    void anExistingReportStaysUnlessAskedOtherwise() throws Exception {
        Path mine = Files.writeString(elsewhere.resolve("r.html"), "mine");

        Answer refused = eavesproof.ask("report", GOOD, "-o", "r.html");
        assertEquals(74, refused.exit());
        assertTrue(refused.err().contains("--force"), refused::err);
        assertEquals("", refused.out());
        assertEquals("mine", Files.readString(mine));

        assertEquals(0, eavesproof.ask("report", GOOD, "-o", "r.html", "--force").exit());
        assertTrue(Files.readString(mine).startsWith("<!DOCTYPE html>"));
        assertEquals(List.of("r.html"), left());
    }

    @Test
    void aBadRecordLeavesNoFile() throws Exception {
        Files.writeString(elsewhere.resolve("bad.json"), "{\"id\": 5}");

        Answer answer = eavesproof.ask("report", "bad.json", "-o", "r.pdf");

        assertEquals(65, answer.exit(), answer::err);
        assertEquals("", answer.out());
        assertEquals(List.of("bad.json"), left());
    }

    @Test
    void thePictureOfASignatureIsPrintedAndWhatIsNoPictureLeavesNoFile() throws Exception {
        Files.writeString(elsewhere.resolve("hand.png"), "not a picture");
        Answer refused =
                eavesproof.ask("report", GOOD, "-o", "r.pdf", "--signature-picture", "hand.png");
        assertEquals(65, refused.exit(), refused::err);
        assertTrue(refused.err().contains("hand.png is neither JPEG nor PNG"), refused::err);
        assertEquals(List.of("hand.png"), left());

        ImageIO.write(
                new BufferedImage(90, 30, BufferedImage.TYPE_INT_RGB),
                "png",
                elsewhere.resolve("hand.png").toFile());
        Answer answer =
                eavesproof.ask("report", GOOD, "-o", "r.html", "--signature-picture", "hand.png");
        assertEquals(0, answer.exit(), answer::err);
        assertTrue(
                Files.readString(elsewhere.resolve("r.html"))
                        .contains("as a picture\" style=\"width:45.0mm;height:15.0mm\""));

        Answer nobody =
                eavesproof.ask(
                        "report", GOOD, "-o", "s.html", "--signature-picture", "zz=hand.png");
        assertEquals(64, nobody.exit(), nobody::err);
        assertTrue(nobody.err().contains("nobody signs as zz; it may be "), nobody::err);
    }

    @Test
    void aTemplateWithAMistakeIsNamedAndLeavesNoFile() throws Exception {
        Path folder = Files.createDirectory(elsewhere.resolve("mine"));
        Files.writeString(folder.resolve("report.ftlh"), "<html>\n${report.nothing.such}\n</html>");

        Answer answer = eavesproof.ask("report", GOOD, "-o", "r.pdf", "--template", "mine");

        assertEquals(65, answer.exit(), answer::err);
        assertTrue(answer.err().contains("report.ftlh, line 2"), answer::err);
        assertEquals(List.of("mine"), left());
    }

    @Test
    void whatMakesNoReportIsWrongUse() throws Exception {
        for (List<String> more :
                List.of(
                        List.<String>of(),
                        List.of("-o", "r.doc"),
                        List.of("-o", "r.pdf", "--paper", "a5"),
                        List.of("-o", "r.pdf", "--date", "31.5.2026"))) {
            String[] line =
                    Stream.concat(Stream.of("report", GOOD), more.stream()).toArray(String[]::new);
            Answer answer = eavesproof.ask(line);
            assertEquals(64, answer.exit(), answer::err);
            assertEquals("", answer.out());
        }
        assertEquals(List.of(), left());
    }

    private List<String> left() throws IOException {
        try (Stream<Path> files = Files.list(elsewhere)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
