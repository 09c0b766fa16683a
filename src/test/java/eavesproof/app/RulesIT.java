package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.app.Launcher.Answer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rule sets looked at, verified, compared and begun, as somebody at a terminal does it. */
class RulesIT {
    private static final Path HOME = Launcher.distribution();
    private static final String SAMPLE = HOME.resolve("samples/verandah-pvc.json").toString();

    @TempDir Path elsewhere;
    private Launcher eavesproof;

    @BeforeEach
    void callItFromAFolderOfItsOwn() {
        eavesproof = Launcher.from(elsewhere);
    }

    @Test
    void theListHasEveryShippedRuleSet() throws Exception {
        Answer answer = eavesproof.ask("rules", "list");

        assertEquals(0, answer.exit(), answer::err);
        for (String name : RuleSets.names(HOME.resolve("rules"))) {
            assertTrue(answer.out().lines().anyMatch(line -> line.startsWith(name + " ")), name);
        }
    }

    @Test
    void theSheetHasLimitSourceAndWhatIsNotChecked() throws Exception {
        Answer answer = eavesproof.ask("rules", "show", "trade-practice");

        assertEquals(0, answer.exit(), answer::err);
        String text = answer.out().replaceAll("\\s+", " ");
        assertTrue(text.contains("centre to centre: at most 500 mm"), text);
        assertTrue(text.contains("gutter material is PVC-U"), text);
        assertTrue(text.contains("each where gutter kind is eaves"), text);
        assertTrue(text.contains("Common practice of the trade"), text);
        assertTrue(answer.out().contains("\nNOT CHECKED\n"), answer::out);
        assertTrue(answer.out().contains("rules as shipped"), answer::out);
        assertTrue(answer.out().lines().allMatch(line -> line.length() <= 80), answer::out);
    }

    @Test
    void whatARuleCanSpeakOfIsShownByWord() throws Exception {
        Answer answer = eavesproof.ask("rules", "words", "bracketspacing");

        assertEquals(0, answer.exit(), answer::err);
        assertEquals(
                List.of(
                        "BracketSpacing(run, from, to, centresMm)",
                        "    from one support to the next, centre to centre; in mm"),
                answer.out().lines().toList());
        assertEquals(64, eavesproof.ask("rules", "words", "unicorn").exit());
        assertTrue(eavesproof.ask("rules", "words").out().contains("basis coldest_c"));
    }

    @Test
    void everyShippedRuleSetIsInOrder() throws Exception {
        for (String name : RuleSets.names(HOME.resolve("rules"))) {
            Answer answer = eavesproof.ask("rules", "verify", name);
            assertEquals(0, answer.exit(), () -> answer.out() + answer.err());
            assertTrue(answer.out().contains("All is well."), answer::out);
        }
    }

    @Test
    void anAdaptedRuleSetIsInOrderAndChangesNothingYet() throws Exception {
        Path own = adapted();

        assertEquals(0, eavesproof.ask("rules", "verify", "our-council").exit());
        Answer compared = eavesproof.ask("rules", "compare", "trade-practice", own.toString());
        assertEquals(0, compared.exit(), compared::err);
        assertTrue(compared.out().contains("No difference"), compared::out);
    }

    @Test
    void aChangedLimitIsShownWithTheVerdictsThatItChanges() throws Exception {
        Path own = adapted();
        edit(own.resolve("own.drl"), "500, \"mm\"", "450, \"mm\"");

        Answer answer =
                eavesproof.ask(
                        "rules", "compare", "trade-practice", "our-council", "--job", SAMPLE);

        assertEquals(0, answer.exit(), answer::err);
        String text = answer.out().replaceAll("\\s+", " ");
        assertTrue(text.contains("bracket centres: at most 450 mm, was at most 500 mm"), text);
        assertTrue(text.contains("does not comply"), text);
        assertTrue(text.contains("was complies"), text);
    }

    /** The finished example of rules/README.md, typed as it stands there. */
    @Test
    void aCouncilGetsARuleSetOfItsOwn() throws Exception {
        Answer begun =
                adapt(
                        "gb-eng",
                        "my-council",
                        "--replace",
                        "bracket centres in England,fall of a half-round gutter");
        assertEquals(0, begun.exit(), begun::err);
        assertTrue(begun.err().contains("rules verify my-council"), begun::err);
        Path own = elsewhere.resolve("my-council");
        edit(own.resolve("own.drl"), "1000, \"mm\"", "800, \"mm\"");
        Answer halfway = eavesproof.ask("rules", "verify", "my-council");
        assertTrue(halfway.out().contains("look again at:"), halfway::out);

        Files.writeString(own.resolve("own.drl"), readme("drl"));
        Files.writeString(own.resolve("rule-set.json"), readme("json"));
        Answer verified = eavesproof.ask("rules", "verify", "my-council");
        assertEquals(0, verified.exit(), () -> verified.out() + verified.err());
        assertFalse(verified.out().contains("look again at:"), verified::out);

        Answer checked = eavesproof.ask("check", SAMPLE, "--rules", "my-council");
        assertEquals("", checked.err());
        String text = checked.out().replaceAll("\\s+", " ");
        assertTrue(text.contains("at least 2.5 mm/m (1:400)"), text);
        assertTrue(text.contains("bracket centres in England: at most 800 mm, was at most 1000"));

        Answer printed = eavesproof.ask("rules", "show", "my-council", "-o", "sheet.pdf");
        assertEquals(0, printed.exit(), printed::err);
        assertEquals("", printed.out());
        assertTrue(Files.size(elsewhere.resolve("sheet.pdf")) > 10_000);
        assertEquals(74, eavesproof.ask("rules", "show", "nz", "-o", "sheet.pdf").exit());
        assertEquals(64, eavesproof.ask("rules", "show", "nz", "-o", "sheet.txt").exit());
    }

