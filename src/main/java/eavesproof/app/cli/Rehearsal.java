package eavesproof.app.cli;

import eavesproof.app.RuleSets;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * What people ask most, with nobody to hear the answer, so that the Java machine can note which
 * classes that takes. It keeps to rules as shipped: those need no compiler, whose classes no
 * archive may hold.
 */
final class Rehearsal {
    private Rehearsal() {}

    public static void main(String[] none) throws IOException {
        Path home = Path.of(System.getProperty("eavesproof.home", "."));
        Main.keepWhatIsMadeOfRules(home);
        PrintStream nobody =
                new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        Surroundings here = Surroundings.of(nobody, nobody, System.getenv(), home);
        Main program = new Main(Main.commands(), here);
        program.run(List.of("help"));
        if (RuleSets.areAsShipped(here.shippedRules())) {
            for (String sample : samples(home)) {
                program.run(List.of("check", sample));
                program.run(List.of("check", "--format", "json", sample));
            }
        }
    }

    private static List<String> samples(Path home) throws IOException {
        Path samples = home.resolve("samples");
        if (!Files.isDirectory(samples)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(samples)) {
            return files.map(Path::toString)
                    .filter(name -> name.endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }
}
