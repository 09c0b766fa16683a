package eavesproof.app;

import eavesproof.rules.Sha256;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/**
 * One digest over everything that the program is made of. Two builds give all files one and the
 * same date, so that neither date nor size tells one program from the next.
 */
final class ProgramDigest {
    private ProgramDigest() {}

    static String of(Path classes) throws IOException {
        StringBuilder list = new StringBuilder();
        try (Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                String name = classes.relativize(file).toString().replace('\\', '/');
                list.append(Sha256.of(Files.readAllBytes(file)))
                        .append(' ')
                        .append(name)
                        .append('\n');
            }
        }
        return Sha256.of(list.toString().getBytes(StandardCharsets.UTF_8));
    }
}