    @Test
    void changedConditionsAreCompiledOnceAndKeptForThisUserAlone() throws Exception {
        Path own = adapted();
        edit(own.resolve("own.drl"), "named == \"cemented\"", "named == \"gasket\"");
        Path cache = elsewhere.resolve("cache");
        Launcher keeping =
                eavesproof.with("EAVESPROOF_CACHE", "").with("XDG_CACHE_HOME", cache.toString());

        Answer first = keeping.ask("check", SAMPLE, "--rules", "our-council");
        Path layers = cache.resolve("eavesproof/layers");
        List<Path> kept = files(layers);
        assertEquals(2, kept.size(), kept::toString);
        assertTrue(kept.get(0).toString().endsWith(".sheet"), kept::toString);
        assertTrue(kept.get(1).toString().endsWith(".layer"), kept::toString);
        assertEquals(
                "rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(layers)));
        assertEquals(first, keeping.ask("check", SAMPLE, "--rules", "our-council"));

        for (Path file : kept) {
            byte[] good = Files.readAllBytes(file);
            Files.write(file, new byte[good.length]);
            assertEquals(first, keeping.ask("check", SAMPLE, "--rules", "our-council"));
            assertArrayEquals(good, Files.readAllBytes(file));
        }

        for (Path file : kept) {
            Files.delete(file);
        }
        assertEquals(first, eavesproof.ask("check", SAMPLE, "--rules", "our-council"));
        assertEquals(List.of(), files(layers));
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted(Comparator.comparing(file -> file.toString().endsWith(".layer")))
                    .toList();
        }
    }

    private static String readme(String kind) throws IOException {
        String text = Files.readString(HOME.resolve("rules/README.md"));
        String begins = "```" + kind + " layer\n";
        int start = text.indexOf(begins) + begins.length();
        return text.substring(start, text.indexOf("```", start));
    }

    @Test
    void anExampleThatComesOutOtherwiseIsNotWell() throws Exception {
        Path own = adapted();
        String job = Files.readString(Path.of(SAMPLE));
        Files.createDirectory(own.resolve("examples"));
        Files.writeString(
                own.resolve("examples/one.json"),
                "{\"title\": \"t\", \"job\": "
                        + job
                        + ", \"expect\": [{\"rule\": \"bracket centres\", \"subject\": {},"
                        + " \"verdict\": \"does-not-comply\", \"why\": \"it does not\"}]}");

        Answer answer = eavesproof.ask("rules", "verify", "our-council");

        assertEquals(1, answer.exit(), answer::err);
        assertTrue(answer.out().contains("examples/one.json"), answer::out);
        assertFalse(answer.out().contains("All is well"), answer::out);
    }

    @Test
    void aRuleSetThatCannotBeTakenIsNamedWithItsLine() throws Exception {
        Path own = adapted();
        edit(own.resolve("own.drl"), "BracketSpacing", "BracketSpacin");

        Answer answer = eavesproof.ask("rules", "verify", "our-council");

        assertEquals(65, answer.exit(), answer::out);
        assertTrue(answer.err().contains("own.drl:"), answer::err);
        assertEquals("", answer.out());
    }

    @Test
    void whatIsThereAlreadyStaysAndWhatIsNotIsRefused() throws Exception {
        adapted();
        assertEquals(74, adapt("trade-practice", "our-council").exit());
        assertEquals(65, adapt("atlantis", "another").exit());
        assertEquals(65, adapt("trade-practice", "Not A Name").exit());
        assertEquals(64, eavesproof.ask("rules", "shout").exit());
        assertEquals(64, eavesproof.ask("rules").exit());
        assertFalse(Files.exists(elsewhere.resolve("another")));
    }

    private Path adapted() throws Exception {
        Answer answer = adapt("trade-practice", "our-council", "--replace", "bracket centres");
        assertEquals(0, answer.exit(), answer::err);
        return elsewhere.resolve("our-council");
    }

    private Answer adapt(String base, String folder, String... more) throws Exception {
        String[] typed = new String[5 + more.length];
        System.arraycopy(new String[] {"rules", "adapt", base, "-o", folder}, 0, typed, 0, 5);
        System.arraycopy(more, 0, typed, 5, more.length);
        return eavesproof.ask(typed);
    }

    private static void edit(Path file, String old, String now) throws IOException {
        String text = Files.readString(file);
        assertTrue(text.contains(old), text);
        Files.writeString(file, text.replace(old, now));
    }
}
