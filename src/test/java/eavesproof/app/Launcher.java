package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;

/**
 * The built distribution, asked the way a person asks it: as a process, from some folder, with
 * nothing on its standard input.
 */
record Launcher(Path command, Path folder, Map<String, String> environment) {

    /** What came back. */
    record Answer(int exit, String out, String err) {}

    private static final long PATIENCE_S = 120;

    static Path distribution() {
        return Path.of(System.getProperty("eavesproof.distribution")).toAbsolutePath();
    }

    /**
     * The distribution of this build, with the Java that the build was told to try it on; it keeps
     * nothing in the home of whoever builds.
     */
    static Launcher from(Path folder) {
        return new Launcher(
                distribution().resolve("bin/eavesproof"),
                folder,
                Map.of(
                        "JAVA_HOME",
                        System.getProperty("eavesproof.java.home"),
                        "EAVESPROOF_CACHE",
                        "off"));
    }

    Launcher calledAs(Path other) {
        return new Launcher(other, folder, environment);
    }

    /** With one more variable, or with one variable other than it was. */
    Launcher with(String variable, String value) {
        Map<String, String> changed = new TreeMap<>(environment);
        changed.put(variable, value);
        return new Launcher(command, folder, changed);
    }

    Answer ask(String... arguments) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(List.of(command.toString()));
        line.addAll(List.of(arguments));
        Path out = Files.createTempFile("eavesproof", ".out");
        Path err = Files.createTempFile("eavesproof", ".err");
        try {
            ProcessBuilder builder =
                    new ProcessBuilder(line)
                            .directory(folder.toFile())
                            .redirectInput(new File("/dev/null"))
                            .redirectOutput(out.toFile())
                            .redirectError(err.toFile());
            builder.environment().putAll(environment);
            Process process = builder.start();
            boolean ended = process.waitFor(PATIENCE_S, TimeUnit.SECONDS);
            process.destroyForcibly();
            assertTrue(ended, () -> line + " did not end within " + PATIENCE_S + " s");
            return new Answer(process.exitValue(), Files.readString(out), Files.readString(err));
        } finally {
            Files.delete(out);
            Files.delete(err);
        }
    }
}
