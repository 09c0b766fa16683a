package eavesproof.app.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CacheFolderTest {
    @TempDir Path somewhere;

    @Test
    void itLiesInTheCacheOfTheUser() {
        assertEquals(
                Optional.of(somewhere.resolve(".cache/eavesproof/layers")),
                of(Map.of(), "Linux", somewhere.toString()));
    }

    @Test
    void theUserMayPutTheCacheElsewhere() {
        Map<String, String> moved = Map.of("XDG_CACHE_HOME", somewhere.toString());
        assertEquals(
                Optional.of(somewhere.resolve("eavesproof/layers")), of(moved, "Linux", "/home/a"));
    }

    @Test
    void aPlaceThatBeginsNowhereIsPassedOver() {
        Map<String, String> relative = Map.of("XDG_CACHE_HOME", "cache");
        assertEquals(
                Optional.of(somewhere.resolve(".cache/eavesproof/layers")),
                of(relative, "Linux", somewhere.toString()));
        assertEquals(Optional.empty(), of(Map.of(), "Linux", "?"));
        assertEquals(Optional.empty(), of(Map.of("XDG_CACHE_HOME", "a\0b"), "Linux", ""));
    }

    @Test
    void onWindowsItLiesInTheLocalApplicationData() {
        Map<String, String> local = Map.of("LOCALAPPDATA", somewhere.toString());
        assertEquals(
                Optional.of(somewhere.resolve("Eavesproof").resolve("layers")),
                of(local, "Windows 11", "/home/a"));
        assertEquals(Optional.empty(), of(Map.of(), "Windows 11", somewhere.toString()));
    }

    @Test
    void switchedOffThereIsNone() {
        Map<String, String> off =
                Map.of("EAVESPROOF_CACHE", "off", "XDG_CACHE_HOME", somewhere.toString());
        assertEquals(Optional.empty(), of(off, "Linux", somewhere.toString()));
        assertEquals(Optional.empty(), of(off, "Windows 11", somewhere.toString()));
    }

    private static Optional<Path> of(Map<String, String> environment, String system, String home) {
        return CacheFolder.ofLayers(environment, system, home);
    }
}
