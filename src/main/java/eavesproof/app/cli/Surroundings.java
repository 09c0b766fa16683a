package eavesproof.app.cli;

import java.io.Console;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/**
 * Where the program runs and whom it talks to.
 *
 * @param results nothing but what was asked for
 * @param messages everything else
 * @param colour whether results are looked at in colour
 * @param trace whether a fault of the program is to say where it happened
 * @param home the folder that the program was unpacked to
 */
record Surroundings(
        PrintStream results, PrintStream messages, boolean colour, boolean trace, Path home) {

    static Surroundings of(
            PrintStream results, PrintStream messages, Map<String, String> environment, Path home) {
        return new Surroundings(
                results,
                messages,
                wantsColour(environment, atTerminal()),
                environment.getOrDefault("EAVESPROOF_TRACE", "").equals("1"),
                home);
    }

    /** The rule sets that came with the program. */
    Path shippedRules() {
        return home.resolve("rules");
    }

    /** The templates that came with the program. */
    Path shippedTemplates() {
        return home.resolve("report-templates");
    }

    /** Shipped templates by their name, others by their folder. */
    Path template(String nameOrFolder) throws WrongUse {
        Path folder = Asked.path(nameOrFolder);
        Path shipped = shippedTemplates().resolve(folder);
        return folder.getNameCount() == 1 && Files.isDirectory(shipped) ? shipped : folder;
    }

    /** Colour is for eyes: not for files, not for plain terminals, not for who asks for none. */
    static boolean wantsColour(Map<String, String> environment, boolean atTerminal) {
        return atTerminal
                && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !environment.getOrDefault("TERM", "dumb").equals("dumb");
    }

    void show(String result) throws IOException {
        show(result.getBytes(StandardCharsets.UTF_8));
    }

    /** A result that did not arrive is no result. */
    void show(byte[] result) throws IOException {
        results.write(result);
        if (results.checkError()) {
            throw new IOException("standard output could not be written");
        }
    }

    /** Since Java 22 there is a console even where there is no terminal, and it can be asked. */
    @SuppressWarnings("SystemConsoleNull") // null is Java 17 to 21 where there is no terminal
    private static boolean atTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException olderJava) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }
}
