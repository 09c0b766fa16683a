package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.check.drools.PlainForm;
import eavesproof.check.drools.PrivateFolder;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets of a stranger's rule files between one run and the next. */
class KeptSheetsTest {
    private static final String RULE =
            """
            rule "close enough"
              @topic("support")
              @says("Brackets are close; this holds for a width of 'any' kind, 1/2 or more.")
              @source("letter 2")
            when
              $spacing : BracketSpacing($run : run)
              GutterKind(run == $run, named == "eaves")
              GutterWidth(run == $run, $width : widthMm, widthMm <= 150.50)
            then
              require.atMost($spacing, 4 * $width - 1.10, "mm");
            end
            """;

    @TempDir Path temporary;
    private Path folder;
    private int read;

    @BeforeEach
    void nameAFolder() {
        folder = temporary.resolve("layers");
    }

    @Test
    void theSecondRunNeedsNoReaderAndHasTheSameRules() throws Exception {
        List<Rule> first = rules(RULE, "program 1");
        assertEquals(first, rules(RULE, "program 1"));
        assertEquals(PlainForm.read("own/own.drl", bytes(RULE)), first);
        assertEquals(1, read);
    }

    @Test
    void anotherLetterIsAnotherFile() throws Exception {
        rules(RULE, "program 1");
        assertTrue(
                rules(RULE.replace("1.10", "1.20"), "program 1").toString().contains("1.20"),
                "the limit of the file that was given");
        assertEquals(2, read);
    }

    @Test
    void anotherProgramReadsForItself() throws Exception {
        rules(RULE, "program 1");
        rules(RULE, "program 2");
        assertEquals(2, read);
    }

    @Test
    void whatIsRefusedIsRefusedEachTime() throws Exception {
        String refused = RULE.replace("widthMm <= 150.50", "widthMm != 150.50");
        assertThrows(RefusedRules.class, () -> rules(refused, "program 1"));
        assertThrows(RefusedRules.class, () -> rules(refused, "program 1"));
        assertEquals(2, read);
    }

    /** Its digest is right, since it was kept whole; only the name says that it is another's. */
    @Test
    void theSheetOfAnotherFileUnderThisNameIsNoticed() throws Exception {
        rules(RULE, "program 1");
        Path own = sheets().get(0);
        rules(RULE.replace("1.10", "1.20"), "program 1");
        Path other = sheets().stream().filter(it -> !it.equals(own)).findFirst().orElseThrow();
        Files.copy(other, own, StandardCopyOption.REPLACE_EXISTING);
        assertTrue(rules(RULE, "program 1").toString().contains("1.10"));
        assertEquals(3, read);
    }

    @Test
    void aChangedSheetIsNoticed() throws Exception {
        rules(RULE, "program 1");
        Path sheet = sheets().get(0);
        String text = Files.readString(sheet);
        Files.writeString(sheet, text.replace("1.10", "9.10"));
        assertTrue(rules(RULE, "program 1").toString().contains("1.10"));
        assertEquals(2, read);
    }

    private List<Rule> rules(String text, String program) throws RefusedRules {
        PrivateFolder own = new PrivateFolder(folder, System.getProperty("user.name"));
        return new KeptSheets(Optional.of(own), program)
                .rules(
                        "own/own.drl",
                        bytes(text),
                        (file, bytes) -> {
                            read++;
                            return PlainForm.read(file, bytes);
                        });
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private List<Path> sheets() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
