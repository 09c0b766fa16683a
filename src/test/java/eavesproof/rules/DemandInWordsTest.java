package eavesproof.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DemandInWordsTest {
    private static final Rule.Limit WIDTH = new Rule.Bound("$width");

    @Test
    void aNumberStandsAsItWasWritten() {
        assertEquals("at most 36 in", words(new Rule.AtMost(number("36"), "in")));
    }

    @Test
    void aFallIsAlsoSaidAsARatio() {
        assertEquals("at least 2.5 mm/m (1:400)", words(new Rule.AtLeast(number("2.5"), "mm/m")));
        assertEquals("at least 0 mm/m", words(new Rule.AtLeast(number("0"), "mm/m")));
    }

    @Test
    void whatNothingInTheJobChangesIsReckoned() {
        Rule.Limit fall = new Rule.Arithmetic('/', number("1000"), number("400"));
        assertEquals("at least 2.5 mm/m (1:400)", words(new Rule.AtLeast(fall, "mm/m")));
        Rule.Limit twice =
                new Rule.Arithmetic(
                        '-', new Rule.Arithmetic('*', number("3"), number("4")), number("2"));
        assertEquals("at most 10 mm", words(new Rule.AtMost(twice, "mm")));
    }

    @Test
    void aCountAndARatioHaveNoUnit() {
        assertEquals("at least 2", words(new Rule.AtLeast(number("2"), "count")));
        assertEquals("at most 1", words(new Rule.AtMost(number("1"), "ratio")));
    }

    @Test
    void whatACircumstanceBindsIsCalledByItsName() {
        Rule.Limit four = new Rule.Arithmetic('*', number("4"), WIDTH);
        assertEquals("at most 4 × gutter width, in mm", words(new Rule.AtMost(four, "mm")));
    }

    @Test
    void aSumInAProductIsHeldTogether() {
        Rule.Limit sum = new Rule.Arithmetic('+', number("4"), WIDTH);
        assertEquals(
                "at most 2 × (4 + gutter width), in mm",
                words(new Rule.AtMost(new Rule.Arithmetic('*', number("2"), sum), "mm")));
        assertEquals(
                "at most 10 - (4 + gutter width), in mm",
                words(new Rule.AtMost(new Rule.Arithmetic('-', number("10"), sum), "mm")));
    }

    @Test
    void aTableIsNamedWithWhatEntersIt() {
        Rule.Lookup table =
                new Rule.Lookup(
                        "centres",
                        List.of(new Rule.Text("copper"), new Rule.Bound("$width")),
                        Optional.empty());
        assertEquals(
                "at most table centres by \"copper\" and gutter width, in mm",
                words(new Rule.AtMost(table, "mm")));
        assertEquals(
                "what table centres by \"copper\" and gutter width allows",
                words(new Rule.OneOfTable(table)));
    }

    @Test
    void oneWordMustBeThatWord() {
        assertEquals("must be yes", words(new Rule.OneOf(List.of("yes"))));
        assertEquals("one of dye, plan", words(new Rule.OneOf(List.of("dye", "plan"))));
    }

    private static Rule.Limit number(String written) {
        return new Rule.Constant(new Rule.Num(Double.parseDouble(written), written));
    }

    private static String words(Rule.Demand demand) {
        Rule.Pattern width =
                new Rule.Pattern(
                        "GutterWidth",
                        "",
                        List.of(new Rule.Join("run", "$run"), new Rule.Bind("$width", "widthMm")));
        return DemandInWords.of(
                new Rule(
                        "a rule",
                        "support",
                        "It holds.",
                        new Rule.Cited("practice", ""),
                        Optional.empty(),
                        new Rule.Pattern("BracketSpacing", "$spacing", List.of()),
                        List.of(width),
                        demand,
                        "own.drl",
                        1));
    }
}
