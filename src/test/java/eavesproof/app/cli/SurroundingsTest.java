package eavesproof.app.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;

class SurroundingsTest {
    private static final String TERMINAL = "xterm-256color";

    @Test
    void colourIsForTerminals() {
        assertTrue(Surroundings.wantsColour(Map.of("TERM", TERMINAL), true));
        assertFalse(Surroundings.wantsColour(Map.of("TERM", TERMINAL), false));
    }

    @Test
    void plainTerminalsGetNone() {
        assertFalse(Surroundings.wantsColour(Map.of("TERM", "dumb"), true));
        assertFalse(Surroundings.wantsColour(Map.of(), true));
    }

    @Test
    void whoeverAsksForNoneGetsNone() {
        assertFalse(Surroundings.wantsColour(Map.of("TERM", TERMINAL, "NO_COLOR", "1"), true));
        assertTrue(Surroundings.wantsColour(Map.of("TERM", TERMINAL, "NO_COLOR", ""), true));
    }
}
