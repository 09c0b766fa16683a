package eavesproof.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.check.Requirement.NoLimit;
import eavesproof.check.Requirement.NumberLimit;
import eavesproof.check.Requirement.WordLimit;
import eavesproof.exchange.TableFile;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.Table;
import eavesproof.survey.FactKind;
import eavesproof.survey.Facts;
import eavesproof.survey.Measure;
import eavesproof.survey.Vocabulary;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TableLimitTest {
    private static final FactKind CENTRES = Vocabulary.kind(Facts.BracketSpacing.class);
    private static final FactKind MATERIAL = Vocabulary.kind(Facts.GutterMaterial.class);

    private static final String BANDS =
            """
            # A document, table 1
            # pitch up deg; most mm
            pitch,most
            25,600
            35,500
            55,400
            """;
    private static final String SIZES =
            """
            # A document, table 2
            # size down mm; most mm
            size,most
            75,300
            100,400
            """;
    private static final String CURVE =
            """
            # A document, figure 3
            # width between mm +/- 2; most mm
            width,most
            100,500
            150,400
            200,350
            """;

    @ParameterizedTest
    @CsvSource({"0, 600", "24.9, 600", "25, 600", "25.1, 500", "35, 500", "35.001, 400", "55, 400"})
    void theEdgeOfABandBelongsToIt(double pitch, double most) {
        assertEquals(most, most(BANDS, Uncertain.exact(pitch), Unit.DEGREE).value().value());
    }

    @ParameterizedTest
    @CsvSource({"75, 300", "99.9, 300", "100, 400", "5000, 400"})
    void downTakesTheNextPrintedOneBelow(double size, double most) {
        assertEquals(most, most(SIZES, Uncertain.exact(size), Unit.MM).value().value());
    }

    @Test
    void anotherUnitOfTheSameDimensionIsConverted() {
        String inches = SIZES.replace("down mm", "down in").replace("\n75,", "\n3,");
        inches = inches.replace("\n100,", "\n4,");
        assertEquals(400, most(inches, Uncertain.exact(101.6), Unit.MM).value().value());
        assertEquals(300, most(inches, Uncertain.exact(101.5), Unit.MM).value().value());
    }

    @ParameterizedTest
    @CsvSource({"100, 500", "125, 450", "150, 400", "200, 350"})
    void betweenIsAStraightLine(double width, double most) {
        assertEquals(
                most,
                most(CURVE.replace(" +/- 2", ""), Uncertain.exact(width), Unit.MM).value().value(),
                1e-9);
    }

    @Test
    void whatLiesOutsideHasNoLimit() {
        for (double pitch : List.of(55.001, 90.0)) {
            assertTrue(none(BANDS, Uncertain.exact(pitch), Unit.DEGREE).contains("outside this"));
        }
        assertTrue(none(SIZES, Uncertain.exact(74.99), Unit.MM).contains("outside this"));
        assertTrue(none(CURVE, Uncertain.exact(99), Unit.MM).contains("outside this"));
        assertTrue(none(CURVE, Uncertain.exact(201), Unit.MM).contains("outside this"));
        assertTrue(none(CURVE, Uncertain.of(199.9, "tape", 1), Unit.MM).contains("uncertainty"));
        assertTrue(none(SIZES, Uncertain.of(75.1, "tape", 1), Unit.MM).contains("uncertainty"));
    }

    @Test
    void whereNothingIsPrintedThereIsNoLimitAndNoOtherRowIsTaken() {
        String hole = BANDS.replace("35,500", "35,-");
        assertTrue(none(hole, Uncertain.exact(30), Unit.DEGREE).contains("outside this"));
        assertTrue(none(hole, Uncertain.of(25, "level", 1), Unit.DEGREE).contains("outside this"));
        assertEquals(400, most(hole, Uncertain.exact(36), Unit.DEGREE).value().value());
    }

    @Test
    void nearAnEdgeTheStricterRowCountsAndThatIsSaid() {
        Uncertain near = Uncertain.of(24.9, "level", 0.2);
        LimitEvaluator.Evaluated most = evaluate(BANDS, near, Unit.DEGREE, true);
        LimitEvaluator.Evaluated least = evaluate(BANDS, near, Unit.DEGREE, false);
        assertEquals(500, ((NumberLimit) most.limit()).value().value());
        assertEquals(600, ((NumberLimit) least.limit()).value().value());
        assertEquals(1, most.near().size());
        assertTrue(most.near().get(0).contains("within its uncertainty"), most.near()::toString);
        assertEquals(
                List.of(), evaluate(BANDS, Uncertain.of(20, "l", 1), Unit.DEGREE, true).near());
    }

    @Test
    void aKeyOfUnknownUncertaintyChoosesNoRow() {
        Uncertain unstated = Uncertain.unstated(20, "nobody said how sure");
        assertTrue(none(BANDS, unstated, Unit.DEGREE).contains("nobody said how sure"));
    }

    @Test
    void whatTheCurveIsMisreadByJoinsTheUncertainty() {
        // Slope -2 mm/mm between 100 and 150; a half-width of 2 mm is u = 2/sqrt(3).
        double read = 2 * 2 / StrictMath.sqrt(3);
        Uncertain exact = most(CURVE, Uncertain.exact(120), Unit.MM).value();
        assertEquals(read, exact.standardUncertainty(), 1e-9);
        Uncertain taped = most(CURVE, Uncertain.of(120, "tape", 1), Unit.MM).value();
        assertEquals(StrictMath.sqrt(read * read + 4), taped.standardUncertainty(), 1e-9);
        // Near the bend the steeper side counts.
        Uncertain bend = most(CURVE, Uncertain.exact(151), Unit.MM).value();
        assertEquals(read, bend.standardUncertainty(), 1e-9);
    }

    @Test
    void theWorkingsNameTheTableTheRowAndTheSource() {
        NumberLimit limit = most(BANDS, Uncertain.exact(30), Unit.DEGREE);
        assertEquals("table t", limit.workings().get(0).name());
        assertEquals("500 mm", limit.workings().get(0).value());
        assertEquals("row pitch 35 deg; A document, table 1", limit.workings().get(0).from());
    }

    @Test
    void whatIsNotRecordedChoosesNoRow() {
        LimitEvaluator.Evaluated none =
                LimitEvaluator.evaluate(atMost(lookup(BANDS)), CENTRES, Map.of());
        assertTrue(assertInstanceOf(NoLimit.class, none.limit()).why().contains("not recorded"));
    }

    @Test
    void wordsOfATableAreAllowedAndNearAnEdgeOnlyThoseOfBothRows() {
        String words = "# s\n# pitch up deg; m words\npitch,m\n25,zinc|copper\n35,copper|steel\n";
        Rule.Demand demand = new Rule.OneOfTable(lookup(words));
        assertEquals(List.of("zinc", "copper"), words(demand, Uncertain.exact(25)));
        assertEquals(List.of("copper"), words(demand, Uncertain.of(25, "level", 0.5)));
    }

    private static List<String> words(Rule.Demand demand, Uncertain pitch) {
        Map<String, Measure> bound = Map.of("$key", new Measure.Number(pitch, Unit.DEGREE));
        return ((WordLimit) LimitEvaluator.evaluate(demand, MATERIAL, bound).limit()).words();
    }

    private static NumberLimit most(String table, Uncertain key, Unit unit) {
        return (NumberLimit) evaluate(table, key, unit, true).limit();
    }

    private static String none(String table, Uncertain key, Unit unit) {
        return assertInstanceOf(NoLimit.class, evaluate(table, key, unit, true).limit()).why();
    }

    private static LimitEvaluator.Evaluated evaluate(
            String table, Uncertain key, Unit unit, boolean most) {
        Rule.Limit limit = lookup(table);
        Rule.Demand demand = most ? atMost(limit) : new Rule.AtLeast(limit, "mm");
        return LimitEvaluator.evaluate(
                demand, CENTRES, Map.of("$key", new Measure.Number(key, unit)));
    }

    private static Rule.Demand atMost(Rule.Limit limit) {
        return new Rule.AtMost(limit, "mm");
    }

    private static Rule.Lookup lookup(String csv) {
        try {
            Table table = TableFile.read("t.csv", "t", csv.getBytes(StandardCharsets.UTF_8));
            return new Rule.Lookup("t", List.of(new Rule.Bound("$key")), Optional.of(table));
        } catch (RefusedRules e) {
            throw new AssertionError(e);
        }
    }
}
