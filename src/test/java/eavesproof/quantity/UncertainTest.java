package eavesproof.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class UncertainTest {
    private static final Uncertain LEFT = Uncertain.of(100, "left reading", 0.4);
    private static final Uncertain RIGHT = Uncertain.of(140, "right reading", 0.3);

    /** JCGM 100:2008 5.1.2 for a difference: the root of the sum of squares; 3-4-5. */
    @Test
    void readingsOfTheirOwnAddInSquares() {
        assertEquals(0.5, RIGHT.minus(LEFT).standardUncertainty(), 1e-12);
    }

    /** JCGM 100:2008 5.2: an error common to both readings drops out of their difference. */
    @Test
    void aSharedErrorCancelsInADifferenceAndAddsInASum() {
        Uncertain a = Uncertain.of(100, "datum", 2);
        Uncertain b = Uncertain.of(140, "datum", 2);
        assertEquals(0, b.minus(a).standardUncertainty(), 1e-12);
        assertEquals(4, b.plus(a).standardUncertainty(), 1e-12);
    }

    /** JCGM 100:2008 5.1.6: for a quotient the relative uncertainties add in squares. */
    @Property
    void aQuotientAddsRelativeUncertainties(
            @ForAll @DoubleRange(min = 1, max = 1000) double x,
            @ForAll @DoubleRange(min = 1, max = 1000) double y) {
        Uncertain q = Uncertain.of(x, "x", 0.03 * x).over(Uncertain.of(y, "y", 0.04 * y));
        assertEquals(0.05, q.standardUncertainty() / q.value(), 1e-9);
    }

    @Test
    void whatNobodyStatedStaysUnstatedThroughArithmetic() {
        Uncertain unstated = Uncertain.unstated(3, "no instrument is recorded");
        assertFalse(LEFT.plus(unstated).isStated());
        assertFalse(unstated.times(2).minus(LEFT).isStated());
        assertFalse(LEFT.over(unstated).isStated());
    }

    @Test
    void refusesWhatIsNoNumber() {
        assertThrows(IllegalArgumentException.class, () -> Uncertain.exact(Double.NaN));
        assertThrows(
                IllegalArgumentException.class,
                () -> Uncertain.of(1, "x", Double.POSITIVE_INFINITY));
        assertThrows(ArithmeticException.class, () -> LEFT.over(Uncertain.exact(0)));
    }
}
