package eavesproof.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {
    /**
     * International yard and pound agreement (1959), exact; US gallon of 231 cubic inches, exact.
     */
    @ParameterizedTest
    @CsvSource({"INCH, MM, 36, 914.4", "FOOT, MM, 1, 304.8", "US_GPM, L_PER_S, 1000, 63.0901964"})
    void convertsByTheExactFactors(Unit from, Unit to, double value, double expected) {
        assertEquals(expected, from.convert(value, to), 1e-6);
    }

    /** A sixteenth of an inch in a foot is 1 in 192. */
    @Test
    void anInchInAFootIsAFall() {
        assertEquals(1000.0 / 192, Unit.INCH_PER_FOOT.convert(1.0 / 16, Unit.MM_PER_M), 1e-9);
    }

    @Test
    void refusesToCompareALengthWithAFall() {
        assertThrows(IllegalArgumentException.class, () -> Unit.MM.convert(1, Unit.MM_PER_M));
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void isFoundAgainByItsSymbol(Unit unit) {
        assertEquals(unit, Unit.of(unit.symbol()).orElseThrow());
    }

    @Property
    void numbersPrintTheSameInEveryLocale(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            String german = Decimals.plain(value, 3);
            Locale.setDefault(Locale.ROOT);
            assertEquals(Decimals.plain(value, 3), german);
            assertEquals(value, Double.parseDouble(german), 0.0005);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void numbersPrintPlainly() {
        assertEquals("490", Decimals.plain(490.0, 1));
        assertEquals("0", Decimals.plain(-0.01, 1));
        assertEquals("1000", Decimals.plain(1000, 0));
        assertEquals("0.0", Decimals.fixed(-0.04, 1));
        assertEquals("2.5", Decimals.plain(2.45, 1));
    }
}
