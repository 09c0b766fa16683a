package eavesproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemplatesTest {
    private static final Allowance SHORT = new Allowance(Duration.ofMillis(400), 100_000);
    private static final Allowance LONG = new Allowance(Duration.ofMinutes(1), 100_000);

    @TempDir private Path temporary;
    private Path folder;

    @BeforeEach
    void makeFolder() throws Exception {
        folder = Files.createDirectory(temporary.resolve("templates"));
    }

    record Place(String run, double stationMm, List<String> remarks) {
        public String secret() {
            return "not a component";
        }
    }

    private String fill(String template, Map<String, ?> values) throws Exception {
        Files.writeString(folder.resolve("page.ftlh"), template);
        return new Templates(folder, Set.of("eavesproof.report"), LONG).fill("page.ftlh", values);
    }

    private LayoutTrouble refused(String template, Allowance allowance) throws Exception {
        Files.writeString(folder.resolve("page.ftlh"), template);
        Templates templates = new Templates(folder, Set.of("eavesproof.report"), allowance);
        Place place = new Place("a", 1.5, List.of());
        Map<String, ?> values =
                Map.of("place", place, "many", List.of(1, 2, 3), "stranger", folder);
        return assertThrows(LayoutTrouble.class, () -> templates.fill("page.ftlh", values));
    }

    @Test
    void theComponentsOfARecordCanBeRead() throws Exception {
        Place place = new Place("a", 1234567.5, List.of("wet", "windy"));
        assertEquals(
                "a 1234567.5 wet, windy",
                fill(
                        "${place.run} ${place.stationMm} ${place.remarks?join(\", \")}",
                        Map.of("place", place)));
    }

    @Test
    void textIsEscapedAndMadeHarmless() throws Exception {
        assertEquals("&lt;b&gt;&amp;\uFFFD", fill("${t}", Map.of("t", "<b>&\u202E")));
    }

    @Test
    void textInsideARecordIsMadeHarmlessToo() throws Exception {
        Place place = new Place("\u0007", 0, List.of("\uD800"));
        assertEquals(
                "\uFFFD\uFFFD", fill("${place.run}${place.remarks[0]}", Map.of("place", place)));
    }

    @Test
    void markupIsInsertedAsItIs() throws Exception {
        assertTrue(fill("${d}", Map.of("d", Markup.place("a1"))).startsWith("<object type="));
    }

    @Test
    void numbersAreTheSameInEveryLocale() throws Exception {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals("1234.5", fill("${n}", Map.of("n", 1234.5)));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aTemplateMayIncludeItsNeighbour() throws Exception {
        Files.createDirectories(folder.resolve("parts"));
        Files.writeString(folder.resolve("parts/head.ftlh"), "head of ${t}");
        assertEquals("head of x", fill("<#include \"parts/head.ftlh\">", Map.of("t", "x")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "${place.nowhere}                   | Place has no \"nowhere\", expected one of run, station",
                "${place.nowhere!\"\"}              | Place has no \"nowhere\"",
                "${place.secret()}                  | Place has no \"secret\"",
                "${place.getClass().name}           | Place has no \"getClass\"",
                "${place.class.name}                | Place has no \"class\"",
                "${place}                           | Expected a string",
                "  ${nowhere}                       | null or missing: ==> nowhere",
                "${stranger.path}                   | cannot be given a ",
                "${place?api.run}                   | api_builtin_enabled",
                "${many?api.class}                  | api_builtin_enabled",
                "${\"freemarker.template.utility.Execute\"?new()(\"id\")} | not allowed",
                "<#assign x = \"freemarker.template.utility.ObjectConstructor\"?new()> | not allowed",
                "<#assign x = \"freemarker.template.utility.JythonRuntime\"?new()>     | not allowed",
                "<@\"<#assign e='freemarker.template.utility.Execute'?new()>\"?interpret/> | not allowed",
                "<#include \"../outside.ftlh\">     | \"../outside.ftlh\"",
                "<#include \"/etc/passwd\">         | not found for name \"etc/passwd\"",
                "<#include \"file:///etc/passwd\">  | not found",
                "<#include \"http://127.0.0.1/x\">  | not found",
                "<#include \"link.ftlh\">           | not found",
                "<#include \"linked/outside.ftlh\"> | not found",
                "<#import \"link.ftlh\" as x>       | not found",
                "<#if>                              | #if",
                "<#list many as n>${n}              | unclosed #list",
                "${many?eval}                       | Expected a string",
                "<#list 1.. as n>${n}</#list>       | wrote more than 100000 characters",
            })
    void aTemplateThatReachesOutIsRefused(String body, String said) throws Exception {
        Path outside = Files.createDirectory(temporary.resolve("outside"));
        Files.writeString(outside.resolve("outside.ftlh"), "stolen");
        Files.createSymbolicLink(folder.resolve("link.ftlh"), outside.resolve("outside.ftlh"));
        Files.createSymbolicLink(folder.resolve("linked"), outside);
        LayoutTrouble trouble = refused("\n" + body, LONG);
        assertTrue(trouble.getMessage().contains(said), trouble.getMessage());
        assertFalse(trouble.getMessage().contains("\n"), trouble.getMessage());
        assertEquals("page.ftlh", trouble.template());
        assertEquals(2, trouble.line(), trouble.getMessage());
        assertTrue(trouble.column() > 0, trouble.getMessage());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<#list 1.. as n></#list>",
                "<#list 1.. as n><#attempt>${n.x}<#recover></#attempt></#list>",
                "${(\"a\"?left_pad(36) + \"!\")?matches(\"(( |  )*)*x\")?c}",
            })
    void aTemplateThatDoesNotEndIsStopped(String body) throws Exception {
        LayoutTrouble trouble = refused("\n" + body, SHORT);
        assertTrue(
                trouble.getMessage().contains("did not end within 400 ms"), trouble.getMessage());
        assertEquals(2, trouble.line(), trouble.getMessage());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<#macro m>x<@m/></#macro><@m/>",
                "<#function f n><#return f(n + 1)></#function>${f(1)}",
                "<#include \"page.ftlh\">",
            })
    void aTemplateThatCallsItselfWithoutEndIsStopped(String body) throws Exception {
        LayoutTrouble trouble = refused(body, LONG);
        assertTrue(trouble.getMessage().contains("calls itself too deeply"), trouble.getMessage());
    }

    @Test
    void aFaultInAnIncludedTemplateIsToldWhereItIs() throws Exception {
        Files.writeString(folder.resolve("part.ftlh"), "\n\n${nothing}");
        LayoutTrouble trouble = refused("<#include \"part.ftlh\">", LONG);
        assertEquals("part.ftlh", trouble.template());
        assertEquals(3, trouble.line());
    }

    @Test
    void aTemplateThatIsNotThereIsNamed() throws Exception {
        Templates templates = new Templates(folder, Set.of(), LONG);
        LayoutTrouble trouble =
                assertThrows(LayoutTrouble.class, () -> templates.fill("no.ftlh", Map.of()));
        assertTrue(trouble.getMessage().startsWith("no.ftlh: not found"), trouble.getMessage());
    }

    @Test
    void aFolderThatIsNotThereIsNamed() {
        Path none = folder.resolve("none");
        LayoutTrouble trouble =
                assertThrows(LayoutTrouble.class, () -> new Templates(none, Set.of(), LONG));
        assertTrue(trouble.getMessage().contains("none"), trouble.getMessage());
    }

    @Test
    void bytesThatAreNotTextAreRefused() throws Exception {
        Files.write(folder.resolve("bad.ftlh"), new byte[] {'a', (byte) 0xC3, '('});
        Templates templates = new Templates(folder, Set.of(), LONG);
        LayoutTrouble trouble =
                assertThrows(LayoutTrouble.class, () -> templates.fill("bad.ftlh", Map.of()));
        assertTrue(trouble.getMessage().contains("UTF-8"), trouble.getMessage());
    }

    @Test
    void aHugeTemplateIsRefused() throws Exception {
        byte[] huge = new byte[1_000_001];
        Arrays.fill(huge, (byte) 'x');
        Files.write(folder.resolve("huge.ftlh"), huge);
        Templates templates = new Templates(folder, Set.of(), LONG);
        LayoutTrouble trouble =
                assertThrows(LayoutTrouble.class, () -> templates.fill("huge.ftlh", Map.of()));
        assertTrue(trouble.getMessage().contains("1000001 bytes"), trouble.getMessage());
    }
}
