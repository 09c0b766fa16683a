package eavesproof.app.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.app.cli.Page.Look;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PageTest {
    private static final String ESCAPE = "\u001b";

    @Test
    void wordsAreKeptWholeAndLinesWithinEightyColumns() {
        String word = "gutter";
        String text = new Page(false).say(2, 4, Look.PLAIN, (word + " ").repeat(30)).text();

        assertTrue(text.startsWith("  gutter gutter"), text);
        assertTrue(text.lines().skip(1).allMatch(line -> line.startsWith("    gutter")), text);
        assertTrue(text.lines().allMatch(line -> line.length() <= 80), text);
        assertEquals(30, text.split(word, -1).length - 1);
    }

    @Test
    void anAmountStaysWithItsUnit() {
        String fits = new Page(false).say(0, "x".repeat(72) + " 1450 mm and so on").text();
        assertEquals("x".repeat(72) + " 1450 mm", fits.lines().findFirst().orElseThrow());

        String moves = new Page(false).say(0, "x".repeat(74) + " 1450 mm and so on").text();
        assertEquals("1450 mm and so on", moves.lines().skip(1).findFirst().orElseThrow());
    }

    @Test
    void aWordLongerThanALineIsCut() {
        String text = new Page(false).say(4, "y".repeat(100)).text();

        assertEquals(List.of(76, 24), text.lines().map(line -> line.strip().length()).toList());
    }

    @Test
    void whatMattersStandsAtTheRightEdge() {
        String text = new Page(false).lead(4, 6, Look.PLAIN, "run a", "10 mm to spare").text();

        assertEquals("    run a " + ".".repeat(55) + " 10 mm to spare\n", text);
    }

    @Test
    void whatIsTooLongForTheRightEdgeFollowsInstead() {
        String end = "z".repeat(70);

        String text = new Page(false).lead(0, 0, Look.PLAIN, "run a", end).text();

        assertEquals("run a: " + end + "\n", text);
    }

    @Test
    void meaningsStandInAColumnOrBelow() {
        Page page = new Page(false).pair(2, 10, "--a", "one").pair(2, 10, "--longer", "two");

        assertEquals("  --a     one\n  --longer\n          two\n", page.text());
    }

    @Test
    void colourIsThereOnlyWhenWanted() {
        assertEquals("deep\n", new Page(false).say(0, Look.ALARM, "deep").text());
        String coloured = new Page(true).say(0, Look.ALARM, "deep").text();
        assertTrue(coloured.startsWith(ESCAPE) && coloured.contains("deep"), coloured);
        assertTrue(coloured.endsWith(ESCAPE + "[0m\n"), coloured);
    }

    @Test
    void aRecordCannotSteerTheTerminal() {
        String text = new Page(false).say(0, "by " + ESCAPE + "[31mBob\r\nrun b \u202e!").text();

        assertFalse(text.contains(ESCAPE) || text.contains("\r") || text.contains("\u202e"), text);
        assertEquals(1, text.lines().count());
    }

    @Test
    void noTextWhateverItIsMakesALongerLine() {
        Random random = new Random(20_260_501);
        for (int round = 0; round < 2000; round++) {
            int first = random.nextInt(12);
            int others = random.nextInt(12);
            String paragraph = words(random, random.nextInt(30));
            String end = words(random, random.nextInt(4));
            String text =
                    new Page(false)
                            .say(first, others, Look.PLAIN, paragraph)
                            .lead(first, others, Look.PLAIN, paragraph, end)
                            .pair(first, first + 20, end, paragraph)
                            .text();
            text.lines()
                    .forEach(
                            line ->
                                    assertTrue(
                                            line.codePointCount(0, line.length()) <= Page.WIDTH,
                                            line));
        }
    }

    private static String words(Random random, int count) {
        return Stream.generate(() -> word(random)).limit(count).collect(Collectors.joining(" "));
    }

    private static String word(Random random) {
        return switch (random.nextInt(6)) {
            case 0 -> "mm";
            case 1 -> String.valueOf(random.nextInt(100_000));
            case 2 -> "ā".repeat(random.nextInt(12));
            case 3 -> "\ud83c\udf27".repeat(random.nextInt(90));
            case 4 -> "straight";
            default -> "w".repeat(random.nextInt(100));
        };
    }
}
