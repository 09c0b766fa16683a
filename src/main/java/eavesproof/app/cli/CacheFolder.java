package eavesproof.app.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * Where on this machine the user's own programs keep what they can make again: by the XDG base
 * directory specification 0.8, and on Windows in the local application data.
 */
final class CacheFolder {
    /** With the value "off" nothing is kept. */
    static final String VARIABLE = "EAVESPROOF_CACHE";

    private CacheFolder() {}

    /**
     * @param system the name of the operating system, as Java has it
     * @param home the folder of the user
     */
    static Optional<Path> ofLayers(Map<String, String> environment, String system, String home) {
        if (environment.getOrDefault(VARIABLE, "").equals("off")) {
            return Optional.empty();
        }
        if (system.startsWith("Windows")) {
            return whole(environment.getOrDefault("LOCALAPPDATA", ""))
                    .map(folder -> folder.resolve("Eavesproof").resolve("layers"));
        }
        return whole(environment.getOrDefault("XDG_CACHE_HOME", ""))
                .or(() -> whole(home).map(folder -> folder.resolve(".cache")))
                .map(folder -> folder.resolve("eavesproof").resolve("layers"));
    }

    /** The specification passes over a path that begins nowhere in particular, and so do we. */
    private static Optional<Path> whole(String path) {
        try {
            return Optional.of(Path.of(path)).filter(Path::isAbsolute);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
