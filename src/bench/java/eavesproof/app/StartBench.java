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
 * turns, so that whatever else the machine does meets both. Time on the clock grows with what else
 * runs; the processor time of a process hardly does, so that its ratio holds on a busy machine too.
 */
public final class StartBench {
    private static final int TURNS = 10;
    private static final int WARM_UP = 2;
    private static final List<String> FLAGS =
            List.of(
                    "-XX:TieredStopAtLevel=1",
                    "-XX:+UseSerialGC",
                    "-Xmn12m",
                    "-Xshare:auto",
                    "-Xlog:disable");

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
        Measured bound = Measured.typical(binds);
        Measured checked = Measured.typical(checks);
        System.out.println(
                "of " + TURNS + ": median on the clock, mean of the processor; Java "
                        + Runtime.version());
        System.out.println("bind only  " + bound);
        System.out.println("check      " + checked);
        System.out.println(
                "ratio      "
                        + ratio(checked.millis(), bound.millis())
                        + " on the clock, "
                        + ratio(checked.cpuMillis(), bound.cpuMillis())
                        + " of the processor");
    }

    /** To two decimals; nothing where nothing was measured. */
    private static String ratio(double of, double to) {
        return to == 0 ? "unknown" : String.valueOf(Math.round(100.0 * of / to) / 100.0);
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
     * @param cpuMillis of the processor, for the program and for the system; 0 where nothing tells
     * @param peakMb the most memory that it held, as far as it was seen; 0 where nothing tells
     */
    private record Measured(double millis, double cpuMillis, double peakMb) {

        static Measured of(List<String> command, String java) throws Exception {
            ProcessBuilder builder =
                    new ProcessBuilder(command)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .redirectError(ProcessBuilder.Redirect.INHERIT)
                            .redirectInput(new File("/dev/null"));
            String home = new File(java).getParentFile().getParent();
            builder.environment().put("JAVA_HOME", home);
            double before = cpuMillisOfChildren();
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
            return new Measured(millis, cpuMillisOfChildren() - before, peak);
        }

        /** A tick is a hundredth of a second on Linux, so that only a mean of many says much. */
        private static final double MILLIS_A_TICK = 10;

        /** Of all that were waited for: cutime and cstime of proc(5), fields 16 and 17. */
        private static double cpuMillisOfChildren() {
            try {
                String stat = Files.readString(Path.of("/proc/self/stat"));
                String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" ");
                return MILLIS_A_TICK * (Long.parseLong(fields[13]) + Long.parseLong(fields[14]));
            } catch (IOException notLinux) {
                return 0;
            }
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

        static Measured typical(List<Measured> all) {
            return new Measured(
                    median(all.stream().mapToDouble(Measured::millis).toArray()),
                    all.stream().mapToDouble(Measured::cpuMillis).average().orElse(0),
                    median(all.stream().mapToDouble(Measured::peakMb).toArray()));
        }

        private static double median(double[] values) {
            Arrays.sort(values);
            return (values[(values.length - 1) / 2] + values[values.length / 2]) / 2;
        }

        @Override
        public String toString() {
            return Math.round(millis)
                    + " ms, of the processor "
                    + Math.round(cpuMillis)
                    + " ms, "
                    + Math.round(peakMb)
                    + " MB";
        }
    }
}
