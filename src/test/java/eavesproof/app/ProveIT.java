package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.app.Launcher.Answer;
import eavesproof.report.pdf.TestKeys;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports signed and proved as somebody at a terminal does it. */
class ProveIT {
    private static final String JOB =
            Launcher.distribution().resolve("samples/verandah-pvc.json").toString();

    @TempDir Path elsewhere;
    private Launcher eavesproof;

    @BeforeEach
    void callItFromAFolderOfItsOwnWithAKey() throws Exception {
        eavesproof = Launcher.from(elsewhere).with("EAVESPROOF_PASSPHRASE", TestKeys.PASSPHRASE);
        Files.write(elsewhere.resolve("key.p12"), TestKeys.ec("Mere Tāmati"));
    }

    @Test
    void aSignedReportIsProvedByItsFingerprint() throws Exception {
        Answer written =
                eavesproof.ask(
                        "report", JOB, "-o", "r.pdf", "--sign", "key.p12", "--paper", "letter");
        assertEquals(0, written.exit(), written::err);
        assertFalse((written.out() + written.err()).contains(TestKeys.PASSPHRASE));

        Answer proved = eavesproof.ask("prove", "r.pdf");
        assertEquals(0, proved.exit(), proved::out);
        assertTrue(unwrapped(proved.out()).contains("Mere Tāmati"), proved::out);
        Matcher fingerprint = Pattern.compile("\\b[0-9a-f]{64}\\b").matcher(proved.out());
        assertTrue(fingerprint.find(), proved::out);
        String colons =
                fingerprint
                        .group()
                        .toUpperCase(java.util.Locale.ROOT)
                        .replaceAll("(..)(?!$)", "$1:");
        assertEquals(0, eavesproof.ask("prove", "r.pdf", "--signed-by", colons).exit());
        assertEquals(1, eavesproof.ask("prove", "r.pdf", "--signed-by", "0".repeat(64)).exit());
        assertEquals(64, eavesproof.ask("prove", "r.pdf", "--signed-by", "0123").exit());
    }

    @Test
    void theCareSheetIsAskedForByItsName() throws Exception {
        Answer written = eavesproof.ask("report", JOB, "-o", "c.pdf", "--template", "care-sheet");
        assertEquals(0, written.exit(), written::err);
        assertEquals(0, eavesproof.ask("prove", "c.pdf").exit());
    }

    @Test
    void aKeyThatCannotSignIsToldOnceAndNothingIsWritten() throws Exception {
        Answer wrong =
                eavesproof
                        .with("EAVESPROOF_PASSPHRASE", "guess work")
                        .ask("report", JOB, "-o", "r.pdf", "--sign", "key.p12", "--trace");
        assertEquals(65, wrong.exit());
        assertTrue(
                wrong.err().contains("key.p12: the passphrase does not open the file"), wrong::err);
        assertFalse(wrong.err().contains("guess work"), wrong::err);
        assertFalse(wrong.err().contains("\tat "), wrong::err);

        Answer late =
                eavesproof.ask(
                        "report", JOB, "-o", "r.pdf", "--sign", "key.p12", "--date", "2031-01-01");
        assertEquals(65, late.exit());
        assertTrue(unwrapped(late.err()).contains("and not on 2031-01-01"), late::err);

        Answer absent = eavesproof.ask("report", JOB, "-o", "r.pdf", "--sign", "no.p12");
        assertEquals(74, absent.exit(), absent::err);
        assertFalse(Files.exists(elsewhere.resolve("r.pdf")));
    }

    /** Where a line is broken depends on how long the names in it are. */
    private static String unwrapped(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void withoutATerminalAndAVariableThePassphraseIsAskedForInVain() throws Exception {
        Answer answer =
                Launcher.from(elsewhere).ask("report", JOB, "-o", "r.pdf", "--sign", "key.p12");
        assertEquals(64, answer.exit(), answer::err);
        assertTrue(answer.err().contains("EAVESPROOF_PASSPHRASE is not set"), answer::err);
    }

    @Test
    void whatIsNoReportIsBadInput() throws Exception {
        Files.writeString(elsewhere.resolve("r.pdf"), "%PDF-1.7 nothing");
        Answer answer = eavesproof.ask("prove", "r.pdf");
        assertEquals(65, answer.exit());
        assertEquals("", answer.out());
        assertTrue(answer.err().contains("r.pdf: c"), answer::err);
    }
}
