package eavesproof.app.cli;

import java.io.PrintStream;
import java.util.Optional;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.Options;
import org.apache.commons.cli.ParseException;

/** The door of the program: what was typed goes in, an exit code comes out. */
public final class Main {

    private static final int ALL_IS_WELL = 0;
    private static final int WRONG_USE = 64;

    private static final Options OPTIONS =
            new Options()
                    .addOption(null, "version", false, "print the version")
                    .addOption("h", "help", false, "print what can be asked");

    private static final String USAGE = "usage: eavesproof --version | --help";

    private Main() {}

    public static void main(String[] arguments) {
        System.exit(run(arguments, System.out, System.err));
    }

    static int run(String[] arguments, PrintStream results, PrintStream messages) {
        try {
            CommandLine asked = new DefaultParser().parse(OPTIONS, arguments);
            if (!asked.getArgList().isEmpty()) {
                return wrongUse("no such command: " + asked.getArgList().get(0), messages);
            }
            if (asked.hasOption("version")) {
                results.println("eavesproof " + version());
                return ALL_IS_WELL;
            }
            if (asked.hasOption("help")) {
                results.println(USAGE);
                return ALL_IS_WELL;
            }
            return wrongUse("nothing was asked", messages);
        } catch (ParseException e) {
            return wrongUse(String.valueOf(e.getMessage()), messages);
        }
    }

    private static int wrongUse(String why, PrintStream messages) {
        messages.println("eavesproof: " + why);
        messages.println(USAGE);
        return WRONG_USE;
    }

    /** The manifest of the jar carries the version; classes run from a folder have none. */
    private static String version() {
        return Optional.ofNullable(Main.class.getPackage().getImplementationVersion())
                .orElse("unpackaged");
    }
}
