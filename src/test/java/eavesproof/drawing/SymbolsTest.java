package eavesproof.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.job.Run;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SymbolsTest {
    /** A guard that is screwed on holds nothing up, and what is not said may be either. */
    @ParameterizedTest(name = "carries {0}, screwed {1}")
    @CsvSource({
        "yes, yes, INK, PLAIN",
        "no, yes, WHITE, PLAIN",
        "no, , WHITE, PLAIN",
        ", no, WHITE, PLAIN",
        "yes, no, WHITE, PLAIN",
        ", yes, WHITE, DOTTED",
        "yes, , WHITE, DOTTED",
        ", , WHITE, DOTTED"
    })
    void onlyAFittingThatCarriesTheGutterIsSolid(
            @Nullable String carries, @Nullable String screwed, Fill fill, Line edge) {
        Run.Fitting fitting = new Run.Fitting("f1", null, 500.0, screwed, null, carries, null);
        List<Mark.Area> squares =
                Symbols.fitting(fitting, 20, 10, 4).stream()
                        .filter(Mark.Area.class::isInstance)
                        .map(Mark.Area.class::cast)
                        .toList();
        assertEquals(1, squares.size());
        assertEquals(fill, squares.get(0).fill());
        assertEquals(edge, squares.get(0).edge());
    }
}
