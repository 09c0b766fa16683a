package eavesproof.app.cli;

import eavesproof.app.cli.Page.Look;
import java.util.ArrayList;
import java.util.List;

/** What can be asked, and how. */
final class Manual {
    private static final int TEXT = 2;
    private static final int MEANING = 34;
    private static final int OPTION_MEANING = 26;

    private final List<Command> commands;

    Manual(List<Command> commands) {
        this.commands = commands;
    }

    /** Everything that can be asked, each in a line. */
    String all() {
        Page page = new Page(false);
        page.say(0, "Eavesproof holds the measurements of an eaves-gutter job against rules.")
                .gap();
        for (Command command : commands) {
            page.pair(TEXT, MEANING, typed(command), command.does());
        }
        page.pair(TEXT, MEANING, "eavesproof help COMMAND", "what else a command takes");
        page.pair(TEXT, MEANING, "eavesproof --version", "which version this is");
        page.gap();
        page.say(
                0,
                "It ends with 0 if the job complies, 1 if it does not, 2 if that is not shown; 64"
                        + " after wrong use, 65 after a mistake in a record or a rule, 70 after a"
                        + " fault of the program, 74 if a file could not be read or written.");
        page.gap();
        page.say(
                0,
                "It records and computes; it approves nothing. Local codes and licensed practice"
                        + " decide.");
        return page.text();
    }

    /** All about one command. */
    String of(Command command) {
        Page page = new Page(false);
        page.say(0, TEXT, Look.PLAIN, usage(command)).gap();
        String does = command.does();
        page.say(0, Character.toUpperCase(does.charAt(0)) + does.substring(1) + ".");
        command.more().forEach(paragraph -> page.gap().say(0, paragraph));
        page.gap();
        for (Flag flag : flags(command)) {
            page.pair(TEXT, OPTION_MEANING, flag.everyWay(), flag.says());
        }
        return page.text();
    }

    /** How a command is typed, in a line. */
    static String usage(Command command) {
        return typed(command) + " [options]";
    }

    /** What a command understands: its own options, and those that all have. */
    static List<Flag> flags(Command command) {
        List<Flag> flags = new ArrayList<>(command.flags());
        flags.add(Flag.TRACE);
        flags.add(Flag.HELP);
        return flags;
    }

    private static String typed(Command command) {
        return "eavesproof " + command.name() + " " + command.takes();
    }
}
