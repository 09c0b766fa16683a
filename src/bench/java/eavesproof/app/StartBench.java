package eavesproof.app;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/**
 * How long a person waits for {@code check}, as a process from cold, beside a program that only
 * binds the same record: the same Java, the same flags, an archive of classes for each. The two take
 * turns, so that whatever else the machine does meets both.
 */
public final class StartBench {
    private static final int TURNS = 10;
    private static final int WARM_UP = 2;
    private static final List<String> FLAGS =
            List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-Xlog:disable");

    private final Path home;
    private final String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();

    private StartBench(Path home) {
        this.home = home;
    }

    /**
     * @param arguments the built distribution, and the name of a sample
     */
    public static void main(String[] arguments) throws Exception {
        Path home = Path.of(arguments[0]).toAbsolutePath();
        String sample = home.resolve("samples").resolve(arguments[1]).toString();
        new StartBench(home).compare(sample);
    }

    private void compare(String sample) throws Exception {
        Path folder = Files.createTempDirectory("eavesproof-bench");
        String classPath = classPath(jar(folder.resolve("bind-only.jar")));
        Path archive = folder.resolve("bind-only.jsa");
        Measured.of(bindOnly(classPath, "-XX:ArchiveClassesAtExit=" + archive, sample), java);
        List<String> bind = bindOnly(classPath, "-XX:SharedArchiveFile=" + archive, sample);
        List<String> check = List.of(home.resolve("bin/eavesproof").toString(), "check", sample);

        List<Measured> binds = new ArrayList<>();
        List<Measured> checks = new ArrayList<>();
        for (int turn = -WARM_UP; turn < TURNS; turn++) {
            Measured bound = Measured.of(bind, java);
            Measured checked = Measured.of(check, java);
            if (turn >= 0) {
                binds.add(bound);
                checks.add(checked);
            }
        }
        System.out.println("median of " + TURNS + ", Java " + Runtime.version());
        System.out.println("bind only  " + Measured.median(binds));
        System.out.println("check      " + Measured.median(checks));
        System.out.println(
                "ratio      "
                        + Math.round(
                                        100.0
                                                * Measured.median(checks).millis()
                                                / Measured.median(binds).millis())
                                / 100.0);
    }

    private List<String> bindOnly(String classPath, String archive, String sample) {
        List<String> command = new ArrayList<>(List.of(java));
        command.addAll(FLAGS);
        command.addAll(List.of(archive, "-cp", classPath, BindOnly.class.getName(), sample));
        return command;
    }

    /** An archive of classes takes no folder on the class path, and so the program is in a jar. */
    private static Path jar(Path jar) throws IOException {
        try (OutputStream file = Files.newOutputStream(jar);
                JarOutputStream out = new JarOutputStream(file)) {
            for (String name : List.of("BindOnly", "BindOnly$ByKind", "BindOnly$TapeClass")) {
                String path = "eavesproof/app/" + name + ".class";
                out.putNextEntry(new JarEntry(path));
                try (InputStream in =
                        StartBench.class.getClassLoader().getResourceAsStream(path)) {
                    Objects.requireNonNull(in, path).transferTo(out);
                }
                out.closeEntry();
            }
        }
        return jar;
    }

    /** Nothing but what binding needs. */
    private String classPath(Path own) throws IOException {
        try (Stream<Path> jars = Files.list(home.resolve("lib"))) {
            List<String> needed =
                    jars.map(Path::toString)
                            .filter(jar -> jar.matches(".*/(eavesproof|jackson-[^/]*)\\.jar"))
                            .sorted()
                            .toList();
            return own + File.pathSeparator + String.join(File.pathSeparator, needed);
        }
    }

    /**
     * What one process took.
     *
     * @param peakMb the most memory that it held, as far as it was seen; 0 where nothing tells
     */
    private record Measured(double millis, double peakMb) {

        static Measured of(List<String> command, String java) throws Exception {
            ProcessBuilder builder =
                    new ProcessBuilder(command)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .redirectError(ProcessBuilder.Redirect.INHERIT)
                            .redirectInput(new File("/dev/null"));
            String home = new File(java).getParentFile().getParent();
            builder.environment().put("JAVA_HOME", home);
            long begun = System.nanoTime();
            Process process = builder.start();
            Path status = Path.of("/proc", String.valueOf(process.pid()), "status");
            double peak = 0;
            while (!process.waitFor(PAUSE_MS, TimeUnit.MILLISECONDS)) {
                peak = Math.max(peak, peakMb(status));
            }
            double millis = (System.nanoTime() - begun) / 1e6;
            if (process.exitValue() != 0) {
                throw new IllegalStateException(command + " ended with " + process.exitValue());
            }
            return new Measured(millis, peak);
        }

        /** Seldom enough to leave the process alone, often enough to see it near its end. */
        private static final int PAUSE_MS = 10;

        private static double peakMb(Path status) {
            try (Stream<String> lines = Files.lines(status)) {
                return lines.filter(line -> line.startsWith("VmHWM:"))
                        .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
                        .findFirst()
                        .orElse(0);
            } catch (IOException | java.io.UncheckedIOException ended) {
                return 0;
            }
        }

        static Measured median(List<Measured> all) {
            return new Measured(
                    median(all.stream().mapToDouble(Measured::millis).toArray()),
                    median(all.stream().mapToDouble(Measured::peakMb).toArray()));
        }

        private static double median(double[] values) {
            Arrays.sort(values);
            return (values[(values.length - 1) / 2] + values[values.length / 2]) / 2;
        }

        @Override
        public String toString() {
            return Math.round(millis) + " ms, " + Math.round(peakMb) + " MB";
        }
    }
}
