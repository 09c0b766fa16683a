package eavesproof.app.cli;

import eavesproof.report.pdf.KeyTrouble;
import eavesproof.report.pdf.SigningKey;
import java.io.Console;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Opens key files. A passphrase comes from the terminal, where it is not shown, or from the
 * environment; never from the command line, which everybody on the machine can see. It is forgotten
 * as soon as the file is open, and nothing that is printed ever holds it.
 */
final class Passphrase {
    static final String VARIABLE = "EAVESPROOF_PASSPHRASE";

    /** Far more than a key and its certificates take. */
    private static final int MOST_BYTES = 1_000_000;

    private final Map<String, String> environment;

    Passphrase(Map<String, String> environment) {
        this.environment = environment;
    }

    SigningKey open(Path file) throws WrongUse, BadInput, IOException {
        byte[] bytes = read(file);
        char[] passphrase = ask(file);
        try {
            return SigningKey.read(bytes, passphrase);
        } catch (KeyTrouble e) {
            throw refused(file.toString(), e);
        } finally {
            Arrays.fill(passphrase, ' ');
        }
    }

    static BadInput refused(String file, KeyTrouble trouble) {
        return new BadInput("the key", List.of(file + ": " + trouble.getMessage()));
    }

    private static byte[] read(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new FileSystemException(file.toString(), null, "is a folder, and no key file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(MOST_BYTES);
        }
    }

    @SuppressWarnings("SystemConsoleNull") // null is Java 17 to 21 where there is no terminal
    private char[] ask(Path file) throws WrongUse {
        String given = environment.get(VARIABLE);
        if (given != null) {
            return given.toCharArray();
        }
        Console console = System.console();
        char[] typed = console == null ? null : console.readPassword("Passphrase of %s: ", file);
        if (typed == null) {
            throw new WrongUse(
                    "there is no terminal to ask for the passphrase of "
                            + file
                            + ", and "
                            + VARIABLE
                            + " is not set");
        }
        return typed;
    }
}
